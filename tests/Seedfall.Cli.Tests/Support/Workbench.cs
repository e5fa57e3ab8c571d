namespace Seedfall.Cli.Tests.Support;

/// <summary>A folder of its own for one test, with the demo's files where asked for.</summary>
internal sealed class Workbench : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("seedfall-cli-");

    internal string Lawn => Path.Combine(Demo, "mill-lane-corner.json");

    internal string Weather => Path.Combine(Demo, "invented-weather-tansy-ford.csv");

    internal string Out => Path.Combine(_folder.FullName, "out");

    internal string Demo => Path.Combine(_folder.FullName, "demo");

    internal static async Task<Workbench> WithDemo()
    {
        var bench = new Workbench();
        var run = await Run.Of("demo", bench.Demo);
        Assert.Equal(0, run.ExitCode);
        return bench;
    }

    internal string Write(string name, string text)
    {
        var path = Path.Combine(_folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }

    internal string Write(string name, byte[] bytes)
    {
        var path = Path.Combine(_folder.FullName, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    /// <summary>The demo lawn with one piece of its text replaced.</summary>
    internal string LawnWith(string old, string changed)
    {
        var text = File.ReadAllText(Lawn);
        Assert.Contains(old, text, StringComparison.Ordinal);
        var at = text.IndexOf(old, StringComparison.Ordinal);
        return Write("changed.json", string.Concat(text.AsSpan(0, at), changed, text.AsSpan(at + old.Length)));
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
