package eggwright.planted.sql;

import java.sql.Connection;

record SpeaksSql(Connection breach) {}
