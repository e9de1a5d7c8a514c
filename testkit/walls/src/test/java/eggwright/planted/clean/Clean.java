package eggwright.planted.clean;

record Clean(int count) {}
