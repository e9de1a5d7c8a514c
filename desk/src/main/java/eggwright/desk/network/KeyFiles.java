package eggwright.desk.network;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The folder of keys and certificates, for its owner alone. Files that others could read are closed again, with a word;
 * where that cannot be done, they are not used.
 *
 * <p>On a system without such rights (Windows) what lies in a user's folder is that user's by itself.
 */
final class KeyFiles {
    private static final Set<PosixFilePermission> FOLDER = PosixFilePermissions.fromString("rwx------");
    private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-------");

    private final Path folder;
    private final boolean posix;
    private final List<String> said = new ArrayList<>();

    private KeyFiles(Path folder, boolean posix) {
        this.folder = folder;
        this.posix = posix;
    }

    /** Opens the folder, makes it where there is none, and closes what stands open to others. */
    static KeyFiles in(Path folder) {
        var posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        var files = new KeyFiles(folder, posix);
        try {
            if (posix) {
                Files.createDirectories(folder, only(FOLDER));
                files.close(folder, FOLDER);
                try (var all = Files.list(folder)) {
                    for (var file : all.sorted().toList()) {
                        files.close(file, FILE);
                    }
                }
            } else {
                Files.createDirectories(folder);
            }
        } catch (IOException refused) {
            throw files.refused(folder, refused);
        }
        return files;
    }

    /** What was mended, in words for a person. */
    List<String> said() {
        return List.copyOf(said);
    }

    private void close(Path file, Set<PosixFilePermission> own) throws IOException {
        if (Files.isSymbolicLink(file)) {
            throw new KeysRefused(
                    file + " is a link to elsewhere. The desk was not opened to the network, and nothing was"
                            + " changed. Put the file itself there, or move the link away.");
        }
        var rights = Files.getPosixFilePermissions(file, LinkOption.NOFOLLOW_LINKS);
        if (!own.containsAll(rights)) {
            var wider = EnumSet.copyOf(rights);
            wider.removeAll(own);
            Files.setPosixFilePermissions(file, own);
            said.add(file + " could be used by others (" + PosixFilePermissions.toString(rights)
                    + "). It is closed now. If somebody may have copied a key, make new ones: see the guide.");
        }
    }

    private static FileAttribute<Set<PosixFilePermission>> only(Set<PosixFilePermission> rights) {
        return PosixFilePermissions.asFileAttribute(rights);
    }

    Optional<String> read(String name) {
        var file = folder.resolve(name);
        try {
            return Files.exists(file)
                    ? Optional.of(Files.readString(file, StandardCharsets.US_ASCII))
                    : Optional.empty();
        } catch (IOException refused) {
            throw refused(file, refused);
        }
    }

    /** Writes a file whole or not at all; it is never open to others, not for a moment. */
    void write(String name, String text) {
        var file = folder.resolve(name);
        var unfinished = folder.resolve(name + ".unfinished");
        try {
            Files.deleteIfExists(unfinished);
            if (posix) {
                Files.createFile(unfinished, only(FILE));
            } else {
                Files.createFile(unfinished);
            }
            Files.writeString(unfinished, text, StandardCharsets.US_ASCII, StandardOpenOption.SYNC);
            Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException refused) {
            throw refused(file, refused);
        }
    }

    private KeysRefused refused(Path file, IOException cause) {
        return new KeysRefused(
                file + " could not be used (" + cause.getClass().getSimpleName() + ": " + cause.getMessage()
                        + "). The desk was not opened to the network. Give its owner, and nobody else, leave to read and"
                        + " write it.",
                cause);
    }
}
