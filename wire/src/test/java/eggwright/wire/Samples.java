package eggwright.wire;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.ChicksDelivered;
import eggwright.book.entry.ChicksDied;
import eggwright.book.entry.ChicksOrdered;
import eggwright.book.entry.ChicksPlaced;
import eggwright.book.entry.ChicksSold;
import eggwright.book.entry.ClassCount;
import eggwright.book.entry.ClimateNoted;
import eggwright.book.entry.EggsCounted;
import eggwright.book.entry.EggsDiscarded;
import eggwright.book.entry.EggsEaten;
import eggwright.book.entry.EggsGathered;
import eggwright.book.entry.EggsMoved;
import eggwright.book.entry.EggsReceived;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.EggsSold;
import eggwright.book.entry.Entry;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.HabitsNoted;
import eggwright.book.entry.IncidentKind;
import eggwright.book.entry.IncidentNoted;
import eggwright.book.entry.LoadPlaced;
import eggwright.book.entry.LoadSet;
import eggwright.book.entry.LookSort;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Lot;
import eggwright.book.entry.MachineAdded;
import eggwright.book.entry.MachineChanged;
import eggwright.book.entry.MachineCleaned;
import eggwright.book.entry.MachineKind;
import eggwright.book.entry.MachineUse;
import eggwright.book.entry.MachineUseChanged;
import eggwright.book.entry.OrderCancelled;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Payload;
import eggwright.book.entry.PenChange;
import eggwright.book.entry.PenChanged;
import eggwright.book.entry.PenClosed;
import eggwright.book.entry.PenOpened;
import eggwright.book.entry.PlaceSeen;
import eggwright.book.entry.Pull;
import eggwright.book.entry.ReadingsReleased;
import eggwright.book.entry.ReceivedFor;
import eggwright.book.entry.RejectReason;
import eggwright.book.entry.Rejected;
import eggwright.book.entry.Remarked;
import eggwright.book.entry.Replaced;
import eggwright.book.entry.RoundCheck;
import eggwright.book.entry.Scope;
import eggwright.book.entry.SecondLookAsked;
import eggwright.book.entry.SensorAt;
import eggwright.book.entry.SensorCompared;
import eggwright.book.entry.SensorPlace;
import eggwright.book.entry.SensorQuantity;
import eggwright.book.entry.SensorTrust;
import eggwright.book.entry.SensorTrustChanged;
import eggwright.book.entry.SpeciesOverridden;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.TransferOf;
import eggwright.book.entry.Transferred;
import eggwright.book.entry.Weighed;
import eggwright.book.entry.WeighedWhat;
import eggwright.book.entry.WetBulbAir;
import eggwright.book.entry.Withdrawn;
import eggwright.book.name.BasketName;
import eggwright.book.name.BuyerNumber;
import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.MachineName;
import eggwright.book.name.OrderNumber;
import eggwright.book.name.PenName;
import eggwright.book.name.PersonName;
import eggwright.book.name.SectionName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.trade.BreakOutClass;
import eggwright.trade.Species;
import eggwright.units.Altitude;
import eggwright.units.Amount;
import eggwright.units.Humidity;
import eggwright.units.Mass;
import eggwright.units.Temperature;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.List;

/** One payload of every kind, as a keeper would note it. Kept files beside hold each as it was written. */
final class Samples {
    private static final PenName PEN = new PenName("4");
    private static final MachineName SETTER = new MachineName("Setter 1");
    private static final MachineName HATCHER = new MachineName("Hatcher");
    private static final SectionName SHELF = new SectionName("top");
    private static final SetName SET = new SetName("27-14");
    private static final TrayName TRAY = new TrayName("7");
    private static final BuyerNumber BUYER = new BuyerNumber("b-4821");
    private static final OrderNumber ORDER = new OrderNumber("12");
    private static final LocalDate FROM = LocalDate.of(2027, 3, 29);
    private static final LocalDate TO = LocalDate.of(2027, 4, 4);
    private static final EntryId EARLIER = EntryId.parse("01976b2e-7c00-7000-8000-000000000002");
    private static final Species SPECIES = Species.PHEASANT;

    private Samples() {}

    static List<Payload> all() {
        return List.of(
                new PenOpened(PEN, SPECIES, 1, 8, "young hens"),
                new PenChanged(PEN, PenChange.COCKS_EXCHANGED, 1, 0, "lame"),
                new PenClosed(PEN, "end of the season"),
                new MachineAdded(SETTER, MachineKind.SETTER, List.of(SHELF, new SectionName("bottom")), 12, ""),
                new MachineChanged(SETTER, MachineKind.SETTER_AND_HATCHER, List.of(SHELF), null, "one level gone"),
                new MachineCleaned(SETTER, SHELF, "washed"),
                new MachineUseChanged(HATCHER, MachineUse.OUT_OF_USE, "fan"),
                new EggsGathered(PEN, SPECIES, TO, TO, 11, List.of(new Rejected(RejectReason.THIN_OR_SOFT, 1))),
                new EggsReceived(
                        new PenName("Marsh Lane"), SPECIES, FROM, null, 60, ReceivedFor.CUSTOMER, "a neighbour"),
                new EggsSold(PEN, SPECIES, FROM, TO, BUYER, 30),
                new EggsEaten(null, SPECIES, null, null, 6),
                new EggsDiscarded(PEN, SPECIES, FROM, FROM, 3, "too old"),
                new EggsCounted(PEN, SPECIES, 41),
                new EggsSet(
                        SET,
                        List.of(new LoadSet(
                                TRAY,
                                SETTER,
                                SHELF,
                                "left",
                                List.of(
                                        Lot.of(PEN, SPECIES, FROM, TO, 50),
                                        new Lot(
                                                new PenName("5"),
                                                SPECIES,
                                                TO,
                                                TO,
                                                4,
                                                "blue dot",
                                                List.of(51, 52, 53, 54)))))),
                new Looked(
                        Scope.ofLoad(SET, TRAY),
                        54,
                        54,
                        List.of(new FindingCount(Finding.CLEAR, 5, 2, 3), FindingCount.left(Finding.LIVE, 48)),
                        1,
                        12,
                        List.of(new PlaceSeen(3, Finding.CLEAR), new PlaceSeen(9, Finding.WRONG_END_UP)),
                        LookSort.SECOND_BLIND),
                new SecondLookAsked(SET, List.of(TRAY, new TrayName("9")), new PersonName("Linnet")),
                new EggsMoved(SET, TRAY, PEN, 20, SET, new TrayName("9"), SETTER, SHELF),
                new LoadPlaced(SET, TRAY, SETTER, SHELF, "right"),
                new Weighed(SET, TRAY, WeighedWhat.WHOLE_TRAY, Mass.parse("2.15kg"), Mass.parse("14.5oz"), 54),
                new ClimateNoted(
                        SETTER,
                        null,
                        Temperature.parse("99.5F"),
                        Temperature.parse("29.2C"),
                        new Humidity(52.5),
                        List.of(RoundCheck.WATER_FILLED, RoundCheck.TURNER_TILTED),
                        ""),
                new SensorCompared(
                        new SensorAt(SensorPlace.IN_MACHINE, SETTER, "top shelf", SensorQuantity.AIR_TEMPERATURE),
                        Amount.parse("98.9F"),
                        Amount.parse("37.5C"),
                        null,
                        OffsetDateTime.parse("2027-04-12T07:00-05:00"),
                        "glass thermometer, checked in melting ice"),
                new SensorTrustChanged(
                        new SensorAt(SensorPlace.EGG_ROOM, null, "logger", SensorQuantity.HUMIDITY),
                        SensorTrust.SET_ASIDE,
                        null,
                        "fell into the water pan"),
                new ReadingsReleased(
                        new SensorAt(SensorPlace.IN_MACHINE, SETTER, "top shelf", SensorQuantity.AIR_TEMPERATURE),
                        OffsetDateTime.parse("2027-04-13T03:10-05:00"),
                        OffsetDateTime.parse("2027-04-13T04:25-05:00"),
                        "the heater ran away, the fuse is in the bin"),
                new Transferred(HATCHER, List.of(new TransferOf(SET, TRAY, 47, new BasketName("B")))),
                new TakenOff(Scope.ofBasket(new BasketName("B")), Pull.LAST, 39, 1, 1, 0),
                new BrokenOut(
                        Scope.ofSet(SET).withLook(EARLIER), 9, 3, List.of(new ClassCount(BreakOutClass.EARLY_DEAD, 4))),
                new ChicksPlaced(SET, SPECIES, 39, "north brooder"),
                new ChicksDied(null, SPECIES, 2, "north brooder", "piled up"),
                new ChicksSold(SET, SPECIES, 10, null),
                new IncidentNoted(
                        IncidentKind.FAN_STOPPED,
                        SETTER,
                        OffsetDateTime.parse("2027-04-13T21:40-05:00"),
                        Temperature.ofFahrenheit(104),
                        "belt off"),
                new ChicksOrdered(ORDER, BUYER, SPECIES, 25, LocalDate.of(2027, 5, 1), "fetches them"),
                new OrderCancelled(ORDER, "moved away"),
                new ChicksDelivered(ORDER, BUYER, SPECIES, 25, 0),
                new HabitsNoted(
                        "Fallow End",
                        "America/Chicago",
                        DayOfWeek.MONDAY,
                        LocalTime.of(18, 0),
                        List.of(8, 21),
                        List.of(LocalTime.of(7, 0), LocalTime.of(19, 30)),
                        null,
                        List.of(7, 8, 7, 8),
                        25,
                        Altitude.parse("1500m"),
                        WetBulbAir.STILL),
                new SpeciesOverridden(SPECIES, "transfer_day", "22"),
                new Remarked(Scope.ofPen(SET, PEN), "Shells are thin this week"),
                new Replaced(
                        EARLIER,
                        EARLIER,
                        OffsetDateTime.parse("2027-04-13T18:30-05:00"),
                        new EggsCounted(PEN, SPECIES, 42)),
                new Withdrawn(EARLIER, EARLIER, "noted twice"));
    }

    static Entry entry(Payload payload) {
        return new Entry(
                EntryId.parse("01976b2e-7c00-7000-8000-000000000001"),
                new FarmId("farm-3f2a91c0"),
                OffsetDateTime.parse("2027-04-13T19:00-05:00"),
                OffsetDateTime.parse("2027-04-13T19:01:07.250-05:00"),
                new PersonName("Wren"),
                new DeviceName("phone of Wren"),
                Origin.NOTED,
                payload,
                EntryCodec.version(payload));
    }
}
