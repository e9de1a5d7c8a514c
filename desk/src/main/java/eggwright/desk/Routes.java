package eggwright.desk;

import eggwright.desk.assets.Assets;
import eggwright.desk.door.Door;
import eggwright.desk.who.May;

/**
 * Where a feature adds its pages. What is not added is not there, a method not added is refused, and each says who may
 * use it.
 *
 * <p>A path may hold names in braces: {@code /sets/{set}}, read by {@link Visit#at}. The table of all routes and roles
 * is in {@code RoleMatrixTest}, which has to be told of a new one.
 */
public interface Routes {
    /** Where the answers to scripts begin; whoever is refused there is told so in JSON. */
    String API = "/api/";

    /** A page that changes nothing. */
    void read(String path, May may, Route route);

    /** A form sent back. It has passed the door: it came from a page of this desk. */
    void write(String path, May may, Route route);

    /**
     * What a script of this desk asks; changes nothing.
     *
     * @param path under {@value #API}
     */
    void tell(String path, May may, Route route);

    /**
     * JSON that a script of this desk sends, as {@link Visit#body}. It has passed the door as a form does, and is at
     * most {@value Desk#LONGEST_BATCH_BYTES} bytes.
     *
     * @param path under {@value #API}
     */
    void take(String path, May may, Route route);

    /**
     * What a thing with a token sends: no form and no script, so that no Origin is asked for. Whoever shows no token is
     * turned away before anything is read.
     *
     * @param path {@value Door#SENSORS}; the door knows no other
     */
    void hear(String path, May may, Hearing hearing);

    /**
     * A form with a file in it, which is read to the disk piece by piece.
     *
     * @param path {@value Door#FILES}; the door lets nothing so long in elsewhere
     */
    void bring(String path, May may, Bringing bringing);

    /** The files that pages are drawn with: a script kept by a browser has to know their addresses. */
    Assets assets();
}
