using BenchmarkDotNet.Attributes;
using Seedfall.Photos.Cover;
using Seedfall.Photos.Pixels;
using Seedfall.Photos.Reading;

namespace Seedfall.Bench.Photos;

/// <summary>A photograph of 12 megapixels from its JPEG bytes to its cover, beside reading it alone and beside reading it at full size. One thread.</summary>
[ShortRunJob]
[MemoryDiagnoser]
public class CoverBench
{
    private readonly byte[] _jpeg = InventedPhotograph.Jpeg();
    private readonly PhotoLimits _measuring = PhotoLimits.Ordinary with { DecodeLongSide = GreenCover.LongSide };
    private readonly PhotoLimits _whole = PhotoLimits.Ordinary with { DecodeLongSide = null };

    [Benchmark(Baseline = true)]
    public PixelImage ReadAtFullSize() => PhotoFile.Read(_jpeg, _whole).Photo!.Image;

    [Benchmark]
    public PixelImage ReadForMeasuring() => PhotoFile.Read(_jpeg, _measuring).Photo!.Image;

    [Benchmark]
    public double ReadAndMeasure() => GreenCover.Measure(PhotoFile.Read(_jpeg, _measuring).Photo!.Image).Cover;
}
