package eggwright.desk.joining;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Keeps devices as long as the desk is open; for a desk that is thrown away afterwards, and for tests. */
public class DevicesInMemory implements DeviceBook {
    private final Map<String, Device> devices = new HashMap<>();
    private final Map<String, Code> codes = new HashMap<>();
    private final List<String> passphrases = new ArrayList<>();

    @Override
    public synchronized List<Device> all() {
        return devices.values().stream()
                .sorted(Comparator.comparing(Device::joined).thenComparing(Device::id))
                .toList();
    }

    @Override
    public synchronized void keep(Device device) {
        devices.put(device.id(), device);
    }

    @Override
    public synchronized void keep(Code code) {
        codes.values().removeIf(c -> !c.ends().isAfter(code.made()));
        codes.put(code.sha256(), code);
    }

    @Override
    public synchronized int codesAt(Instant now) {
        return (int) codes.values().stream().filter(c -> c.ends().isAfter(now)).count();
    }

    @Override
    public synchronized Optional<Code> take(String sha256) {
        return Optional.ofNullable(codes.remove(sha256));
    }

    @Override
    public synchronized Optional<String> passphrase() {
        return passphrases.isEmpty() ? Optional.empty() : Optional.of(passphrases.getLast());
    }

    @Override
    public synchronized void keepPassphrase(String hash, Instant set) {
        passphrases.add(hash);
    }
}
