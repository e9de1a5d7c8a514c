package eggwright.rates.candler;

import eggwright.book.fold.Effective;
import eggwright.book.name.EntryId;
import eggwright.book.name.PersonName;
import eggwright.book.picture.Fate;
import eggwright.book.picture.Picture;
import eggwright.rates.RateReport;
import eggwright.trade.BreakOutClass;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import eggwright.units.Rate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * How often each person's word was right, as opened eggs tell, and what their slips cost. Definitions and what the book
 * cannot tell: {@code docs/definitions.md}, People at the lamp.
 *
 * @param people by name
 * @param hatchOfFertile saleable of fertile of the whole book, where no egg is still in: what an egg that was taken out
 *     alive might have come to
 */
public record CandlerReport(List<Candler> people, Rate hatchOfFertile) {
    public CandlerReport {
        people = List.copyOf(people);
    }

    /**
     * The report of a book.
     *
     * @param entries every entry that counts, mends taken in, as the ledger that made the picture holds them
     * @param marksOnly looks that only mark and take nothing out, as a blind second look: left aside here
     * @param profiles what is known of each species
     */
    public static CandlerReport of(
            Picture picture,
            Collection<Effective> entries,
            Set<EntryId> marksOnly,
            Function<Species, SpeciesProfile> profiles) {
        var byId = new HashMap<EntryId, Effective>();
        entries.forEach(entry -> byId.put(entry.id(), entry));
        var sums = new TreeMap<PersonName, PersonSum>();
        for (var account : picture.accounts()) {
            var table = new AccountTable(account, byId);
            new OneAccount(picture, table, new Occasions(table, byId, marksOnly), profiles, sums).add();
        }
        return new CandlerReport(
                sums.values().stream().map(PersonSum::candler).toList(),
                RateReport.total(picture, picture.accounts()).hatchOfFertile());
    }

    /** Adds one account to the sums. */
    private record OneAccount(
            Picture picture,
            AccountTable table,
            Occasions occasions,
            Function<Species, SpeciesProfile> profiles,
            Map<PersonName, PersonSum> sums) {

        void add() {
            var misses = new Misses(picture, table, occasions);
            var told = new ArrayList<OneLook>();
            for (var look : occasions.looks()) {
                var sum = sums.computeIfAbsent(look.who(), PersonSum::new);
                sum.looks++;
                sum.called += look.called();
                var whyNot = misses.whyNot(look);
                if (whyNot.isPresent()) {
                    sum.leftOut.merge(whyNot.get(), 1, Integer::sum);
                } else {
                    told.add(look);
                    sum.looksTold++;
                    sum.calledTold += look.called();
                }
            }
            for (var round : Round.of(told)) {
                misses.addTo(sums.computeIfAbsent(round.looks().getFirst().who(), PersonSum::new), round);
            }
            var ids = new HashSet<EntryId>();
            told.forEach(look -> ids.add(look.entry().id()));
            for (var opening : occasions.openings()) {
                if (opening.from() instanceof Opening.From.Clears clears) {
                    addClears(opening, clears, ids);
                }
            }
        }

        /** Clears that were opened together are told of a person only if that person took all of them out. */
        private void addClears(Opening opening, Opening.From.Clears clears, Set<EntryId> told) {
            var people = clears.of().stream().map(OneLook::who).distinct().toList();
            if (people.size() != 1) {
                return;
            }
            var sum = sums.computeIfAbsent(people.getFirst(), PersonSum::new);
            int infertile = opening.named(Fate.INFERTILE);
            int developed = PersonSum.developed(opening);
            sum.infertileOpened += infertile;
            sum.developedOpened += developed;
            sum.grownOpened += grown(opening, clears);
            if (clears.allAt(look -> told.contains(look.entry().id()))) {
                int other = developed + opening.named(Fate.CONTAMINATED);
                sum.calledToldOpened += infertile + other;
                sum.calledToldNotInfertile += other;
            }
        }

        /** Eggs whose class reaches to the day of the look: they may have lived then. */
        private int grown(Opening opening, Opening.From.Clears clears) {
            int day = clears.of().stream().mapToInt(OneLook::day).min().orElse(0);
            var species = new HashSet<Species>();
            table.parcels(opening.of())
                    .forEach(parcel -> species.add(parcel.lot().species()));
            int grown = 0;
            for (var what : BreakOutClass.values()) {
                if (what != BreakOutClass.INFERTILE
                        && what != BreakOutClass.CONTAMINATED
                        && species.stream().anyMatch(s -> reaches(s, what, day))) {
                    grown += opening.named(fate(what));
                }
            }
            return grown;
        }

        private boolean reaches(Species species, BreakOutClass what, int day) {
            return profiles.apply(species).days(what).value().toDay() >= day;
        }

        private static Fate fate(BreakOutClass what) {
            return switch (what) {
                case INFERTILE -> Fate.INFERTILE;
                case EARLY_DEAD -> Fate.EARLY_DEAD;
                case MID_DEAD -> Fate.MID_DEAD;
                case LATE_DEAD -> Fate.LATE_DEAD;
                case PIPPED_DEAD -> Fate.PIPPED_DEAD;
                case CONTAMINATED -> Fate.CONTAMINATED;
                case MALFORMED -> Fate.MALFORMED;
            };
        }
    }
}
