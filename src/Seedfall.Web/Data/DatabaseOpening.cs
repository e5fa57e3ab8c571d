using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Seedfall.Web.Data;

/// <summary>
/// Brings the database to this version of the app. Holds the folder's lock for the life of the process, so that a lock
/// row found in the migrations table can only be left over from a process that died, and is cleared.
/// </summary>
internal sealed class DatabaseOpening(DataFolder folder, IDbContextFactory<SeedfallDb> contexts, TimeProvider clock, ILogger<DatabaseOpening> log) : IDisposable
{
    private FileStream? _lock;

    /// <summary>Locks the folder and migrates where needed; throws <see cref="StartRefusedException"/> with one plain line.</summary>
    /// <returns>True where the database did not exist before.</returns>
    public bool Open()
    {
        folder.Create();
        var isNew = !File.Exists(folder.Database);
        _lock = TakeLock();
        using var db = contexts.CreateDbContext();
        RefuseNewer(db);
        var pending = db.Database.GetPendingMigrations().ToList();
        if (pending.Count == 0)
        {
            return false;
        }

        if (!isNew)
        {
            BackUp(db, pending[0]);
            ClearStaleLockRow(db);
        }

        db.Database.SetCommandTimeout(TimeSpan.FromMinutes(2));
        db.Database.Migrate();
        log.LogInformation("Database brought up to date: {Migrations}", string.Join(", ", pending));
        return isNew;
    }

    public void Dispose() => _lock?.Dispose();

    private FileStream TakeLock()
    {
        try
        {
            return new FileStream(folder.Lock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException)
        {
            throw new StartRefusedException($"another Seedfall has the data folder open: {folder.Root}. Stop it, or give this one its own folder with --data FOLDER.");
        }
    }

    private void RefuseNewer(SeedfallDb db)
    {
        var unknown = db.Database.GetAppliedMigrations().Except(db.Database.GetMigrations()).ToList();
        if (unknown.Count > 0)
        {
            throw new StartRefusedException($"the data folder {folder.Root} was written by a newer Seedfall (it knows {unknown[^1]}). Use that version, or restore an older backup from {folder.Backups}.");
        }
    }

    private void BackUp(SeedfallDb db, string migration)
    {
        var stamp = clock.GetUtcNow().ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture);
        var backup = Path.Combine(folder.Backups, $"seedfall-{stamp}-before-{migration}.db");
        db.Database.ExecuteSql($"VACUUM INTO {backup}");
        log.LogInformation("Backed up to {Backup}", backup);
    }

    private static void ClearStaleLockRow(SeedfallDb db)
    {
        try
        {
            db.Database.ExecuteSqlRaw("DELETE FROM \"__EFMigrationsLock\"");
        }
        catch (SqliteException e) when (e.SqliteErrorCode == 1)
        {
            // SQLITE_ERROR "no such table": this database was never migrated with a lock, so there is nothing to clear.
        }
    }
}
