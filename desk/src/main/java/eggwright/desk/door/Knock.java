package eggwright.desk.door;

import java.util.Optional;

/**
 * What the door looks at in a request.
 *
 * @param method of HTTP, in capitals
 * @param host the Host header
 * @param origin the Origin header
 * @param fetchSite the Sec-Fetch-Site header
 * @param bodyBytes the Content-Length header; empty where the length was not said
 */
public record Knock(
        String method,
        Optional<String> host,
        Optional<String> origin,
        Optional<String> fetchSite,
        Optional<Long> bodyBytes) {}
