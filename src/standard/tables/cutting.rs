use crate::standard::*;
pub(crate) static CUTTING_RULES: [CuttingRule; 0] = [];
