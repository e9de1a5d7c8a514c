package eggwright.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.locks.ReentrantLock;

/** The one connection that writes, behind a fair lock: whoever waits longest is next. */
final class Writer implements AutoCloseable {
    private final ReentrantLock turn = new ReentrantLock(true);
    private final Connection connection;

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
        Done<T> on(Connection connection) throws SQLException;
    }

    /** Runs work in one transaction. When this returns and the work was to be kept, it is on the disk. */
    <T> T inOneGo(Work<T> work) throws SQLException {
        turn.lock();
        try (var statement = connection.createStatement()) {
            statement.execute("begin immediate");
            try {
                var done = work.on(connection);
                statement.execute(
                        switch (done.ending()) {
                            case KEEP -> "commit";
                            case UNDO -> "rollback";
                        });
                return done.value();
            } catch (SQLException | RuntimeException fault) {
                rollBack(fault);
                throw fault;
            }
        } finally {
            turn.unlock();
        }
    }

    /** A full disk ends the transaction by itself; then there is nothing left to roll back. */
    private void rollBack(Exception fault) {
        try (var statement = connection.createStatement()) {
            statement.execute("rollback");
        } catch (SQLException endedAlready) {
            fault.addSuppressed(endedAlready);
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
