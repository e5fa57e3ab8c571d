using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using Seedfall.Photos.Reading;
using Seedfall.Planning.Ground;
using Seedfall.Web.Data;

namespace Seedfall.Web.Features.Drawing;

/// <summary>What lies with a drawing and is no part of the lawn's document: the picture under it, and how its edge was taken.</summary>
public sealed record SheetNotes(PicturePlacing? Picture, Measuring? EdgeTaken)
{
    public static SheetNotes None { get; } = new(null, null);
}

/// <summary>
/// Keeps the pictures under the sheets in the data folder, one folder to a lawn, named with the moment the lawn was taken on:
/// a lawn that gets a removed lawn's id never sees its picture.
/// </summary>
internal sealed class SheetShelf(DataFolder data)
{
    private const string NotesFile = "sheet.json";

    private static readonly PhotoLimits Limits = PhotoLimits.Ordinary with { MostBytes = 24 << 20 };

    private readonly SemaphoreSlim _one = new(1, 1);

    public SheetNotes Notes(LawnRow row)
    {
        try
        {
            return JsonSerializer.Deserialize<SheetNotes>(File.ReadAllBytes(Path.Combine(Folder(row), NotesFile)), JsonSerializerOptions.Web) ?? SheetNotes.None;
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException or JsonException)
        {
            return SheetNotes.None;
        }
    }

    /// <summary>Writes the notes and removes pictures they no longer name.</summary>
    public void Keep(LawnRow row, SheetNotes notes)
    {
        var folder = Folder(row);
        if (notes == SheetNotes.None)
        {
            if (Directory.Exists(folder))
            {
                Directory.Delete(folder, recursive: true);
            }

            return;
        }

        Create(folder);
        var path = Path.Combine(folder, NotesFile);
        File.WriteAllBytes(path + ".new", JsonSerializer.SerializeToUtf8Bytes(notes, JsonSerializerOptions.Web));
        File.Move(path + ".new", path, overwrite: true);
        foreach (var picture in Directory.EnumerateFiles(folder, "*.jpg").Where(p => Path.GetFileName(p) != notes.Picture?.File))
        {
            File.Delete(picture);
        }
    }

    /// <summary>Takes a picture in: re-encoded, so that nothing of its file but the pixels is kept. Returns what is wrong with it, or null.</summary>
    public async Task<string?> Add(LawnRow row, byte[] bytes, CancellationToken cancellation)
    {
        await _one.WaitAsync(cancellation);
        try
        {
            var read = PhotoFile.Read(bytes, Limits);
            if (!read.IsRead)
            {
                return read.Problem.Sentence;
            }

            var kept = PhotoFile.Store(read.Photo);
            var size = PhotoFile.Read(kept).Photo!.Image;
            var name = $"{Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(8))}.jpg";
            Create(Folder(row));
            await File.WriteAllBytesAsync(Path.Combine(Folder(row), name), kept, cancellation);
            Keep(row, Notes(row) with { Picture = PicturePlacing.Unscaled(name, size.Width, size.Height) });
            return null;
        }
        finally
        {
            _one.Release();
        }
    }

    /// <summary>The file of a picture; null where the lawn has none of that name.</summary>
    public string? PathOf(LawnRow row, string name) =>
        Notes(row).Picture?.File == name && Path.Combine(Folder(row), name) is var path && File.Exists(path) ? path : null;

    private string Folder(LawnRow row) =>
        Path.Combine(data.Root, "pictures", string.Create(CultureInfo.InvariantCulture, $"{row.Id}-{row.Added.ToUnixTimeMilliseconds()}"));

    private static void Create(string folder)
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
