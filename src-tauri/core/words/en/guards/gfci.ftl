# Where the device in the outlet that ends a shock is called a GFCI.

-a-guard = a GFCI
-a-guard-short = a GFCI
-guard = GFCI
