package eggwright.desk.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.options.ColorScheme;
import eggwright.desk.NetworkDesk;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.browser.BrowserStation.Screen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A browser trusts the desk because its user took in the farm's authority, as a person does on a phone, and for no other
 * reason: nothing on its command line speaks of certificates. Chromium on Linux keeps its user's authorities in an NSS
 * database, which {@code certutil} writes; where that is not on the machine the test is passed over with a word.
 */
final class TrustedByImportTest {
    @TempDir
    private Path folder;

    private NetworkDesk farm;

    @BeforeEach
    void openTheDesk() {
        farm = new NetworkDesk(folder.resolve("authority"));
    }

    @AfterEach
    void closeTheDesk() {
        farm.close();
    }

    @Test
    void desk_isTrusted_onceItsAuthorityIsTakenIn_andUnderItsOwnNameOnly() throws Exception {
        var stranger = Files.createDirectories(folder.resolve("stranger"));
        var friend = Files.createDirectories(folder.resolve("friend"));
        takeIn(friend);
        var page = farm.origin() + "/sign-in";
        var named = List.of("--host-resolver-rules=MAP * 127.0.0.1");

        BrowserStation.withHome(stranger, named, Screen.PHONE, ColorScheme.LIGHT, it -> {
            var refused = assertThrows(PlaywrightException.class, () -> it.navigate(page));
            assertTrue(
                    String.valueOf(refused.getMessage()).contains("ERR_CERT_AUTHORITY_INVALID"), refused::getMessage);
        });
        BrowserStation.withHome(friend, named, Screen.PHONE, ColorScheme.LIGHT, it -> {
            assertEquals(200, it.navigate(page).status());
            assertEquals(true, it.evaluate("() => isSecureContext && 'serviceWorker' in navigator"));
            var other = "https://elsewhere.example:" + farm.lan.port() + "/sign-in";
            var refused = assertThrows(PlaywrightException.class, () -> it.navigate(other));
            assertTrue(String.valueOf(refused.getMessage()).contains("ERR_"), refused::getMessage);
        });
    }

    private void takeIn(Path home) throws IOException, InterruptedException {
        var base = Files.createDirectories(home.resolve(".pki/nssdb"));
        var authority = home.resolve("authority.pem");
        Files.writeString(
                authority,
                "-----BEGIN CERTIFICATE-----\n"
                        + Base64.getMimeEncoder().encodeToString(encoded())
                        + "\n-----END CERTIFICATE-----\n");
        certutil("-d", "sql:" + base, "-N", "--empty-password");
        certutil("-d", "sql:" + base, "-A", "-t", "C,,", "-n", "The farm", "-i", authority.toString());
    }

    private byte[] encoded() {
        try {
            return farm.lan.authority().certificate().getEncoded();
        } catch (java.security.cert.CertificateEncodingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static void certutil(String... words) throws IOException, InterruptedException {
        var command = new java.util.ArrayList<>(List.of("certutil"));
        command.addAll(List.of(words));
        Process run;
        try {
            run = new ProcessBuilder(command).redirectErrorStream(true).start();
        } catch (IOException missing) {
            Assumptions.abort(
                    "There is no certutil on this machine, so no browser could take the authority in. Install it (on"
                            + " Debian and Ubuntu: apt-get install libnss3-tools).");
            throw missing;
        }
        var said = new String(run.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertTrue(run.waitFor(30, TimeUnit.SECONDS) && run.exitValue() == 0, said);
    }
}
