package eggwright.rates.candler;

import java.util.BitSet;

/** Some parcels of one account, by their numbers in it. */
final class Lots {
    private final BitSet numbers;

    private Lots(BitSet numbers) {
        this.numbers = numbers;
    }

    static Lots of(int... numbers) {
        var bits = new BitSet();
        for (int number : numbers) {
            bits.set(number);
        }
        return new Lots(bits);
    }

    /** Whether any parcel is in both. */
    boolean meets(Lots other) {
        return numbers.intersects(other.numbers);
    }

    /** Whether all parcels of the other are here. */
    boolean hold(Lots other) {
        for (int i = other.numbers.nextSetBit(0); i >= 0; i = other.numbers.nextSetBit(i + 1)) {
            if (!numbers.get(i)) {
                return false;
            }
        }
        return true;
    }

    Lots with(Lots other) {
        var both = (BitSet) numbers.clone();
        both.or(other.numbers);
        return new Lots(both);
    }

    int[] numbers() {
        return numbers.stream().toArray();
    }
}
