namespace Seedfall.Engine.Simulation.Seedbed;

/// <summary>
/// One hour of water in the seedbed, in order: leaves and mulch, infiltration and runoff, gravity, capillary diffusion with
/// evaporation, roots. Mass is kept to rounding. No allocation.
/// </summary>
public static class SeedbedWater
{
    private const double FirstInfiltrationMm = 1.0;
    private const int HoursBetweenEvents = 6;
    private const double AerodynamicSM = 60.0;
    private const double WetSurfaceSM = 10.0;

    /// <summary>Steps the state by one hour.</summary>
    public static SeedbedFluxes Step(SeedbedSoil soil, SeedbedState state, in SeedbedSurface surface, in SeedbedHour hour)
    {
        var evaporated = Intercept(state, surface, hour, out var throughfall, out var demand);
        var infiltrated = Infiltrate(soil, state, surface, throughfall, ref demand, ref evaporated, out var runoff);
        var drained = Drain(soil, state.WaterContent, infiltrated);
        evaporated += DiffuseAndEvaporate(soil, state.WaterContent, demand * (1.0 - (0.55 * surface.MulchCover)));
        var transpired = TakeUp(soil, state.WaterContent, hour.TranspirationMm, hour.RootDepthMm);
        return new SeedbedFluxes(evaporated, transpired, runoff, drained);
    }

    /// <summary>Leaves and mulch fill first and dry first.</summary>
    private static double Intercept(SeedbedState state, in SeedbedSurface surface, in SeedbedHour hour, out double throughfall, out double demand)
    {
        var held = state.InterceptedMm + hour.RainMm + hour.IrrigationMm;
        throughfall = Math.Max(0.0, held - surface.StoreMm);
        held -= throughfall;
        var evaporated = Math.Min(held, hour.PotentialEvaporationMm);
        state.InterceptedMm = held - evaporated;
        demand = hour.PotentialEvaporationMm - evaporated;
        return evaporated;
    }

    /// <summary>Green-Ampt capacity f = K (1 + suction deficit / (F + F0)); the rest stands, then runs.</summary>
    private static double Infiltrate(
        SeedbedSoil soil, SeedbedState state, in SeedbedSurface surface, double throughfall, ref double demand, ref double evaporated, out double runoff)
    {
        CountEvent(state, throughfall);
        var standing = state.PondMm + throughfall;
        var fromPond = Math.Min(standing, demand);
        (standing, demand, evaporated) = (standing - fromPond, demand - fromPond, evaporated + fromPond);
        var deficit = Math.Max(0.0, soil.Hydraulics.Saturation - state.WaterContent[2]);
        var capacity = soil.EffectiveConductivityMmH * (1.0 + (soil.WettingFrontSuctionMm * deficit / (state.EventInfiltrationMm + FirstInfiltrationMm)));
        var infiltrated = Math.Min(standing, capacity);
        state.EventInfiltrationMm += infiltrated;
        state.PondMm = standing - infiltrated;
        runoff = SpillPond(state, surface);
        return infiltrated;
    }

    private static void CountEvent(SeedbedState state, double throughfall)
    {
        state.DryHours = throughfall > 0.0 ? 0 : state.DryHours + 1;
        if (state.DryHours > HoursBetweenEvents && state.PondMm <= 0.0)
        {
            state.EventInfiltrationMm = 0.0;
        }
    }

    private static double SpillPond(SeedbedState state, in SeedbedSurface surface)
    {
        var runoff = Math.Max(0.0, state.PondMm - surface.PondMm);
        state.PondMm -= runoff;
        return runoff;
    }

    /// <summary>Top down: take the inflow, pass on what exceeds saturation, drain the rest by gravity.</summary>
    private static double Drain(SeedbedSoil soil, double[] water, double inflowMm)
    {
        var saturation = soil.Hydraulics.Saturation;
        var inflow = inflowMm;
        for (var i = 0; i < SeedbedSoil.Layers; i++)
        {
            var thickness = SeedbedSoil.ThicknessMm[i];
            var held = (water[i] * thickness) + inflow;
            var spill = Math.Max(0.0, held - (saturation * thickness));
            var x = (held - spill) / (saturation * thickness);
            var left = Math.Min(x, soil.DrainedInAnHour(i, x));
            water[i] = left * saturation;
            inflow = held - (left * saturation * thickness);
        }

        return inflow;
    }

    /// <summary>
    /// Implicit diffusion between layers with evaporation from the top one, resisted as it dries:
    /// r = 10 exp(5.34 (1 - theta/theta_c)), after van de Griend and Owe 1994 made free of texture (common practice).
    /// </summary>
    private static double DiffuseAndEvaporate(SeedbedSoil soil, double[] water, double demandMm)
    {
        const int n = SeedbedSoil.Layers;
        Span<double> between = stackalloc double[n];
        Conductances(soil, water, between);
        var dry = soil.AirDry;
        var resistance = Math.Max(WetSurfaceSM, WetSurfaceSM * Math.Exp(5.34 * (1.0 - (water[0] / soil.EvaporationOnset))));
        var rate = demandMm * (AerodynamicSM + WetSurfaceSM) / (AerodynamicSM + resistance);
        var available = Math.Max(0.0, (water[0] - dry) * SeedbedSoil.ThicknessMm[0]);
        if (available <= 0.0)
        {
            Solve(water, between, 0.0, 0.0);
            return 0.0;
        }

        if (rate <= 0.3 * available)
        {
            Solve(water, between, 0.0, -rate);
            return rate;
        }

        var slope = rate / (water[0] - dry);
        Solve(water, between, slope, slope * dry);
        return slope * (water[0] - dry);
    }

    /// <summary>Conductance between neighbors: mean diffusivity over the distance of centers, held below 4 of the thinner layer an hour, mm/h.</summary>
    private static void Conductances(SeedbedSoil soil, double[] water, Span<double> between)
    {
        var saturation = soil.Hydraulics.Saturation;
        var above = soil.DiffusivityMm2H(water[0] / saturation);
        for (var i = 0; i + 1 < SeedbedSoil.Layers; i++)
        {
            var below = soil.DiffusivityMm2H(water[i + 1] / saturation);
            var distance = 0.5 * (SeedbedSoil.ThicknessMm[i] + SeedbedSoil.ThicknessMm[i + 1]);
            between[i] = Math.Min(0.5 * (above + below) / distance, 4.0 * Math.Min(SeedbedSoil.ThicknessMm[i], SeedbedSoil.ThicknessMm[i + 1]));
            above = below;
        }
    }

    /// <summary>Thomas algorithm on the six layers; the top row carries the evaporation as diagonal and right-hand side.</summary>
    private static void Solve(double[] water, Span<double> between, double topDiagonal, double topRight)
    {
        const int n = SeedbedSoil.Layers;
        Span<double> factor = stackalloc double[n];
        Span<double> right = stackalloc double[n];
        var up = 0.0;
        for (var i = 0; i < n; i++)
        {
            var down = i + 1 < n ? between[i] : 0.0;
            var diagonal = SeedbedSoil.ThicknessMm[i] + up + down + (i == 0 ? topDiagonal : 0.0);
            var value = (SeedbedSoil.ThicknessMm[i] * water[i]) + (i == 0 ? topRight : 0.0);
            var pivot = i == 0 ? diagonal : diagonal - (up * factor[i - 1]);
            factor[i] = down / pivot;
            right[i] = i == 0 ? value / pivot : (value + (up * right[i - 1])) / pivot;
            up = down;
        }

        water[n - 1] = right[n - 1];
        for (var i = n - 2; i >= 0; i--)
        {
            water[i] = right[i] + (factor[i] * water[i + 1]);
        }
    }

    /// <summary>Roots draw evenly over their depth, less where the layer is below half of its available water, nothing below wilting point.</summary>
    private static double TakeUp(SeedbedSoil soil, double[] water, double demandMm, double rootDepthMm)
    {
        if (demandMm <= 0.0 || rootDepthMm <= 0.0)
        {
            return 0.0;
        }

        var (taken, top) = (0.0, 0.0);
        var wilting = soil.Hydraulics.WiltingPoint;
        var easy = 0.5 * soil.Hydraulics.AvailableWater;
        for (var i = 0; i < SeedbedSoil.Layers && top < rootDepthMm; i++)
        {
            var thickness = SeedbedSoil.ThicknessMm[i];
            var rooted = Math.Min(thickness, rootDepthMm - top) / rootDepthMm;
            var free = Math.Max(0.0, water[i] - wilting);
            var take = Math.Min(demandMm * rooted * Math.Min(1.0, free / easy), free * thickness);
            water[i] -= take / thickness;
            taken += take;
            top += thickness;
        }

        return taken;
    }
}
