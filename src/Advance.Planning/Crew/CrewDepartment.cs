using Advance.Domain;

namespace Advance.Planning;

/// <summary>Puts the work in order and on the people who are called.</summary>
public static class CrewDepartment
{
    /// <summary>Settles who does what when, from everything that was chosen.</summary>
    public static CrewPlan Settle(Brief brief, Backbone backbone, PowerPlan power, CablePlan cables, StockPlan pull)
    {
        _ = (brief, backbone, power, cables, pull);
        return new CrewPlan([], []);
    }
}
