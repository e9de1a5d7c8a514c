package eggwright.trade;

import eggwright.units.OutOfRange;

/** Days of incubation from one to another, both included; day 0 is the day the eggs go into the heat. */
public record DayRange(int fromDay, int toDay) {
    public DayRange {
        if (!(fromDay >= 0 && toDay >= fromDay)) {
            throw new OutOfRange("Days " + fromDay + " to " + toDay + " are not a range from day 0 on");
        }
    }

    public boolean holds(int day) {
        return day >= fromDay && day <= toDay;
    }
}
