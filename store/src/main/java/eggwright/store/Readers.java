package eggwright.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;

/** Connections that only read; each has the book to itself as it was when its question began. */
final class Readers implements AutoCloseable {
    private static final int MOST_IDLE = 4;

    private final Path file;
    private final Opening opening;
    private final BlockingQueue<Connection> idle = new ArrayBlockingQueue<>(MOST_IDLE);

    private Readers(Path file, Opening opening) {
        this.file = file;
        this.opening = opening;
    }

    /** A question to the book. */
    interface Question<T> {
        T ask(Connection connection) throws SQLException;
    }

    private interface Opening {
        Connection open(Path file) throws SQLException;
    }

    static Readers beside(Path file) {
        return new Readers(file, Connections::reading);
    }

    static Readers ofStillFile(Path file) {
        return new Readers(file, Connections::readingStill);
    }

    <T> T ask(Question<T> question) throws SQLException {
        var rested = idle.poll();
        var connection = rested == null ? opening.open(file) : rested;
        try {
            var answer = question.ask(connection);
            if (!idle.offer(connection)) {
                connection.close();
            }
            return answer;
        } catch (SQLException | RuntimeException fault) {
            connection.close();
            throw fault;
        }
    }

    @Override
    public void close() throws SQLException {
        for (var connection = idle.poll(); connection != null; connection = idle.poll()) {
            connection.close();
        }
    }
}
