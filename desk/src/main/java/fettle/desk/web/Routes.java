package fettle.desk.web;

import fettle.desk.pack.PackFiles;
import fettle.desk.page.EnginePage;
import fettle.desk.page.RoomPage;
import fettle.desk.page.ValuePage;
import fettle.desk.template.desk.JtechangeGenerated;
import fettle.desk.template.desk.JtechangesGenerated;
import fettle.desk.template.desk.JteengineGenerated;
import fettle.desk.template.desk.JteengineworkGenerated;
import fettle.desk.template.desk.JtefigureGenerated;
import fettle.desk.template.desk.JtefigureinsideGenerated;
import fettle.desk.template.desk.JtefollowsGenerated;
import fettle.desk.template.desk.JteguideGenerated;
import fettle.desk.template.desk.JtehistoryGenerated;
import fettle.desk.template.desk.JteinterviewGenerated;
import fettle.desk.template.desk.JtejointGenerated;
import fettle.desk.template.desk.JtelatheGenerated;
import fettle.desk.template.desk.JtelathepictureGenerated;
import fettle.desk.template.desk.JtememberGenerated;
import fettle.desk.template.desk.JtenewtrialGenerated;
import fettle.desk.template.desk.JteproofGenerated;
import fettle.desk.template.desk.JtereadingsGenerated;
import fettle.desk.template.desk.JtereckonanswerGenerated;
import fettle.desk.template.desk.JtereckonerGenerated;
import fettle.desk.template.desk.JtereckonersGenerated;
import fettle.desk.template.desk.JteroomGenerated;
import fettle.desk.template.desk.JtetrialGenerated;
import fettle.desk.template.desk.JtevalueGenerated;
import fettle.machine.text.BookFiles;
import gg.jte.html.HtmlInterceptor;
import gg.jte.html.HtmlTemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.io.EOFException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.jetty.http.HttpException;
import org.jspecify.annotations.Nullable;

/** Which address shows which page. */
final class Routes {

  private static final String SAID = "fettle-said";
  private static final int TOO_MUCH = 413;
  private static final int CUT_SHORT = 400;
  private static final int CONFLICT = 409;
  private static final int YEAR = 31_536_000;

  private final Shelf shelf;
  private final Guard guard;
  private final BoxJobs boxes;

  Routes(Shelf shelf, Guard guard) {
    this.shelf = shelf;
    this.guard = guard;
    this.boxes = new BoxJobs(shelf.reckoned());
  }

  /** Lets work that goes on beside the pages end soundly. */
  void close() {
    boxes.close();
  }

  /** Writes one page record. */
  private interface Template<P> {
    void render(HtmlTemplateOutput out, @Nullable HtmlInterceptor none, @Nullable P page);
  }

  void lay(RoutesConfig routes) {
    routes.before(guard::check);
    routes.get("/", c -> c.redirect("/lathe"));
    routes.get("/assets/{name}", Assets::send);
    lathe(routes);
    values(routes);
    history(routes);
    rooms(routes);
    closer(routes);
    refusals(routes);
  }

  private void lathe(RoutesConfig routes) {
    routes.get(
        "/lathe",
        page(LatheRoom::lathe, JtelatheGenerated::render, JtelathepictureGenerated::render));
    routes.get(
        "/lathe.json",
        c -> c.contentType("application/json; charset=utf-8").result(Solids.json(visit(c))));
    routes.get("/member", page(LatheRoom::member, JtememberGenerated::render));
    routes.get(
        "/changes",
        page(
            ChangesRoom::list,
            JtechangesGenerated::render,
            (out, none, page) ->
                JtejointGenerated.render(out, none, page == null ? null : page.joint())));
    routes.get("/change", page(ChangesRoom::change, JtechangeGenerated::render));
    routes.get(
        "/figure",
        page(FigureRoom::figure, JtefigureGenerated::render, JtefigureinsideGenerated::render));
  }

  /** Pages that look closely at one thing of the lathe. */
  private void closer(RoutesConfig routes) {
    Template<EnginePage> engine = JteengineGenerated::render;
    routes.get("/train", page(TrainRoom::page, engine));
    gearbox(routes);
    routes.get("/threads", page(ThreadsRoom::page, engine));
    routes.get("/screw", page(JointsRoom::screw, engine));
    routes.get("/clamp", page(JointsRoom::clamp, engine));
    routes.get("/fits", page(JointsRoom::fits, engine));
    routes.get("/spindle", page(SpindleRoom::spindle, engine));
    routes.get("/rigidity", page(RigidityRoom::page, engine));
    routes.get("/cuts", page(SpindleRoom::cuts, engine));
    routes.get("/clearance", page(ClearanceRoom::page, engine));
    routes.get(
        "/clearance.json",
        c ->
            c.contentType("application/json; charset=utf-8").result(ClearanceRoom.scene(visit(c))));
  }

  /** The gearbox is searched for beside the pages, so that its page is made anew every time. */
  private void gearbox(RoutesConfig routes) {
    routes.get(
        "/gearbox",
        c -> {
          Visit visit = visit(c);
          Template<EnginePage> whole = JteengineGenerated::render;
          Template<EnginePage> inner = JteengineworkGenerated::render;
          EnginePage page = BoxRoom.page(visit, boxes);
          boolean idle = visit.inner() && boxes.running(BoxRoom.wish(visit)).isEmpty();
          if (idle) {
            c.header("HX-Refresh", "true");
          }
          send(c, visit.inner() ? inner : whole, page);
        });
    routes.post(
        "/gearbox", c -> c.redirect(BoxRoom.act(visit(c), boxes, shelf), HttpStatus.SEE_OTHER));
  }

  private void values(RoutesConfig routes) {
    Function<Visit, ValuePage> one = v -> ValuesRoom.page(v, notice(v.asked("said")));
    Function<Visit, ValuePage> several = v -> ValuesRoom.whatIf(v, "");
    Handler look = page(one, JtevalueGenerated::render, JtefollowsGenerated::render);
    Handler drag = page(several, JtevalueGenerated::render, JtefollowsGenerated::render);
    routes.get("/value", look);
    routes.get("/what-if", drag);
    routes.post("/value", c -> edit(c, look));
    routes.post(
        "/what-if",
        c -> {
          if (asks(c, "keep")) {
            c.redirect(ValuesRoom.keep(visit(c), shelf), HttpStatus.SEE_OTHER);
          } else {
            drag.handle(c);
          }
        });
  }

  /** Writes a value; if the file was changed meanwhile, shows both and lets the owner choose. */
  private void edit(Context context, Handler look) throws Exception {
    if (!asks(context, "write")) {
      look.handle(context);
      return;
    }
    Visit visit = visit(context);
    try {
      context.redirect(ValuesRoom.save(visit, shelf), HttpStatus.SEE_OTHER);
    } catch (Refused e) {
      if (e.status() != CONFLICT) {
        throw e;
      }
      context.status(CONFLICT);
      send(
          context,
          JtevalueGenerated::render,
          ValuesRoom.page(visit(context), e.words() + " " + e.next()));
    }
  }

  /** Only a form that is sent may write; what follows while typing never does. */
  private static boolean asks(Context context, String what) {
    return what.equals(context.formParam("do")) && context.header("HX-Request") == null;
  }

  private static String notice(String said) {
    return said.equals("written")
        ? "Written into the book. Everything else in the file stands as it was."
        : "";
  }

  private void history(RoutesConfig routes) {
    routes.get("/history", this::versions);
    routes.post(
        "/history",
        c -> {
          Visit visit = seen(c);
          String version = visit.asked("version");
          shelf.restore(visit.opened(), version, "version of " + when(version) + " brought back");
          c.redirect("/history", HttpStatus.SEE_OTHER);
        });
    routes.post(
        "/undo",
        c -> {
          Visit visit = seen(c);
          shelf.undo(visit.opened());
          c.redirect(local(visit.asked("back")), HttpStatus.SEE_OTHER);
        });
    routes.post(
        "/measure",
        c -> {
          Cookie cookie =
              new Cookie(Visit.MEASURE, "inch".equals(c.formParam("unit")) ? "inch" : "metric");
          cookie.setPath("/");
          cookie.setHttpOnly(true);
          cookie.setSameSite(SameSite.STRICT);
          cookie.setMaxAge(YEAR);
          c.cookie(cookie);
          c.redirect(local(String.valueOf(c.formParam("back"))), HttpStatus.SEE_OTHER);
        });
  }

  private void versions(Context context) {
    send(context, JtehistoryGenerated::render, HistoryRoom.page(visit(context), shelf.history()));
  }

  private String when(String version) {
    return shelf.history().versions().stream()
        .filter(v -> v.id().equals(version))
        .map(History.Version::when)
        .findFirst()
        .orElse("");
  }

  /** Refuses if the book is no longer what the page showed. */
  private Visit seen(Context context) {
    Visit visit = visit(context);
    if (!visit.opened().mark().equals(visit.asked("mark"))) {
      throw Refused.overtaken(
          "The book was changed by another program since this page was made; nothing was done.",
          "Look at the history and the book as it is now, then decide.");
    }
    return visit;
  }

  /** Returns an address of ours, whatever was sent. */
  static String local(String back) {
    boolean ours = back.matches("/(?!/)[\\x21-\\x7e&&[^\\\\]]{0,3000}") || back.equals("/");
    return ours ? back : "/lathe";
  }

  private void rooms(RoutesConfig routes) {
    routes.get("/parts", page(PlainRooms::parts, JteroomGenerated::render));
    Template<EnginePage> engine = JteengineGenerated::render;
    routes.get("/order", page(OrderRoom::page, engine));
    packs(routes);
    routes.get("/proof", page(ProofRoom::list, JteproofGenerated::render));
    routes.get("/trial", page(ProofRoom::trial, JtetrialGenerated::render));
    routes.get(
        "/interview", page(v -> InterviewRoom.page(v, List.of()), JteinterviewGenerated::render));
    routes.post("/interview", this::interview);
    routes.get(
        "/new-trial", page(v -> NewTrialRoom.page(v, List.of()), JtenewtrialGenerated::render));
    routes.post("/new-trial", this::trial);
    routes.get("/readings", page(BenchRoom::page, JtereadingsGenerated::render));
    routes.post("/learn", c -> c.redirect(ProofRoom.learn(visit(c), shelf), HttpStatus.SEE_OTHER));
    routes.post(
        "/readings", c -> c.redirect(BenchRoom.keep(visit(c), shelf), HttpStatus.SEE_OTHER));
    routes.get("/guide", page(v -> GuideRoom.page(v, "guide/index"), JteguideGenerated::render));
    routes.get("/guide/{page}", c -> guide(c, "guide/"));
    routes.get("/guide/more/{page}", c -> guide(c, ""));
    routes.get("/reckoners", page(ReckonersRoom::index, JtereckonersGenerated::render));
    routes.get(
        "/reckon/{topic}",
        c ->
            page(
                    v -> ReckonersRoom.page(v, c.pathParam("topic")),
                    JtereckonerGenerated::render,
                    JtereckonanswerGenerated::render)
                .handle(c));
  }

  /** Writes an answer; what is wrong with it is said above what was typed. */
  private void interview(Context context) {
    Visit visit = visit(context);
    try {
      context.redirect(InterviewRoom.answer(visit, shelf), HttpStatus.SEE_OTHER);
    } catch (Refused e) {
      context.status(e.status());
      List<String> problems = List.of(e.words() + " " + e.next());
      send(context, JteinterviewGenerated::render, InterviewRoom.page(visit(context), problems));
    }
  }

  /** Writes a trial; what is wrong with it is said above what was typed. */
  private void trial(Context context) {
    Visit visit = visit(context);
    try {
      context.redirect(NewTrialRoom.write(visit, shelf), HttpStatus.SEE_OTHER);
    } catch (Refused e) {
      context.status(e.status());
      List<String> problems = List.of(e.words() + " " + e.next());
      send(context, JtenewtrialGenerated::render, NewTrialRoom.page(visit, problems));
    }
  }

  private void guide(Context context, String folder) throws Exception {
    String name = folder + context.pathParam("page");
    page(v -> GuideRoom.page(v, name), JteguideGenerated::render).handle(context);
  }

  /** Whether a pack was issued stands beside the book, so that its page is made every time. */
  private void packs(RoutesConfig routes) {
    routes.get(
        "/packs",
        c -> send(c, JteengineGenerated::render, PacksRoom.page(visit(c), shelf.issued())));
    routes.get(
        "/pack",
        c -> {
          PackFiles made = PacksRoom.made(visit(c), shelf.issued());
          String name = made.pack().source().change().key();
          c.contentType("application/pdf")
              .header("Content-Disposition", "attachment; filename=\"" + name + ".pdf\"")
              .result(Objects.requireNonNull(made.files().get("pack.pdf")));
        });
    routes.post(
        "/pack", c -> c.redirect(PacksRoom.issue(seen(c), shelf.issued()), HttpStatus.SEE_OTHER));
  }

  private void refusals(RoutesConfig routes) {
    routes.exception(Refused.class, (e, c) -> refuse(c, e));
    routes.exception(HttpResponseException.class, (e, c) -> refuse(c, of(e.getStatus())));
    routes.exception(EOFException.class, (e, c) -> refuse(c, of(CUT_SHORT)));
    routes.exception(HttpException.RuntimeException.class, (e, c) -> refuse(c, of(CUT_SHORT)));
    routes.exception(Exception.class, (e, c) -> refuse(c, fault(e)));
    routes.error(404, "*", c -> unsaid(c, 404));
    routes.error(TOO_MUCH, "*", c -> unsaid(c, TOO_MUCH));
  }

  private void unsaid(Context context, int status) {
    if (context.attribute(SAID) == null) {
      refuse(context, of(status));
    }
  }

  private static Refused of(int status) {
    return status == 404
        ? Refused.missing("There is no such page.", "Go on from the lathe.")
        : status == TOO_MUCH
            ? Refused.tooMuch()
            : Refused.wrong("This cannot be taken.", "Go on from the lathe.");
  }

  /** Writes the report of a fault of ours to a file and says where it lies. */
  private static Refused fault(Exception fault) {
    try {
      Path file = Files.createTempFile("fettle-fault-", ".txt");
      StringWriter text = new StringWriter();
      fault.printStackTrace(new PrintWriter(text));
      Files.writeString(file, text.toString());
      return Refused.fault("Fettle itself is at fault. The report lies in " + file + ".");
    } catch (IOException e) {
      return Refused.fault("Fettle itself is at fault, and the report could not be written.");
    }
  }

  private void refuse(Context context, Refused refused) {
    context.attribute(SAID, true);
    context.status(refused.status());
    Opened opened = opened(() -> Opened.of(new BookFiles(Map.of())));
    Visit visit = new Visit(context, opened, guard.token());
    RoomPage page = PlainRooms.refused(visit, refused);
    send(context, JteroomGenerated::render, page);
  }

  private Opened opened(Supplier<Opened> otherwise) {
    try {
      return shelf.open();
    } catch (Refused e) {
      return otherwise.get();
    }
  }

  private Visit visit(Context context) {
    return new Visit(context, shelf.open(), guard.token());
  }

  private <P> Handler page(Function<Visit, P> maker, Template<P> whole) {
    return page(maker, whole, whole);
  }

  /** A page follows from the book and its address alone; as long as both stay, so does it. */
  private <P> Handler page(Function<Visit, P> maker, Template<P> whole, Template<P> inner) {
    return context -> {
      Visit visit = visit(context);
      Template<P> template = visit.inner() ? inner : whole;
      if (context.method().equals(HandlerType.GET)) {
        Supplier<byte[]> text = () -> text(template, maker.apply(visit));
        send(context, visit.opened().once(visit.address(), text));
      } else {
        send(context, template, maker.apply(visit));
      }
    };
  }

  private static <P> void send(Context context, Template<P> template, @Nullable P page) {
    send(context, text(template, page));
  }

  private static void send(Context context, byte[] text) {
    context.contentType("text/html; charset=utf-8").result(text);
  }

  private static <P> byte[] text(Template<P> template, @Nullable P page) {
    StringOutput text = new StringOutput();
    template.render(new OwaspHtmlTemplateOutput(text), null, page);
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
