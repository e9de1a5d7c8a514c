package eggwright.forecast.history;

import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.FateSort;
import eggwright.book.picture.LoadRef;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Loads whose fates cannot be told apart, since some count covers them together.
 *
 * @param eggs that were not taken out at the lamp
 * @param saleable chicks among them
 */
record CountedTogether(Set<LoadRef> loads, int eggs, int saleable) {
    /** In the order in which the account names them. */
    static List<CountedTogether> of(List<FateCount> fates) {
        var groups = new ArrayList<CountedTogether>();
        for (var fate : fates) {
            var loads = new HashSet<LoadRef>();
            fate.of().forEach(id -> loads.add(id.load()));
            boolean stayed = fate.fate().sort() != FateSort.LAMP;
            int eggs = stayed ? fate.eggs() : 0;
            int saleable = fate.fate() == Fate.SALEABLE ? fate.eggs() : 0;
            int place = groups.size();
            for (int i = groups.size() - 1; i >= 0; i--) {
                var group = groups.get(i);
                if (group.loads.stream().anyMatch(loads::contains)) {
                    loads.addAll(group.loads);
                    eggs += group.eggs;
                    saleable += group.saleable;
                    groups.remove(i);
                    place = i;
                }
            }
            groups.add(place, new CountedTogether(Set.copyOf(loads), eggs, saleable));
        }
        return groups;
    }
}
