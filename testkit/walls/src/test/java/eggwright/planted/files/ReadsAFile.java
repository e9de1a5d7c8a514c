package eggwright.planted.files;

import java.nio.file.Path;

final class ReadsAFile {
    Path breach() {
        return Path.of("book");
    }
}
