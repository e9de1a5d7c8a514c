package eggwright.desk;

import eggwright.desk.assets.Assets;
import eggwright.desk.door.Door;
import eggwright.desk.who.May;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.HttpResponseException;
import io.javalin.util.JavalinException;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The server of the pages. It listens on this machine only (127.0.0.1) unless it was told to reach further, and answers
 * each request on a virtual thread.
 */
public final class Desk implements AutoCloseable {
    static final String THIS_MACHINE = "127.0.0.1";
    /** The longest form that is read: some hundred times the longest that a person fills in. */
    static final long LONGEST_FORM_BYTES = 1L << 20;
    /** The longest JSON that is read of a script: some thousands of entries. */
    static final long LONGEST_BATCH_BYTES = 4L << 20;

    /** Bytes of the longest logger's file that a page takes: some years of minutes. */
    public static final long LONGEST_FILE_BYTES = 200L * 1000 * 1000;
    /** The same, with what stands around a file in its form. */
    private static final long LONGEST_UPLOAD_BYTES = LONGEST_FILE_BYTES + (1L << 16);
    /** As much of any part of a form as is held in memory; the rest lies on the disk. */
    private static final int IN_MEMORY_BYTES = 1 << 16;

    private static final Logger LOG = LoggerFactory.getLogger(Desk.class);

    private final Javalin server;
    private final Map<String, May> routes;
    private final Runnable closeNetwork;

    private Desk(Javalin server, Map<String, May> routes, Runnable closeNetwork) {
        this.server = server;
        this.routes = Map.copyOf(routes);
        this.closeNetwork = closeNetwork;
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
        var doors = new AtomicReference<>(doors(setup, setup.port()));
        var speaker = new Speaker(setup, painter, new Assets());
        var routesAndRoles = new LinkedHashMap<String, May>();
        var network = NetworkPort.of(setup.reach());
        var server = Javalin.create(config -> {
            settle(config);
            network.ifPresent(port -> port.addTo(config.jetty, setup.port()));
            config.routes.before(ctx -> speaker.atTheDoor(ctx, doors.get()));
            var routes = new JavalinRoutes(config.routes, speaker, routesAndRoles::put);
            new FramePages().addTo(routes);
            setup.pages().forEach(pages -> pages.addTo(routes));
            routesAndRoles.put("GET " + Assets.ROOT + "<name>", May.ANYBODY);
            config.routes.get(Assets.ROOT + "<name>", speaker::asset);
            config.routes.exception(HttpResponseException.class, (e, ctx) -> speaker.problem(ctx, e.getStatus()));
            config.routes.exception(Exception.class, (e, ctx) -> speaker.fault(ctx, e));
            config.router.javaLangErrorHandler((response, e) -> speaker.grave(response, e));
        });
        try {
            server.start(THIS_MACHINE, setup.port());
        } catch (JavalinException e) {
            network.ifPresent(NetworkPort::close);
            throw new DeskNotOpened(setup, e);
        }
        doors.set(doors(setup, server.port()));
        LOG.debug("The desk is open on port {}", server.port());
        return new Desk(server, routesAndRoles, () -> network.ifPresent(NetworkPort::close));
    }

    private static Speaker.Doors doors(Setup setup, int port) {
        var here = Door.ofThisMachine(port, LONGEST_FORM_BYTES, LONGEST_BATCH_BYTES, LONGEST_UPLOAD_BYTES);
        return switch (setup.reach()) {
            case Reach.ThisMachine only -> new Speaker.Doors(here, here);
            case Reach.Network(var lan) ->
                new Speaker.Doors(
                        here,
                        Door.ofNetwork(
                                lan.name().text(),
                                lan.port(),
                                LONGEST_FORM_BYTES,
                                LONGEST_BATCH_BYTES,
                                LONGEST_UPLOAD_BYTES));
        };
    }

    private static void settle(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.concurrency.useVirtualThreads = true;
        config.http.prefer405over404 = true;
        config.http.maxRequestSize = LONGEST_BATCH_BYTES;
        config.jetty.multipartConfig.maxInMemoryFileSize(IN_MEMORY_BYTES, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxFileSize(LONGEST_FILE_BYTES, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxTotalRequestSize(LONGEST_UPLOAD_BYTES, SizeUnit.BYTES);
        config.http.defaultContentType = "text/html; charset=utf-8";
        config.http.compressionStrategy = CompressionStrategy.NONE; // pages go no further than this machine
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        config.jetty.modifyServer(jetty -> jetty.setErrorHandler(new BareRefusal()));
    }

    /** All routes, as {@code GET /sets/{set}}, with who may use them. */
    public Map<String, May> routes() {
        return routes;
    }

    /** Where the first page is. */
    public URI address() {
        return URI.create("http://" + THIS_MACHINE + ":" + server.port() + "/");
    }

    @Override
    public void close() {
        closeNetwork.run();
        server.stop();
    }
}
