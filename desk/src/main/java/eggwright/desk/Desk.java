package eggwright.desk;

import eggwright.desk.assets.Assets;
import eggwright.desk.door.Door;
import eggwright.desk.who.May;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.http.HttpResponseException;
import io.javalin.util.JavalinException;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The server of the pages. It listens on this machine only (127.0.0.1), keeps no session, and answers each request on a
 * virtual thread.
 */
public final class Desk implements AutoCloseable {
    private static final String THIS_MACHINE = "127.0.0.1";
    /** The longest form that is read: some hundred times the longest that a person fills in. */
    static final long LONGEST_FORM_BYTES = 1L << 20;
    /** The longest JSON that is read of a script: some thousands of entries. */
    static final long LONGEST_BATCH_BYTES = 4L << 20;

    private static final Logger LOG = LoggerFactory.getLogger(Desk.class);

    private final Javalin server;
    private final Map<String, May> routes;

    private Desk(Javalin server, Map<String, May> routes) {
        this.server = server;
        this.routes = Map.copyOf(routes);
    }

    /**
     * Opens the desk; it answers when this returns.
     *
     * @throws DeskNotOpened if its port is taken
     */
    public static Desk open(Setup setup) {
        return open(setup, Painter.precompiled());
    }

    static Desk open(Setup setup, Painter painter) {
        var door = new AtomicReference<>(new Door(setup.port(), LONGEST_FORM_BYTES, LONGEST_BATCH_BYTES));
        var speaker = new Speaker(setup, painter, new Assets());
        var routesAndRoles = new LinkedHashMap<String, May>();
        var server = Javalin.create(config -> {
            settle(config);
            config.routes.before(ctx -> speaker.atTheDoor(ctx, door.get()));
            var routes = new JavalinRoutes(config.routes, speaker, routesAndRoles::put);
            new FramePages().addTo(routes);
            setup.pages().forEach(pages -> pages.addTo(routes));
            config.routes.get(Assets.ROOT + "<name>", speaker::asset);
            config.routes.exception(HttpResponseException.class, (e, ctx) -> speaker.problem(ctx, e.getStatus()));
            config.routes.exception(Exception.class, (e, ctx) -> speaker.fault(ctx, e));
            config.router.javaLangErrorHandler((response, e) -> speaker.grave(response, e));
        });
        try {
            server.start(THIS_MACHINE, setup.port());
        } catch (JavalinException e) {
            throw new DeskNotOpened(setup.port(), e);
        }
        door.set(new Door(server.port(), LONGEST_FORM_BYTES, LONGEST_BATCH_BYTES));
        LOG.debug("The desk is open on port {}", server.port());
        return new Desk(server, routesAndRoles);
    }

    private static void settle(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.concurrency.useVirtualThreads = true;
        config.http.prefer405over404 = true;
        config.http.maxRequestSize = LONGEST_BATCH_BYTES;
        config.http.defaultContentType = "text/html; charset=utf-8";
        config.http.compressionStrategy = CompressionStrategy.NONE; // pages go no further than this machine
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        config.jetty.modifyServer(jetty -> jetty.setErrorHandler(new BareRefusal()));
    }

    /** All routes, as {@code GET /sets/{set}}, with who may use them; what pages are drawn with is left out. */
    public Map<String, May> routes() {
        return routes;
    }

    /** Where the first page is. */
    public URI address() {
        return URI.create("http://" + THIS_MACHINE + ":" + server.port() + "/");
    }

    @Override
    public void close() {
        server.stop();
    }
}
