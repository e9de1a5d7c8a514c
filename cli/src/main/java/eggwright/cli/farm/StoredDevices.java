package eggwright.cli.farm;

import eggwright.book.name.DeviceName;
import eggwright.desk.joining.Device;
import eggwright.desk.joining.DeviceBook;
import eggwright.desk.who.Role;
import eggwright.store.CodeRow;
import eggwright.store.DeviceRow;
import eggwright.store.DeviceStore;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The desk's devices in the book's file. */
final class StoredDevices implements DeviceBook {
    private final DeviceStore store;

    StoredDevices(DeviceStore store) {
        this.store = store;
    }

    @Override
    public List<Device> all() {
        return store.all().stream().map(StoredDevices::device).toList();
    }

    private static Device device(DeviceRow row) {
        return new Device(
                row.device(),
                new DeviceName(row.name()),
                role(row.role()),
                Device.Way.valueOf(row.cameBy().toUpperCase(Locale.ROOT)),
                row.tokenSha256(),
                row.joined(),
                row.seen(),
                row.ends(),
                row.letGo());
    }

    private static Role role(String word) {
        return Role.of(word).orElseThrow(() -> new IllegalStateException("The book knows a role " + word));
    }

    @Override
    public void keep(Device device) {
        store.keep(new DeviceRow(
                device.id(),
                device.name().text(),
                device.role().word(),
                device.way().name().toLowerCase(Locale.ROOT),
                device.tokenSha256(),
                device.joined(),
                device.seen(),
                device.ends(),
                device.letGo()));
    }

    @Override
    public void keep(Code code) {
        store.keep(new CodeRow(code.sha256(), code.role().word(), code.made(), code.ends()));
    }

    @Override
    public int codesAt(Instant now) {
        return store.codesAt(now);
    }

    @Override
    public Optional<Code> take(String sha256) {
        return store.take(sha256).map(row -> new Code(row.codeSha256(), role(row.role()), row.made(), row.ends()));
    }

    @Override
    public Optional<String> passphrase() {
        return store.passphrase();
    }

    @Override
    public void keepPassphrase(String hash, Instant set) {
        store.keepPassphrase(hash, set);
    }
}
