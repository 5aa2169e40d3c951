namespace Advance.Tests.Workings;

/// <summary>
/// Puts numbers into the right-hand side of a printed formula, as a person with a pocket calculator would:
/// <c>c = 331.3 · √(1 + T / 273.15)</c>, <c>s = max(m, ⌈p · n / 100⌉)</c>, <c>W = Σ wᵢ</c>, <c>h = |u - v|</c>. Products need their dot. Σ takes all
/// factors up to the next + or -. An exception is told behind the formula: <c>…, or 0 where n = 0</c>. Brackets that round up or down forgive 1e-9, since 10 % of 10 is exactly 1. Angles of cos, sin and tan are in
/// radian.
/// </summary>
internal sealed class Evaluator
{
    private const double Slack = 1e-9;

    private static readonly Dictionary<string, Func<double, double>> Functions = new(StringComparer.Ordinal)
    {
        ["cos"] = Math.Cos,
        ["sin"] = Math.Sin,
        ["tan"] = Math.Tan,
        ["acos"] = Math.Acos,
        ["asin"] = Math.Asin,
        ["atan"] = Math.Atan,
        ["log10"] = Math.Log10,
        ["ln"] = Math.Log,
    };

    private readonly Tokens tokens;
    private readonly IReadOnlyDictionary<string, Amounts> inputs;
    private readonly HashSet<string> used = new(StringComparer.Ordinal);

    private Evaluator(string text, IReadOnlyDictionary<string, Amounts> inputs)
    {
        tokens = new Tokens(text);
        this.inputs = inputs;
    }

    /// <summary>The value of what stands right of the first equals sign.</summary>
    /// <exception cref="FormulaFault">The formula cannot be read, lacks an input, or has one that it does not use.</exception>
    public static double Evaluate(string formula, IReadOnlyDictionary<string, Amounts> inputs)
    {
        var equals = formula.IndexOf('=', StringComparison.Ordinal);
        if (equals < 0)
        {
            throw new FormulaFault("there is no equals sign");
        }

        var evaluator = new Evaluator(formula[(equals + 1)..], inputs);
        var value = evaluator.Whole();
        if (!evaluator.tokens.AtEnd)
        {
            throw new FormulaFault($"cannot read \"{evaluator.tokens.Rest}\"");
        }

        var idle = inputs.Keys.Where(symbol => !evaluator.used.Contains(symbol)).ToList();
        return idle.Count == 0 ? value.Single : throw new FormulaFault($"{string.Join(", ", idle)} put in, but not in the formula");
    }

    private Amounts Whole()
    {
        var value = Expression();
        while (tokens.Take(','))
        {
            Word("or");
            var other = Expression();
            Word("where");
            var left = Expression();
            tokens.Expect('=');
            value = left.Single == Expression().Single ? other : value;
        }

        return value;
    }

    private void Word(string word)
    {
        if (!tokens.Name(out var name) || name != word)
        {
            throw new FormulaFault($"\"{word}\" is missing before \"{tokens.Rest}\"");
        }
    }

    private Amounts Expression()
    {
        var sum = Product();
        while (tokens.Next is '+' or '-' or '−')
        {
            var minus = !tokens.Take('+') && tokens.Take('-', '−');
            sum = sum.With(Product(), (a, b) => minus ? a - b : a + b);
        }

        return sum;
    }

    private Amounts Product()
    {
        var product = Signed();
        while (tokens.Next is '·' or '×' or '/')
        {
            var divides = tokens.Take('/') || !tokens.Take('·', '×');
            product = product.With(Signed(), (a, b) => divides ? a / b : a * b);
        }

        return product;
    }

    private Amounts Signed() => tokens.Take('-', '−') ? Signed().Each(value => -value) : Raised();

    private Amounts Raised()
    {
        var value = Atom();
        while (true)
        {
            if (tokens.Superscript(out var power))
            {
                value = value.Each(number => Math.Pow(number, power));
            }
            else if (tokens.Take('^'))
            {
                value = value.With(Signed(), Math.Pow);
            }
            else
            {
                return value;
            }
        }
    }

    private Amounts Atom()
    {
        if (tokens.Number(out var number))
        {
            return Amounts.One(number);
        }

        if (tokens.Take('√'))
        {
            return Raised().Each(Math.Sqrt);
        }

        if (tokens.Take('Σ', '∑'))
        {
            return Amounts.One(Product().Terms.Sum());
        }

        return tokens.Name(out var name) ? Named(name) : Bracketed();
    }

    private Amounts Bracketed()
    {
        if (tokens.Take('('))
        {
            return Closed(')');
        }

        if (tokens.Take('|'))
        {
            return Closed('|').Each(Math.Abs);
        }

        if (tokens.Take('⌈'))
        {
            return Closed('⌉').Each(value => Math.Ceiling(value - Slack));
        }

        return tokens.Take('⌊')
            ? Closed('⌋').Each(value => Math.Floor(value + Slack))
            : throw new FormulaFault($"a value is missing before \"{tokens.Rest}\"");
    }

    private Amounts Closed(char bracket)
    {
        var inside = Expression();
        tokens.Expect(bracket);
        return inside;
    }

    private Amounts Named(string name)
    {
        if (inputs.TryGetValue(name, out var value))
        {
            used.Add(name);
            return value;
        }

        return name switch
        {
            "π" => Amounts.One(Math.PI),
            "max" => Extreme(values => values.Max()),
            "min" => Extreme(values => values.Min()),
            _ when Functions.TryGetValue(name, out var function) => Raised().Each(function),
            _ => throw new FormulaFault($"{name} stands in the formula, but was not put in"),
        };
    }

    // max(a, b, …) of numbers, and max Lᵢ of a list.
    private Amounts Extreme(Func<List<double>, double> pick)
    {
        var terms = new List<double>();
        if (!tokens.Take('('))
        {
            terms.AddRange(Raised().Terms);
            return Amounts.One(pick(terms));
        }

        do
        {
            terms.AddRange(Expression().Terms);
        }
        while (tokens.Take(','));

        tokens.Expect(')');
        return Amounts.One(pick(terms));
    }
}
