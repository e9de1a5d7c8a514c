package eggwright.intake.folder;

import eggwright.intake.file.FileShape;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * One walk through a watched folder. Hidden files and folders, and such as programs write until they are whole, are passed
 * over. What cannot be read is named, and keeps nothing else from being found.
 */
final class FolderWalk extends SimpleFileVisitor<Path> {
    private static final List<String> UNFINISHED = List.of(".part", ".tmp", ".crdownload", "~");

    private final Path root;
    private final Map<String, FileShape> files = new TreeMap<>();
    private final SortedSet<String> unreadable = new TreeSet<>();

    FolderWalk(Path root) {
        this.root = root;
    }

    /** @throws IOException if the folder itself cannot be read */
    static FolderWalk through(Path folder) throws IOException {
        var walk = new FolderWalk(folder.toRealPath());
        Files.walkFileTree(walk.root, walk);
        return walk;
    }

    /** By their names under the folder. */
    Map<String, FileShape> files() {
        return files;
    }

    /** Files and folders that are there and did not let themselves be read, by their names under the folder. */
    SortedSet<String> unreadable() {
        return unreadable;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path directory, BasicFileAttributes attributes) {
        return !directory.equals(root) && isHidden(directory) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
        if (isHidden(file) || UNFINISHED.stream().anyMatch(file.toString()::endsWith)) {
            return FileVisitResult.CONTINUE;
        }
        try {
            // A link to a file counts as the file; folders behind links are not entered.
            var itself =
                    attributes.isSymbolicLink() ? Files.readAttributes(file, BasicFileAttributes.class) : attributes;
            if (itself.isRegularFile()) {
                files.put(name(file), FileShape.of(itself));
            }
            return FileVisitResult.CONTINUE;
        } catch (IOException unread) {
            return visitFileFailed(file, unread);
        }
    }

    @Override
    public FileVisitResult visitFileFailed(Path path, IOException why) throws IOException {
        if (path.equals(root)) {
            throw why;
        }
        // What was deleted between its listing and now is simply not there.
        if (!(why instanceof NoSuchFileException) && !isHidden(path)) {
            unreadable.add(name(path));
        }
        return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(Path directory, @Nullable IOException brokenOff) throws IOException {
        return brokenOff == null ? FileVisitResult.CONTINUE : visitFileFailed(directory, brokenOff);
    }

    private static boolean isHidden(Path path) {
        return String.valueOf(path.getFileName()).startsWith(".");
    }

    private String name(Path path) {
        return root.relativize(path).toString().replace('\\', '/');
    }
}
