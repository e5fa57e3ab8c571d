using Microsoft.Data.Sqlite;

namespace Seedfall.Web.Data;

/// <summary>The one folder that holds everything worth keeping: database, keys, photographs, backups.</summary>
internal sealed record DataFolder(string Root)
{
    public string Database => Path.Combine(Root, "seedfall.db");

    public string Keys => Path.Combine(Root, "keys");

    public string Backups => Path.Combine(Root, "backups");

    public string Photos => Path.Combine(Root, "photos");

    public string Forecasts => Path.Combine(Root, "forecasts");

    public string Lock => Path.Combine(Root, "seedfall.lock");

    /// <summary>
    /// Foreign keys on; the provider retries a busy database for ten seconds. Write-ahead logging comes with a database
    /// EF Core creates, and <c>synchronous</c> stays FULL: what was saved survives a power cut.
    /// </summary>
    public string ConnectionString => new SqliteConnectionStringBuilder
    {
        DataSource = Database,
        ForeignKeys = true,
        DefaultTimeout = 10,
        Pooling = true,
    }.ToString();

    /// <summary>Makes the folder, readable by its owner only.</summary>
    public void Create()
    {
        foreach (var folder in (string[])[Root, Keys, Photos, Forecasts, Backups])
        {
            if (OperatingSystem.IsWindows())
            {
                Directory.CreateDirectory(folder);
            }
            else
            {
                Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            }
        }
    }
}
