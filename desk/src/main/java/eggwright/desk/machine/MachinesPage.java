package eggwright.desk.machine;

import java.util.List;

/**
 * All machines as they stand.
 *
 * @param unplaced loads whose machine was never noted
 */
public record MachinesPage(List<Machine> machines, List<Load> unplaced) {
    public MachinesPage {
        machines = List.copyOf(machines);
        unplaced = List.copyOf(unplaced);
    }

    /**
     * One machine.
     *
     * @param path of its own page
     * @param kind what it does
     * @param state out of use, how full, when it was cleaned: short sentences
     * @param sections its shelves, in the farm's order; loads with no shelf come under an empty name
     * @param climate its last readings by hand, newest first
     */
    public record Machine(
            String name,
            String path,
            String kind,
            List<String> state,
            List<Section> sections,
            List<Reading> climate,
            String readPath,
            String cleanPath) {
        public Machine {
            state = List.copyOf(state);
            sections = List.copyOf(sections);
            climate = List.copyOf(climate);
        }
    }

    public record Section(String name, List<Load> loads) {
        public Section {
            loads = List.copyOf(loads);
        }
    }

    /** One load: where its set is, what it is called, how far it has come. */
    public record Load(String path, String set, String tray, String eggs, String day) {}

    public record Reading(String at, String dry, String wet, String humidity, String note) {}
}
