using Seedfall.Web.Data;

namespace Seedfall.Web.Features.Photos;

/// <summary>What is kept of a photograph.</summary>
public enum PicturePart
{
    /// <summary>The picture, upright, without anything the camera wrote into it.</summary>
    Picture,

    /// <summary>The same, small, for lists.</summary>
    Small,

    /// <summary>What was counted as green.</summary>
    Overlay,

    /// <summary>An overview from straight above.</summary>
    Plan,

    /// <summary>The cover map over it.</summary>
    Map,
}

/// <summary>Photographs as files in the data folder. Names are made here; nothing of a name sent is used.</summary>
internal sealed class PhotoFolder(DataFolder data)
{
    /// <summary>Writes the file whole or not at all.</summary>
    public void Write(Guid photo, PicturePart part, byte[] bytes)
    {
        var path = PathOf(photo, part);
        var fresh = $"{path}.{Guid.NewGuid():N}.new";
        File.WriteAllBytes(fresh, bytes);
        File.Move(fresh, path, overwrite: true);
    }

    /// <summary>Null where there is none.</summary>
    public byte[]? Read(Guid photo, PicturePart part) => PathOf(photo, part) is var path && File.Exists(path) ? File.ReadAllBytes(path) : null;

    public void Remove(IEnumerable<Guid> photos)
    {
        foreach (var photo in photos)
        {
            foreach (var part in Enum.GetValues<PicturePart>())
            {
                File.Delete(PathOf(photo, part));
            }
        }
    }

    public string PathOf(Guid photo, PicturePart part) => Path.Combine(data.Photos, part == PicturePart.Picture ? $"{photo:N}.jpg" : $"{photo:N}-{NameOf(part)}.jpg");

    public static string NameOf(PicturePart part) => part switch
    {
        PicturePart.Picture => "picture",
        PicturePart.Small => "small",
        PicturePart.Overlay => "overlay",
        PicturePart.Plan => "plan",
        PicturePart.Map => "map",
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "is no part of a photograph"),
    };
}
