package eggwright.book.fold;

import eggwright.book.entry.ClimateNoted;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.LoadPlaced;
import eggwright.book.entry.MachineAdded;
import eggwright.book.entry.MachineChanged;
import eggwright.book.entry.MachineCleaned;
import eggwright.book.entry.MachineKind;
import eggwright.book.entry.MachineUse;
import eggwright.book.entry.MachineUseChanged;
import eggwright.book.entry.Transferred;
import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import eggwright.book.picture.MachinePicture;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Folds what is known of one machine. */
final class MachineFold implements PartFold<MachinePicture> {
    private final MachineName machine;
    private final Set<SectionName> named = new LinkedHashSet<>();
    private final List<MachinePicture.Read> climate = new ArrayList<>();
    private @Nullable MachineKind does;
    private @Nullable MachineKind seenDoing;
    private List<SectionName> sections = List.of();
    private @Nullable Integer trayPlaces;
    private MachineUse use = MachineUse.IN_USE;
    private @Nullable OffsetDateTime cleanedAt;

    MachineFold(MachineName machine) {
        this.machine = machine;
    }

    @Override
    public Folded<MachinePicture> folded() {
        var all = new LinkedHashSet<>(sections);
        named.stream().sorted().forEach(all::add);
        return new Folded<>(
                new MachinePicture(
                        machine,
                        does == null ? seenDoing : does,
                        List.copyOf(all),
                        trayPlaces,
                        use,
                        cleanedAt,
                        climate),
                List.of());
    }

    @Override
    public void take(Effective entry) {
        switch (entry.payload()) {
            case MachineAdded it -> {
                does = it.does();
                sections = it.sections();
                trayPlaces = it.trayPlaces();
            }
            case MachineChanged it -> {
                does = it.does();
                sections = it.sections();
                trayPlaces = it.trayPlaces();
            }
            case MachineCleaned it -> {
                if (it.section() == null) {
                    cleanedAt = entry.at();
                }
            }
            case MachineUseChanged it -> use = it.use();
            case ClimateNoted it -> climate.add(new MachinePicture.Read(entry.at(), it));
            case EggsSet it -> {
                for (var load : it.loads()) {
                    if (machine.equals(load.machine())) {
                        seen(MachineKind.SETTER);
                        if (load.section() != null) {
                            named.add(load.section());
                        }
                    }
                }
            }
            case LoadPlaced it -> {
                if (it.section() != null) {
                    named.add(it.section());
                }
            }
            case Transferred it -> seen(MachineKind.HATCHER);
            default -> {
                // Other entries only name the machine.
            }
        }
    }

    private void seen(MachineKind doing) {
        seenDoing = seenDoing == null || seenDoing == doing ? doing : MachineKind.SETTER_AND_HATCHER;
    }
}
