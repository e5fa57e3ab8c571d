namespace Seedfall.Checks.Published;

/// <summary>The folder of measured data, which is not part of the project.</summary>
internal static class Data
{
    private const string Variable = "SEEDFALL_DATA";

    /// <summary>A path inside the folder; skips the test where the folder is not named.</summary>
    internal static string Path(params string[] parts)
    {
        var folder = Environment.GetEnvironmentVariable(Variable);
        Assert.SkipWhen(string.IsNullOrEmpty(folder), $"{Variable} is not set: measured data is needed for this check");
        return System.IO.Path.Combine([folder!, .. parts]);
    }
}
