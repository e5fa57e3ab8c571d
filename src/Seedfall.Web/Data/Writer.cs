using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Seedfall.Web.Data;

/// <summary>
/// The one gate through which the database is written: one unit of work at a time, in an IMMEDIATE transaction, and the
/// whole unit again when another process held the database.
/// </summary>
internal sealed class Writer(IDbContextFactory<SeedfallDb> contexts)
{
    private const int Busy = 5;
    private const int Attempts = 3;
    private readonly SemaphoreSlim _gate = new(1, 1);

    /// <summary>Runs the work and commits; rolls back on any exception.</summary>
    public async Task<T> Write<T>(Func<SeedfallDb, Task<T>> work, CancellationToken cancellation = default)
    {
        await _gate.WaitAsync(cancellation);
        try
        {
            for (var attempt = 1; ; attempt++)
            {
                try
                {
                    return await Once(work, cancellation);
                }
                catch (Exception e) when (attempt < Attempts && IsBusy(e))
                {
                    await Task.Delay(TimeSpan.FromMilliseconds(50 * attempt), cancellation);
                }
            }
        }
        finally
        {
            _gate.Release();
        }
    }

    private async Task<T> Once<T>(Func<SeedfallDb, Task<T>> work, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);

        // The SQLite provider begins IMMEDIATE unless a deferred transaction is asked for.
        await using var transaction = await db.Database.BeginTransactionAsync(cancellation);
        var result = await work(db);
        await db.SaveChangesAsync(cancellation);
        await transaction.CommitAsync(cancellation);
        return result;
    }

    private static bool IsBusy(Exception e) =>
        e is SqliteException { SqliteErrorCode: Busy } || e.InnerException is SqliteException { SqliteErrorCode: Busy };
}
