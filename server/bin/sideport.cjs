#!/usr/bin/env node
"use strict";
require("../dist/sideport.cjs");
