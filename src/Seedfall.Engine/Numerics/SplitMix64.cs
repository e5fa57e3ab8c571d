namespace Seedfall.Engine.Numerics;

/// <summary>
/// Seeded pseudo-random generator, the same on every machine. Steele, Lea and Flood 2014, Fast splittable pseudorandom
/// number generators. Not for secrets.
/// </summary>
/// <param name="seed">Any value; equal seeds give equal sequences.</param>
public sealed class SplitMix64(ulong seed)
{
    private ulong _state = seed;

    /// <summary>The next 64 bits.</summary>
    public ulong NextUInt64()
    {
        _state += 0x9E3779B97F4A7C15UL;
        var z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }

    /// <summary>Uniform on [0, 1), 53 bits.</summary>
    public double NextDouble() => (NextUInt64() >> 11) * (1.0 / (1UL << 53));

    /// <summary>Uniform whole number from 0 to <paramref name="exclusiveMax"/> - 1; throws when that is not positive.</summary>
    public int NextInt(int exclusiveMax)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(exclusiveMax);
        return (int)(((UInt128)NextUInt64() * (ulong)exclusiveMax) >> 64);
    }

    /// <summary>Standard normal, by inversion.</summary>
    public double NextNormal() => NormalDistribution.Inverse(((NextUInt64() >> 12) + 0.5) * (1.0 / (1UL << 52)));
}
