using Seedfall.Weather.Forecasts;
using Seedfall.Web.Data;

namespace Seedfall.Web.Features.SprayWindow;

/// <summary>
/// The forecast brought for a lawn, as the file it came as. It is worth something for five days only, so it stays out of the database
/// and its backups.
/// </summary>
internal sealed class ForecastShelf(DataFolder data)
{
    /// <summary>Keeps a file that was read without a problem, whole or not at all.</summary>
    public void Keep(LawnRow lawn, byte[] json)
    {
        var path = PathOf(lawn);
        var fresh = $"{path}.{Guid.NewGuid():N}.new";
        File.WriteAllBytes(fresh, json);
        File.Move(fresh, path, overwrite: true);
    }

    /// <summary>Null where none was brought.</summary>
    public ForecastReadResult? Read(LawnRow lawn) => PathOf(lawn) is var path && File.Exists(path) ? ForecastFiles.Read("the forecast kept", File.ReadAllBytes(path)) : null;

    public void Forget(LawnRow lawn) => File.Delete(PathOf(lawn));

    /// <summary>A lawn's id is lower-case letters, digits and hyphens.</summary>
    private string PathOf(LawnRow lawn) => Path.Combine(data.Forecasts, $"{lawn.Id}.json");
}
