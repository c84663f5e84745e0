package org.lynchet.formats.geopackage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import org.sqlite.JDBC;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;

/** A file of SQLite, open; the only class that knows the driver. */
final class Database implements AutoCloseable {
  /** The bits of a result code without its details: https://sqlite.org/rescode.html. */
  private static final int PRIMARY_CODE = 0xFF;

  private final Connection connection;

  private Database(Connection connection) {
    this.connection = connection;
  }

  /** Makes a new file, written whole when it is closed. */
  static Database create(Path file) throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setJournalMode(SQLiteConfig.JournalMode.OFF);
    config.setSynchronous(SQLiteConfig.SynchronousMode.OFF);
    Connection connection = open(file.toString(), config);
    connection.setAutoCommit(false);
    return new Database(connection);
  }

  /** Opens a file of someone else: nothing in it is run, nothing is written beside it. */
  static Database openForReading(Path file) throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(true);
    Connection connection = open(file.toUri() + "?immutable=1", config);
    Database database = new Database(connection);
    try {
      database.run("PRAGMA trusted_schema = OFF");
      database.run("PRAGMA cell_size_check = ON");
      return database;
    } catch (SQLException e) {
      database.close();
      throw e;
    }
  }

  private static Connection open(String file, SQLiteConfig config) throws SQLException {
    Properties properties = config.toProperties();
    try {
      return JDBC.createConnection("jdbc:sqlite:" + file, properties);
    } catch (LinkageError e) {
      throw new SQLException("SQLite cannot be loaded on this machine: " + e, e);
    }
  }

  /** Runs one statement that answers nothing. */
  void run(String sql, @Nullable Object... values) throws SQLException {
    if (values.length == 0) {
      try (Statement statement = connection.createStatement()) {
        statement.execute(sql);
      }
      return;
    }
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      set(statement, values);
      statement.execute();
    }
  }

  /** Runs one statement for each row of values. */
  void runForEach(String sql, Iterable<@Nullable Object[]> rows) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      for (@Nullable Object[] row : rows) {
        set(statement, row);
        statement.execute();
      }
    }
  }

  /** The rows that a question has for an answer, at most so many. */
  List<List<@Nullable Object>> ask(String sql, int most, @Nullable Object... values)
      throws SQLException {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      set(statement, values);
      try (ResultSet answer = statement.executeQuery()) {
        int columns = answer.getMetaData().getColumnCount();
        while (answer.next()) {
          if (rows.size() == most) {
            throw new SQLException("more than " + most + " rows");
          }
          List<@Nullable Object> row = new ArrayList<>(columns);
          for (int c = 1; c <= columns; c++) {
            row.add(answer.getObject(c));
          }
          rows.add(row);
        }
      }
    }
    return rows;
  }

  private static void set(PreparedStatement statement, @Nullable Object[] values)
      throws SQLException {
    for (int i = 0; i < values.length; i++) {
      statement.setObject(i + 1, values[i]);
    }
  }

  /** Makes what was written last. */
  void commit() throws SQLException {
    connection.commit();
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }

  /** Whether the disk, or what a file may take of it, is full. */
  static boolean isFull(SQLException refused) {
    return (refused.getErrorCode() & PRIMARY_CODE) == SQLiteErrorCode.SQLITE_FULL.code;
  }

  /** A name as it stands in a statement. */
  static String quoted(String name) {
    return '"' + name.replace("\"", "\"\"") + '"';
  }
}
