package eggwright.planted.state;

final class KeepsState {
    static int breach = 1;

    private KeepsState() {}
}
