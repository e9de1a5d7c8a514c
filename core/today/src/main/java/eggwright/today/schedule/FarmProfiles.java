package eggwright.today.schedule;

import eggwright.book.picture.FarmPicture;
import eggwright.trade.ProfileField;
import eggwright.trade.Species;
import eggwright.trade.SpeciesOverride;
import eggwright.trade.SpeciesProfile;
import eggwright.units.OutOfRange;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * The trade's profiles with the farm's own figures laid over them. A figure that cannot be read, or a field that this
 * version does not know, leaves the custom of the trade.
 */
public final class FarmProfiles {
    /** A farm's own transfer moves the last turn, so that a last turn of its own has to come after it. */
    private static final Comparator<ProfileField> WHAT_OTHERS_FOLLOW_FIRST = Comparator.<ProfileField>comparingInt(
                    f -> f == ProfileField.LAST_TURN_DAY ? 1 : 0)
            .thenComparing(Comparator.naturalOrder());

    private final Map<Species, SpeciesProfile> own;

    private FarmProfiles(Map<Species, SpeciesProfile> own) {
        this.own = own;
    }

    public static FarmProfiles of(FarmPicture farm) {
        var own = new EnumMap<Species, SpeciesProfile>(Species.class);
        farm.overrides().forEach((species, fields) -> {
            var profile = SpeciesProfile.of(species);
            var known = fields.keySet().stream()
                    .map(ProfileField::ofWord)
                    .flatMap(Optional::stream)
                    .sorted(WHAT_OTHERS_FOLLOW_FIRST)
                    .toList();
            for (var field : known) {
                var figure = fields.get(field.word());
                if (figure != null) {
                    profile = with(profile, field, figure);
                }
            }
            own.put(species, profile);
        });
        return new FarmProfiles(own);
    }

    public SpeciesProfile of(Species species) {
        var ours = own.get(species);
        return ours == null ? SpeciesProfile.of(species) : ours;
    }

    private static SpeciesProfile with(SpeciesProfile profile, ProfileField field, FarmPicture.Overridden figure) {
        try {
            return profile.with(SpeciesOverride.of(field, figure.value(), figure.since()));
        } catch (OutOfRange unreadable) {
            return profile;
        }
    }
}
