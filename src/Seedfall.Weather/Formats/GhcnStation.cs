using System.Text;
using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Formats;

/// <summary>One station in files whose every line names it.</summary>
internal static class GhcnStation
{
    /// <summary>False for a line of another station than the one asked for; throws where a file mixes stations unasked.</summary>
    internal static bool Accepts(ReadOnlySpan<byte> id, FileDraft file, WeatherReadOptions options, int line)
    {
        if (file.Station.Id is { } known && Ascii.EqualsIgnoreCase(id, known))
        {
            return true;
        }

        if (options.Station is { } wanted && !Ascii.EqualsIgnoreCase(id, wanted))
        {
            return false;
        }

        if (file.Station.Id is not null)
        {
            throw new RefusedException(line, 1, $"lines of one station, {file.Station.Id} as before (or say which station to read)", FieldText.Quote(id));
        }

        file.Station.Id = FieldText.Decode(id);
        return true;
    }

    internal static void RequireFound(FileDraft file, WeatherReadOptions options)
    {
        if (file.Rows.Count == 0 && options.Station is { } wanted)
        {
            throw new RefusedException(0, 0, $"lines of station {wanted}", "none");
        }
    }
}
