package eggwright.desk;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.net.InetAddress;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import javax.net.SocketFactory;

/** One request over a socket of its own. Clients of the library set Host and Origin themselves; here they are chosen. */
public final class PlainHttp {
    /** What came back; a header that did not is empty text. */
    public record Answer(int status, Map<String, String> headers, String body) {
        public String header(String name) {
            return headers.getOrDefault(name.toLowerCase(Locale.ROOT), "");
        }
    }

    private PlainHttp() {}

    public static Answer ask(int port, String method, String path, Map<String, String> headers, String form)
            throws IOException {
        return ask(SocketFactory.getDefault(), port, method, path, headers, form);
    }

    /** The same, over the sockets of a factory, as one that trusts an authority. */
    public static Answer ask(
            SocketFactory sockets, int port, String method, String path, Map<String, String> headers, String form)
            throws IOException {
        var all = new LinkedHashMap<String, String>();
        all.put("Host", "127.0.0.1:" + port);
        all.put("Connection", "close");
        if (method.equals("POST")) {
            all.put("Content-Type", "application/x-www-form-urlencoded");
            all.put("Content-Length", Integer.toString(form.getBytes(UTF_8).length));
        }
        all.putAll(headers);
        try (var socket = sockets.createSocket(InetAddress.getLoopbackAddress(), port)) {
            var request = new StringBuilder(method + " " + path + " HTTP/1.1\r\n");
            all.forEach((name, value) ->
                    request.append(name).append(": ").append(value).append("\r\n"));
            socket.getOutputStream().write((request + "\r\n" + form).getBytes(UTF_8));
            return read(socket.getInputStream().readAllBytes());
        }
    }

    private static Answer read(byte[] bytes) {
        var raw = new String(bytes, ISO_8859_1);
        var end = raw.indexOf("\r\n\r\n");
        var lines = raw.substring(0, end).split("\r\n", -1);
        var headers = new LinkedHashMap<String, String>();
        Arrays.stream(lines).skip(1).forEach(line -> {
            var colon = line.indexOf(':');
            headers.merge(
                    line.substring(0, colon).toLowerCase(Locale.ROOT),
                    line.substring(colon + 1).strip(),
                    (one, more) -> one + "\n" + more);
        });
        var body = new String(Arrays.copyOfRange(bytes, end + 4, bytes.length), UTF_8);
        return new Answer(Integer.parseInt(lines[0].split(" ", -1)[1]), headers, body);
    }
}
