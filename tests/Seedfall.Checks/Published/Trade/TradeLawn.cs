using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;

namespace Seedfall.Checks.Published.Trade;

/// <summary>A small invented lawn for checks that need one.</summary>
internal static class TradeLawn
{
    internal static Lawn With(Func<Lawn, Lawn> change) => change(new Lawn
    {
        Id = "check",
        Name = "Check lawn",
        Place = new Place(40.4, -86.9, 190),
        Patches =
        [
            new Patch
            {
                Id = "front",
                Name = "Front",
                Shape = new PatchShape.Typed(Area.FromSquareFeet(7500)),
                Grasses = [GrassSpecies.KentuckyBluegrass],
                LivingCover = Fraction.Of(0.5),
                SunHours = 8,
                SlopePercent = 0,
            },
        ],
    });
}
