using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using Seedfall.Engine.Weather;
using Seedfall.Web.Data;

namespace Seedfall.Web.Tests;

public sealed class StoreTests : IDisposable
{
    private readonly DataFolder _folder = new(Directory.CreateTempSubdirectory("seedfall-store-").FullName);
    private readonly ServiceProvider _services;

    public StoreTests()
    {
        _folder.Create();
        _services = new ServiceCollection().AddDbContextFactory<SeedfallDb>(o => o.UseSqlite(_folder.ConnectionString)).BuildServiceProvider();
    }

    private IDbContextFactory<SeedfallDb> Contexts => _services.GetRequiredService<IDbContextFactory<SeedfallDb>>();

    [Fact]
    public void The_database_keeps_what_it_was_given_through_a_power_cut()
    {
        using (var opening = Opening())
        {
            Assert.True(opening.Open());
        }

        Assert.Equal("wal", Ask("PRAGMA journal_mode"));
        Assert.Equal(2L, Ask("PRAGMA synchronous")); // 2 is FULL (SQLite's documentation of the pragma)
        Assert.Equal(1L, Ask("PRAGMA foreign_keys"));
    }

    [Fact]
    public void A_lock_row_left_by_a_killed_start_does_not_hang_the_next()
    {
        using (var opening = Opening())
        {
            opening.Open();
        }

        // As a process killed between taking the row and finishing its migration leaves the database.
        Run("CREATE TABLE IF NOT EXISTS \"__EFMigrationsLock\" (\"Id\" INTEGER NOT NULL PRIMARY KEY, \"Timestamp\" TEXT NOT NULL)");
        Run("INSERT INTO \"__EFMigrationsLock\" VALUES (1, '2026-01-01')");
        Run("DELETE FROM \"__EFMigrationsHistory\"");
        DropEverythingElse();

        using var again = Opening();
        Assert.False(again.Open());
        Assert.Equal(0L, Ask("SELECT count(*) FROM \"Lawns\""));
        Assert.Single(Directory.GetFiles(_folder.Backups));
    }

    [Fact]
    public void Two_processes_cannot_open_one_folder()
    {
        using var first = Opening();
        first.Open();
        using var second = Opening();
        Assert.Contains(_folder.Root, Assert.Throws<StartRefusedException>(() => second.Open()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_database_of_a_newer_version_is_left_alone()
    {
        using (var opening = Opening())
        {
            opening.Open();
        }

        Run("INSERT INTO \"__EFMigrationsHistory\" VALUES ('29990101000000_FromTheFuture', '99.0')");
        using var again = Opening();
        Assert.Contains("newer Seedfall", Assert.Throws<StartRefusedException>(() => again.Open()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Many_writers_at_once_lose_nothing()
    {
        using var opening = Opening();
        opening.Open();
        var writer = new Writer(Contexts);
        var now = DateTimeOffset.FromUnixTimeMilliseconds(1_764_000_000_123);
        await Task.WhenAll(Enumerable.Range(0, 40).Select(i => writer.Write(async db =>
        {
            var count = await db.Lawns.CountAsync();
            db.Lawns.Add(new LawnRow { Id = $"l{i}", Name = $"{count}", Document = "{}", Added = now, Changed = now });
            return 0;
        })));
        await using var db = await Contexts.CreateDbContextAsync();
        var names = await db.Lawns.OrderBy(l => l.Added).Select(l => l.Name).ToListAsync();
        Assert.Equal(Enumerable.Range(0, 40).Select(i => $"{i}").Order(), names.Order());
        Assert.Equal(now, await db.Lawns.Select(l => l.Added).FirstAsync());
    }

    [Fact]
    public void Packed_weather_reads_back_bit_for_bit()
    {
        var random = new Random(3);
        var days = Enumerable.Range(0, 400).Select(i => new WeatherDay(new DateOnly(2020, 1, 1).AddDays(i), 20.0 * random.NextDouble(), -20.0 * random.NextDouble(), i % 3 == 0 ? 0.0 : random.NextDouble() / 3.0)
        {
            SolarMJ = i % 5 == 0 ? null : 0.1 + 0.2 * random.NextDouble(),
            WindMs = i % 7 == 0 ? 0.0 : null,
            Quality = i % 11 == 0 ? DayQuality.Interpolated : DayQuality.Measured,
        }).ToArray();
        var history = new WeatherHistory(new Place(42.3, -84.1, 280.5), "Invented", days, ["a file"], ["a note"]);
        var back = PackedHistory.Unpack(PackedHistory.Pack(history));
        Assert.Equal(history.Days, back.Days);
        Assert.Equal((history.Station, history.StationName, history.Sources[0], history.Notes[0]), (back.Station, back.StationName, back.Sources[0], back.Notes[0]));
    }

    public void Dispose()
    {
        _services.Dispose();
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder.Root, recursive: true);
    }

    private DatabaseOpening Opening() => new(_folder, Contexts, TimeProvider.System, NullLogger<DatabaseOpening>.Instance);

    private object? Ask(string sql)
    {
        using var db = Contexts.CreateDbContext();
        db.Database.OpenConnection();
        using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }

    /// <summary>Every table but the migrations' own, children before parents.</summary>
    private void DropEverythingElse()
    {
        using var db = Contexts.CreateDbContext();
        foreach (var entity in db.Model.GetEntityTypes())
        {
            Run("PRAGMA foreign_keys = OFF; DROP TABLE \"" + entity.GetTableName() + "\"");
        }
    }

    private void Run(string sql)
    {
        using var db = Contexts.CreateDbContext();
        db.Database.ExecuteSqlRaw(sql);
    }
}
