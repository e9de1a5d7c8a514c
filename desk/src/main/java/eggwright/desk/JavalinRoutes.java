package eggwright.desk;

import eggwright.desk.assets.Assets;
import eggwright.desk.door.Door;
import eggwright.desk.who.May;
import io.javalin.config.RoutesConfig;
import java.util.function.BiConsumer;

/** Hands each feature's routes to the server, and tells who may use them. */
final class JavalinRoutes implements Routes {
    private final RoutesConfig routes;
    private final Speaker speaker;
    private final BiConsumer<String, May> added;

    /** @param added told of each route, as {@code GET /sets/{set}} */
    JavalinRoutes(RoutesConfig routes, Speaker speaker, BiConsumer<String, May> added) {
        this.routes = routes;
        this.speaker = speaker;
        this.added = added;
    }

    @Override
    public void read(String path, May may, Route route) {
        added.accept("GET " + path, may);
        routes.get(path, ctx -> speaker.give(ctx, may, route));
    }

    @Override
    public void write(String path, May may, Route route) {
        added.accept("POST " + path, may);
        routes.post(path, ctx -> speaker.give(ctx, may, route));
    }

    @Override
    public void tell(String path, May may, Route route) {
        read(ofApi(path), may, route);
    }

    @Override
    public void take(String path, May may, Route route) {
        write(ofApi(path), may, route);
    }

    @Override
    public void hear(String path, May may, Hearing hearing) {
        added.accept("POST " + only(Door.SENSORS, path), may);
        routes.post(path, ctx -> speaker.hear(ctx, may, hearing));
    }

    @Override
    public void bring(String path, May may, Bringing bringing) {
        added.accept("POST " + only(Door.FILES, path), may);
        routes.post(path, ctx -> speaker.give(ctx, may, visit -> bringing.answer(visit, Speaker.brought(ctx))));
    }

    private static String only(String known, String path) {
        if (!path.equals(known)) {
            throw new IllegalArgumentException("The door lets such things in at " + known + ", and not at " + path);
        }
        return path;
    }

    private static String ofApi(String path) {
        if (!path.startsWith(API)) {
            throw new IllegalArgumentException("What scripts ask is under " + API + ", and not at " + path);
        }
        return path;
    }

    @Override
    public Assets assets() {
        return speaker.assets();
    }
}
