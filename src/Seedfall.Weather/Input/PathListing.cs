namespace Seedfall.Weather.Input;

/// <summary>The files that paths stand for, in a stable order, or why a path cannot be used.</summary>
internal sealed record PathListing(IReadOnlyList<ListedInput> Inputs, IReadOnlyList<FileProblem> Problems)
{
    internal static PathListing List(IReadOnlyList<string> paths, WeatherReadLimits limits)
    {
        var inputs = new List<ListedInput>();
        var problems = new List<FileProblem>();
        foreach (var path in paths)
        {
            try
            {
                Add(path, limits, inputs, problems);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
            {
                problems.Add(new FileProblem(path, 0, 0, "a readable file or folder", e.Message));
            }
        }

        return new PathListing(inputs, problems);
    }

    private static void Add(string path, WeatherReadLimits limits, List<ListedInput> inputs, List<FileProblem> problems)
    {
        if (Directory.Exists(path))
        {
            AddFolder(path, limits, inputs, problems);
        }
        else if (File.Exists(path))
        {
            inputs.Add(Listed(path, fromFolder: false));
        }
        else
        {
            problems.Add(new FileProblem(path, 0, 0, "a file or a folder", "nothing of that name"));
        }
    }

    private static void AddFolder(string path, WeatherReadLimits limits, List<ListedInput> inputs, List<FileProblem> problems)
    {
        var files = Directory.EnumerateFiles(path).Where(f => !Path.GetFileName(f).StartsWith('.')).Take(limits.Files + 1).ToList();
        files.Sort(StringComparer.Ordinal);
        if (files.Count == 0)
        {
            problems.Add(new FileProblem(path, 0, 0, "a folder with weather files in it", "no files (subfolders are not entered)"));
        }

        inputs.AddRange(files.Select(f => Listed(f, fromFolder: true)));
    }

    private static ListedInput Listed(string path, bool fromFolder) =>
        new(new WeatherInput(Path.GetFileName(path), new FileInfo(path).Length, () => OpenFile(path)), fromFolder);

    private static FileStream OpenFile(string path) =>
        new(path, new FileStreamOptions { Options = FileOptions.SequentialScan, BufferSize = 0 });
}
