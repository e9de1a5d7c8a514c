package eggwright.desk;

import io.javalin.config.RoutesConfig;

/** Hands each feature's routes to the server. */
final class JavalinRoutes implements Routes {
    private final RoutesConfig routes;
    private final Speaker speaker;

    JavalinRoutes(RoutesConfig routes, Speaker speaker) {
        this.routes = routes;
        this.speaker = speaker;
    }

    @Override
    public void read(String path, Route route) {
        routes.get(path, ctx -> speaker.give(ctx, route));
    }

    @Override
    public void write(String path, Route route) {
        routes.post(path, ctx -> speaker.give(ctx, route));
    }
}
