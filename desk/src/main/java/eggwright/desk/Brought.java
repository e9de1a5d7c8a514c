package eggwright.desk;

import java.io.IOException;
import java.io.InputStream;

/**
 * A file that came with a form. It is there as long as the request is answered.
 *
 * @param name as the browser tells it, without folders
 */
public record Brought(String name, long bytes, Opening opening) {
    /** The name of the field in the form. */
    public static final String FIELD = "file";

    /** How it is read. */
    public interface Opening {
        InputStream open() throws IOException;
    }

    public Brought {
        name = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
    }
}
