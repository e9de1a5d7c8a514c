package eggwright.desk.who;

import java.util.EnumSet;
import java.util.Set;

/** Who may use a route. There is none that lets nobody in: a route has to say whom it is for. */
public sealed interface May {
    /** Owner, hand and looker: what only shows. */
    May READ = of(Role.OWNER, Role.HAND, Role.LOOKER);

    /** Owner and hand: what is seen and done on a working day. */
    May NOTE = of(Role.OWNER, Role.HAND);

    /** The owner alone: settings, devices, people, and taking back what another noted. */
    May RUN = of(Role.OWNER);

    /** Only whoever sits at the machine itself. */
    May HERE = new Here();

    /** Whoever has reached the desk, joined or not: how to join, and nothing of the farm. */
    May ANYBODY = new Anybody();

    /** Whatever shows a token; the route says whose it is. No person, not even the owner. */
    May TOKEN = new Token();

    boolean lets(Visitor visitor);

    /** Those of some roles. */
    record Roles(Set<Role> roles) implements May {
        public Roles {
            if (roles.isEmpty()) {
                throw new IllegalArgumentException("A route has to say who may use it");
            }
            roles = Set.copyOf(roles);
        }

        @Override
        public boolean lets(Visitor visitor) {
            return visitor.role().filter(roles::contains).isPresent();
        }
    }

    /** The machine itself. */
    record Here() implements May {
        @Override
        public boolean lets(Visitor visitor) {
            return visitor instanceof Visitor.ThisMachine;
        }
    }

    /** Everybody. */
    record Anybody() implements May {
        @Override
        public boolean lets(Visitor visitor) {
            return true;
        }
    }

    /** Things with a token. */
    record Token() implements May {
        @Override
        public boolean lets(Visitor visitor) {
            return visitor instanceof Visitor.Bearer;
        }
    }

    static May of(Role first, Role... others) {
        return new Roles(EnumSet.of(first, others));
    }
}
