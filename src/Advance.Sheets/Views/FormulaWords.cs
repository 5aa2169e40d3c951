namespace Advance.Sheets.Views;

/// <summary>What the symbols of a formula stand for, for those who check it by hand.</summary>
internal static class FormulaWords
{
    private const string Phasors = "U nominal voltage; eᵢ lost along the voltage on each feeder and lead on the way, fᵢ lost across it";

    private static readonly Dictionary<string, string> Symbols = new(StringComparer.Ordinal)
    {
        ["I = Σ Iᵢ"] = "Iᵢ of each load or unit; magnitudes are added, which is never too little",
        ["I = √(a² + b² + c²) + d"] = "a in phase, b lagging, c third harmonics, d what has no known angle",
        ["I = √(Σ Nᵢ²)"] = "Nᵢ in the neutral, of each order",
        ["u = 100 · I / n"] = "I in use, n what the device, the outlet or the inlet may carry",
        ["u = 100 · (U - √((U - Σ eᵢ)² + (Σ fᵢ)²)) / U"] = Phasors,
        ["Uₑ = √((U - Σ eᵢ)² + (Σ fᵢ)²)"] = Phasors,
        ["h = 100 · (√((U - Σ eᵢ)² + (Σ fᵢ)²) - U) / U"] = Phasors,
        ["u = 100 · Σ eᵢ / U"] = "eᵢ lost along the voltage on each feeder and lead on the way; U nominal voltage",
        ["U = u · √((cos(θ) - s)² + (sin(θ) - t)²)"] = "u nominal voltage to neutral; θ angle of the leg in radians; s and t how far the open neutral moves, along and across, as a share of it",
        ["P = d / 100 · r"] = "d what is left of the rating r in this place, per cent",
        ["S = d / 100 · r"] = "d what is left of the rating r in this place, per cent",
        ["P = k · S"] = "k power factor, S apparent power of the set",
        ["u = 100 · P / Pₑ"] = "P real power, Pₑ of the engine",
        ["u = 100 · I / Iᵣ"] = "I worst line, Iᵣ rated current",
        ["u = 100 · I₂ / I₁"] = "I₁ positive and I₂ negative sequence",
        ["I = S / (√3 · U)"] = "S rating, U voltage between lines",
        ["I = S / (n · U)"] = "S rating, n lines, U voltage to neutral",
        ["I = s / 100 · Iᵣ"] = "s share by policy, Iᵣ rated current",
        ["I = k · Iᵣ"] = "Iᵣ rated current, k times it",
        ["s = 100 · ΔS / S"] = "ΔS all that one step adds, S rating of the set",
        ["m = Σ sᵢ · tᵢ / Σ tᵢ"] = "sᵢ load of each spell as it counts, tᵢ its length",
        ["s = max(30, u)"] = "u load, per cent: less than 30 counts as 30",
        ["t = Σ tᵢ"] = "tᵢ of each spell",
        ["V = m / 100 · Σ vᵢ"] = "m margin, per cent; vᵢ fuel of each spell",
        ["v = q · t / 3600"] = "q fuel an hour, t length of the spell, s",
        ["q = m + (n - m) · f"] = "m and n of the rows below and above in the table, f how far between them",
        ["r = 100 · V / m - Σ vᵢ"] = "V tank, m margin, per cent, vᵢ burnt before",
        ["t = s + 3600 · r / q"] = "s start of the spell, r what is left, q fuel an hour",
        ["S = U · Σ Iᵢ"] = "U voltage to neutral, Iᵢ of each line",
        ["k = P / S"] = "P real and S apparent power",
        ["Q = max(0, -Σ qᵢ)"] = "qᵢ reactive power of each load, negative where it leads",
        ["U = R · n"] = "R electrode, n what the residual-current device trips at",
        ["Iz = I · C · Ch"] = "I what it carries alone; C the worst of grouping, cover and coil on its way; Ch for third harmonics",
        ["I = It · Ca"] = "It of the table; Ca for the air",
        ["It = t"] = "t of the table for its size, insulation and loaded conductors",
        ["Ca = min(1, √((θ - t) / (θ - 30)))"] = "θ what the insulation bears, t the air, both in °C",
        ["Cg = c"] = "c of the table",
        ["Cc = c"] = "c of the table",
        ["Ch = c"] = "c of the table",
        ["C = Cg · Ci / 100"] = "Cg for grouping, Ci what is left under the cover, per cent",
        ["Zs = Ze + √((Σ Rᵢ + Σ rᵢ)² + (2 · Σ Xᵢ)²)"] = "Ze of the supply; Rᵢ of lines and rᵢ of earths, hot, Xᵢ their reactance, on each feeder and lead on the way",
        ["Z = 0.95 · U₀ / Ia"] = "U₀ voltage to earth; Ia what surely opens the device at once",
        ["Z = 50 / IΔn"] = "IΔn what the residual-current device trips at",
        ["Z = z · U₀ / 230"] = "z of the table for the fuse, U₀ voltage to earth",
        ["Ia = k · In"] = "k of the type of the breaker, In its rating",
        ["I = U₀ / √((U₀ / Iₚ)² + (2 · Σ Rᵢ)²)"] = "U₀ voltage to earth; Iₚ largest fault current of the supply; Rᵢ of feeders, cold",
        ["I = i · U / Uₑ"] = "i at nominal voltage U, Uₑ the voltage it gets",
        ["I = Σ iᵢ / √2"] = "iᵢ peak of each unit on that line",
        ["L = Σ fᵢ / W"] = "fᵢ floor that each stack of cases takes, m²; W width of the load space",
        ["D = Σ dᵢ"] = "dᵢ length inside each vehicle",
        ["P = Σ pᵢ"] = "pᵢ of each load, or payload of each vehicle",
        ["S = Σ sᵢ"] = "sᵢ of each load, or space of each vehicle, m³",
        ["V = Σ vᵢ"] = "vᵢ of each case and loose piece, m³",
        ["W = Σ uᵢ"] = "uᵢ of each case and loose piece, with what is in it",
        ["W = Σ wᵢ"] = "wᵢ of each part",
        ["G = c + Σ wᵢ"] = "c empty case; wᵢ of what is in it",
        ["n = W · D / (w · d)"] = "W width and D depth of the stage; w and d of one deck",
        ["H = Σ hᵢ"] = "hᵢ of each box",
        ["T = B + H"] = "B height of what it stands on; H height of the stack",
    };

    /// <summary>In the order in which they are put in; empty where nobody wrote it down.</summary>
    public static string Of(string formula) => Symbols.GetValueOrDefault(formula, "");
}
