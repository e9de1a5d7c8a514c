package eggwright.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/** The one connection that writes, behind a fair lock: whoever waits longest is next. */
final class Writer implements AutoCloseable {
    private final ReentrantLock turn = new ReentrantLock(true);
    private final Connection connection;
    /** Prepared when first needed; absent before that, and after a fault, which ends the driver's statements. */
    private @Nullable Prepared prepared;

    Writer(Connection connection) {
        this.connection = connection;
    }

    /** How a transaction ends. */
    enum Ending {
        KEEP,
        UNDO
    }

    /** What work gives, and whether it is to stay. */
    record Done<T>(T value, Ending ending) {
        static <T> Done<T> keep(T value) {
            return new Done<>(value, Ending.KEEP);
        }
    }

    /** Work on the connection. */
    interface Work<T> {
        Done<T> on(Connection connection, EntryInsert entries) throws SQLException;
    }

    private record Prepared(
            PreparedStatement begin, PreparedStatement commit, PreparedStatement rollback, EntryInsert entries) {
        static Prepared on(Connection connection) throws SQLException {
            return new Prepared(
                    connection.prepareStatement("begin immediate"),
                    connection.prepareStatement("commit"),
                    connection.prepareStatement("rollback"),
                    new EntryInsert(connection));
        }

        void close() throws SQLException {
            begin.close();
            commit.close();
            rollback.close();
            entries.close();
        }
    }

    /** Runs work in one transaction. When this returns and the work was to be kept, it is on the disk. */
    <T> T inOneGo(Work<T> work) throws SQLException {
        turn.lock();
        try {
            var statements = prepared == null ? Prepared.on(connection) : prepared;
            prepared = statements;
            statements.begin().execute();
            var done = work.on(connection, statements.entries());
            switch (done.ending()) {
                case KEEP -> statements.commit().execute();
                case UNDO -> statements.rollback().execute();
            }
            return done.value();
        } catch (SQLException | RuntimeException fault) {
            beginAfresh(fault);
            throw fault;
        } finally {
            turn.unlock();
        }
    }

    /** Undoes what was begun. A full disk ends the transaction by itself; then there is nothing left to roll back. */
    private void beginAfresh(Exception fault) {
        try (var statement = connection.createStatement()) {
            statement.execute("rollback");
        } catch (SQLException endedAlready) {
            fault.addSuppressed(endedAlready);
        }
        var used = prepared;
        prepared = null;
        if (used != null) {
            try {
                used.close();
            } catch (SQLException closedAlready) {
                fault.addSuppressed(closedAlready);
            }
        }
    }

    /** Work that must not stand in a transaction. */
    void alone(String sql) throws SQLException {
        turn.lock();
        try (var statement = connection.createStatement()) {
            statement.execute(sql);
        } finally {
            turn.unlock();
        }
    }

    @Override
    public void close() throws SQLException {
        turn.lock();
        try {
            connection.close();
        } finally {
            turn.unlock();
        }
    }
}
