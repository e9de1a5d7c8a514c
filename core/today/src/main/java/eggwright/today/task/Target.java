package eggwright.today.task;

import eggwright.book.name.MachineName;
import eggwright.book.name.Name;
import eggwright.book.name.OrderNumber;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import org.jspecify.annotations.Nullable;

/** The place where the work is noted when done, or where more is told of it. */
public sealed interface Target {
    /** For putting work that is alike in all else in an order that is always the same; not for people. */
    String inOrder();

    /**
     * The form of one kind of entry.
     *
     * @param kind the word of the kind, as in {@link eggwright.book.entry.Payload#kindWord}
     * @param set absent where the entry is about none, or it can be any
     * @param tray only where the work is on a single tray
     * @param machine absent where the entry is about none, or it can be any
     * @param order absent where the entry is about none, or it can be any
     */
    record Form(
            String kind,
            @Nullable SetName set,
            @Nullable TrayName tray,
            @Nullable MachineName machine,
            @Nullable OrderNumber order)
            implements Target {
        @Override
        public String inOrder() {
            return String.join("\n", kind, text(set), text(tray), text(machine), text(order));
        }

        private static String text(@Nullable Name name) {
            return name == null ? "" : name.text();
        }

        public static Form of(String kind) {
            return new Form(kind, null, null, null, null);
        }

        public static Form of(String kind, SetName set) {
            return new Form(kind, set, null, null, null);
        }

        public static Form of(String kind, MachineName machine) {
            return new Form(kind, null, null, machine, null);
        }

        public static Form of(String kind, OrderNumber order) {
            return new Form(kind, null, null, null, order);
        }
    }

    /** The page of a set; nothing is noted. */
    record SetStory(SetName set) implements Target {
        @Override
        public String inOrder() {
            return set.text();
        }
    }

    /** The page of the egg room; nothing is noted. */
    record EggRoom() implements Target {
        @Override
        public String inOrder() {
            return "";
        }
    }

    /** The page of the orders; nothing is noted. */
    record Orders() implements Target {
        @Override
        public String inOrder() {
            return "";
        }
    }
}
