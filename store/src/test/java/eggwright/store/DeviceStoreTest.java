package eggwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DeviceStoreTest {
    private static final Instant NOON = Instant.parse("2027-05-12T12:00:00Z");
    private static final DeviceRow PHONE = new DeviceRow(
            "d1", "Wren’s phone", "hand", "code", "a".repeat(64), NOON, NOON, NOON.plus(Duration.ofDays(400)), null);
    private static final CodeRow CODE = new CodeRow("c".repeat(64), "hand", NOON, NOON.plus(Duration.ofMinutes(10)));

    @TempDir
    private Path folder;

    @Test
    void device_isKept_seenAgain_andLetGo() {
        try (var store = DataFolder.at(folder).write()) {
            store.devices().keep(PHONE);
            var later = NOON.plusSeconds(3600);
            var gone = new DeviceRow("d1", "Wren’s phone", "looker", "code", "a".repeat(64), NOON, later, later, later);
            store.devices().keep(gone);
            assertEquals(List.of(gone), store.devices().all());
        }
        try (var store = DataFolder.at(folder).read()) {
            assertEquals(1, store.devices().all().size());
        }
    }

    @Test
    void token_belongsToOneDevice() {
        try (var store = DataFolder.at(folder).write()) {
            store.devices().keep(PHONE);
            var other = new DeviceRow("d2", "Other", "hand", "code", "a".repeat(64), NOON, NOON, NOON, null);
            assertThrows(StoreFault.class, () -> store.devices().keep(other));
        }
    }

    @Test
    void code_isTakenOnce() {
        try (var store = DataFolder.at(folder).write()) {
            store.devices().keep(CODE);
            assertEquals(1, store.devices().codesAt(NOON));
            assertEquals(Optional.of(CODE), store.devices().take(CODE.codeSha256()));
            assertEquals(Optional.empty(), store.devices().take(CODE.codeSha256()));
            assertEquals(0, store.devices().codesAt(NOON));
        }
    }

    @Test
    void code_thatHasEnded_isForgottenWithTheNext() {
        try (var store = DataFolder.at(folder).write()) {
            store.devices().keep(CODE);
            assertEquals(0, store.devices().codesAt(CODE.ends()));
            store.devices()
                    .keep(new CodeRow(
                            "d".repeat(64), "looker", CODE.ends(), CODE.ends().plusSeconds(600)));
            assertEquals(Optional.empty(), store.devices().take(CODE.codeSha256()));
        }
    }

    @Test
    void passphrase_standsInThePlaceOfTheOneBefore() {
        try (var store = DataFolder.at(folder).write()) {
            assertEquals(Optional.empty(), store.devices().passphrase());
            store.devices().keepPassphrase("one", NOON);
            store.devices().keepPassphrase("two", NOON);
            assertEquals(Optional.of("two"), store.devices().passphrase());
        }
    }
}
