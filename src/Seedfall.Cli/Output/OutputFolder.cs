namespace Seedfall.Cli.Output;

/// <summary>Files that appear together or not at all: written beside their place first, then moved.</summary>
internal sealed class OutputFolder : IDisposable
{
    private const long MostEarlierBytes = 4L << 20;

    private readonly string _folder;
    private readonly string _making;
    private readonly List<string> _names = [];

    internal OutputFolder(string folder)
    {
        _folder = Path.GetFullPath(folder);
        _making = Reach(folder, () => Directory.CreateDirectory(Path.Combine(_folder, $".making-{Guid.NewGuid():N}")).FullName);
    }

    internal IReadOnlyList<string> Names => _names;

    internal void Add(string name, ReadOnlySpan<byte> bytes)
    {
        var copy = bytes.ToArray();
        Reach(name, () =>
        {
            File.WriteAllBytes(Path.Combine(_making, name), copy);
            return name;
        });
        _names.Add(name);
    }

    internal void Add(string name, string text) => Add(name, new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text));

    /// <summary>The text of a file that lies there from before, or null where there is none or it cannot be read.</summary>
    internal string? Earlier(string name)
    {
        var file = new FileInfo(Path.Combine(_folder, name));
        try
        {
            return file.Exists && file.Length <= MostEarlierBytes ? File.ReadAllText(file.FullName) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Moves everything to its place; a file of the same name is replaced.</summary>
    internal void Publish()
    {
        foreach (var name in _names)
        {
            Reach(name, () =>
            {
                File.Move(Path.Combine(_making, name), Path.Combine(_folder, name), overwrite: true);
                return name;
            });
        }
    }

    public void Dispose()
    {
        if (Directory.Exists(_making))
        {
            Directory.Delete(_making, recursive: true);
        }
    }

    private static string Reach(string name, Func<string> work)
    {
        try
        {
            return work();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new CommandException(ExitCode.Unreachable, $"{name}: cannot be written: {e.Message}");
        }
    }
}
