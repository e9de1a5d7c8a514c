package eggwright.desk;

/**
 * Where a feature adds its pages. What is not added is not there, and a method not added is refused.
 *
 * <p>A path may hold names in braces: {@code /sets/{set}}, read by {@link Visit#at}.
 */
public interface Routes {
    /** A page that changes nothing. */
    void read(String path, Route route);

    /** A form sent back. It has passed the door: it came from a page of this desk. */
    void write(String path, Route route);
}
