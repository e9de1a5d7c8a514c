package eggwright.desk;

/** The pages of one feature. */
@FunctionalInterface
public interface Pages {
    void addTo(Routes routes);
}
