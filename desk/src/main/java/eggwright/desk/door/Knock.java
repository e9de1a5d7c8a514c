package eggwright.desk.door;

import java.util.Optional;

/**
 * What the door looks at in a request.
 *
 * @param method of HTTP, in capitals
 * @param path asked for
 * @param host the Host header
 * @param origin the Origin header
 * @param fetchSite the Sec-Fetch-Site header
 * @param type the Content-Type header
 * @param bodyBytes the Content-Length header; empty where the length was not said
 */
public record Knock(
        String method,
        String path,
        Optional<String> host,
        Optional<String> origin,
        Optional<String> fetchSite,
        Optional<String> type,
        Optional<Long> bodyBytes) {}
