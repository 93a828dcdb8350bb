package fettle.desk.web;

import fettle.desk.page.GuidePage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** The guide within the desk: the same documents that lie in the folder docs. */
final class GuideRoom {

  private static final List<Extension> TABLES_AND_ANCHORS =
      List.of(TablesExtension.create(), HeadingAnchorExtension.create());
  private static final Parser PARSER = Parser.builder().extensions(TABLES_AND_ANCHORS).build();
  private static final HtmlRenderer RENDERER =
      HtmlRenderer.builder()
          .extensions(TABLES_AND_ANCHORS)
          .escapeHtml(true)
          .sanitizeUrls(true)
          .attributeProviderFactory(context -> GuideRoom::attributes)
          .build();
  private static final Pattern COMMENT = Pattern.compile("<!--.*?-->\n?", Pattern.DOTALL);
  private static final Pattern DOCUMENT = Pattern.compile("(guide/)?([a-z-]+)\\.md");

  private GuideRoom() {}

  /** Returns a page; the name is that of a file in docs, without its ending. */
  static GuidePage page(Visit visit, String name) {
    String text = text(name);
    String title = text.substring(0, text.indexOf('\n')).replaceFirst("# ", "");
    Node document = PARSER.parse(text);
    document.accept(new Desked(name));
    boolean first = name.equals("guide/index");
    return new GuidePage(visit.plain(title, "guide"), RENDERER.render(document), first);
  }

  private static String text(String name) {
    boolean plain = name.matches("(guide/)?[a-z-]{1,60}");
    try (InputStream in =
        plain ? GuideRoom.class.getResourceAsStream("/fettle/desk/docs/" + name + ".md") : null) {
      if (in == null) {
        throw Refused.missing(
            "The guide has no such page.", "Go back to the guide's first page and choose.");
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return COMMENT.matcher(text).replaceAll("");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What is wider than the page can be reached with the keyboard. */
  private static void attributes(Node node, String tag, Map<String, String> attributes) {
    if (node instanceof FencedCodeBlock && tag.equals("pre")) {
      attributes.put("tabindex", "0");
    }
  }

  /** Makes links lead within the desk, and leaves pictures of the desk out. */
  private static final class Desked extends AbstractVisitor {
    private final URI here;

    private Desked(String name) {
      here = URI.create("/" + name + ".md");
    }

    @Override
    public void visit(Image image) {
      image.unlink();
    }

    @Override
    public void visit(Link link) {
      visitChildren(link);
      URI to = here.resolve(link.getDestination());
      Matcher document = DOCUMENT.matcher(String.valueOf(to.getPath()).replaceFirst("^/", ""));
      if (document.matches()) {
        String anchor = to.getFragment() == null ? "" : "#" + to.getFragment();
        String folder = document.group(1) == null ? "/guide/more/" : "/guide/";
        link.setDestination(folder + document.group(2) + anchor);
      }
    }
  }
}
