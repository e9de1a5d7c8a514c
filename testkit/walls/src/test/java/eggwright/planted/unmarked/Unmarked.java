package eggwright.planted.unmarked;

final class Unmarked {}
