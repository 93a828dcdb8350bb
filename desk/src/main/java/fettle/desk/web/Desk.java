package fettle.desk.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.util.JavalinException;
import java.nio.file.Path;
import java.util.concurrent.TimeoutException;

/** The pages of one book, served on this machine only. */
public final class Desk implements AutoCloseable {

  private static final String HOME = "127.0.0.1";
  private static final long LARGEST_FORM = 200_000;
  private static final int LARGEST_HEAD = 32_000;
  private static final int HIGHEST_PORT = 65_535;
  private static final long PATIENCE = 2_000;

  private final Routes routes;
  private final Javalin server;

  private Desk(Path book) {
    routes = new Routes(new Shelf(book), new Guard());
    server = Javalin.create(this::configure);
  }

  /**
   * Opens a book as pages.
   *
   * @param book its folder
   * @param port where to listen; 0 for any free one
   * @return the running desk
   */
  public static Desk start(Path book, int port) {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new IllegalArgumentException("port " + port + ", expected 0 to " + HIGHEST_PORT);
    }
    Desk desk = new Desk(book);
    desk.server.start(HOME, port);
    return desk;
  }

  /** Returns where the pages are. */
  public String address() {
    return "http://" + HOME + ":" + server.port() + "/";
  }

  /** Lets running answers finish, cuts the lines that browsers keep open, and stops listening. */
  @Override
  public void close() {
    routes.close();
    try {
      server.stop();
    } catch (JavalinException e) {
      if (!(e.getCause() instanceof TimeoutException)) {
        throw e;
      }
    }
  }

  private void configure(JavalinConfig config) {
    config.http.maxRequestSize = LARGEST_FORM;
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.jetty.modifyHttpConfiguration(
        http -> {
          http.setSendServerVersion(false);
          http.setRequestHeaderSize(LARGEST_HEAD);
        });
    config.jetty.modifyServer(
        jetty -> {
          jetty.setStopTimeout(PATIENCE);
          jetty.setStopAtShutdown(true);
        });
    routes.lay(config.routes);
  }
}
