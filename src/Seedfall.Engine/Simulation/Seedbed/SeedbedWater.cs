using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Seedbed;

/// <summary>
/// One hour of water in four seedbeds side by side, in order: leaves and mulch, infiltration and runoff, gravity, capillary
/// diffusion with evaporation, roots. Mass is kept to rounding in each. No allocation; no lane depends on another.
/// </summary>
public static class SeedbedWater
{
    private const double FirstInfiltrationMm = 1.0;
    private const double HoursBetweenEvents = 6.0;
    private const double AerodynamicSM = 60.0;
    private const double WetSurfaceSM = 10.0;
    private const double MulchSaving = 0.55;

    /// <summary>Water above air-dry, m3/m3, below which evaporation grows no steeper: a slope over next to nothing loses its water in rounding.</summary>
    private const double LeastAbove = 1e-7;

    /// <summary>Steps the state by one hour.</summary>
    public static SeedbedFluxes Step(SeedbedSoil soil, SeedbedState state, in SeedbedSurface surface, in SeedbedHour hour)
    {
        var evaporated = Intercept(state, surface, hour, out var throughfall, out var demand);
        var infiltrated = Infiltrate(soil, state, surface, throughfall, ref demand, ref evaporated, out var runoff);
        var drained = Drain(soil, state.WaterContent, infiltrated);
        evaporated += DiffuseAndEvaporate(soil, state, demand * (1.0 - (MulchSaving * surface.MulchCover)));
        var transpired = TakeUp(soil, state.WaterContent, hour.TranspirationMm, hour.RootDepthMm);
        return new SeedbedFluxes(evaporated, transpired, runoff, drained);
    }

    /// <summary>Resistance of a drying soil surface to vapor, s/m: 10 exp(5.34 (1 - theta/theta_c)), after van de Griend and Owe 1994 made free of texture (common practice).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lanes SurfaceResistanceSM(SeedbedSoil soil, Lanes topWater) =>
        WetSurfaceSM * LaneMath.Exp(LaneMath.Max(Lanes.Zero, 5.34 * (Lanes.One - (topWater / soil.EvaporationOnset))));

    /// <summary>Leaves and mulch fill first and dry first.</summary>
    private static Lanes Intercept(SeedbedState state, in SeedbedSurface surface, in SeedbedHour hour, out Lanes throughfall, out Lanes demand)
    {
        var held = state.InterceptedMm + hour.RainMm + hour.IrrigationMm;
        throughfall = LaneMath.Max(Lanes.Zero, held - Vector256.Create(surface.StoreMm));
        held -= throughfall;
        var evaporated = LaneMath.Min(held, hour.PotentialEvaporationMm);
        state.InterceptedMm = held - evaporated;
        demand = hour.PotentialEvaporationMm - evaporated;
        return evaporated;
    }

    /// <summary>Green-Ampt capacity f = K (1 + suction deficit / (F + F0)); the rest stands, then runs.</summary>
    private static Lanes Infiltrate(
        SeedbedSoil soil, SeedbedState state, in SeedbedSurface surface, Lanes throughfall, ref Lanes demand, ref Lanes evaporated, out Lanes runoff)
    {
        CountEvent(state, throughfall);
        var standing = state.PondMm + throughfall;
        if (Vector256.EqualsAll(standing, Lanes.Zero))
        {
            runoff = Lanes.Zero;
            return Lanes.Zero;
        }

        var fromPond = LaneMath.Min(standing, demand);
        (standing, demand, evaporated) = (standing - fromPond, demand - fromPond, evaporated + fromPond);
        var deficit = LaneMath.Max(Lanes.Zero, Vector256.Create(soil.Hydraulics.Saturation) - state.WaterContent[2]);
        var suction = soil.WettingFrontSuctionMm * deficit / (state.EventInfiltrationMm + Vector256.Create(FirstInfiltrationMm));
        var infiltrated = LaneMath.Min(standing, soil.EffectiveConductivityMmH * (Lanes.One + suction));
        state.EventInfiltrationMm += infiltrated;
        var left = standing - infiltrated;
        runoff = LaneMath.Max(Lanes.Zero, left - Vector256.Create(surface.PondMm));
        state.PondMm = left - runoff;
        return infiltrated;
    }

    private static void CountEvent(SeedbedState state, Lanes throughfall)
    {
        state.DryHours = Vector256.ConditionalSelect(Vector256.GreaterThan(throughfall, Lanes.Zero), Lanes.Zero, state.DryHours + Lanes.One);
        var over = Vector256.GreaterThan(state.DryHours, Vector256.Create(HoursBetweenEvents)) & Vector256.LessThanOrEqual(state.PondMm, Lanes.Zero);
        state.EventInfiltrationMm = Vector256.AndNot(state.EventInfiltrationMm, over);
    }

    /// <summary>Top down: take the inflow, pass on what exceeds saturation, drain the rest by gravity.</summary>
    private static Lanes Drain(SeedbedSoil soil, Lanes[] water, Lanes inflowMm)
    {
        var (saturation, perSaturation) = (soil.Hydraulics.Saturation, soil.PerSaturation);
        var inflow = inflowMm;
        for (var i = 0; i < SeedbedSoil.Layers; i++)
        {
            var x = LaneMath.Min(Lanes.One, (water[i] + (inflow * SeedbedSoil.PerThickness[i])) * perSaturation);
            var left = LaneMath.Min(x, soil.DrainedInAnHour(i, x)) * saturation;
            inflow += (water[i] - left) * SeedbedSoil.ThicknessMm[i];
            water[i] = left;
        }

        return inflow;
    }

    /// <summary>
    /// Implicit diffusion between layers with evaporation from the top one, resisted as it dries; where an hour's evaporation
    /// would take more than three tenths of the water above air-dry it is made part of the implicit system.
    /// </summary>
    private static Lanes DiffuseAndEvaporate(SeedbedSoil soil, SeedbedState state, Lanes demandMm)
    {
        var water = state.WaterContent;
        Span<Lanes> between = stackalloc Lanes[SeedbedSoil.Layers];
        Conductances(soil, water, between);
        var dry = Vector256.Create(soil.AirDry);
        var wet = Vector256.GreaterThan(water[0], dry);
        state.SurfaceSM = SurfaceResistanceSM(soil, water[0]);
        var rate = Select(wet, demandMm * (AerodynamicSM + WetSurfaceSM) / (state.SurfaceSM + Vector256.Create(AerodynamicSM)), Lanes.Zero);
        var above = water[0] - dry;
        var heavy = Vector256.GreaterThan(rate, 0.3 * SeedbedSoil.ThicknessMm[0] * above);
        var slope = Select(heavy, rate / LaneMath.Max(above, Vector256.Create(LeastAbove)), Lanes.Zero);
        Solve(water, between, slope, Select(heavy, slope * dry, -rate));
        return Select(heavy, slope * (water[0] - dry), rate);
    }

    /// <summary>Conductance between neighbors: mean diffusivity over the distance of centers, held below 4 of the thinner layer an hour, mm/h.</summary>
    private static void Conductances(SeedbedSoil soil, Lanes[] water, Span<Lanes> between)
    {
        var perSaturation = soil.PerSaturation;
        var above = soil.DiffusivityMm2H(water[0] * perSaturation);
        for (var i = 0; i + 1 < SeedbedSoil.Layers; i++)
        {
            var below = soil.DiffusivityMm2H(water[i + 1] * perSaturation);
            between[i] = LaneMath.Min((above + below) * SeedbedSoil.PerPair[i], Vector256.Create(SeedbedSoil.MostBetween[i]));
            above = below;
        }
    }

    /// <summary>Thomas algorithm on the six layers; the top row carries the evaporation as diagonal and right-hand side.</summary>
    private static void Solve(Lanes[] water, Span<Lanes> between, Lanes topDiagonal, Lanes topRight)
    {
        const int last = SeedbedSoil.Layers - 1;
        Span<Lanes> factor = stackalloc Lanes[SeedbedSoil.Layers];
        var pivot = Lanes.One / (Vector256.Create(SeedbedSoil.ThicknessMm[0]) + between[0] + topDiagonal);
        factor[0] = between[0] * pivot;
        water[0] = ((SeedbedSoil.ThicknessMm[0] * water[0]) + topRight) * pivot;
        for (var i = 1; i <= last; i++)
        {
            var (up, down) = (between[i - 1], i < last ? between[i] : Lanes.Zero);
            pivot = Lanes.One / (Vector256.Create(SeedbedSoil.ThicknessMm[i]) + up + down - (up * factor[i - 1]));
            factor[i] = down * pivot;
            water[i] = ((SeedbedSoil.ThicknessMm[i] * water[i]) + (up * water[i - 1])) * pivot;
        }

        for (var i = last - 1; i >= 0; i--)
        {
            water[i] += factor[i] * water[i + 1];
        }
    }

    /// <summary>Roots draw evenly over their depth, less where the layer is below half of its available water, nothing below wilting point.</summary>
    private static Lanes TakeUp(SeedbedSoil soil, Lanes[] water, Lanes demandMm, double rootDepthMm)
    {
        if (rootDepthMm <= 0.0 || Vector256.LessThanOrEqualAll(demandMm, Lanes.Zero))
        {
            return Lanes.Zero;
        }

        var (taken, top, perDepth) = (Lanes.Zero, 0.0, 1.0 / rootDepthMm);
        var wilting = Vector256.Create(soil.Hydraulics.WiltingPoint);
        var easy = 1.0 / (0.5 * soil.Hydraulics.AvailableWater);
        for (var i = 0; i < SeedbedSoil.Layers && top < rootDepthMm; i++)
        {
            var thickness = SeedbedSoil.ThicknessMm[i];
            var rooted = Math.Min(thickness, rootDepthMm - top) * perDepth;
            var free = LaneMath.Max(Lanes.Zero, water[i] - wilting);
            var take = LaneMath.Min(LaneMath.Max(Lanes.Zero, demandMm) * rooted * LaneMath.Min(Lanes.One, free * easy), free * thickness);
            water[i] -= take * SeedbedSoil.PerThickness[i];
            taken += take;
            top += thickness;
        }

        return taken;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lanes Select(Lanes mask, Lanes yes, Lanes no) => Vector256.ConditionalSelect(mask, yes, no);
}
