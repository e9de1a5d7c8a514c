package eggwright.cli.farm;

import eggwright.book.fold.Ledger;
import eggwright.book.picture.Picture;
import eggwright.cli.voice.Refused;
import eggwright.cli.voice.Status;
import eggwright.store.Backups;
import eggwright.store.Verified;
import eggwright.today.schedule.FarmProfiles;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;

/** All commands on a book, by name. */
public final class FarmCommands {
    private FarmCommands() {}

    public static Map<String, Supplier<CommandSpec>> all() {
        var all = new LinkedHashMap<String, Supplier<CommandSpec>>();
        all.put("demo", ServeCommands::demo);
        all.put("serve", ServeCommands::serve);
        all.put("today", TodayCommand::spec);
        all.put("import", ImportCommand::spec);
        all.put("report", ReportCommand::spec);
        all.put("forecast", ForecastCommand::spec);
        all.put("climate", ClimateCommand::spec);
        all.put("sensors", SensorsCommand::spec);
        all.put("export", ExportCommand::spec);
        all.put("simulate", SimulateCommand::spec);
        all.put("backup", FarmCommands::backup);
        all.put("restore", FarmCommands::restore);
        all.put("verify", FarmCommands::verify);
        return all;
    }

    /** The ledger of the book, read beside whoever writes. */
    static Ledger ledger(FarmCommand command) {
        try (var store = command.data().read()) {
            return Ledger.of(store.all());
        }
    }

    /** The species' figures with the farm's own taken in; a figure that cannot be read is left at the trade's. */
    public static Function<Species, SpeciesProfile> profiles(Picture picture) {
        return FarmProfiles.of(picture.farm())::of;
    }

    private static CommandSpec backup() {
        return FarmCommand.of(
                "backup",
                "The book in one file, proved equal.",
                "eggwright backup /media/stick/farm.eggwright",
                command -> {
                    try (var store = command.data().read()) {
                        return said(command, Backups.backUp(store, Path.of(command.word(0))));
                    }
                },
                List.of(),
                "FILE");
    }

    private static CommandSpec restore() {
        return FarmCommand.of(
                "restore",
                "Puts a backup into an empty folder, proved equal.",
                "eggwright restore /media/stick/farm.eggwright --data again",
                FarmCommands::restored,
                List.of(),
                "FILE");
    }

    private static int restored(FarmCommand command) {
        var verified = Backups.restore(Path.of(command.word(0)), command.data());
        try (var store = command.data().read()) {
            int devices = store.devices().all().size();
            if (devices > 0) {
                command.err()
                        .println(
                                "No phone or other device is let in by a restored book, since one may have been let go after"
                                        + " the backup. It knows " + devices
                                        + ": each joins again with a code, and keeps what it"
                                        + " has not sent. The owner's passphrase is to be set again.");
            }
            int sensors = store.sensors().all().size();
            if (sensors > 0) {
                command.err()
                        .println("No sensor's token is good in a restored book, for the same reason. It knows "
                                + sensors + ": add each again that still sends, and put its new token into it.");
            }
            TodayAside.leave(command, command.data(), store);
        }
        return said(command, verified);
    }

    private static CommandSpec verify() {
        return FarmCommand.of(
                "verify",
                "Reads the whole book and says whether it is whole.",
                "eggwright verify",
                command -> {
                    try (var store = command.data().read()) {
                        return said(command, Backups.verify(store));
                    }
                },
                List.of());
    }

    private static int said(FarmCommand command, Verified verified) {
        var kinds = eggwright.cli.answer.Answer.of();
        for (var kind : verified.byKind().entrySet()) {
            kinds = kinds.with(kind.getKey(), kind.getValue());
        }
        Say.answer(
                command,
                eggwright.cli.answer.Answer.of()
                        .with("whole", verified.isWhole() ? "yes" : "no")
                        .with("entries", verified.entries())
                        .with("digest", verified.digest())
                        .with("kinds", kinds)
                        .with("faults", eggwright.cli.answer.Value.texts(verified.faults())));
        return verified.isWhole() ? Status.DONE : Status.NO;
    }

    static Refused refused(String sentence) {
        return new Refused(sentence);
    }
}
