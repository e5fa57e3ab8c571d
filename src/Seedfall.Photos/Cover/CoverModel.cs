using System.Text.Json;

namespace Seedfall.Photos.Cover;

/// <summary>The fitted numbers of the measure: data, not code, with where they come from.</summary>
public sealed record CoverModel
{
    /// <summary>Standardized numbers are held within this many spreads.</summary>
    internal const float Within = 3f;

    private static readonly Lazy<CoverModel> Lazily = new(Load);

    /// <summary>The model shipped with the program.</summary>
    public static CoverModel Shipped => Lazily.Value;

    internal static JsonSerializerOptions Json { get; } = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    /// <summary>What this is, in words.</summary>
    public required string About { get; init; }

    /// <summary>How it was fitted.</summary>
    public required string Script { get; init; }

    /// <summary>When.</summary>
    public required DateOnly Fitted { get; init; }

    /// <summary>Names of the photographs it was fitted on.</summary>
    public required IReadOnlyList<string> Photographs { get; init; }

    /// <summary>Weights of the first look, then its constant.</summary>
    public required double[] FirstLook { get; init; }

    /// <summary>Means of the nineteen numbers.</summary>
    public required float[] Means { get; init; }

    /// <summary>Spreads of the nineteen numbers.</summary>
    public required float[] Scales { get; init; }

    /// <summary>The nets of the second look.</summary>
    public required IReadOnlyList<SmallNet> Nets { get; init; }

    /// <summary>How far, in log odds, whole pictures are off (scale of the distribution in <see cref="PictureBias"/>): what taps can mend.</summary>
    public required double OffsetSpread { get; init; }

    /// <summary>Half the 90 % range of cover over the scale of <see cref="CoverRange"/>, without taps.</summary>
    public required double RangeFactor { get; init; }

    internal float Standardize(int number, float value) => Math.Clamp((value - Means[number]) / Scales[number], -Within, Within);

    private static CoverModel Load()
    {
        using var stream = typeof(CoverModel).Assembly.GetManifestResourceStream("green-cover.json") ?? throw new InvalidOperationException("green-cover.json is not in the assembly");
        return JsonSerializer.Deserialize<CoverModel>(stream, Json) ?? throw new InvalidOperationException("green-cover.json is empty");
    }
}
