using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Tests.Cover;

/// <summary>What lies between and over the blades of a composed lawn.</summary>
internal sealed record LawnSceneKind
{
    /// <summary>Share of the ground under blades, about.</summary>
    internal double Green { get; init; } = 0.4;

    /// <summary>Share of the ground under dry straw-colored blades.</summary>
    internal double Straw { get; init; }

    /// <summary>Fallen brown and yellow leaves.</summary>
    internal int Leaves { get; init; }

    /// <summary>Half of the picture at 45 % of its light.</summary>
    internal bool Shadow { get; init; }

    /// <summary>White glints on one blade in three.</summary>
    internal bool Dew { get; init; }

    /// <summary>Share of the ground under blue-green paper mulch.</summary>
    internal double Mulch { get; init; }

    internal int Seed { get; init; } = 1;
}

/// <summary>
/// A composed lawn from above: crumbly brown ground and blades of one direction each, drawn at twice the size of the picture, so
/// that the cover of the picture is known exactly and its blades have soft edges. Colors are invented.
/// </summary>
internal sealed class LawnScene
{
    private const int Width = 640;
    private const int Height = 480;
    private const int Over = 2;

    private readonly float[] _rgb = new float[3 * Width * Height * Over * Over];
    private readonly bool[] _green = new bool[Width * Height * Over * Over];
    private readonly Random _random;

    private LawnScene(LawnSceneKind kind)
    {
        _random = new Random(kind.Seed);
        Ground(kind.Mulch);
        Blades(kind.Straw, [0.78f, 0.68f, 0.46f], isGreen: false, dew: false);
        Blades(kind.Green, [0.30f, 0.50f, 0.17f], isGreen: true, kind.Dew);
        for (var i = 0; i < kind.Leaves; i++)
        {
            Leaf();
        }

        Cover = (double)_green.Count(g => g) / _green.Length;
        if (kind.Shadow)
        {
            Shade();
        }

        Image = Picture();
    }

    /// <summary>Share of the picture under green, exactly.</summary>
    internal double Cover { get; }

    internal PixelImage Image { get; }

    internal static LawnScene Of(LawnSceneKind kind) => new(kind);

    private PixelImage Picture() => AreaScale.ToLongSide(new PixelImage(Width * Over, Height * Over, [.. _rgb.Select(v => (byte)Math.Clamp((255f * v) + 0.5f, 0f, 255f))]), Width);

    private void Ground(double mulch)
    {
        var (coarse, fine) = (Noise(24), Noise(5));
        for (var i = 0; i < _green.Length; i++)
        {
            var (x, y) = (i % (Width * Over), i / (Width * Over));
            var light = 0.75f + (0.35f * coarse(x, y)) + (0.25f * fine(x, y)) + (0.06f * (float)(_random.NextDouble() - 0.5));
            ReadOnlySpan<float> color = coarse(x + 7000, y) < 1.6 * mulch && mulch > 0.0 ? [0.33f, 0.52f, 0.50f] : [0.45f, 0.36f, 0.27f];
            for (var c = 0; c < 3; c++)
            {
                _rgb[(3 * i) + c] = color[c] * light;
            }
        }
    }

    private void Blades(double share, ReadOnlySpan<float> color, bool isGreen, bool dew)
    {
        var painted = new bool[_green.Length];
        for (var n = 0; n < share * _green.Length;)
        {
            var (x, y, angle) = (_random.NextDouble() * Width * Over, _random.NextDouble() * Height * Over, _random.NextDouble() * Math.PI);
            var (length, half) = (50 + (_random.NextDouble() * 90), 3 + (_random.NextDouble() * 4));
            var (light, tint) = (0.75 + (0.5 * _random.NextDouble()), 0.9 + (0.2 * _random.NextDouble()));
            var wet = dew && _random.Next(3) == 0;
            for (var along = 0.0; along < length; along += 0.5)
            {
                for (var across = -half; across <= half; across += 0.5)
                {
                    var (px, py) = ((int)(x + (along * Math.Cos(angle)) - (across * Math.Sin(angle))), (int)(y + (along * Math.Sin(angle)) + (across * Math.Cos(angle))));
                    if (px < 0 || py < 0 || px >= Width * Over || py >= Height * Over)
                    {
                        continue;
                    }

                    var i = (py * Width * Over) + px;
                    n += painted[i] ? 0 : 1;
                    (painted[i], _green[i]) = (true, isGreen);
                    var shade = (float)(light * (1.0 - (0.25 * Math.Abs(across) / half)));
                    var glint = wet && along % 40 < 5;
                    for (var c = 0; c < 3; c++)
                    {
                        _rgb[(3 * i) + c] = glint ? 0.9f : color[c] * shade * (c == 0 ? (float)tint : 1f);
                    }
                }
            }
        }
    }

    private void Leaf()
    {
        var (x, y, a, b) = (_random.NextDouble() * Width * Over, _random.NextDouble() * Height * Over, 40 + (_random.NextDouble() * 40), 20 + (_random.NextDouble() * 20));
        float[] color = _random.Next(2) == 0 ? [0.62f, 0.42f, 0.20f] : [0.80f, 0.66f, 0.22f];
        for (var i = 0; i < _green.Length; i++)
        {
            var (dx, dy) = (((i % (Width * Over)) - x) / a, ((i / (Width * Over)) - y) / b);
            if ((dx * dx) + (dy * dy) < 1.0)
            {
                _green[i] = false;
                color.AsSpan().CopyTo(_rgb.AsSpan(3 * i));
            }
        }
    }

    private void Shade()
    {
        for (var i = 0; i < _rgb.Length; i++)
        {
            _rgb[i] *= i / 3 % (Width * Over) + (i / 3 / (Width * Over) / 3) < Width ? 0.45f : 1f;
        }
    }

    /// <summary>Smooth noise of 0 to 1 with features of the given size.</summary>
    private Func<int, int, float> Noise(int size)
    {
        var values = new float[4096];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = (float)_random.NextDouble();
        }

        float At(int x, int y) => values[((x * 73) + (y * 1913)) & 4095];
        return (x, y) =>
        {
            var (cx, cy, fx, fy) = (x / size, y / size, (float)(x % size) / size, (float)(y % size) / size);
            var upper = At(cx, cy) + (fx * (At(cx + 1, cy) - At(cx, cy)));
            var lower = At(cx, cy + 1) + (fx * (At(cx + 1, cy + 1) - At(cx, cy + 1)));
            return upper + (fy * (lower - upper));
        };
    }
}
