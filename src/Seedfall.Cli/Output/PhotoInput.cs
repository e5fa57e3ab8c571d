using Seedfall.Photos.Reading;

namespace Seedfall.Cli.Output;

/// <summary>A photograph from a file, or the reason it is refused in one line.</summary>
internal static class PhotoInput
{
    internal static Photo Read(string path, PhotoLimits limits)
    {
        var file = new FileInfo(path);
        if (!file.Exists)
        {
            throw new CommandException(ExitCode.Unreachable, $"{path}: there is no such file");
        }

        if (file.Length > limits.MostBytes)
        {
            throw new CommandException(ExitCode.BadInput, $"{path}: expected a picture of at most {limits.MostBytes >> 20} MB, found {file.Length >> 20} MB");
        }

        try
        {
            var result = PhotoFile.Read(File.ReadAllBytes(path), limits);
            return result.Photo ?? throw new CommandException(ExitCode.BadInput, $"{path}: {result.Problem}");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new CommandException(ExitCode.Unreachable, $"{path}: cannot be read: {e.Message}");
        }
    }
}
