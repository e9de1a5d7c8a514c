import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/**
 * Writes a jar anew with its classes in the format of Java 8. The JVM's start-up archive leaves classes older than Java
 * 6 out and checks them the slow way at each start; picocli's are of Java 5. What they do is unchanged.
 *
 * <p>Run by {@code ./eggwright} while it builds: {@code java -cp asm.jar:OLD.jar NewerClasses.java OLD.jar NEW.jar}
 */
final class NewerClasses {
    private NewerClasses() {}

    public static void main(String[] words) throws IOException {
        try (var from = new ZipFile(words[0]);
                var to = new ZipOutputStream(Files.newOutputStream(Path.of(words[1])))) {
            for (var entry : Collections.list(from.entries())) {
                var bytes = from.getInputStream(entry).readAllBytes();
                to.putNextEntry(new ZipEntry(entry.getName()));
                to.write(entry.getName().endsWith(".class") ? newer(bytes) : bytes);
                to.closeEntry();
            }
        }
    }

    private static byte[] newer(byte[] bytes) {
        var reader = new ClassReader(bytes);
        // The major version stands in bytes 6 and 7 of a class file (Java Virtual Machine Specification, 4.1).
        if (reader.readShort(6) >= Opcodes.V1_6) {
            return bytes;
        }
        var writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES);
        reader.accept(
                new ClassVisitor(Opcodes.ASM9, writer) {
                    @Override
                    public void visit(
                            int version, int access, String name, String signature, String above, String[] faces) {
                        super.visit(Opcodes.V1_8, access, name, signature, above, faces);
                    }
                },
                ClassReader.SKIP_FRAMES);
        return writer.toByteArray();
    }
}
