package eggwright.desk.assets;

/**
 * One file as it is served.
 *
 * @param type for the Content-Type header
 * @param plain its bytes
 * @param gzip the same bytes packed; empty where packing saves nothing
 */
@SuppressWarnings("ArrayRecordComponent") // bytes on their way to a socket; never compared
public record Asset(String type, byte[] plain, byte[] gzip) {}
