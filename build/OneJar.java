import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Puts the classes of several jars into one, for starting: each lookup of something that is not there opens every jar on
 * the class path. The first jar that has a file gives it; lists of services are joined; what belongs to a jar as such
 * (its signature, its module, classes for newer Javas that have a plain form beside them, and every manifest but the
 * first) is left out. The jars themselves stay as they are.
 *
 * <p>Run by {@code ./eggwright} while it builds: {@code java OneJar.java NEW.jar OLD.jar ...}
 */
final class OneJar {
    private OneJar() {}

    public static void main(String[] words) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (var word : List.of(words).subList(1, words.length)) {
            try (var jar = new ZipFile(word)) {
                for (var entry : Collections.list(jar.entries())) {
                    if (!entry.isDirectory() && !belongsToTheJar(entry.getName())) {
                        var bytes = jar.getInputStream(entry).readAllBytes();
                        files.merge(entry.getName(), bytes, isServices(entry.getName()) ? OneJar::joined : (a, b) -> a);
                    }
                }
            }
        }
        try (var to = new ZipOutputStream(Files.newOutputStream(Path.of(words[0])))) {
            for (var file : files.entrySet()) {
                to.putNextEntry(new ZipEntry(file.getKey()));
                to.write(file.getValue());
                to.closeEntry();
            }
        }
    }

    private static boolean isServices(String name) {
        return name.startsWith("META-INF/services/");
    }

    private static boolean belongsToTheJar(String name) {
        return name.equals("module-info.class") || (name.startsWith("META-INF/") && !isServices(name) && !name.equals(JarFile.MANIFEST_NAME));
    }

    private static byte[] joined(byte[] one, byte[] other) {
        var both = new ByteArrayOutputStream();
        both.writeBytes(one);
        both.write('\n');
        both.writeBytes(other);
        return both.toByteArray();
    }
}
