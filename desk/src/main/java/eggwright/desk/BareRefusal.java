package eggwright.desk;

import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.BufferUtil;
import org.eclipse.jetty.util.Callback;

/** The answer to what is not even a request: it never reached a page, so it gets a line of plain text. */
final class BareRefusal implements Request.Handler {
    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        var text = "This request could not be read (" + response.getStatus() + "). Nothing was changed.\n";
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/plain; charset=utf-8");
        response.getHeaders().put("X-Content-Type-Options", "nosniff");
        response.write(true, BufferUtil.toBuffer(text, StandardCharsets.UTF_8), callback);
        return true;
    }
}
