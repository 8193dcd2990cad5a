// Recomputes this release: node verify.mjs. Made from the program that published it; needs Node 20 or newer and nothing else.
import { createRequire } from 'node:module';
const require = createRequire(import.meta.url);
var rj=Object.create;var Hl=Object.defineProperty;var tj=Object.getOwnPropertyDescriptor;var nj=Object.getOwnPropertyNames;var ij=Object.getPrototypeOf,oj=Object.prototype.hasOwnProperty;var es=(e=>typeof require<"u"?require:typeof Proxy<"u"?new Proxy(e,{get:(r,n)=>(typeof require<"u"?require:r)[n]}):e)(function(e){if(typeof require<"u")return require.apply(this,arguments);throw Error('Dynamic require of "'+e+'" is not supported')});var v=(e,r)=>()=>{try{return r||e((r={exports:{}}).exports,r),r.exports}catch(n){throw r=0,n}},Yr=(e,r)=>{for(var n in r)Hl(e,n,{get:r[n],enumerable:!0})},aj=(e,r,n,i)=>{if(r&&typeof r=="object"||typeof r=="function")for(let t of nj(r))!oj.call(e,t)&&t!==n&&Hl(e,t,{get:()=>r[t],enumerable:!(i=tj(r,t))||i.enumerable});return e};var $t=(e,r,n)=>(n=e!=null?rj(ij(e)):{},aj(r||!e||!e.__esModule?Hl(n,"default",{value:e,enumerable:!0}):n,e));var a4=v((x1e,o4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var dL=typeof Object.defineProperty=="function"?Object.defineProperty:null;o4.exports=dL});var u4=v((A1e,s4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var fL=a4();function mL(){try{return fL({},"x",{}),!0}catch{return!1}}s4.exports=mL});var l4=v((E1e,c4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var pL=Object.defineProperty;c4.exports=pL});var Dv=v((D1e,d4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function vL(e){return typeof e=="number"}d4.exports=vL});var zv=v((z1e,m4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function gL(e){return e[0]==="-"}function f4(e){var r="",n;for(n=0;n<e;n++)r+="0";return r}function hL(e,r,n){var i=!1,t=r-e.length;return t<0||(gL(e)&&(i=!0,e=e.substr(1)),e=n?e+f4(t):f4(t)+e,i&&(e="-"+e)),e}m4.exports=hL});var h4=v((q1e,g4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yL=Dv(),p4=zv(),bL=String.prototype.toLowerCase,v4=String.prototype.toUpperCase;function $L(e){var r,n,i;switch(e.specifier){case"b":r=2;break;case"o":r=8;break;case"x":case"X":r=16;break;default:r=10;break}if(n=e.arg,i=parseInt(n,10),!isFinite(i)){if(!yL(n))throw new Error("invalid integer. Value: "+n);i=0}return i<0&&(e.specifier==="u"||r!==10)&&(i=4294967295+i+1),i<0?(n=(-i).toString(r),e.precision&&(n=p4(n,e.precision,e.padRight)),n="-"+n):(n=i.toString(r),!i&&!e.precision?n="":e.precision&&(n=p4(n,e.precision,e.padRight)),e.sign&&(n=e.sign+n)),r===16&&(e.alternate&&(n="0x"+n),n=e.specifier===v4.call(e.specifier)?v4.call(n):bL.call(n)),r===8&&e.alternate&&n.charAt(0)!=="0"&&(n="0"+n),n}g4.exports=$L});var b4=v((T1e,y4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function _L(e){return typeof e=="string"}y4.exports=_L});var w4=v((j1e,_4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var wL=Math.abs,SL=String.prototype.toLowerCase,$4=String.prototype.toUpperCase,Pn=String.prototype.replace,IL=/e\+(\d)$/,kL=/e-(\d)$/,OL=/^(\d+)$/,NL=/^(\d+)e/,PL=/\.0$/,xL=/\.0*e/,AL=/(\..*[^0])0*e/;function EL(e,r){var n,i;switch(r.specifier){case"e":case"E":i=e.toExponential(r.precision);break;case"f":case"F":i=e.toFixed(r.precision);break;case"g":case"G":wL(e)<1e-4?(n=r.precision,n>0&&(n-=1),i=e.toExponential(n)):i=e.toPrecision(r.precision),r.alternate||(i=Pn.call(i,AL,"$1e"),i=Pn.call(i,xL,"e"),i=Pn.call(i,PL,""));break;default:throw new Error("invalid double notation. Value: "+r.specifier)}return i=Pn.call(i,IL,"e+0$1"),i=Pn.call(i,kL,"e-0$1"),r.alternate&&(i=Pn.call(i,OL,"$1."),i=Pn.call(i,NL,"$1.e")),e>=0&&r.sign&&(i=r.sign+i),i=r.specifier===$4.call(r.specifier)?$4.call(i):SL.call(i),i}_4.exports=EL});var k4=v((C1e,I4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function S4(e){var r="",n;for(n=0;n<e;n++)r+=" ";return r}function DL(e,r,n){var i=r-e.length;return i<0||(e=n?e+S4(i):S4(i)+e),e}I4.exports=DL});var N4=v((R1e,O4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var zL=h4(),qL=b4(),TL=Dv(),jL=w4(),CL=k4(),RL=zv(),UL=String.fromCharCode,FL=Array.isArray;function gc(e){return e!==e}function ML(e){var r={};return r.specifier=e.specifier,r.precision=e.precision===void 0?1:e.precision,r.width=e.width,r.flags=e.flags||"",r.mapping=e.mapping,r}function LL(e){var r,n,i,t,o,a,s,u,c,l;if(!FL(e))throw new TypeError("invalid argument. First argument must be an array. Value: `"+e+"`.");for(a="",s=1,c=0;c<e.length;c++)if(i=e[c],qL(i))a+=i;else{if(r=i.precision!==void 0,i=ML(i),!i.specifier)throw new TypeError("invalid argument. Token is missing `specifier` property. Index: `"+c+"`. Value: `"+i+"`.");for(i.mapping&&(s=i.mapping),n=i.flags,l=0;l<n.length;l++)switch(t=n.charAt(l),t){case" ":i.sign=" ";break;case"+":i.sign="+";break;case"-":i.padRight=!0,i.padZeros=!1;break;case"0":i.padZeros=n.indexOf("-")<0;break;case"#":i.alternate=!0;break;default:throw new Error("invalid flag: "+t)}if(i.width==="*"){if(i.width=parseInt(arguments[s],10),s+=1,gc(i.width))throw new TypeError("the argument for * width at position "+s+" is not a number. Value: `"+i.width+"`.");i.width<0&&(i.padRight=!0,i.width=-i.width)}if(r&&i.precision==="*"){if(i.precision=parseInt(arguments[s],10),s+=1,gc(i.precision))throw new TypeError("the argument for * precision at position "+s+" is not a number. Value: `"+i.precision+"`.");i.precision<0&&(i.precision=1,r=!1)}switch(i.arg=arguments[s],i.specifier){case"b":case"o":case"x":case"X":case"d":case"i":case"u":r&&(i.padZeros=!1),i.arg=zL(i);break;case"s":i.maxWidth=r?i.precision:-1,i.arg=String(i.arg);break;case"c":if(!gc(i.arg)){if(o=parseInt(i.arg,10),o<0||o>127)throw new Error("invalid character code. Value: "+i.arg);i.arg=gc(o)?String(i.arg):UL(o)}break;case"e":case"E":case"f":case"F":case"g":case"G":if(r||(i.precision=6),u=parseFloat(i.arg),!isFinite(u)){if(!TL(i.arg))throw new Error("invalid floating-point number. Value: "+a);u=i.arg,i.padZeros=!1}i.arg=jL(u,i);break;default:throw new Error("invalid specifier: "+i.specifier)}i.maxWidth>=0&&i.arg.length>i.maxWidth&&(i.arg=i.arg.substring(0,i.maxWidth)),i.padZeros?i.arg=RL(i.arg,i.width||i.precision,i.padRight):i.width&&(i.arg=CL(i.arg,i.width,i.padRight)),a+=i.arg||"",s+=1}return a}O4.exports=LL});var x4=v((U1e,P4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ZL=N4();P4.exports=ZL});var E4=v((F1e,A4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hc=/%(?:([1-9]\d*)\$)?([0 +\-#]*)(\*|\d+)?(?:(\.)(\*|\d+)?)?[hlL]?([%A-Za-z])/g;function VL(e){var r={mapping:e[1]?parseInt(e[1],10):void 0,flags:e[2],width:e[3],precision:e[5],specifier:e[6]};return e[4]==="."&&e[5]===void 0&&(r.precision="1"),r}function BL(e){var r,n,i,t;for(n=[],t=0,i=hc.exec(e);i;)r=e.slice(t,hc.lastIndex-i[0].length),r.length&&n.push(r),i[6]==="%"?n.push("%"):n.push(VL(i)),t=hc.lastIndex,i=hc.exec(e);return r=e.slice(t),r.length&&n.push(r),n}A4.exports=BL});var z4=v((M1e,D4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var WL=E4();D4.exports=WL});var T4=v((L1e,q4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function GL(e){return typeof e=="string"}q4.exports=GL});var R4=v((Z1e,C4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var HL=x4(),KL=z4(),JL=T4();function j4(e){var r,n;if(!JL(e))throw new TypeError(j4("invalid argument. First argument must be a string. Value: `%s`.",e));for(r=[KL(e)],n=1;n<arguments.length;n++)r.push(arguments[n]);return HL.apply(null,r)}C4.exports=j4});var F4=v((V1e,U4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var XL=R4();U4.exports=XL});var W4=v((B1e,B4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var M4=F4(),Ci=Object.prototype,L4=Ci.toString,Z4=Ci.__defineGetter__,V4=Ci.__defineSetter__,QL=Ci.__lookupGetter__,YL=Ci.__lookupSetter__;function eZ(e,r,n){var i,t,o,a;if(typeof e!="object"||e===null||L4.call(e)==="[object Array]")throw new TypeError(M4("invalid argument. First argument must be an object. Value: `%s`.",e));if(typeof n!="object"||n===null||L4.call(n)==="[object Array]")throw new TypeError(M4("invalid argument. Property descriptor must be an object. Value: `%s`.",n));if(t="value"in n,t&&(QL.call(e,r)||YL.call(e,r)?(i=e.__proto__,e.__proto__=Ci,delete e[r],e[r]=n.value,e.__proto__=i):e[r]=n.value),o="get"in n,a="set"in n,t&&(o||a))throw new Error("invalid argument. Cannot specify one or more accessors and a value or writable attribute in the property descriptor.");return o&&Z4&&Z4.call(e,r,n.get),a&&V4&&V4.call(e,r,n.set),e}B4.exports=eZ});var H4=v((W1e,G4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var rZ=u4(),tZ=l4(),nZ=W4(),qv;rZ()?qv=tZ:qv=nZ;G4.exports=qv});var J4=v((G1e,K4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var iZ=H4();function oZ(e,r,n){iZ(e,r,{configurable:!1,enumerable:!1,writable:!1,value:n})}K4.exports=oZ});var Ze=v((H1e,X4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var aZ=J4();X4.exports=aZ});var Y4=v((K1e,Q4)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function sZ(e){return e!==e}Q4.exports=sZ});var L=v((J1e,e3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var uZ=Y4();e3.exports=uZ});var pe=v((X1e,r3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cZ=Number.POSITIVE_INFINITY;r3.exports=cZ});var n3=v((Q1e,t3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/t3.exports=Number});var o3=v((Y1e,i3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var lZ=n3();i3.exports=lZ});var He=v((ehe,a3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var dZ=o3(),fZ=dZ.NEGATIVE_INFINITY;a3.exports=fZ});var u3=v((rhe,s3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var mZ=pe(),pZ=He();function vZ(e){return e===mZ||e===pZ}s3.exports=vZ});var xn=v((the,c3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gZ=u3();c3.exports=gZ});var d3=v((nhe,l3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function hZ(e){return Math.abs(e)}l3.exports=hZ});var Y=v((ihe,f3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yZ=d3();f3.exports=yZ});var p3=v((ohe,m3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function bZ(){return typeof Symbol=="function"&&typeof Symbol("foo")=="symbol"}m3.exports=bZ});var g3=v((ahe,v3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $Z=p3();v3.exports=$Z});var y3=v((she,h3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _Z=g3(),wZ=_Z();function SZ(){return wZ&&typeof Symbol.toStringTag=="symbol"}h3.exports=SZ});var $3=v((uhe,b3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var IZ=y3();b3.exports=IZ});var Tv=v((che,_3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kZ=Object.prototype.toString;_3.exports=kZ});var S3=v((lhe,w3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var OZ=Tv();function NZ(e){return OZ.call(e)}w3.exports=NZ});var k3=v((dhe,I3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var PZ=Object.prototype.hasOwnProperty;function xZ(e,r){return e==null?!1:PZ.call(e,r)}I3.exports=xZ});var N3=v((fhe,O3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var AZ=k3();O3.exports=AZ});var x3=v((mhe,P3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var EZ=typeof Symbol=="function"?Symbol:void 0;P3.exports=EZ});var E3=v((phe,A3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var DZ=x3();A3.exports=DZ});var q3=v((vhe,z3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var D3=E3(),zZ=typeof D3=="function"?D3.toStringTag:"";z3.exports=zZ});var j3=v((ghe,T3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qZ=N3(),ma=q3(),jv=Tv();function TZ(e){var r,n,i;if(e==null)return jv.call(e);n=e[ma],r=qZ(e,ma);try{e[ma]=void 0}catch{return jv.call(e)}return i=jv.call(e),r?e[ma]=n:delete e[ma],i}T3.exports=TZ});var pa=v((hhe,C3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var jZ=$3(),CZ=S3(),RZ=j3(),Cv;jZ()?Cv=RZ:Cv=CZ;C3.exports=Cv});var U3=v((yhe,R3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var UZ=pa(),FZ=typeof Uint32Array=="function";function MZ(e){return FZ&&e instanceof Uint32Array||UZ(e)==="[object Uint32Array]"}R3.exports=MZ});var M3=v((bhe,F3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var LZ=U3();F3.exports=LZ});var Z3=v(($he,L3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ZZ=4294967295;L3.exports=ZZ});var B3=v((_he,V3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var VZ=typeof Uint32Array=="function"?Uint32Array:null;V3.exports=VZ});var H3=v((whe,G3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var BZ=M3(),Rv=Z3(),W3=B3();function WZ(){var e,r;if(typeof W3!="function")return!1;try{r=[1,3.14,-3.14,Rv+1,Rv+2],r=new W3(r),e=BZ(r)&&r[0]===1&&r[1]===3&&r[2]===Rv-2&&r[3]===0&&r[4]===1}catch{e=!1}return e}G3.exports=WZ});var J3=v((She,K3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var GZ=H3();K3.exports=GZ});var Q3=v((Ihe,X3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var HZ=typeof Uint32Array=="function"?Uint32Array:void 0;X3.exports=HZ});var e$=v((khe,Y3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function KZ(){throw new Error("not implemented")}Y3.exports=KZ});var An=v((Ohe,r$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var JZ=J3(),XZ=Q3(),QZ=e$(),Uv;JZ()?Uv=XZ:Uv=QZ;r$.exports=Uv});var n$=v((Nhe,t$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var YZ=pa(),eV=typeof Float64Array=="function";function rV(e){return eV&&e instanceof Float64Array||YZ(e)==="[object Float64Array]"}t$.exports=rV});var o$=v((Phe,i$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var tV=n$();i$.exports=tV});var s$=v((xhe,a$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nV=typeof Float64Array=="function"?Float64Array:null;a$.exports=nV});var l$=v((Ahe,c$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var iV=o$(),u$=s$();function oV(){var e,r;if(typeof u$!="function")return!1;try{r=new u$([1,3.14,-3.14,NaN]),e=iV(r)&&r[0]===1&&r[1]===3.14&&r[2]===-3.14&&r[3]!==r[3]}catch{e=!1}return e}c$.exports=oV});var f$=v((Ehe,d$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var aV=l$();d$.exports=aV});var p$=v((Dhe,m$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var sV=typeof Float64Array=="function"?Float64Array:void 0;m$.exports=sV});var g$=v((zhe,v$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function uV(){throw new Error("not implemented")}v$.exports=uV});var En=v((qhe,h$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cV=f$(),lV=p$(),dV=g$(),Fv;cV()?Fv=lV:Fv=dV;h$.exports=Fv});var b$=v((The,y$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var fV=pa(),mV=typeof Uint8Array=="function";function pV(e){return mV&&e instanceof Uint8Array||fV(e)==="[object Uint8Array]"}y$.exports=pV});var _$=v((jhe,$$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var vV=b$();$$.exports=vV});var S$=v((Che,w$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gV=255;w$.exports=gV});var k$=v((Rhe,I$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hV=typeof Uint8Array=="function"?Uint8Array:null;I$.exports=hV});var P$=v((Uhe,N$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yV=_$(),Mv=S$(),O$=k$();function bV(){var e,r;if(typeof O$!="function")return!1;try{r=[1,3.14,-3.14,Mv+1,Mv+2],r=new O$(r),e=yV(r)&&r[0]===1&&r[1]===3&&r[2]===Mv-2&&r[3]===0&&r[4]===1}catch{e=!1}return e}N$.exports=bV});var A$=v((Fhe,x$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $V=P$();x$.exports=$V});var D$=v((Mhe,E$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _V=typeof Uint8Array=="function"?Uint8Array:void 0;E$.exports=_V});var q$=v((Lhe,z$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function wV(){throw new Error("not implemented")}z$.exports=wV});var j$=v((Zhe,T$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var SV=A$(),IV=D$(),kV=q$(),Lv;SV()?Lv=IV:Lv=kV;T$.exports=Lv});var R$=v((Vhe,C$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var OV=pa(),NV=typeof Uint16Array=="function";function PV(e){return NV&&e instanceof Uint16Array||OV(e)==="[object Uint16Array]"}C$.exports=PV});var F$=v((Bhe,U$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xV=R$();U$.exports=xV});var L$=v((Whe,M$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var AV=65535;M$.exports=AV});var V$=v((Ghe,Z$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var EV=typeof Uint16Array=="function"?Uint16Array:null;Z$.exports=EV});var G$=v((Hhe,W$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var DV=F$(),Zv=L$(),B$=V$();function zV(){var e,r;if(typeof B$!="function")return!1;try{r=[1,3.14,-3.14,Zv+1,Zv+2],r=new B$(r),e=DV(r)&&r[0]===1&&r[1]===3&&r[2]===Zv-2&&r[3]===0&&r[4]===1}catch{e=!1}return e}W$.exports=zV});var K$=v((Khe,H$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qV=G$();H$.exports=qV});var X$=v((Jhe,J$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var TV=typeof Uint16Array=="function"?Uint16Array:void 0;J$.exports=TV});var Y$=v((Xhe,Q$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function jV(){throw new Error("not implemented")}Q$.exports=jV});var r5=v((Qhe,e5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CV=K$(),RV=X$(),UV=Y$(),Vv;CV()?Vv=RV:Vv=UV;e5.exports=Vv});var n5=v((Yhe,t5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var FV=j$(),MV=r5(),LV={uint16:MV,uint8:FV};t5.exports=LV});var s5=v((eye,a5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var i5=n5(),o5;function ZV(){var e,r;return e=new i5.uint16(1),e[0]=4660,r=new i5.uint8(e.buffer),r[0]===52}o5=ZV();a5.exports=o5});var Dn=v((rye,u5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var VV=s5();u5.exports=VV});var l5=v((tye,c5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var BV=Dn(),Bv;BV===!0?Bv=1:Bv=0;c5.exports=Bv});var m5=v((nye,f5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var WV=An(),GV=En(),HV=l5(),d5=new GV(1),KV=new WV(d5.buffer);function JV(e){return d5[0]=e,KV[HV]}f5.exports=JV});var fr=v((iye,p5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var XV=m5();p5.exports=XV});var g5=v((oye,v5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var QV=Dn(),Wv;QV===!0?Wv=1:Wv=0;v5.exports=Wv});var y5=v((aye,h5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var YV=An(),eB=En(),rB=g5(),Gv=new eB(1),tB=new YV(Gv.buffer);function nB(e,r){return Gv[0]=e,tB[rB]=r>>>0,Gv[0]}h5.exports=nB});var Ri=v((sye,b5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var iB=y5();b5.exports=iB});var Ft=v((uye,$5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var oB=1023;$5.exports=oB});var w5=v((cye,_5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function aB(e){return e===0?.3999999999940942:.3999999999940942+e*(.22222198432149784+e*.15313837699209373)}_5.exports=aB});var I5=v((lye,S5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function sB(e){return e===0?.6666666666666735:.6666666666666735+e*(.2857142874366239+e*(.1818357216161805+e*.14798198605116586))}S5.exports=sB});var P5=v((dye,N5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/e_log.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var k5=fr(),uB=Ri(),cB=L(),lB=Ft(),dB=He(),fB=w5(),mB=I5(),yc=.6931471803691238,bc=19082149292705877e-26,pB=0x40000000000000,vB=.3333333333333333,O5=1048575,gB=2146435072,hB=1048576,yB=1072693248;function bB(e){var r,n,i,t,o,a,s,u,c,l,d,f;return e===0?dB:cB(e)||e<0?NaN:(n=k5(e),o=0,n<hB&&(o-=54,e*=pB,n=k5(e)),n>=gB?e+e:(o+=(n>>20)-lB|0,n&=O5,u=n+614244&1048576|0,e=uB(e,n|u^yB),o+=u>>20|0,s=e-1,(O5&2+n)<3?s===0?o===0?0:o*yc+o*bc:(a=s*s*(.5-vB*s),o===0?s-a:o*yc-(a-o*bc-s)):(l=s/(2+s),f=l*l,u=n-398458|0,d=f*f,c=440401-n|0,t=d*fB(d),i=f*mB(d),u|=c,a=i+t,u>0?(r=.5*s*s,o===0?s-(r-l*(r+a)):o*yc-(r-(l*(r+a)+o*bc)-s)):o===0?s-l*(s-a):o*yc-(l*(s-a)-o*bc-s))))}N5.exports=bB});var le=v((fye,x5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $B=P5();x5.exports=$B});var E5=v((mye,A5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _B=Math.floor;A5.exports=_B});var Nr=v((pye,D5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var wB=E5();D5.exports=wB});var q5=v((vye,z5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var SB=Math.ceil;z5.exports=SB});var j5=v((gye,T5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var IB=q5();T5.exports=IB});var R5=v((hye,C5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kB=Nr(),OB=j5();function NB(e){return e<0?OB(e):kB(e)}C5.exports=NB});var $c=v((yye,U5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var PB=R5();U5.exports=PB});var M5=v((bye,F5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function xB(e){return e===0?.0416666666666666:.0416666666666666+e*(-.001388888888887411+e*2480158728947673e-20)}F5.exports=xB});var Z5=v(($ye,L5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function AB(e){return e===0?-27557314351390663e-23:-27557314351390663e-23+e*(2087572321298175e-24+e*-11359647557788195e-27)}L5.exports=AB});var B5=v((_ye,V5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/12.2.0/lib/msun/src/k_cos.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var EB=M5(),DB=Z5();function zB(e,r){var n,i,t,o;return o=e*e,t=o*o,i=o*EB(o),i+=t*t*DB(o),n=.5*o,t=1-n,t+(1-t-n+(o*i-e*r))}V5.exports=zB});var Hv=v((wye,W5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qB=B5();W5.exports=qB});var K5=v((Sye,H5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/k_sin.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var G5=-.16666666666666632,TB=.00833333333332249,jB=-.0001984126982985795,CB=27557313707070068e-22,RB=-25050760253406863e-24,UB=158969099521155e-24;function FB(e,r){var n,i,t,o;return o=e*e,t=o*o,n=TB+o*(jB+o*CB)+o*t*(RB+o*UB),i=o*e,r===0?e+i*(G5+o*n):e-(o*(.5*r-i*n)-r-i*G5)}H5.exports=FB});var Kv=v((Iye,J5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var MB=K5();J5.exports=MB});var Mt=v((kye,X5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var LB=2147483647;X5.exports=LB});var va=v((Oye,Q5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ZB=2146435072;Q5.exports=ZB});var Jv=v((Nye,Y5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var VB=1048575;Y5.exports=VB});var r_=v((Pye,e_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var BB=Dn(),Xv;BB===!0?Xv=0:Xv=1;e_.exports=Xv});var i_=v((xye,n_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var WB=An(),GB=En(),HB=r_(),t_=new GB(1),KB=new WB(t_.buffer);function JB(e){return t_[0]=e,KB[HB]}n_.exports=JB});var a_=v((Aye,o_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var XB=i_();o_.exports=XB});var c_=v((Eye,u_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var QB=Dn(),s_,Qv,Yv;QB===!0?(Qv=1,Yv=0):(Qv=0,Yv=1);s_={HIGH:Qv,LOW:Yv};u_.exports=s_});var p_=v((Dye,m_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var YB=An(),eW=En(),d_=c_(),f_=new eW(1),l_=new YB(f_.buffer),rW=d_.HIGH,tW=d_.LOW;function nW(e,r){return l_[rW]=e,l_[tW]=r,f_[0]}m_.exports=nW});var ga=v((zye,v_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var iW=p_();v_.exports=iW});var h_=v((qye,g_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var oW=1023;g_.exports=oW});var b_=v((Tye,y_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var aW=-1023;y_.exports=aW});var __=v((jye,$_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var sW=-1074;$_.exports=sW});var S_=v((Cye,w_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var uW=2147483648;w_.exports=uW});var O_=v((Rye,k_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cW=Dn(),I_,eg,rg;cW===!0?(eg=1,rg=0):(eg=0,rg=1);I_={HIGH:eg,LOW:rg};k_.exports=I_});var tg=v((Uye,A_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var lW=An(),dW=En(),P_=O_(),x_=new dW(1),N_=new lW(x_.buffer),fW=P_.HIGH,mW=P_.LOW;function pW(e,r,n,i){return x_[0]=e,r[i]=N_[fW],r[i+n]=N_[mW],r}A_.exports=pW});var D_=v((Fye,E_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var vW=tg();function gW(e){return vW(e,[0,0],1,0)}E_.exports=gW});var _c=v((Mye,q_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hW=Ze(),z_=D_(),yW=tg();hW(z_,"assign",yW);q_.exports=z_});var j_=v((Lye,T_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var bW=S_(),$W=Mt(),_W=_c(),wW=fr(),SW=ga(),ng=[0,0];function IW(e,r){var n,i;return _W.assign(e,ng,1,0),n=ng[0],n&=$W,i=wW(r),i&=bW,n|=i,SW(n,ng[1])}T_.exports=IW});var wc=v((Zye,C_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kW=j_();C_.exports=kW});var Lt=v((Vye,R_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var OW=22250738585072014e-324;R_.exports=OW});var ig=v((Bye,U_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var NW=Lt(),PW=xn(),xW=L(),AW=Y(),EW=4503599627370496;function DW(e,r,n,i){return xW(e)||PW(e)?(r[i]=e,r[i+n]=0,r):e!==0&&AW(e)<NW?(r[i]=e*EW,r[i+n]=-52,r):(r[i]=e,r[i+n]=0,r)}U_.exports=DW});var M_=v((Wye,F_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var zW=ig();function qW(e){return zW(e,[0,0],1,0)}F_.exports=qW});var V_=v((Gye,Z_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var TW=Ze(),L_=M_(),jW=ig();TW(L_,"assign",jW);Z_.exports=L_});var W_=v((Hye,B_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CW=fr(),RW=va(),UW=Ft();function FW(e){var r=CW(e);return r=(r&RW)>>>20,r-UW|0}B_.exports=FW});var H_=v((Kye,G_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var MW=W_();G_.exports=MW});var J_=v((Jye,K_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var LW=pe(),ZW=He(),VW=Ft(),BW=h_(),WW=b_(),GW=__(),HW=L(),KW=xn(),JW=wc(),XW=V_().assign,QW=H_(),YW=_c(),eG=ga(),rG=2220446049250313e-31,tG=2148532223,og=[0,0],ag=[0,0];function nG(e,r){var n,i;return r===0||e===0||HW(e)||KW(e)?e:(XW(e,og,1,0),e=og[0],r+=og[1],r+=QW(e),r<GW?JW(0,e):r>BW?e<0?ZW:LW:(r<=WW?(r+=52,i=rG):i=1,YW.assign(e,ag,1,0),n=ag[0],n&=tG,n|=r+VW<<20,i*eG(n,ag[1])))}K_.exports=nG});var zn=v((Xye,X_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var iG=J_();X_.exports=iG});var Y_=v((Qye,Q_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function oG(e,r){var n,i;for(n=[],i=0;i<r;i++)n.push(e);return n}Q_.exports=oG});var r7=v((Yye,e7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var aG=Y_();e7.exports=aG});var n7=v((ebe,t7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var sG=r7();function uG(e){return sG(0,e)}t7.exports=uG});var o7=v((rbe,i7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2021 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cG=n7();i7.exports=cG});var l7=v((tbe,c7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/k_rem_pio2.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var lG=Nr(),Sc=zn(),Oc=o7(),s7=[10680707,7228996,1387004,2578385,16069853,12639074,9804092,4427841,16666979,11263675,12935607,2387514,4345298,14681673,3074569,13734428,16653803,1880361,10960616,8533493,3062596,8710556,7349940,6258241,3772886,3769171,3798172,8675211,12450088,3874808,9961438,366607,15675153,9132554,7151469,3571407,2607881,12013382,4155038,6285869,7677882,13102053,15825725,473591,9065106,15363067,6271263,9264392,5636912,4652155,7056368,13614112,10155062,1944035,9527646,15080200,6658437,6231200,6832269,16767104,5075751,3212806,1398474,7579849,6349435,12618859],dG=[1.570796251296997,7549789415861596e-23,5390302529957765e-30,3282003415807913e-37,1270655753080676e-44,12293330898111133e-52,27337005381646456e-60,21674168387780482e-67],sg=16777216,ug=5960464477539063e-23,Ic=Oc(20),a7=Oc(20),kc=Oc(20),Ve=Oc(20);function u7(e,r,n,i,t,o,a,s,u){var c,l,d,f,m,g,h,b,y;for(f=o,y=i[n],b=n,m=0;b>0;m++)l=ug*y|0,Ve[m]=y-sg*l|0,y=i[b-1]+l,b-=1;if(y=Sc(y,t),y-=8*lG(y*.125),h=y|0,y-=h,d=0,t>0?(m=Ve[n-1]>>24-t,h+=m,Ve[n-1]-=m<<24-t,d=Ve[n-1]>>23-t):t===0?d=Ve[n-1]>>23:y>=.5&&(d=2),d>0){for(h+=1,c=0,m=0;m<n;m++)b=Ve[m],c===0?b!==0&&(c=1,Ve[m]=16777216-b):Ve[m]=16777215-b;if(t>0)switch(t){case 1:Ve[n-1]&=8388607;break;case 2:Ve[n-1]&=4194303;break}d===2&&(y=1-y,c!==0&&(y-=Sc(1,t)))}if(y===0){for(b=0,m=n-1;m>=o;m--)b|=Ve[m];if(b===0){for(g=1;Ve[o-g]===0;g++);for(m=n+1;m<=n+g;m++){for(u[s+m]=s7[a+m],l=0,b=0;b<=s;b++)l+=e[b]*u[s+(m-b)];i[m]=l}return n+=g,u7(e,r,n,i,t,o,a,s,u)}for(n-=1,t-=24;Ve[n]===0;)n-=1,t-=24}else y=Sc(y,-t),y>=sg?(l=ug*y|0,Ve[n]=y-sg*l|0,n+=1,t+=24,Ve[n]=l):Ve[n]=y|0;for(l=Sc(1,t),m=n;m>=0;m--)i[m]=l*Ve[m],l*=ug;for(m=n;m>=0;m--){for(l=0,g=0;g<=f&&g<=n-m;g++)l+=dG[g]*i[m+g];kc[n-m]=l}for(l=0,m=n;m>=0;m--)l+=kc[m];for(d===0?r[0]=l:r[0]=-l,l=kc[0]-l,m=1;m<=n;m++)l+=kc[m];return d===0?r[1]=l:r[1]=-l,h&7}function fG(e,r,n,i){var t,o,a,s,u,c,l,d,f;for(o=4,s=i-1,a=(n-3)/24|0,a<0&&(a=0),c=n-24*(a+1),d=a-s,f=s+o,l=0;l<=f;l++)d<0?Ic[l]=0:Ic[l]=s7[d],d+=1;for(l=0;l<=o;l++){for(t=0,d=0;d<=s;d++)t+=e[d]*Ic[s+(l-d)];a7[l]=t}return u=o,u7(e,r,u,a7,c,o,a,s,Ic)}c7.exports=fG});var f7=v((nbe,d7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var mG=Math.round;d7.exports=mG});var cg=v((ibe,m7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var pG=f7();m7.exports=pG});var h7=v((obe,g7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/k_rem_pio2.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var vG=cg(),p7=fr(),gG=.6366197723675814,hG=1.5707963267341256,yG=6077100506506192e-26,bG=6077100506303966e-26,$G=20222662487959506e-37,_G=20222662487111665e-37,wG=84784276603689e-45,v7=2047;function SG(e,r,n){var i,t,o,a,s,u,c;return t=vG(e*gG),a=e-t*hG,s=t*yG,c=r>>20|0,n[0]=a-s,i=p7(n[0]),u=c-(i>>20&v7),u>16&&(o=a,s=t*bG,a=o-s,s=t*$G-(o-a-s),n[0]=a-s,i=p7(n[0]),u=c-(i>>20&v7),u>49&&(o=a,s=t*_G,a=o-s,s=t*wG-(o-a-s),n[0]=a-s)),n[1]=a-n[0]-s,t}g7.exports=SG});var b7=v((abe,y7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/e_rem_pio2.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
*
* Optimized by Bruce D. Evans.
* ```
*/var IG=Mt(),kG=va(),OG=Jv(),NG=fr(),PG=a_(),xG=ga(),AG=l7(),Nc=h7(),EG=0,DG=16777216,Zt=1.5707963267341256,qn=6077100506506192e-26,Pc=2*qn,xc=3*qn,Ac=4*qn,zG=598523,qG=1072243195,TG=1073928572,jG=1074752122,CG=1074977148,RG=1075183036,UG=1075388923,FG=1075594811,MG=1094263291,ha=[0,0,0],ya=[0,0];function LG(e,r){var n,i,t,o,a,s,u,c;if(t=NG(e)|0,o=t&IG|0,o<=qG)return r[0]=e,r[1]=0,0;if(o<=jG)return(o&OG)===zG?Nc(e,o,r):o<=TG?t>0?(c=e-Zt,r[0]=c-qn,r[1]=c-r[0]-qn,1):(c=e+Zt,r[0]=c+qn,r[1]=c-r[0]+qn,-1):t>0?(c=e-2*Zt,r[0]=c-Pc,r[1]=c-r[0]-Pc,2):(c=e+2*Zt,r[0]=c+Pc,r[1]=c-r[0]+Pc,-2);if(o<=FG)return o<=RG?o===CG?Nc(e,o,r):t>0?(c=e-3*Zt,r[0]=c-xc,r[1]=c-r[0]-xc,3):(c=e+3*Zt,r[0]=c+xc,r[1]=c-r[0]+xc,-3):o===UG?Nc(e,o,r):t>0?(c=e-4*Zt,r[0]=c-Ac,r[1]=c-r[0]-Ac,4):(c=e+4*Zt,r[0]=c+Ac,r[1]=c-r[0]+Ac,-4);if(o<MG)return Nc(e,o,r);if(o>=kG)return r[0]=NaN,r[1]=NaN,0;for(n=PG(e),i=(o>>20)-1046,c=xG(o-(i<<20|0),n),s=0;s<2;s++)ha[s]=c|0,c=(c-ha[s])*DG;for(ha[2]=c,a=3;ha[a-1]===EG;)a-=1;return u=AG(ha,ya,i,a,1),t<0?(r[0]=-ya[0],r[1]=-ya[1],-u):(r[0]=ya[0],r[1]=ya[1],u)}y7.exports=LG});var lg=v((sbe,$7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ZG=b7();$7.exports=ZG});var S7=v((ube,w7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_cos.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var VG=fr(),dg=Hv(),_7=Kv(),BG=lg(),WG=Mt(),GG=va(),lt=[0,0],HG=1072243195,KG=1044381696;function JG(e){var r,n;if(r=VG(e),r&=WG,r<=HG)return r<KG?1:dg(e,0);if(r>=GG)return NaN;switch(n=BG(e,lt),n&3){case 0:return dg(lt[0],lt[1]);case 1:return-_7(lt[0],lt[1]);case 2:return-dg(lt[0],lt[1]);default:return _7(lt[0],lt[1])}}w7.exports=JG});var Ec=v((cbe,I7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var XG=S7();I7.exports=XG});var N7=v((lbe,O7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_sin.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var QG=Mt(),YG=va(),eH=fr(),k7=Hv(),fg=Kv(),rH=lg(),tH=1072243195,nH=1045430272,dt=[0,0];function iH(e){var r,n;if(r=eH(e),r&=QG,r<=tH)return r<nH?e:fg(e,0);if(r>=YG)return NaN;switch(n=rH(e,dt),n&3){case 0:return fg(dt[0],dt[1]);case 1:return k7(dt[0],dt[1]);case 2:return-fg(dt[0],dt[1]);default:return-k7(dt[0],dt[1])}}O7.exports=iH});var Ui=v((dbe,P7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var oH=N7();P7.exports=oH});var ft=v((fbe,x7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var aH=3.141592653589793;x7.exports=aH});var D7=v((mbe,E7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var sH=L(),uH=xn(),A7=Ec(),mg=Ui(),cH=Y(),ba=wc(),$a=ft();function lH(e){var r,n;return sH(e)?NaN:uH(e)?NaN:(n=e%2,r=cH(n),r===0||r===1?ba(0,n):r<.25?mg($a*n):r<.75?(r=.5-r,ba(A7($a*r),n)):r<1.25?(n=ba(1,n)-n,mg($a*n)):r<1.75?(r-=1.5,-ba(A7($a*r),n)):(n-=ba(2,n),mg($a*n)))}E7.exports=lH});var q7=v((pbe,z7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var dH=D7();z7.exports=dH});var j7=v((vbe,T7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function fH(e){return e===0?.06735230105312927:.06735230105312927+e*(.007385550860814029+e*(.0011927076318336207+e*(.00022086279071390839+e*25214456545125733e-21)))}T7.exports=fH});var R7=v((gbe,C7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function mH(e){return e===0?.020580808432516733:.020580808432516733+e*(.0028905138367341563+e*(.0005100697921535113+e*(.00010801156724758394+e*44864094961891516e-21)))}C7.exports=mH});var F7=v((hbe,U7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function pH(e){return e===0?1.3920053346762105:1.3920053346762105+e*(.7219355475671381+e*(.17193386563280308+e*(.01864591917156529+e*(.0007779424963818936+e*7326684307446256e-21))))}U7.exports=pH});var L7=v((ybe,M7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function vH(e){return e===0?.21498241596060885:.21498241596060885+e*(.325778796408931+e*(.14635047265246445+e*(.02664227030336386+e*(.0018402845140733772+e*3194753265841009e-20))))}M7.exports=vH});var V7=v((bbe,Z7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function gH(e){return e===0?-.032788541075985965:-.032788541075985965+e*(.006100538702462913+e*(-.0014034646998923284+e*.00031563207090362595))}Z7.exports=gH});var W7=v(($be,B7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function hH(e){return e===0?.01797067508118204:.01797067508118204+e*(-.0036845201678113826+e*(.000881081882437654+e*-.00031275416837512086))}B7.exports=hH});var H7=v((_be,G7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function yH(e){return e===0?-.010314224129834144:-.010314224129834144+e*(.0022596478090061247+e*(-.0005385953053567405+e*.0003355291926355191))}G7.exports=yH});var J7=v((wbe,K7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function bH(e){return e===0?.6328270640250934:.6328270640250934+e*(1.4549225013723477+e*(.9777175279633727+e*(.22896372806469245+e*.013381091853678766)))}K7.exports=bH});var Q7=v((Sbe,X7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function $H(e){return e===0?2.4559779371304113:2.4559779371304113+e*(2.128489763798934+e*(.7692851504566728+e*(.10422264559336913+e*.003217092422824239)))}X7.exports=$H});var e9=v((Ibe,Y7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function _H(e){return e===0?.08333333333333297:.08333333333333297+e*(-.0027777777772877554+e*(.0007936505586430196+e*(-.00059518755745034+e*(.0008363399189962821+e*-.0016309293409657527))))}Y7.exports=_H});var n9=v((kbe,t9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/12.2.0/lib/msun/src/e_lgamma_r.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var wH=L(),SH=xn(),IH=Y(),Fi=le(),kH=$c(),OH=q7(),NH=ft(),pg=pe(),PH=j7(),xH=R7(),AH=F7(),EH=L7(),DH=V7(),zH=W7(),qH=H7(),TH=J7(),jH=Q7(),CH=e9(),RH=.07721566490153287,UH=.3224670334241136,FH=1,MH=-.07721566490153287,LH=.48383612272381005,ZH=-.1475877229945939,VH=.06462494023913339,BH=-.07721566490153287,WH=1,GH=.4189385332046727,Dc=1.4616321449683622,HH=4503599627370496,KH=72057594037927940,JH=13877787807814457e-33,r9=1.4616321449683622,XH=-.12148629053584961,QH=-3638676997039505e-33;function YH(e){var r,n,i,t,o,a,s,u,c,l,d,f,m;if(wH(e)||SH(e))return e;if(e===0)return pg;if(e<0?(r=!0,e=-e):r=!1,e<JH)return-Fi(e);if(r){if(e>=HH||(c=OH(e),c===0))return pg;n=Fi(NH/IH(c*e))}if(e===1||e===2)return 0;if(e<2)switch(e<=.9?(m=-Fi(e),e>=Dc-1+.27?(d=1-e,i=0):e>=Dc-1-.27?(d=e-(r9-1),i=1):(d=e,i=2)):(m=0,e>=Dc+.27?(d=2-e,i=0):e>=Dc-.27?(d=e-r9,i=1):(d=e-1,i=2)),i){case 0:f=d*d,a=RH+f*PH(f),o=f*(UH+f*xH(f)),s=d*a+o,m+=s-.5*d;break;case 1:f=d*d,l=f*d,a=LH+l*DH(l),o=ZH+l*zH(l),t=VH+l*qH(l),s=f*a-(QH-l*(o+d*t)),m+=XH+s;break;case 2:a=d*(BH+d*TH(d)),o=WH+d*jH(d),m+=-.5*d+a/o;break}else if(e<8)switch(i=kH(e),d=e-i,s=d*(MH+d*EH(d)),u=FH+d*AH(d),m=.5*d+s/u,f=1,i){case 7:f*=d+6;case 6:f*=d+5;case 5:f*=d+4;case 4:f*=d+3;case 3:f*=d+2,m+=Fi(f)}else e<KH?(c=Fi(e),f=1/e,d=f*f,l=GH+f*CH(d),m=(e-.5)*(c-1)+l):m=e*(Fi(e)-1);return r&&(m=n-m),m}t9.exports=YH});var Mi=v((Obe,i9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var eK=n9();i9.exports=eK});var a9=v((Nbe,o9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function rK(e){return e===0?.16666666666666602:.16666666666666602+e*(-.0027777777777015593+e*(6613756321437934e-20+e*(-16533902205465252e-22+e*41381367970572385e-24)))}o9.exports=rK});var u9=v((Pbe,s9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyrights, licenses, and long comment were part of the original implementation available as part of [Go]{@link https://github.com/golang/go/blob/cb07765045aed5104a3df31507564ac99e6ddce8/src/math/exp.go}, which in turn was based on an implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/e_exp.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (c) 2009 The Go Authors. All rights reserved.
*
* Redistribution and use in source and binary forms, with or without
* modification, are permitted provided that the following conditions are
* met:
*
*    * Redistributions of source code must retain the above copyright
* notice, this list of conditions and the following disclaimer.
*    * Redistributions in binary form must reproduce the above
* copyright notice, this list of conditions and the following disclaimer
* in the documentation and/or other materials provided with the
* distribution.
*    * Neither the name of Google Inc. nor the names of its
* contributors may be used to endorse or promote products derived from
* this software without specific prior written permission.
*
* THIS SOFTWARE IS PROVIDED BY THE COPYRIGHT HOLDERS AND CONTRIBUTORS
* "AS IS" AND ANY EXPRESS OR IMPLIED WARRANTIES, INCLUDING, BUT NOT
* LIMITED TO, THE IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR
* A PARTICULAR PURPOSE ARE DISCLAIMED. IN NO EVENT SHALL THE COPYRIGHT
* OWNER OR CONTRIBUTORS BE LIABLE FOR ANY DIRECT, INDIRECT, INCIDENTAL,
* SPECIAL, EXEMPLARY, OR CONSEQUENTIAL DAMAGES (INCLUDING, BUT NOT
* LIMITED TO, PROCUREMENT OF SUBSTITUTE GOODS OR SERVICES; LOSS OF USE,
* DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER CAUSED AND ON ANY
* THEORY OF LIABILITY, WHETHER IN CONTRACT, STRICT LIABILITY, OR TORT
* (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE
* OF THIS SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.
* ```
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var tK=zn(),nK=a9();function iK(e,r,n){var i,t,o,a;return i=e-r,t=i*i,o=i-t*nK(t),a=1-(r-i*o/(2-o)-e),tK(a,n)}s9.exports=iK});var p9=v((xbe,m9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyrights, licenses, and long comment were part of the original implementation available as part of [Go]{@link https://github.com/golang/go/blob/cb07765045aed5104a3df31507564ac99e6ddce8/src/math/exp.go}, which in turn was based on an implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/e_exp.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (c) 2009 The Go Authors. All rights reserved.
*
* Redistribution and use in source and binary forms, with or without
* modification, are permitted provided that the following conditions are
* met:
*
*    * Redistributions of source code must retain the above copyright
* notice, this list of conditions and the following disclaimer.
*    * Redistributions in binary form must reproduce the above
* copyright notice, this list of conditions and the following disclaimer
* in the documentation and/or other materials provided with the
* distribution.
*    * Neither the name of Google Inc. nor the names of its
* contributors may be used to endorse or promote products derived from
* this software without specific prior written permission.
*
* THIS SOFTWARE IS PROVIDED BY THE COPYRIGHT HOLDERS AND CONTRIBUTORS
* "AS IS" AND ANY EXPRESS OR IMPLIED WARRANTIES, INCLUDING, BUT NOT
* LIMITED TO, THE IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR
* A PARTICULAR PURPOSE ARE DISCLAIMED. IN NO EVENT SHALL THE COPYRIGHT
* OWNER OR CONTRIBUTORS BE LIABLE FOR ANY DIRECT, INDIRECT, INCIDENTAL,
* SPECIAL, EXEMPLARY, OR CONSEQUENTIAL DAMAGES (INCLUDING, BUT NOT
* LIMITED TO, PROCUREMENT OF SUBSTITUTE GOODS OR SERVICES; LOSS OF USE,
* DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER CAUSED AND ON ANY
* THEORY OF LIABILITY, WHETHER IN CONTRACT, STRICT LIABILITY, OR TORT
* (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE
* OF THIS SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.
* ```
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var oK=L(),c9=$c(),aK=He(),l9=pe(),sK=u9(),uK=.6931471803691238,cK=19082149292705877e-26,d9=1.4426950408889634,lK=709.782712893384,dK=-745.1332191019411,f9=1/(1<<28),fK=-f9;function mK(e){var r,n,i;return oK(e)||e===l9?e:e===aK?0:e>lK?l9:e<dK?0:e>fK&&e<f9?1+e:(e<0?i=c9(d9*e-.5):i=c9(d9*e+.5),r=e-i*uK,n=i*cK,sK(r,n,i))}m9.exports=mK});var ke=v((Abe,v9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var pK=p9();v9.exports=pK});var _a=v((Ebe,g9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var vK=2.5066282746310007;g9.exports=vK});var mt=v((Dbe,h9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gK=709.782712893384;h9.exports=gK});var wa=v((zbe,y9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2025 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hK=170;y9.exports=hK});var $9=v((qbe,b9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yK=Nr();function bK(e){return yK(e)===e}b9.exports=bK});var Tn=v((Tbe,_9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $K=$9();_9.exports=$K});var S9=v((jbe,w9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _K=He();function wK(e){return e===0&&1/e===_K}w9.exports=wK});var vg=v((Cbe,I9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var SK=S9();I9.exports=SK});var O9=v((Rbe,k9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var IK=Tn();function kK(e){return IK(e/2)}k9.exports=kK});var P9=v((Ube,N9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var OK=O9();N9.exports=OK});var E9=v((Fbe,A9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var x9=P9();function NK(e){return e>0?x9(e-1):x9(e+1)}A9.exports=NK});var zc=v((Mbe,D9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var PK=E9();D9.exports=PK});var q9=v((Lbe,z9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xK=Math.sqrt;z9.exports=xK});var ue=v((Zbe,T9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var AK=q9();T9.exports=AK});var C9=v((Vbe,j9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var EK=Dn(),gg;EK===!0?gg=0:gg=1;j9.exports=gg});var U9=v((Bbe,R9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var DK=An(),zK=En(),qK=C9(),hg=new zK(1),TK=new DK(hg.buffer);function jK(e,r){return hg[0]=e,TK[qK]=r>>>0,hg[0]}R9.exports=jK});var Li=v((Wbe,F9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CK=U9();F9.exports=CK});var L9=v((Gbe,M9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function RK(e){return e|0}M9.exports=RK});var yg=v((Hbe,Z9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var UK=L9();Z9.exports=UK});var W9=v((Kbe,B9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_pow.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var V9=zc(),FK=wc(),MK=He(),qc=pe();function LK(e,r){return r===MK?qc:r===qc?0:r>0?V9(r)?e:0:V9(r)?FK(qc,e):qc}B9.exports=LK});var H9=v((Jbe,G9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_pow.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var ZK=Mt(),VK=fr(),BK=1072693247,Tc=1e300,jc=1e-300;function WK(e,r){var n,i;return i=VK(e),n=i&ZK,n<=BK?r<0?Tc*Tc:jc*jc:r>0?Tc*Tc:jc*jc}G9.exports=WK});var X9=v((Xbe,J9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var GK=Y(),K9=pe();function HK(e,r){return e===-1?(e-e)/(e-e):e===1?1:GK(e)<1==(r===K9)?0:K9}J9.exports=HK});var bg=v((Qbe,Q9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var KK=20;Q9.exports=KK});var e8=v((Ybe,Y9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function JK(e){return e===0?.5999999999999946:.5999999999999946+e*(.4285714285785502+e*(.33333332981837743+e*(.272728123808534+e*(.23066074577556175+e*.20697501780033842))))}Y9.exports=JK});var i8=v((e6e,n8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_pow.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var XK=fr(),Cc=Li(),r8=Ri(),QK=Ft(),YK=bg(),eJ=e8(),rJ=1048575,t8=1048576,tJ=1072693248,nJ=536870912,iJ=524288,oJ=9007199254740992,aJ=.9617966939259756,sJ=.9617967009544373,uJ=-7028461650952758e-24,cJ=[1,1.5],lJ=[0,.5849624872207642],dJ=[0,1350039202129749e-23];function fJ(e,r,n){var i,t,o,a,s,u,c,l,d,f,m,g,h,b,y,S,$,N,P,A,E,U;return A=0,n<t8&&(r*=oJ,A-=53,n=XK(r)),A+=(n>>YK)-QK|0,E=n&rJ|0,n=E|tJ|0,E<=235662?U=0:E<767610?U=1:(U=0,A+=1,n-=t8),r=r8(r,n),l=cJ[U],N=r-l,P=1/(r+l),t=N*P,a=Cc(t,0),i=(n>>1|nJ)+iJ,i+=U<<18,u=r8(0,i),c=r-(u-l),s=P*(N-a*u-a*c),o=t*t,$=o*o*eJ(o),$+=s*(a+t),o=a*a,u=3+o+$,u=Cc(u,0),c=$-(u-3-o),N=a*u,P=s*u+c*t,f=N+P,f=Cc(f,0),m=P-(f-N),g=sJ*f,h=uJ*f+m*aJ+dJ[U],d=lJ[U],S=A,b=g+h+d+S,b=Cc(b,0),y=h-(b-S-d-g),e[0]=b,e[1]=y,e}n8.exports=fJ});var a8=v((r6e,o8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function mJ(e){return e===0?.5:.5+e*(-.3333333333333333+e*.25)}o8.exports=mJ});var u8=v((t6e,s8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_pow.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var pJ=Li(),vJ=a8(),gJ=1.4426950408889634,hJ=1.4426950216293335,yJ=19259629911266175e-24;function bJ(e,r){var n,i,t,o,a,s;return t=r-1,o=t*t*vJ(t),a=hJ*t,s=t*yJ-o*gJ,i=a+s,i=pJ(i,0),n=s-(i-a),e[0]=i,e[1]=n,e}s8.exports=bJ});var l8=v((n6e,c8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $J=.6931471805599453;c8.exports=$J});var f8=v((i6e,d8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function _J(e){return e===0?.16666666666666602:.16666666666666602+e*(-.0027777777777015593+e*(6613756321437934e-20+e*(-16533902205465252e-22+e*41381367970572385e-24)))}d8.exports=_J});var b8=v((o6e,y8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_pow.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var wJ=fr(),m8=Ri(),SJ=Li(),IJ=yg(),kJ=zn(),OJ=l8(),p8=Ft(),v8=Mt(),g8=Jv(),Sa=bg(),NJ=f8(),h8=1048576,PJ=1071644672,xJ=.6931471824645996,AJ=-1904654299957768e-24;function EJ(e,r,n){var i,t,o,a,s,u,c,l,d,f,m;return f=e&v8|0,m=(f>>Sa)-p8|0,d=0,f>PJ&&(d=e+(h8>>m+1)>>>0,m=((d&v8)>>Sa)-p8|0,i=(d&~(g8>>m))>>>0,o=m8(0,i),d=(d&g8|h8)>>Sa-m>>>0,e<0&&(d=-d),r-=o),o=n+r,o=SJ(o,0),s=o*xJ,u=(n-(o-r))*OJ+o*AJ,l=s+u,c=u-(l-s),o=l*l,t=l-o*NJ(o),a=l*t/(t-2)-(c+l*c),l=1-(a-l),e=wJ(l),e=IJ(e),e+=d<<Sa>>>0,e>>Sa<=0?l=kJ(l,d):l=m8(l,e),l}y8.exports=EJ});var A8=v((a6e,x8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright and license were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_pow.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var $8=L(),_8=zc(),w8=xn(),DJ=Tn(),S8=ue(),zJ=Y(),$g=_c(),qJ=Li(),I8=yg(),TJ=He(),jJ=pe(),_g=Mt(),CJ=W9(),RJ=H9(),UJ=X9(),FJ=i8(),MJ=u8(),LJ=b8(),ZJ=1072693247,VJ=1105199104,BJ=1139802112,k8=1083179008,WJ=1072693248,GJ=1083231232,HJ=3230714880,O8=31,Vt=1e300,Bt=1e-300,KJ=8008566259537294e-32,pt=[0,0],N8=[0,0];function P8(e,r){var n,i,t,o,a,s,u,c,l,d,f,m,g,h,b,y;if($8(e)||$8(r))return NaN;if($g.assign(r,pt,1,0),s=pt[0],u=pt[1],u===0){if(r===0)return 1;if(r===1)return e;if(r===-1)return 1/e;if(r===.5)return S8(e);if(r===-.5)return 1/S8(e);if(r===2)return e*e;if(r===3)return e*e*e;if(r===4)return e*=e,e*e;if(w8(r))return UJ(e,r)}if($g.assign(e,pt,1,0),o=pt[0],a=pt[1],a===0){if(o===0)return CJ(e,r);if(e===1)return 1;if(e===-1&&_8(r))return-1;if(w8(e))return e===TJ?P8(-0,-r):r<0?0:jJ}if(e<0&&DJ(r)===!1)return(e-e)/(e-e);if(t=zJ(e),n=o&_g|0,i=s&_g|0,c=o>>>O8|0,l=s>>>O8|0,c&&_8(r)?c=-1:c=1,i>VJ){if(i>BJ)return RJ(e,r);if(n<ZJ)return l===1?c*Vt*Vt:c*Bt*Bt;if(n>WJ)return l===0?c*Vt*Vt:c*Bt*Bt;g=MJ(N8,t)}else g=FJ(N8,t,n);if(d=qJ(r,0),m=(r-d)*g[0]+r*g[1],f=d*g[0],h=m+f,$g.assign(h,pt,1,0),b=I8(pt[0]),y=I8(pt[1]),b>=k8){if((b-k8|y)!==0||m+KJ>h-f)return c*Vt*Vt}else if((b&_g)>=GJ&&((b-HJ|y)!==0||m<=h-f))return c*Bt*Bt;return h=LJ(b,f,m),c*h}x8.exports=P8});var Ne=v((s6e,E8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var JJ=A8();E8.exports=JJ});var z8=v((u6e,D8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function XJ(e){return e===0?.08333333333334822:.08333333333334822+e*(.0034722222160545866+e*(-.0026813261780578124+e*(-.00022954996161337813+e*.0007873113957930937)))}D8.exports=XJ});var j8=v((c6e,T8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C code, copyright, license, and constants are from [Cephes]{@link http://www.netlib.org/cephes}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright 1984, 1987, 1989, 1992, 2000 by Stephen L. Moshier
*
* Some software in this archive may be from the book _Methods and Programs for Mathematical Functions_ (Prentice-Hall or Simon & Schuster International, 1989) or from the Cephes Mathematical Library, a commercial product. In either event, it is copyrighted by the author. What you see here may be used freely but it comes with no support or guarantee.
*
* Stephen L. Moshier
* moshier@na-net.ornl.gov
* ```
*/var QJ=_a(),q8=Ne(),YJ=ke(),eX=z8(),rX=143.01608;function tX(e){var r,n,i;return r=1/e,r=1+r*eX(r),n=YJ(e),e>rX?(i=q8(e,.5*e-.25),n=i*(i/n)):n=q8(e,e-.5)/n,QJ*n*r}T8.exports=tX});var R8=v((l6e,C8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nX=.5772156649015329;C8.exports=nX});var F8=v((d6e,U8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C code, copyright, license, and constants are from [Cephes]{@link http://www.netlib.org/cephes}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright 1984, 1987, 1989, 1992, 2000 by Stephen L. Moshier
*
* Some software in this archive may be from the book _Methods and Programs for Mathematical Functions_ (Prentice-Hall or Simon & Schuster International, 1989) or from the Cephes Mathematical Library, a commercial product. In either event, it is copyrighted by the author. What you see here may be used freely but it comes with no support or guarantee.
*
* Stephen L. Moshier
* moshier@na-net.ornl.gov
* ```
*/var iX=R8();function oX(e,r){return r/((1+iX*e)*e)}U8.exports=oX});var L8=v((f6e,M8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function aX(e){var r,n,i;return e===0?1:(e<0?r=-e:r=e,r<=1?(n=1+e*(.4942148268014971+e*(.20744822764843598+e*(.04763678004571372+e*(.010421379756176158+e*(.0011913514700658638+e*(.00016011952247675185+e*0)))))),i=1+e*(.0714304917030273+e*(-.23459179571824335+e*(.035823639860549865+e*(.011813978522206043+e*(-.004456419138517973+e*(.0005396055804933034+e*-23158187332412014e-21))))))):(e=1/e,n=0+e*(.00016011952247675185+e*(.0011913514700658638+e*(.010421379756176158+e*(.04763678004571372+e*(.20744822764843598+e*(.4942148268014971+e*1)))))),i=-23158187332412014e-21+e*(.0005396055804933034+e*(-.004456419138517973+e*(.011813978522206043+e*(.035823639860549865+e*(-.23459179571824335+e*(.0714304917030273+e*1))))))),n/i)}M8.exports=aX});var J8=v((m6e,K8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C code, long comment, copyright, license, and constants are from [Cephes]{@link http://www.netlib.org/cephes}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright 1984, 1987, 1989, 1992, 2000 by Stephen L. Moshier
*
* Some software in this archive may be from the book _Methods and Programs for Mathematical Functions_ (Prentice-Hall or Simon & Schuster International, 1989) or from the Cephes Mathematical Library, a commercial product. In either event, it is copyrighted by the author. What you see here may be used freely but it comes with no support or guarantee.
*
* Stephen L. Moshier
* moshier@na-net.ornl.gov
* ```
*/var sX=L(),uX=Tn(),cX=vg(),Z8=Y(),lX=Nr(),dX=Ui(),V8=pe(),B8=He(),W8=ft(),G8=j8(),H8=F8(),fX=L8();function mX(e){var r,n,i,t;if(uX(e)&&e<0||e===B8||sX(e))return NaN;if(e===0)return cX(e)?B8:V8;if(e>171.61447887182297)return V8;if(e<-170.5674972726612)return 0;if(n=Z8(e),n>33)return e>=0?G8(e):(i=lX(n),(i&1)===0?r=-1:r=1,t=n-i,t>.5&&(i+=1,t=n-i),t=n*dX(W8*t),r*W8/(Z8(t)*G8(n)));for(t=1;e>=3;)e-=1,t*=e;for(;e<0;){if(e>-1e-9)return H8(e,t);t/=e,e+=1}for(;e<2;){if(e<1e-9)return H8(e,t);t/=e,e+=1}return e===2?t:(e-=2,t*fX(e))}K8.exports=mX});var Mr=v((p6e,X8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var pX=J8();X8.exports=pX});var Y8=v((v6e,Q8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var vX=14901161193847656e-24;Q8.exports=vX});var Wt=v((g6e,ew)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gX=17976931348623157e292;ew.exports=gX});var tw=v((h6e,rw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hX=eval;rw.exports=hX});var iw=v((y6e,nw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yX=tw();function bX(){var e;try{yX('"use strict"; (function* () {})'),e=!0}catch{e=!1}return e}nw.exports=bX});var wg=v((b6e,ow)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $X=iw();ow.exports=$X});var Pr=v(($6e,aw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _X=2220446049250313e-31;aw.exports=_X});var uw=v((_6e,sw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Rc=Y(),wX=Pr(),SX=1e6;function IX(e,r){var n,i,t,o,a,s;if(s={},arguments.length>1&&(s=r),i=s.tolerance||wX,o=s.maxTerms||SX,a=s.initialValue||0,n=typeof e.next=="function",n===!0){for(t of e)if(a+=t,Rc(i*a)>=Rc(t)||--o===0)break}else do t=e(),a+=t;while(Rc(i*a)<Rc(t)&&--o);return a}sw.exports=IX});var dw=v((w6e,lw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cw=Y(),kX=Pr(),OX=1e6;function NX(e,r){var n,i,t,o,a;a={},arguments.length>1&&(a=r),n=a.tolerance||kX,t=a.maxTerms||OX,o=a.initialValue||0;do i=e(),o+=i;while(cw(n*o)<cw(i)&&--t);return o}lw.exports=NX});var Zi=v((S6e,fw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var PX=wg(),xX=uw(),AX=dw(),Sg;PX()?Sg=xX:Sg=AX;fw.exports=Sg});var pw=v((I6e,mw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2025 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/function EX(e,r){var n=1,i=e,t=r;return o;function o(){var a=n;return n*=i/t,i-=1,a}}mw.exports=EX});var gw=v((k6e,vw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2025 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var DX=Zi(),zX=pw();function qX(e,r){var n,i;return i=zX(e,r),n=DX(i),n}vw.exports=qX});var yw=v((O6e,hw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var TX=ke();function jX(e,r){var n,i,t,o;if(t=TX(-r),i=t,i!==0)for(n=i,o=1;o<e;++o)n/=o,n*=r,i+=n;return i}hw.exports=jX});var $w=v((N6e,bw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function CX(e){return e===0?-.3250421072470015:-.3250421072470015+e*(-.02848174957559851+e*(-.005770270296489442+e*-23763016656650163e-21))}bw.exports=CX});var ww=v((P6e,_w)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function RX(e){return e===0?.39791722395915535:.39791722395915535+e*(.0650222499887673+e*(.005081306281875766+e*(.00013249473800432164+e*-3960228278775368e-21)))}_w.exports=RX});var Iw=v((x6e,Sw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function UX(e){return e===0?.41485611868374833:.41485611868374833+e*(-.3722078760357013+e*(.31834661990116175+e*(-.11089469428239668+e*(.035478304325618236+e*-.002166375594868791))))}Sw.exports=UX});var Ow=v((A6e,kw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function FX(e){return e===0?.10642088040084423:.10642088040084423+e*(.540397917702171+e*(.07182865441419627+e*(.12617121980876164+e*(.01363708391202905+e*.011984499846799107))))}kw.exports=FX});var Pw=v((E6e,Nw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function MX(e){return e===0?-.6938585727071818:-.6938585727071818+e*(-10.558626225323291+e*(-62.375332450326006+e*(-162.39666946257347+e*(-184.60509290671104+e*(-81.2874355063066+e*-9.814329344169145)))))}Nw.exports=MX});var Aw=v((D6e,xw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function LX(e){return e===0?19.651271667439257:19.651271667439257+e*(137.65775414351904+e*(434.56587747522923+e*(645.3872717332679+e*(429.00814002756783+e*(108.63500554177944+e*(6.570249770319282+e*-.0604244152148581))))))}xw.exports=LX});var Dw=v((z6e,Ew)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function ZX(e){return e===0?-.799283237680523:-.799283237680523+e*(-17.757954917754752+e*(-160.63638485582192+e*(-637.5664433683896+e*(-1025.0951316110772+e*-483.5191916086514))))}Ew.exports=ZX});var qw=v((q6e,zw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function VX(e){return e===0?30.33806074348246:30.33806074348246+e*(325.7925129965739+e*(1536.729586084437+e*(3199.8582195085955+e*(2553.0504064331644+e*(474.52854120695537+e*-22.44095244658582)))))}zw.exports=VX});var Rw=v((T6e,Cw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FreeBSD]{@link https://svnweb.freebsd.org/base/release/9.3.0/lib/msun/src/s_erf.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var BX=L(),Tw=ke(),WX=Li(),GX=pe(),HX=He(),KX=$w(),JX=ww(),XX=Iw(),QX=Ow(),YX=Pw(),eQ=Aw(),rQ=Dw(),tQ=qw(),Uc=1e-300,nQ=13877787807814457e-33,jw=.8450629115104675,iQ=.12837916709551256,oQ=1,aQ=-.0023621185607526594,sQ=1,uQ=-.009864944034847148,cQ=1,lQ=-.0098649429247001,dQ=1;function fQ(e){var r,n,i,t,o,a,s,u;if(BX(e))return NaN;if(e===GX)return 0;if(e===HX)return 2;if(e===0)return 1;if(e<0?(r=!0,n=-e):(r=!1,n=e),n<.84375)return n<nQ?1-e:(i=e*e,t=iQ+i*KX(i),o=oQ+i*JX(i),a=t/o,e<.25?1-(e+e*a):(t=e*a,t+=e-.5,.5-t));if(n<1.25)return o=n-1,s=aQ+o*XX(o),u=sQ+o*QX(o),r?1+jw+s/u:1-jw-s/u;if(n<28){if(o=1/(n*n),n<2.857142857142857)t=uQ+o*YX(o),o=cQ+o*eQ(o);else{if(e<-6)return 2-Uc;t=lQ+o*rQ(o),o=dQ+o*tQ(o)}return i=WX(n,0),t=Tw(-(i*i)-.5625)*Tw((i-n)*(i+n)+t/o),r?2-t/n:t/n}return r?2-Uc:Uc*Uc}Cw.exports=fQ});var Ia=v((j6e,Uw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var mQ=Rw();Uw.exports=mQ});var Lw=v((C6e,Mw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var pQ=Ia(),Fw=ue(),vQ=ke(),gQ=ft();function hQ(e,r){var n,i,t,o,a;if(o=pQ(Fw(r)),o!==0&&e>1){for(i=vQ(-r)/Fw(gQ*r),i*=r,n=.5,i/=n,t=i,a=2;a<e;++a)i/=a-n,i*=r,t+=i;o+=t}return o}Mw.exports=hQ});var jn=v((R6e,Zw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yQ=-708.3964185322641;Zw.exports=yQ});var Gw=v((U6e,Ww)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Vi=ke(),Fc=Ne(),bQ=le(),Vw=mt(),Bw=jn();function $Q(e,r){var n,i;return i=e*bQ(r),r>=1?i<Vw&&-r>Bw?n=Fc(r,e)*Vi(-r):e>=1?n=Fc(r/Vi(r/e),e):n=Vi(i-r):i>Bw?n=Fc(r,e)*Vi(-r):r/e<Vw?n=Fc(r/Vi(r/e),e):n=Vi(i-r),n}Ww.exports=$Q});var Ig=v((F6e,Hw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function _Q(e,r){var n,i;if(i=e.length,i<2||r===0)return i===0?0:e[0];for(i-=1,n=e[i]*r+e[i-1],i-=2;i>=0;)n=n*r+e[i],i-=1;return n}Hw.exports=_Q});var Jw=v((M6e,Kw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var wQ=Function;Kw.exports=wQ});var Qw=v((L6e,Xw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var SQ=Jw();Xw.exports=SQ});var eS=v((Z6e,Yw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var IQ=Qw(),kQ=Ig();function OQ(e){var r,n,i,t;if(e.length>500)return o;if(r="return function evalpoly(x){",n=e.length,n===0)r+="return 0.0;";else if(n===1)r+="return "+e[0]+";";else{for(r+="if(x===0.0){return "+e[0]+";}",r+="return "+e[0],i=n-1,t=1;t<n;t++)r+="+x*",t<i&&(r+="("),r+=e[t];for(t=0;t<i-1;t++)r+=")";r+=";"}return r+="}",r+="//# sourceURL=evalpoly.factory.js",new IQ(r)();function o(a){return kQ(e,a)}}Yw.exports=OQ});var vt=v((V6e,tS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var NQ=Ze(),rS=Ig(),PQ=eS();NQ(rS,"factory",PQ);tS.exports=rS});var iS=v((B6e,nS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2023 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_83_0/boost/math/special_functions/log1p.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2005-2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
*/function xQ(e){var r=-e,n=-1,i=0;return t;function t(){return n*=r,i+=1,n/i}}nS.exports=xQ});var aS=v((W6e,oS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2023 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_83_0/boost/math/special_functions/log1p.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2005-2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var AQ=Y(),EQ=le(),DQ=Pr(),zQ=Zi(),qQ=iS();function TQ(e){var r,n;return e<=-1?NaN:(n=AQ(e),n>.95?EQ(1+e)-e:n<DQ?-e*e/2:(r={initialValue:-e},zQ(qQ(e),r)))}oS.exports=TQ});var kg=v((G6e,sS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2023 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var jQ=aS();sS.exports=jQ});var Og=v((H6e,uS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CQ=6.283185307179586;uS.exports=CQ});var lS=v((K6e,cS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function RQ(e){return e===0?-.3333333333333333:-.3333333333333333+e*(.08333333333333333+e*(-.014814814814814815+e*(.0011574074074074073+e*(.0003527336860670194+e*(-.0001787551440329218+e*(3919263178522438e-20+e*(-21854485106799924e-22+e*(-185406221071516e-20+e*(8296711340953087e-22+e*(-17665952736826078e-23+e*(6707853543401498e-24+e*(10261809784240309e-24+e*(-4382036018453353e-24+e*914769958223679e-24)))))))))))))}cS.exports=RQ});var fS=v((J6e,dS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function UQ(e){return e===0?-.001851851851851852:-.001851851851851852+e*(-.003472222222222222+e*(.0026455026455026454+e*(-.0009902263374485596+e*(.00020576131687242798+e*(-4018775720164609e-22+e*(-18098550334489977e-21+e*(764916091608111e-20+e*(-16120900894563446e-22+e*(4647127802807434e-24+e*(1378633446915721e-22+e*(-5752545603517705e-23+e*11951628599778148e-24)))))))))))}dS.exports=UQ});var pS=v((X6e,mS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function FQ(e){return e===0?.004133597883597883:.004133597883597883+e*(-.0026813271604938273+e*(.0007716049382716049+e*(20093878600823047e-22+e*(-.00010736653226365161+e*(52923448829120125e-21+e*(-12760635188618728e-21+e*(3423578734096138e-23+e*(13721957309062932e-22+e*(-6298992138380055e-22+e*14280614206064242e-23)))))))))}mS.exports=FQ});var gS=v((Q6e,vS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function MQ(e){return e===0?.0006494341563786008:.0006494341563786008+e*(.00022947209362139917+e*(-.0004691894943952557+e*(.00026772063206283885+e*(-7561801671883977e-20+e*(-2396505113867297e-22+e*(11082654115347302e-21+e*(-56749528269915965e-22+e*14230900732435883e-22)))))))}vS.exports=MQ});var yS=v((Y6e,hS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function LQ(e){return e===0?-.0008618882909167117:-.0008618882909167117+e*(.0007840392217200666+e*(-.0002990724803031902+e*(-14638452578843418e-22+e*(6641498215465122e-20+e*(-3968365047179435e-20+e*11375726970678419e-21)))))}hS.exports=LQ});var $S=v((e2e,bS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function ZQ(e){return e===0?-.00033679855336635813:-.00033679855336635813+e*(-6972813758365858e-20+e*(.0002772753244959392+e*(-.00019932570516188847+e*(6797780477937208e-20+e*(1419062920643967e-22+e*(-13594048189768693e-21+e*(8018470256334202e-21+e*-2291481176508095e-21)))))))}bS.exports=ZQ});var wS=v((r2e,_S)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function VQ(e){return e===0?.0005313079364639922:.0005313079364639922+e*(-.0005921664373536939+e*(.0002708782096718045+e*(7902353232660328e-22+e*(-8153969367561969e-20+e*(561168275310625e-19+e*-18329116582843375e-21)))))}_S.exports=VQ});var IS=v((t2e,SS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function BQ(e){return e===0?.00034436760689237765:.00034436760689237765+e*(5171790908260592e-20+e*(-.00033493161081142234+e*(.0002812695154763237+e*-.00010976582244684731)))}SS.exports=BQ});var OS=v((n2e,kS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function WQ(e){return e===0?-.0006526239185953094:-.0006526239185953094+e*(.0008394987206720873+e*-.000438297098541721)}kS.exports=WQ});var PS=v((i2e,NS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var GQ=vt(),HQ=kg(),KQ=Ia(),Ng=ue(),JQ=ke(),XQ=Og(),QQ=lS(),YQ=fS(),eY=pS(),rY=gS(),tY=yS(),nY=$S(),iY=wS(),oY=IS(),aY=OS(),xr=[0,0,0,0,0,0,0,0,0,0];function sY(e,r){var n,i,t,o,a;return i=(r-e)/e,t=-HQ(i),o=e*t,a=Ng(2*t),r<e&&(a=-a),xr[0]=QQ(a),xr[1]=YQ(a),xr[2]=eY(a),xr[3]=rY(a),xr[4]=tY(a),xr[5]=nY(a),xr[6]=iY(a),xr[7]=oY(a),xr[8]=aY(a),xr[9]=-.0005967612901927463,n=GQ(xr,1/e),n*=JQ(-o)/Ng(XQ*e),r<e&&(n=-n),n+=KQ(Ng(o))/2,n}NS.exports=sY});var AS=v((o2e,xS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/function uY(e,r){var n=1,i=e,t=r;return o;function o(){var a=n;return i+=1,n*=t/i,a}}xS.exports=uY});var Pg=v((a2e,ES)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var cY=Zi(),lY=AS();function dY(e,r,n){var i,t;return n=n||0,t=lY(e,r),i=cY(t,{initialValue:n}),i}ES.exports=dY});var zS=v((s2e,DS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function fY(e){var r,n,i;return e===0?1/0:(e<0?r=-e:r=e,r<=1?(n=709811.662581658+e*(679979.8474157227+e*(293136.7857211597+e*(74887.54032914672+e*(12555.290582413863+e*(1443.4299244417066+e*(115.24194596137347+e*(6.309239205732627+e*(.22668404630224365+e*(.004826466289237662+e*4624429436045379e-20))))))))),i=0+e*(362880+e*(1026576+e*(1172700+e*(723680+e*(269325+e*(63273+e*(9450+e*(870+e*(45+e*1)))))))))):(e=1/e,n=4624429436045379e-20+e*(.004826466289237662+e*(.22668404630224365+e*(6.309239205732627+e*(115.24194596137347+e*(1443.4299244417066+e*(12555.290582413863+e*(74887.54032914672+e*(293136.7857211597+e*(679979.8474157227+e*709811.662581658))))))))),i=1+e*(45+e*(870+e*(9450+e*(63273+e*(269325+e*(723680+e*(1172700+e*(1026576+e*(362880+e*0)))))))))),n/i)}DS.exports=fY});var TS=v((u2e,qS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/lanczos.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var mY=zS();qS.exports=mY});var ka=v((c2e,jS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var pY=TS();jS.exports=pY});var RS=v((l2e,CS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var vY=pe();function gY(e){return e===0&&1/e===vY}CS.exports=gY});var FS=v((d2e,US)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hY=RS();US.exports=hY});var ZS=v((f2e,LS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yY=FS(),MS=L(),xg=pe();function bY(e,r){return MS(e)||MS(r)?NaN:e===xg||r===xg?xg:e===r&&e===0?yY(e)?e:r:e>r?e:r}LS.exports=bY});var Cn=v((m2e,VS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $Y=ZS();VS.exports=$Y});var GS=v((p2e,WS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _Y=vg(),BS=L(),Ag=He();function wY(e,r){return BS(e)||BS(r)?NaN:e===Ag||r===Ag?Ag:e===r&&e===0?_Y(e)?e:r:e<r?e:r}WS.exports=wY});var Gt=v((v2e,HS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var SY=GS();HS.exports=SY});var Bi=v((g2e,KS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var IY=10.900511;KS.exports=IY});var Rn=v((h2e,JS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kY=2.718281828459045;JS.exports=kY});var YS=v((y2e,QS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006-7, 2013-14.
* Copyright Paul A. Bristow 2007, 2013-14.
* Copyright Nikhar Agrawal 2013-14.
* Copyright Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var OY=ka(),NY=Mi(),PY=Mr(),xY=kg(),AY=ue(),EY=Y(),Ht=ke(),Oa=Ne(),Eg=Cn(),Dg=Gt(),XS=le(),DY=Wt(),Mc=mt(),Na=jn(),zg=Bi(),zY=Rn();function qY(e,r){var n,i,t,o,a,s,u;return t=e+zg-.5,u=(r-e-zg+.5)/t,e<1?r<=Na||e<1/DY?Ht(e*XS(r)-r-NY(e)):Oa(r,e)*Ht(-r)/PY(e):(EY(u*u*e)<=100&&e>150?(n=e*xY(u)+r*(.5-zg)/t,n=Ht(n)):(o=e*XS(r/t),a=e-r,Dg(o,a)<=Na||Eg(o,a)>=Mc?(i=a/e,Dg(o,a)/2>Na&&Eg(o,a)/2<Mc?(s=Oa(r/t,e/2)*Ht(a/2),n=s*s):Dg(o,a)/4>Na&&Eg(o,a)/4<Mc&&r>e?(s=Oa(r/t,e/4)*Ht(a/4),n=s*s,n*=n):i>Na&&i<Mc?n=Oa(r*Ht(i)/t,e):n=Ht(o+a)):n=Oa(r/t,e)*Ht(a)),n*=AY(t/zY)/OY(e),n)}QS.exports=qY});var rI=v((b2e,eI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var TY=.34657359027997264;eI.exports=TY});var nI=v(($2e,tI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function jY(e){return e===0?-.03333333333333313:-.03333333333333313+e*(.0015873015872548146+e*(-793650757867488e-19+e*(4008217827329362e-21+e*-20109921818362437e-23)))}tI.exports=jY});var cI=v((_2e,uI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FDLIBM]{@link http://www.netlib.org/fdlibm/s_expm1.c} and [FreeBSD]{@link https://svnweb.freebsd.org/base/release/12.2.0/lib/msun/src/s_expm1.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var CY=L(),iI=fr(),qg=Ri(),RY=ga(),oI=pe(),UY=He(),aI=Ft(),FY=rI(),MY=nI(),LY=709.782712893384,Tg=.6931471803691238,jg=19082149292705877e-26,sI=1.4426950408889634,ZY=38.816242111356935,VY=1.0397207708399179;function BY(e){var r,n,i,t,o,a,s,u,c,l,d,f,m;if(e===oI||CY(e))return e;if(e===UY)return-1;if(e===0)return e;if(e<0?(i=!0,u=-e):(i=!1,u=e),u>=ZY){if(i)return-1;if(u>=LY)return oI}if(a=iI(u)|0,u>FY)u<VY?i?(t=e+Tg,o=-jg,m=-1):(t=e-Tg,o=jg,m=1):(i?m=sI*e-.5:m=sI*e+.5,m|=0,d=m,t=e-d*Tg,o=d*jg),e=t-o,l=t-e-o;else{if(a<1016070144)return e;m=0}return r=.5*e,c=e*r,s=1+c*MY(c),d=3-s*r,f=c*((s-d)/(6-e*d)),m===0?e-(e*f-c):(n=RY(aI+m<<20,0),f=e*(f-l)-l,f-=c,m===-1?.5*(e-f)-.5:m===1?e<-.25?-2*(f-(e+.5)):1+2*(e-f):m<=-2||m>56?(u=1-(f-e),m===1024?(t=iI(u)+(m<<20)|0,u=qg(u,t)):u*=n,u-1):(d=1,m<20?(t=1072693248-(2097152>>m)|0,d=qg(d,t),u=d-(f-e)):(t=aI-m<<20|0,d=qg(d,t),u=e-(f+d),u+=1),u*=n,u))}uI.exports=BY});var Un=v((w2e,lI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var WY=cI();lI.exports=WY});var mI=v((S2e,fI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_85_0/boost/math/special_functions/powm1.hpp}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Cg=L(),GY=xn(),dI=Y(),HY=Un(),KY=le(),JY=Ne(),XY=$c();function QY(e,r){var n,i;if(Cg(e)||Cg(r))return NaN;if(r===0)return 0;if(e===0)return-1;if(e<0&&r%2===0&&(e=-e),e>0){if((dI(r*(e-1))<.5||dI(r)<.2)&&(i=KY(e)*r,i<.5))return HY(i)}else if(XY(r)!==r)return NaN;return n=JY(e,r)-1,GY(n)||Cg(n)?NaN:n}fI.exports=QY});var vI=v((I2e,pI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var YY=mI();pI.exports=YY});var hI=v((k2e,gI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function eee(e){return e===0?.6666666666666735:.6666666666666735+e*(.3999999999940942+e*(.2857142874366239+e*(.22222198432149784+e*(.1818357216161805+e*(.15313837699209373+e*.14798198605116586)))))}gI.exports=eee});var wI=v((O2e,_I)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The following copyright, license, and long comment were part of the original implementation available as part of [FDLIBM]{@link http://www.netlib.org/fdlibm/s_log1p.c}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
*
* Developed at SunPro, a Sun Microsystems, Inc. business.
* Permission to use, copy, modify, and distribute this
* software is freely granted, provided that this notice
* is preserved.
* ```
*/var ree=L(),yI=fr(),bI=Ri(),tee=pe(),nee=He(),$I=Ft(),iee=hI(),Rg=.6931471803691238,Ug=19082149292705877e-26,oee=.41421356237309503,aee=-.2928932188134525,see=1862645149230957e-24,uee=5551115123125783e-32,cee=9007199254740992,lee=.6666666666666666;function dee(e){var r,n,i,t,o,a,s,u,c,l;if(e<-1||ree(e))return NaN;if(e===-1)return nee;if(e===tee||e===0)return e;if(e<0?i=-e:i=e,l=1,i<oee){if(i<see)return i<uee?e:e-e*e*.5;e>aee&&(l=0,t=e,n=1)}return l!==0&&(i<cee?(c=1+e,n=yI(c),l=(n>>20)-$I,l>0?o=1-(c-e):o=e-(c-1),o/=c):(c=e,n=yI(c),l=(n>>20)-$I,o=0),n&=1048575,n<434334?c=bI(c,n|1072693248):(l+=1,c=bI(c,n|1071644672),n=1048576-n>>2),t=c-1),r=.5*t*t,n===0?t===0?(o+=l*Ug,l*Rg+o):(u=r*(1-lee*t),l*Rg-(u-(l*Ug+o)-t)):(a=t/(2+t),s=a*a,u=s*iee(s),l===0?t-(r-a*(r+u)):l*Rg-(r-(a*(r+u)+(l*Ug+o))-t))}_I.exports=dee});var Lr=v((N2e,SI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var fee=wI();SI.exports=fee});var kI=v((P2e,II)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function mee(e){var r,n,i;return e===0?-.01803556856784494:(e<0?r=-e:r=e,r<=1?(n=-.01803556856784494+e*(.02512664961998968+e*(.049410315156753225+e*(.0172491608709614+e*(-.0002594535632054381+e*(-.0005410098692152044+e*(-3245886498259485e-20+e*0)))))),i=1+e*(1.962029871977952+e*(1.4801966942423133+e*(.5413914320717209+e*(.09885042511280101+e*(.008213096746488934+e*(.00022493629192211576+e*-22335276320861708e-23))))))):(e=1/e,n=0+e*(-3245886498259485e-20+e*(-.0005410098692152044+e*(-.0002594535632054381+e*(.0172491608709614+e*(.049410315156753225+e*(.02512664961998968+e*-.01803556856784494)))))),i=-22335276320861708e-23+e*(.00022493629192211576+e*(.008213096746488934+e*(.09885042511280101+e*(.5413914320717209+e*(1.4801966942423133+e*(1.962029871977952+e*1))))))),n/i)}II.exports=mee});var NI=v((x2e,OI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function pee(e){var r,n,i;return e===0?.04906224540690395:(e<0?r=-e:r=e,r<=1?(n=.04906224540690395+e*(-.09691175301595212+e*(-.4149833583594954+e*(-.4065671242119384+e*(-.1584135863906922+e*(-.024014982064857155+e*-.0010034668769627955))))),i=1+e*(3.0234982984646304+e*(3.4873958536072385+e*(1.9141558827442668+e*(.5071377386143635+e*(.05770397226904519+e*.001957681026011072)))))):(e=1/e,n=-.0010034668769627955+e*(-.024014982064857155+e*(-.1584135863906922+e*(-.4065671242119384+e*(-.4149833583594954+e*(-.09691175301595212+e*.04906224540690395))))),i=.001957681026011072+e*(.05770397226904519+e*(.5071377386143635+e*(1.9141558827442668+e*(3.4873958536072385+e*(3.0234982984646304+e*1)))))),n/i)}OI.exports=pee});var xI=v((A2e,PI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function vee(e){var r,n,i;return e===0?-.029232972183027003:(e<0?r=-e:r=e,r<=1?(n=-.029232972183027003+e*(.14421626775719232+e*(-.14244039073863127+e*(.05428096940550536+e*(-.008505359768683364+e*(.0004311713426792973+e*0))))),i=1+e*(-1.5016935605448505+e*(.846973248876495+e*(-.22009515181499575+e*(.02558279715597587+e*(-.0010066679553914337+e*-8271935218912905e-22)))))):(e=1/e,n=0+e*(.0004311713426792973+e*(-.008505359768683364+e*(.05428096940550536+e*(-.14244039073863127+e*(.14421626775719232+e*-.029232972183027003))))),i=-8271935218912905e-22+e*(-.0010066679553914337+e*(.02558279715597587+e*(-.22009515181499575+e*(.846973248876495+e*(-1.5016935605448505+e*1)))))),n/i)}PI.exports=vee});var EI=v((E2e,AI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_85_0/boost/math/special_functions/detail/lgamma_small.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006-7, 2013-14.
* (C) Copyright Paul A. Bristow 2007, 2013-14.
* (C) Copyright Nikhar Agrawal 2013-14.
* (C) Copyright Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Fg=le(),gee=Pr(),hee=kI(),yee=NI(),bee=xI(),$ee=.15896368026733398,_ee=.5281534194946289,wee=.45201730728149414;function See(e,r,n){var i,t,o,a;if(e<gee)return-Fg(e);if(r===0||n===0)return 0;if(t=0,e>2){if(e>=3){do e-=1,n-=1,t+=Fg(e);while(e>=3);n=e-2}return o=n*(e+1),a=hee(n),t+=o*$ee+o*a,t}return e<1&&(t+=-Fg(e),n=r,r=e,e+=1),e<=1.5?(o=yee(r),i=r*n,t+=i*_ee+i*o,t):(o=n*r,a=bee(-n),t+=o*wee+o*a,t)}AI.exports=See});var jI=v((D2e,TI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_85_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006-7, 2013-14.
* (C) Copyright Paul A. Bristow 2007, 2013-14.
* (C) Copyright Nikhar Agrawal 2013-14.
* (C) Copyright Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var DI=Mr(),zI=Un(),Iee=Lr(),kee=L(),qI=EI();function Oee(e){return kee(e)?NaN:e<0?e<-.5?DI(1+e)-1:zI(-Iee(e)+qI(e+2,e+1,e)):e<2?zI(qI(e+1,e,e-1)):DI(1+e)-1}TI.exports=Oee});var RI=v((z2e,CI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Nee=jI();CI.exports=Nee});var FI=v((q2e,UI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/function Pee(e,r){var n,i,t,o;return n=-r,r=-r,i=e+1,t=1,a;function a(){return o=n/i,n*=r,t+=1,n/=t,i+=1,o}}UI.exports=Pee});var LI=v((T2e,MI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var xee=vI(),Aee=Zi(),Eee=RI(),Dee=FI();function zee(e,r,n){var i,t,o,a,s;return t=Eee(e),o=(t+1)/e,a=xee(r,e),t-=a,t/=e,s=Dee(e,r),a+=1,i=n?o:0,t=-a*Aee(s,{initialValue:(i-t)/a}),n&&(t=-t),[t,o]}MI.exports=zee});var Pa=v((j2e,ZI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qee=11754943508222875e-54;ZI.exports=qee});var BI=v((C2e,VI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Lc=Y(),Zr=Pa(),Tee=Pr(),jee=1e6;function Cee(e,r,n){var i,t,o,a,s,u,c;if(i=typeof e.next=="function",c=i?e.next().value:e(),a=c[1],o=c[0],a===0&&(a=Zr),s=a,u=0,i===!0)do c=e.next().value,c&&(u=c[1]+c[0]*u,u===0&&(u=Zr),s=c[1]+c[0]/s,s===0&&(s=Zr),u=1/u,t=s*u,a*=t);while(Lc(t-1)>r&&--n);else do c=e(),c&&(u=c[1]+c[0]*u,u===0&&(u=Zr),s=c[1]+c[0]/s,s===0&&(s=Zr),u=1/u,t=s*u,a*=t);while(c&&Lc(t-1)>r&&--n);return o/a}function Ree(e,r,n){var i,t,o,a,s,u;if(i=typeof e.next=="function",u=i?e.next().value:e(),o=u[1],o===0&&(o=Zr),a=o,s=0,i===!0)do u=e.next().value,u&&(s=u[1]+u[0]*s,s===0&&(s=Zr),a=u[1]+u[0]/a,a===0&&(a=Zr),s=1/s,t=a*s,o*=t);while(u&&Lc(t-1)>r&&--n);else do u=e(),u&&(s=u[1]+u[0]*s,s===0&&(s=Zr),a=u[1]+u[0]/a,a===0&&(a=Zr),s=1/s,t=a*s,o*=t);while(u&&Lc(t-1)>r&&--n);return o}function Uee(e,r){var n,i,t;return i={},arguments.length>1&&(i=r),n=i.maxIter||jee,t=i.tolerance||Tee,i.keep?Ree(e,t,n):Cee(e,t,n)}VI.exports=Uee});var HI=v((R2e,GI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var WI=Y(),Fee=Pr(),Wi=Pa(),Mee=1e6;function Lee(e,r,n){var i,t,o,a,s,u;u=e(),s=u[1],t=u[0],s===0&&(s=Wi),o=s,a=0;do u=e(),u&&(a=u[1]+u[0]*a,a===0&&(a=Wi),o=u[1]+u[0]/o,o===0&&(o=Wi),a=1/a,i=o*a,s*=i);while(u&&WI(i-1)>r&&--n);return t/s}function Zee(e,r,n){var i,t,o,a,s;s=e(),a=s[1],a===0&&(a=Wi),t=a,o=0;do s=e(),s&&(o=s[1]+s[0]*o,o===0&&(o=Wi),t=s[1]+s[0]/t,t===0&&(t=Wi),o=1/o,i=t*o,a*=i);while(s&&WI(i-1)>r&&--n);return a}function Vee(e,r){var n,i,t;return i={},arguments.length>1&&(i=r),t=i.tolerance||Fee,n=i.maxIter||Mee,i.keep?Zee(e,t,n):Lee(e,t,n)}GI.exports=Vee});var Lg=v((U2e,KI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Bee=wg(),Wee=BI(),Gee=HI(),Mg;Bee()?Mg=Wee:Mg=Gee;KI.exports=Mg});var XI=v((F2e,JI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/function Hee(e,r){var n=r-e+1,i=e,t=0;return o;function o(){return t+=1,n+=2,[t*(i-t),n]}}JI.exports=Hee});var Zg=v((M2e,QI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Kee=Lg(),Jee=XI();function Xee(e,r){var n=Jee(e,r);return 1/(r-e+1+Kee(n))}QI.exports=Xee});var tk=v((L2e,rk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2025 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Qee=Nr(),xa=Mr(),Vg=Y(),YI=Ne(),Yee=le(),ere=Y8(),ek=Wt(),rre=mt(),tre=gw(),nre=yw(),ire=Lw(),Bg=Gw(),ore=PS(),are=Pg(),Wg=YS(),sre=LI(),ure=Zg();function cre(e,r,n,i){var t,o,a,s,u,c,l,d,f,m,g,h,b,y;switch(l=0,d=i,c=r<30&&r<=e+1&&e<rre,c?(b=Qee(r),f=b===r,a=f?!1:Vg(b-r)===.5):(f=!1,a=!1),f&&e>.6?(d=!d,o=0):a&&e>.2?(d=!d,o=1):e<ere&&r>1?o=6:e>1e3&&(r<e||Vg(r-50)/e<1)?(d=!d,o=7):e<.5?-.4/Yee(e)<r?o=2:o=3:e<1.1?e*.75<r?o=2:o=3:(u=!1,n&&r>20&&(m=Vg((e-r)/r),r>200?20/r>m*m&&(u=!0):m<.4&&(u=!0)),u?o=5:e-1/(3*e)<r?o=2:(o=4,d=!d)),o){case 0:l=nre(r,e),n===!1&&(l*=xa(r));break;case 1:l=ire(r,e),n===!1&&(l*=xa(r));break;case 2:l=n?Wg(r,e):Bg(r,e),l!==0&&(s=0,t=!1,d&&(s=n?1:xa(r),n||l>=1||ek*l>s?(s/=l,n||r<1||ek/r>s?(s*=-r,t=!0):s=0):s=0),l*=are(r,e,s)/r,t&&(d=!1,l=-l));break;case 3:d=!d,g=sre(r,e,d),l=g[0],y=g[1],d=!1,n&&(l/=y);break;case 4:l=n?Wg(r,e):Bg(r,e),l!==0&&(l*=ure(r,e));break;case 5:l=ore(r,e),e>=r&&(d=!d);break;case 6:l=n?YI(e,r)/xa(r+1):YI(e,r)/r,l*=1-r*e/(r+1);break;case 7:l=n?Wg(r,e):Bg(r,e),l/=e,l!==0&&(l*=tre(r,e));break}return n&&l>1&&(l=1),d&&(h=n?1:xa(r),l=h-l),l}rk.exports=cre});var ak=v((Z2e,ok)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link https://www.boost.org/doc/libs/1_88_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006-7, 2013-14.
* (C) Copyright Paul A. Bristow 2007, 2013-14.
* (C) Copyright Nikhar Agrawal 2013-14.
* (C) Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var lre=Mi(),dre=ke(),Vr=le(),fre=_a(),mre=mt(),pre=pe(),vre=wa(),nk=tk(),ik=Pg(),gre=Zg();function hre(e,r,n,i){var t,o,a,s;return e<0||r<=0?NaN:(t=n===void 0?!0:n,a=i,r>=vre&&!t?(a&&r*4<e?(s=r*Vr(e)-e,s+=Vr(gre(r,e))):!a&&r>4*e?(s=r*Vr(e)-e,o=0,s+=Vr(ik(r,e,o)/r)):(s=nk(e,r,!0,a),s===0?a?(s=1+1/(12*r)+1/(288*r*r),s=Vr(s)-r+(r-.5)*Vr(r),s+=Vr(fre)):(s=r*Vr(e)-e,o=0,s+=Vr(ik(r,e,o)/r)):s=Vr(s)+lre(r)),s>mre?pre:dre(s)):nk(e,r,t,a))}ok.exports=hre});var Aa=v((V2e,sk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yre=ak();sk.exports=yre});var ck=v((B2e,uk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var bre=Aa(),Gg=L(),$re=pe();function _re(e,r,n){return Gg(e)||Gg(r)||Gg(n)||r<0||n<=0?NaN:r===0?e<0?0:1:e<=0?0:e===$re?1:bre(e*n,r)}uk.exports=_re});var dk=v((W2e,lk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function wre(e){return r;function r(){return e}}lk.exports=wre});var Ar=v((G2e,fk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Sre=dk();fk.exports=Sre});var vk=v((H2e,pk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var mk=L();function Ire(e,r){return mk(e)||mk(r)?NaN:e<r?0:1}pk.exports=Ire});var yk=v((K2e,hk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kre=Ar(),gk=L();function Ore(e){if(gk(e))return kre(NaN);return r;function r(n){return gk(n)?NaN:n<e?0:1}}hk.exports=Ore});var Hg=v((J2e,$k)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Nre=Ze(),bk=vk(),Pre=yk();Nre(bk,"factory",Pre);$k.exports=bk});var Sk=v((X2e,wk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xre=Ar(),Are=Hg().factory,Ere=Aa(),_k=L(),Dre=pe();function zre(e,r){if(_k(e)||_k(r)||e<0||r<=0)return xre(NaN);if(e===0)return Are(0);return n;function n(i){return i<=0?0:i===Dre?1:Ere(i*r,e)}}wk.exports=zre});var Kg=v((Q2e,kk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qre=Ze(),Ik=ck(),Tre=Sk();qre(Ik,"factory",Tre);kk.exports=Ik});var Nk=v((Y2e,Ok)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var jre=Kg();function Cre(e,r){return jre(e,r/2,.5)}Ok.exports=Cre});var xk=v((e4e,Pk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Rre=Kg().factory;function Ure(e){return Rre(e/2,.5)}Pk.exports=Ure});var Dk=v((r4e,Ek)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Fre=Ze(),Ak=Nk(),Mre=xk();Fre(Ak,"factory",Mre);Ek.exports=Ak});var qk=v((t4e,zk)=>{var Ea=1e3,Da=Ea*60,za=Da*60,qa=za*24,Lre=qa*365.25;zk.exports=function(e,r){r=r||{};var n=typeof e;if(n==="string"&&e.length>0)return Zre(e);if(n==="number"&&isNaN(e)===!1)return r.long?Bre(e):Vre(e);throw new Error("val is not a non-empty string or a valid number. val="+JSON.stringify(e))};function Zre(e){if(e=String(e),!(e.length>100)){var r=/^((?:\d+)?\.?\d+) *(milliseconds?|msecs?|ms|seconds?|secs?|s|minutes?|mins?|m|hours?|hrs?|h|days?|d|years?|yrs?|y)?$/i.exec(e);if(r){var n=parseFloat(r[1]),i=(r[2]||"ms").toLowerCase();switch(i){case"years":case"year":case"yrs":case"yr":case"y":return n*Lre;case"days":case"day":case"d":return n*qa;case"hours":case"hour":case"hrs":case"hr":case"h":return n*za;case"minutes":case"minute":case"mins":case"min":case"m":return n*Da;case"seconds":case"second":case"secs":case"sec":case"s":return n*Ea;case"milliseconds":case"millisecond":case"msecs":case"msec":case"ms":return n;default:return}}}}function Vre(e){return e>=qa?Math.round(e/qa)+"d":e>=za?Math.round(e/za)+"h":e>=Da?Math.round(e/Da)+"m":e>=Ea?Math.round(e/Ea)+"s":e+"ms"}function Bre(e){return Zc(e,qa,"day")||Zc(e,za,"hour")||Zc(e,Da,"minute")||Zc(e,Ea,"second")||e+" ms"}function Zc(e,r,n){if(!(e<r))return e<r*1.5?Math.floor(e/r)+" "+n:Math.ceil(e/r)+" "+n+"s"}});var Qg=v((oe,Tk)=>{oe=Tk.exports=Xg.debug=Xg.default=Xg;oe.coerce=Jre;oe.disable=Hre;oe.enable=Gre;oe.enabled=Kre;oe.humanize=qk();oe.names=[];oe.skips=[];oe.formatters={};var Jg;function Wre(e){var r=0,n;for(n in e)r=(r<<5)-r+e.charCodeAt(n),r|=0;return oe.colors[Math.abs(r)%oe.colors.length]}function Xg(e){function r(){if(r.enabled){var n=r,i=+new Date,t=i-(Jg||i);n.diff=t,n.prev=Jg,n.curr=i,Jg=i;for(var o=new Array(arguments.length),a=0;a<o.length;a++)o[a]=arguments[a];o[0]=oe.coerce(o[0]),typeof o[0]!="string"&&o.unshift("%O");var s=0;o[0]=o[0].replace(/%([a-zA-Z%])/g,function(c,l){if(c==="%%")return c;s++;var d=oe.formatters[l];if(typeof d=="function"){var f=o[s];c=d.call(n,f),o.splice(s,1),s--}return c}),oe.formatArgs.call(n,o);var u=r.log||oe.log||console.log.bind(console);u.apply(n,o)}}return r.namespace=e,r.enabled=oe.enabled(e),r.useColors=oe.useColors(),r.color=Wre(e),typeof oe.init=="function"&&oe.init(r),r}function Gre(e){oe.save(e),oe.names=[],oe.skips=[];for(var r=(typeof e=="string"?e:"").split(/[\s,]+/),n=r.length,i=0;i<n;i++)r[i]&&(e=r[i].replace(/\*/g,".*?"),e[0]==="-"?oe.skips.push(new RegExp("^"+e.substr(1)+"$")):oe.names.push(new RegExp("^"+e+"$")))}function Hre(){oe.enable("")}function Kre(e){var r,n;for(r=0,n=oe.skips.length;r<n;r++)if(oe.skips[r].test(e))return!1;for(r=0,n=oe.names.length;r<n;r++)if(oe.names[r].test(e))return!0;return!1}function Jre(e){return e instanceof Error?e.stack||e.message:e}});var Rk=v((nr,Ck)=>{nr=Ck.exports=Qg();nr.log=Yre;nr.formatArgs=Qre;nr.save=ete;nr.load=jk;nr.useColors=Xre;nr.storage=typeof chrome<"u"&&typeof chrome.storage<"u"?chrome.storage.local:rte();nr.colors=["lightseagreen","forestgreen","goldenrod","dodgerblue","darkorchid","crimson"];function Xre(){return typeof window<"u"&&window.process&&window.process.type==="renderer"?!0:typeof document<"u"&&document.documentElement&&document.documentElement.style&&document.documentElement.style.WebkitAppearance||typeof window<"u"&&window.console&&(window.console.firebug||window.console.exception&&window.console.table)||typeof navigator<"u"&&navigator.userAgent&&navigator.userAgent.toLowerCase().match(/firefox\/(\d+)/)&&parseInt(RegExp.$1,10)>=31||typeof navigator<"u"&&navigator.userAgent&&navigator.userAgent.toLowerCase().match(/applewebkit\/(\d+)/)}nr.formatters.j=function(e){try{return JSON.stringify(e)}catch(r){return"[UnexpectedJSONParseError]: "+r.message}};function Qre(e){var r=this.useColors;if(e[0]=(r?"%c":"")+this.namespace+(r?" %c":" ")+e[0]+(r?"%c ":" ")+"+"+nr.humanize(this.diff),!!r){var n="color: "+this.color;e.splice(1,0,n,"color: inherit");var i=0,t=0;e[0].replace(/%[a-zA-Z%]/g,function(o){o!=="%%"&&(i++,o==="%c"&&(t=i))}),e.splice(t,0,n)}}function Yre(){return typeof console=="object"&&console.log&&Function.prototype.apply.call(console.log,console,arguments)}function ete(e){try{e==null?nr.storage.removeItem("debug"):nr.storage.debug=e}catch{}}function jk(){var e;try{e=nr.storage.debug}catch{}return!e&&typeof process<"u"&&"env"in process&&(e=process.env.DEBUG),e}nr.enable(jk());function rte(){try{return window.localStorage}catch{}}});var Lk=v((Ce,Mk)=>{var Uk=es("tty"),Ta=es("util");Ce=Mk.exports=Qg();Ce.init=ute;Ce.log=ote;Ce.formatArgs=ite;Ce.save=ate;Ce.load=Fk;Ce.useColors=nte;Ce.colors=[6,2,3,4,5,1];Ce.inspectOpts=Object.keys(process.env).filter(function(e){return/^debug_/i.test(e)}).reduce(function(e,r){var n=r.substring(6).toLowerCase().replace(/_([a-z])/g,function(t,o){return o.toUpperCase()}),i=process.env[r];return/^(yes|on|true|enabled)$/i.test(i)?i=!0:/^(no|off|false|disabled)$/i.test(i)?i=!1:i==="null"?i=null:i=Number(i),e[n]=i,e},{});var Gi=parseInt(process.env.DEBUG_FD,10)||2;Gi!==1&&Gi!==2&&Ta.deprecate(function(){},"except for stderr(2) and stdout(1), any other usage of DEBUG_FD is deprecated. Override debug.log if you want to use a different log function (https://git.io/debug_fd)")();var tte=Gi===1?process.stdout:Gi===2?process.stderr:ste(Gi);function nte(){return"colors"in Ce.inspectOpts?!!Ce.inspectOpts.colors:Uk.isatty(Gi)}Ce.formatters.o=function(e){return this.inspectOpts.colors=this.useColors,Ta.inspect(e,this.inspectOpts).split(`
`).map(function(r){return r.trim()}).join(" ")};Ce.formatters.O=function(e){return this.inspectOpts.colors=this.useColors,Ta.inspect(e,this.inspectOpts)};function ite(e){var r=this.namespace,n=this.useColors;if(n){var i=this.color,t="  \x1B[3"+i+";1m"+r+" \x1B[0m";e[0]=t+e[0].split(`
`).join(`
`+t),e.push("\x1B[3"+i+"m+"+Ce.humanize(this.diff)+"\x1B[0m")}else e[0]=new Date().toUTCString()+" "+r+" "+e[0]}function ote(){return tte.write(Ta.format.apply(Ta,arguments)+`
`)}function ate(e){e==null?delete process.env.DEBUG:process.env.DEBUG=e}function Fk(){return process.env.DEBUG}function ste(e){var r,n=process.binding("tty_wrap");switch(n.guessHandleType(e)){case"TTY":r=new Uk.WriteStream(e),r._type="tty",r._handle&&r._handle.unref&&r._handle.unref();break;case"FILE":var i=es("fs");r=new i.SyncWriteStream(e,{autoClose:!1}),r._type="fs";break;case"PIPE":case"TCP":var t=es("net");r=new t.Socket({fd:e,readable:!1,writable:!0}),r.readable=!1,r.read=null,r._type="pipe",r._handle&&r._handle.unref&&r._handle.unref();break;default:throw new Error("Implement me. Unknown stream file type!")}return r.fd=e,r._isStdio=!0,r}function ute(e){e.inspectOpts={};for(var r=Object.keys(Ce.inspectOpts),n=0;n<r.length;n++)e.inspectOpts[r[n]]=Ce.inspectOpts[r[n]]}Ce.enable(Fk())});var e1=v((n4e,Yg)=>{typeof process<"u"&&process.type==="renderer"?Yg.exports=Rk():Yg.exports=Lk()});var Vk=v((i4e,Zk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function cte(e){var r,n,i;return e===0?-.0005087819496582806:(e<0?r=-e:r=e,r<=1?(n=-.0005087819496582806+e*(-.008368748197417368+e*(.03348066254097446+e*(-.012692614766297404+e*(-.03656379714117627+e*(.02198786811111689+e*(.008226878746769157+e*(-.005387729650712429+e*(0+e*0)))))))),i=1+e*(-.9700050433032906+e*(-1.5657455823417585+e*(1.5622155839842302+e*(.662328840472003+e*(-.7122890234154284+e*(-.05273963823400997+e*(.07952836873415717+e*(-.0023339375937419+e*.0008862163904564247))))))))):(e=1/e,n=0+e*(0+e*(-.005387729650712429+e*(.008226878746769157+e*(.02198786811111689+e*(-.03656379714117627+e*(-.012692614766297404+e*(.03348066254097446+e*(-.008368748197417368+e*-.0005087819496582806)))))))),i=.0008862163904564247+e*(-.0023339375937419+e*(.07952836873415717+e*(-.05273963823400997+e*(-.7122890234154284+e*(.662328840472003+e*(1.5622155839842302+e*(-1.5657455823417585+e*(-.9700050433032906+e*1))))))))),n/i)}Zk.exports=cte});var Wk=v((o4e,Bk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function lte(e){var r,n,i;return e===0?-.20243350835593876:(e<0?r=-e:r=e,r<=1?(n=-.20243350835593876+e*(.10526468069939171+e*(8.3705032834312+e*(17.644729840837403+e*(-18.851064805871424+e*(-44.6382324441787+e*(17.445385985570866+e*(21.12946554483405+e*-3.6719225470772936))))))),i=1+e*(6.242641248542475+e*(3.971343795334387+e*(-28.66081804998+e*(-20.14326346804852+e*(48.560921310873994+e*(10.826866735546016+e*(-22.643693341313973+e*1.7211476576120028)))))))):(e=1/e,n=-3.6719225470772936+e*(21.12946554483405+e*(17.445385985570866+e*(-44.6382324441787+e*(-18.851064805871424+e*(17.644729840837403+e*(8.3705032834312+e*(.10526468069939171+e*-.20243350835593876))))))),i=1.7211476576120028+e*(-22.643693341313973+e*(10.826866735546016+e*(48.560921310873994+e*(-20.14326346804852+e*(-28.66081804998+e*(3.971343795334387+e*(6.242641248542475+e*1)))))))),n/i)}Bk.exports=lte});var Hk=v((a4e,Gk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function dte(e){var r,n,i;return e===0?-.1311027816799519:(e<0?r=-e:r=e,r<=1?(n=-.1311027816799519+e*(-.16379404719331705+e*(.11703015634199525+e*(.38707973897260434+e*(.3377855389120359+e*(.14286953440815717+e*(.029015791000532906+e*(.0021455899538880526+e*(-6794655751811263e-22+e*(28522533178221704e-24+e*-681149956853777e-24))))))))),i=1+e*(3.4662540724256723+e*(5.381683457070069+e*(4.778465929458438+e*(2.5930192162362027+e*(.848854343457902+e*(.15226433829533179+e*(.011059242293464892+e*(0+e*(0+e*0)))))))))):(e=1/e,n=-681149956853777e-24+e*(28522533178221704e-24+e*(-6794655751811263e-22+e*(.0021455899538880526+e*(.029015791000532906+e*(.14286953440815717+e*(.3377855389120359+e*(.38707973897260434+e*(.11703015634199525+e*(-.16379404719331705+e*-.1311027816799519))))))))),i=0+e*(0+e*(0+e*(.011059242293464892+e*(.15226433829533179+e*(.848854343457902+e*(2.5930192162362027+e*(4.778465929458438+e*(5.381683457070069+e*(3.4662540724256723+e*1)))))))))),n/i)}Gk.exports=dte});var Jk=v((s4e,Kk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function fte(e){var r,n,i;return e===0?-.0350353787183178:(e<0?r=-e:r=e,r<=1?(n=-.0350353787183178+e*(-.0022242652921344794+e*(.018557330651423107+e*(.009508047013259196+e*(.0018712349281955923+e*(.00015754461742496055+e*(460469890584318e-20+e*(-2304047769118826e-25+e*26633922742578204e-28))))))),i=1+e*(1.3653349817554064+e*(.7620591645536234+e*(.22009110576413124+e*(.03415891436709477+e*(.00263861676657016+e*(7646752923027944e-20+e*(0+e*0)))))))):(e=1/e,n=26633922742578204e-28+e*(-2304047769118826e-25+e*(460469890584318e-20+e*(.00015754461742496055+e*(.0018712349281955923+e*(.009508047013259196+e*(.018557330651423107+e*(-.0022242652921344794+e*-.0350353787183178))))))),i=0+e*(0+e*(7646752923027944e-20+e*(.00263861676657016+e*(.03415891436709477+e*(.22009110576413124+e*(.7620591645536234+e*(1.3653349817554064+e*1)))))))),n/i)}Kk.exports=fte});var Qk=v((u4e,Xk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function mte(e){var r,n,i;return e===0?-.016743100507663373:(e<0?r=-e:r=e,r<=1?(n=-.016743100507663373+e*(-.0011295143874558028+e*(.001056288621524929+e*(.00020938631748758808+e*(14962478375834237e-21+e*(44969678992770644e-23+e*(4625961635228786e-24+e*(-2811287356288318e-29+e*9905570997331033e-32))))))),i=1+e*(.5914293448864175+e*(.1381518657490833+e*(.016074608709367652+e*(.0009640118070051656+e*(27533547476472603e-21+e*(282243172016108e-21+e*(0+e*0)))))))):(e=1/e,n=9905570997331033e-32+e*(-2811287356288318e-29+e*(4625961635228786e-24+e*(44969678992770644e-23+e*(14962478375834237e-21+e*(.00020938631748758808+e*(.001056288621524929+e*(-.0011295143874558028+e*-.016743100507663373))))))),i=0+e*(0+e*(282243172016108e-21+e*(27533547476472603e-21+e*(.0009640118070051656+e*(.016074608709367652+e*(.1381518657490833+e*(.5914293448864175+e*1)))))))),n/i)}Xk.exports=mte});var tO=v((c4e,rO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_81_0/boost/math/special_functions/detail/erf_inv.hpp}. This implementation follows the original, but has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var pte=L(),Yk=ue(),eO=le(),vte=pe(),gte=He(),hte=Vk(),yte=Wk(),bte=Hk(),$te=Jk(),_te=Qk(),wte=.08913147449493408,Ste=2.249481201171875,Ite=.807220458984375,kte=.9399557113647461,Ote=.9836282730102539;function Nte(e){var r,n,i,t,o;return pte(e)?NaN:e===0?vte:e===2?gte:e===1?0:e>2||e<0?NaN:(e>1?(r=-1,i=2-e):(r=1,i=e),e=1-i,e<=.5?(t=e*(e+10),o=hte(e),r*(t*wte+t*o)):i>=.25?(t=Yk(-2*eO(i)),i-=.25,o=yte(i),r*(t/(Ste+o))):(i=Yk(-eO(i)),i<3?(n=i-1.125,o=bte(n),r*(Ite*i+o*i)):i<6?(n=i-3,o=$te(n),r*(kte*i+o*i)):(n=i-6,o=_te(n),r*(Ote*i+o*i))))}rO.exports=Nte});var Hi=v((l4e,nO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Pte=tO();nO.exports=Pte});var ja=v((d4e,iO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xte=34028234663852886e22;iO.exports=xte});var cO=v((f4e,uO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ate=e1(),oO=Aa(),Ete=Y(),Dte=ke(),aO=le(),zte=ja(),sO=Ate("gammaincinv:higher_newton");function qte(e,r,n,i,t,o,a,s){var u,c,l,d,f,m,g,h,b,y,S,$,N,P;P=e,S=1,$=1,m=r*r,c=e;do{if(P=e,g=P*P,n===0){if(u=(1-r)*aO(P)+P+o,u>aO(zte))return sO("Warning: overflow problems in one or more steps of the computation. The initial approximation to the root is returned."),c;N=Dte(u)}else N=-a*P;s?(h=oO(P,r,!0,!1),l=-N*(h-i)):(b=oO(P,r,!0,!0),l=N*(b-t)),N=l,i>1e-120||$>1?(d=.5*(P-r+1)/P,f=(2*g-4*P*r+4*P+2*m-3*r+1)/g,f/=6,e=P+N*(1+N*(d+N*f))):e=P+N,S=Ete(P/e-1),$+=1,P=e,P<0&&(P=c,$=100)}while(S>2e-14&&$<35);return(S>2e-14||$>99)&&sO("Warning: the number of iterations in the Newton method reached the upper limit N=35. The last value obtained for the root is given as output."),y=P||0,y}uO.exports=qte});var dO=v((m4e,lO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Tte(e){return e===0?0:0+e*(1+e*(1+e*(1.5+e*(2.6666666666666665+e*(5.208333333333333+e*10.8)))))}lO.exports=Tte});var mO=v((p4e,fO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function jte(e){return e===0?1:1+e*(1+e*(.3333333333333333+e*(.027777777777777776+e*(-.003703703703703704+e*(.0002314814814814815+e*5878894767783657e-20)))))}fO.exports=jte});var r1=v((v4e,vO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Cte=Y(),Rte=ke(),pO=le(),Ute=vt(),Fte=dO(),Mte=mO(),Lte=1e-8,Zte=.08333333333333333,Vte=.008333333333333333,Ki=[1,0,0,0,0,0];function Bte(e){var r,n,i,t,o,a,s,u,c;if(c=e*e*.5,e===0?o=0:e<-1?(u=Rte(-1-c),o=Fte(u)):e<1?(u=e,o=Mte(u)):(u=11+c,a=pO(u),o=u+a,u=1/u,r=a*a,n=r*a,i=n*a,t=i*a,Ki[1]=(2-a)*.5,Ki[2]=(-9*a+6+2*r)/6,Ki[3]=-(3*n+36*a-22*r-12)*Zte,Ki[4]=(60+350*r-300*a-125*n+12*i)/60,Ki[5]=-(-120-274*i+900*a-1700*r+1125*n+20*t)*Vte,o+=a*u*Ute(Ki,u)),u=1,e>-3.5&&e<-.03||e>.03&&e<40){u=1,s=o;do o=s*(c+pO(s))/(s-1),u=Cte(s/o-1),s=o;while(u>Lte)}return o}vO.exports=Bte});var hO=v((g4e,gO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Wte=.9189385332046728;gO.exports=Wte});var bO=v((h4e,yO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Gte=[1.9963790515900766,-.0017971032528832887,13129285796384672e-21,-2340875228178749e-22,72291210671127e-22,-3280997607821e-22,19875070901e-21,-1509214183e-21,1375340084e-22,-145728923e-22,17532367e-22,-2351465e-22,346551e-22,-55471e-22,9548e-22,-1748e-22,332e-22,-58e-22];function Hte(e,r){var n,i,t,o,a;i=0,t=0,n=r+r,a=e;do o=t,t=i,i=n*t-o+Gte[a],a-=1;while(a>=0);return(i-o)/2}yO.exports=Hte});var _O=v((y4e,$O)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Kte(e){return e===0?.025721014990011306:.025721014990011306+e*(.08247596616699963+e*(-.0025328157302663564+e*(.0006099292666946337+e*(-.00033543297638406+e*.000250505279903))))}$O.exports=Kte});var SO=v((b4e,wO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Jte(e){return e===0?.08333333333333333:.08333333333333333+e*(-.002777777777777778+e*(.0007936507936507937+e*-.0005952380952380953))}wO.exports=Jte});var kO=v(($4e,IO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var t1=Mi(),Vc=le(),n1=hO(),Xte=Pa(),Qte=ja(),Yte=bO(),ene=_O(),rne=SO(),tne=.30865217988013566;function nne(e){var r;return e<Xte?Qte:e<1?t1(e+1)-(e+.5)*Vc(e)+e-n1:e<2?t1(e)-(e-.5)*Vc(e)+e-n1:e<3?t1(e-1)-(e-.5)*Vc(e)+e-n1+Vc(e-1):e<12?(r=18/(e*e)-1,Yte(17,r)/(12*e)):(r=1/(e*e),e<1e3?ene(r)/(tne+r)/e:rne(r)/e)}IO.exports=nne});var PO=v((_4e,NO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var OO=ke(),ine=Mr(),one=le(),ane=ja(),sne=_a(),une=kO();function cne(e){return e>=3?OO(une(e)):e>0?ine(e)/(OO(-e+(e-.5)*one(e))*sne):ane}NO.exports=cne});var AO=v((w4e,xO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function lne(e){var r,n,i;return e===0?-.3333333333438:(e<0?r=-e:r=e,r<=1?(n=-.3333333333438+e*(-.2070740359969+e*(-.05041806657154+e*(-.004923635739372+e*-4293658292782e-17))),i=1+e*(.7045554412463+e*(.2118190062224+e*(.03048648397436+e*.001605037988091)))):(e=1/e,n=-4293658292782e-17+e*(-.004923635739372+e*(-.05041806657154+e*(-.2070740359969+e*-.3333333333438))),i=.001605037988091+e*(.03048648397436+e*(.2118190062224+e*(.7045554412463+e*1)))),n/i)}xO.exports=lne});var DO=v((S4e,EO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var dne=Y(),fne=le(),mne=r1(),pne=AO();function vne(e){var r;return dne(e)<1?pne(e):(r=mne(e),fne(e/(r-1))/e)}EO.exports=vne});var qO=v((I4e,zO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function gne(e){var r,n,i;return e===0?-.0172847633523:(e<0?r=-e:r=e,r<=1?(n=-.0172847633523+e*(-.0159372646475+e*(-.00464910887221+e*(-.00060683488776+e*-614830384279e-17))),i=1+e*(.764050615669+e*(.297143406325+e*(.0579490176079+e*.00574558524851)))):(e=1/e,n=-614830384279e-17+e*(-.00060683488776+e*(-.00464910887221+e*(-.0159372646475+e*-.0172847633523))),i=.00574558524851+e*(.0579490176079+e*(.297143406325+e*(.764050615669+e*1)))),n/i)}zO.exports=gne});var jO=v((k4e,TO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function hne(e){var r,n,i;return e===0?-.0172839517431:(e<0?r=-e:r=e,r<=1?(n=-.0172839517431+e*(-.0146362417966+e*(-.00357406772616+e*(-.000391032032692+e*249634036069e-17))),i=1+e*(.690560400696+e*(.249962384741+e*(.0443843438769+e*.00424073217211)))):(e=1/e,n=249634036069e-17+e*(-.000391032032692+e*(-.00357406772616+e*(-.0146362417966+e*-.0172839517431))),i=.00424073217211+e*(.0443843438769+e*(.249962384741+e*(.690560400696+e*1)))),n/i)}TO.exports=hne});var RO=v((O4e,CO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function yne(e){var r,n,i;return e===0?.99994466948:(e<0?r=-e:r=e,r<=1?(n=.99994466948+e*(104.649839762+e*(857.204033806+e*(731.901559577+e*45.5174411671))),i=1+e*(104.526456943+e*(823.313447808+e*(3119.93802124+e*3970.03311219)))):(e=1/e,n=45.5174411671+e*(731.901559577+e*(857.204033806+e*(104.649839762+e*.99994466948))),i=3970.03311219+e*(3119.93802124+e*(823.313447808+e*(104.526456943+e*1)))),n/i)}CO.exports=yne});var FO=v((N4e,UO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var bne=le(),$ne=qO(),_ne=jO(),wne=RO();function Sne(e){var r,n;return e<-5?(n=e*e,r=bne(-e),(12-n-6*(r*r))/(12*n*e)):e<-2?$ne(e):e<2?_ne(e):e<1e3?(n=1/e,wne(e)/(-12*e)):-1/(12*e)}UO.exports=Sne});var LO=v((P4e,MO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Ine(e){var r,n,i;return e===0?.0495346498136:(e<0?r=-e:r=e,r<=1?(n=.0495346498136+e*(.0299521337141+e*(.00688296911516+e*(.000512634846317+e*-201411722031e-16))),i=1+e*(.759803615283+e*(.261547111595+e*(.0464854522477+e*.00403751193496)))):(e=1/e,n=-201411722031e-16+e*(.000512634846317+e*(.00688296911516+e*(.0299521337141+e*.0495346498136))),i=.00403751193496+e*(.0464854522477+e*(.261547111595+e*(.759803615283+e*1)))),n/i)}MO.exports=Ine});var VO=v((x4e,ZO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function kne(e){var r,n,i;return e===0?.00452313583942:(e<0?r=-e:r=e,r<=1?(n=.00452313583942+e*(.00120744920113+e*(-789724156582e-16+e*(-504476066942e-16+e*-535770949796e-17))),i=1+e*(.912203410349+e*(.405368773071+e*(.0901638932349+e*.00948935714996)))):(e=1/e,n=-535770949796e-17+e*(-504476066942e-16+e*(-789724156582e-16+e*(.00120744920113+e*.00452313583942))),i=.00948935714996+e*(.0901638932349+e*(.405368773071+e*(.912203410349+e*1)))),n/i)}ZO.exports=kne});var WO=v((A4e,BO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function One(e){var r,n,i;return e===0?.00439937562904:(e<0?r=-e:r=e,r<=1?(n=.00439937562904+e*(.000487225670639+e*(-.000128470657374+e*(529110969589e-17+e*15716677175e-17))),i=1+e*(.794435257415+e*(.333094721709+e*(.0703527806143+e*.00806110846078)))):(e=1/e,n=15716677175e-17+e*(529110969589e-17+e*(-.000128470657374+e*(.000487225670639+e*.00439937562904))),i=.00806110846078+e*(.0703527806143+e*(.333094721709+e*(.794435257415+e*1)))),n/i)}BO.exports=One});var HO=v((E4e,GO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Nne(e){var r,n,i;return e===0?-.0011481191232:(e<0?r=-e:r=e,r<=1?(n=-.0011481191232+e*(-.112850923276+e*(1.51623048511+e*(-.218472031183+e*.0730002451555))),i=1+e*(14.2482206905+e*(69.7360396285+e*(218.938950816+e*277.067027185)))):(e=1/e,n=.0730002451555+e*(-.218472031183+e*(1.51623048511+e*(-.112850923276+e*-.0011481191232))),i=277.067027185+e*(218.938950816+e*(69.7360396285+e*(14.2482206905+e*1)))),n/i)}GO.exports=Nne});var JO=v((D4e,KO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Pne(e){var r,n,i;return e===0?-.000145727889667:(e<0?r=-e:r=e,r<=1?(n=-.000145727889667+e*(-.290806748131+e*(-13.308504545+e*(199.722374056+e*-11.4311378756))),i=1+e*(139.612587808+e*(2189.01116348+e*(7115.24019009+e*45574.6081453)))):(e=1/e,n=-11.4311378756+e*(199.722374056+e*(-13.308504545+e*(-.290806748131+e*-.000145727889667))),i=45574.6081453+e*(7115.24019009+e*(2189.01116348+e*(139.612587808+e*1)))),n/i)}KO.exports=Pne});var YO=v((z4e,QO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var XO=le(),xne=LO(),Ane=VO(),Ene=WO(),Dne=HO(),zne=JO();function qne(e){var r,n;return e<-8?(r=e*e,n=XO(-e)/e,(-30+e*n*(6*r*n*n-12+r))/(12*e*r*r)):e<-4?xne(e)/(e*e):e<-2?Ane(e):e<2?Ene(e):e<10?(r=1/e,Dne(r)/(e*e)):e<100?(r=1/e,zne(r)/(e*e)):-XO(e)/(12*e*e*e)}QO.exports=qne});var uN=v((q4e,sN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Tne=e1(),eN=vt(),Er=Mi(),jne=Hi(),rN=Mr(),Bc=ue(),tN=Y(),Ji=ke(),Cne=Gt(),Rne=Ne(),hr=le(),Une=_a(),Fne=ja(),Mne=Og(),Lne=cO(),nN=r1(),iN=PO(),Zne=DO(),Vne=FO(),Bne=YO(),Wne=Tne("gammaincinv:compute"),Kt=.5,i1=.3333333333333333,Gne=.25,oN=.2,aN=.16666666666666666,Hne=.08333333333333333,Kne=.041666666666666664,yr=[0,0,0,0,0];function Jne(e,r,n){var i,t,o,a,s,u,c,l,d,f,m,g,h,b,y,S,$,N,P,A,E,U,K,de,ae,me,Ie,Te,D,j,Gn,Ml,Ll,Zl,Oh,Je,Ae,Vl,Xe,Qr,wr,Bl,Wl,Gl;if(r<Kt?(a=!0,s=r,Bl=-1):(a=!1,s=n,Bl=1),Xe=0,tN(e-1)<1e-4&&(Qr=0,a?r<.001?(Ml=r*r,Te=Ml*r,Gn=Te*r,A=Gn*r,P=A*r,E=r+Ml*Kt+Te*i1+Gn*Gne+A*oN+P*aN):E=-hr(1-r):E=-hr(n),e===1?(Xe=2,Zl=E):(o=Er(e),Xe=1)),n<1e-30&&e<Kt&&(Qr=0,E=-hr(n*rN(e))+(e-1)*hr(-hr(n*rN(e))),Xe=1,o=Er(e)),e>1&&e<500&&r<1e-80){for(Qr=0,u=1/e,i=1/(e+1),E=(Er(e+1)+hr(r))*u,E=Ji(E),b=E,Vl=0;Vl<10;Vl++)E=b*Ji(E*u)*Rne(1-E*i,u);Xe=1,o=Er(e)}if(c=1/e*(hr(r)+Er(e+1)),c<hr(oN*(1+e))&&Xe===0&&(wr=Ji(c),Qr=0,U=e*e,Ll=U*e,D=Ll*e,y=e+1,m=y*y,f=y*m,d=m*m,S=e+2,l=S*S,$=e+3,yr[0]=1,yr[1]=1/y,yr[2]=Kt*(3*e+5)/(m*S),yr[3]=i1*(31+8*U+33*e)/(f*S*$),yr[4]=Kne*(2888+1179*Ll+125*D+3971*U+5661*e)/(d*l*$*(e+4)),E=wr*eN(yr,wr),o=Er(e),Xe=1),e<10&&Xe===0&&(g=Bc(e)/(iN(e)*Une),h=Cne(.02,g),n<h&&(Qr=0,Je=1-e,me=Je*Je,Ie=me*Je,N=Bc(-2/e*hr(n/g)),E=e*nN(N),Ae=hr(E),E>5?(K=Ae*Ae,de=K*Ae,ae=de*Ae,wr=1/E,yr[0]=Ae-1,yr[1]=(3*Je-2*Je*Ae+K-2*Ae+2)*Kt,yr[2]=(24*Je*Ae-11*me-24*Je-6*K+12*Ae-12-9*Je*K+6*me*Ae+2*de)*aN,yr[3]=(-12*Ie*Ae+8.04*Je*K-114*me*Ae+(72+36*K)+(3*ae-72*Ae+162)*(Je-168*Je*Ae)-(12*de+25*Ie)-(22*Je*de+36*me*K+120*me))*Hne,yr[4]=0,E=E-Ae+Je*wr*eN(yr,wr)):(wr=1/E,K=Ae*Ae,Oh=Ae-1,Wl=Ae-Je*wr*Oh,Wl<E&&(E-=Wl)),o=Er(e),Xe=1)),tN(s-Kt)<1e-5&&Xe===0&&(Qr=0,u=1/e,E=e-i1+(.019753086419753086+.007211444248481286*u)*u,o=Er(e),Xe=1),e<1&&Xe===0&&(Qr=0,a?E=Ji(1/e*(hr(s)+Er(e+1))):E=Ji(1/e*(hr(1-s)+Er(e+1))),o=Er(e),Xe=1),Xe===0)if(Qr=1,u=1/e,wr=jne(2*s),N=Bl*wr/Bc(e*Kt),wr<Fne)N+=(Zne(N)+(Vne(N)+Bne(N)*u)*u)*u,E=e*nN(N),Gl=N,j=-Bc(e/Mne)*Ji(-Kt*e*Gl*Gl)/iN(e),t=1/j;else return Wne("Warning: Overflow problems in one or more steps of the computation."),NaN;return Xe<2&&(Zl=Lne(E,e,Qr,r,n,o,t,a)),Zl}sN.exports=Jne});var mN=v((T4e,fN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cN=L(),Xne=Pa(),lN=pe(),dN=uN();function Qne(e,r,n){return cN(e)||cN(r)?NaN:r<Xne?NaN:e>1||e<0?NaN:n===!0?e===0?lN:e===1?0:dN(r,1-e,e):e===0?0:e===1?lN:dN(r,e,1-e)}fN.exports=Qne});var Wc=v((j4e,pN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Yne=mN();pN.exports=Yne});var gN=v((C4e,vN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var o1=L(),eie=Wc();function rie(e,r,n){return o1(r)||o1(n)||o1(e)||r<0||n<=0||e<0||e>1?NaN:r===0?0:1/n*eie(e,r)}vN.exports=rie});var yN=v((R4e,hN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var tie=L();function nie(e,r){return tie(e)||e<0||e>1?NaN:r}hN.exports=nie});var _N=v((U4e,$N)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var iie=Ar(),bN=L();function oie(e){if(bN(e))return iie(NaN);return r;function r(n){return bN(n)||n<0||n>1?NaN:e}}$N.exports=oie});var a1=v((F4e,SN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var aie=Ze(),wN=yN(),sie=_N();aie(wN,"factory",sie);SN.exports=wN});var kN=v((M4e,IN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var uie=Ar(),cie=Wc(),lie=a1().factory,s1=L();function die(e,r){if(s1(e)||s1(r)||e<0||r<=0)return uie(NaN);if(e===0)return lie(0);return n;function n(i){return s1(i)||i<0||i>1?NaN:1/r*cie(i,e)}}IN.exports=die});var u1=v((L4e,NN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var fie=Ze(),ON=gN(),mie=kN();fie(ON,"factory",mie);NN.exports=ON});var xN=v((Z4e,PN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var pie=u1();function vie(e,r){return pie(e,r/2,.5)}PN.exports=vie});var EN=v((V4e,AN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gie=u1().factory;function hie(e){return gie(e/2,.5)}AN.exports=hie});var qN=v((B4e,zN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yie=Ze(),DN=xN(),bie=EN();yie(DN,"factory",bie);zN.exports=DN});var b1=v((p5e,NP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Soe=.7853981633974483;NP.exports=Soe});var xP=v((v5e,PP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Ioe(e){var r,n,i;return e===0?.16666666666666713:(e<0?r=-e:r=e,r<=1?(n=-8.198089802484825+e*(19.562619833175948+e*(-16.262479672107002+e*(5.444622390564711+e*(-.6019598008014124+e*.004253011369004428)))),i=-49.18853881490881+e*(139.51056146574857+e*(-147.1791292232726+e*(70.49610280856842+e*(-14.740913729888538+e*1))))):(e=1/e,n=.004253011369004428+e*(-.6019598008014124+e*(5.444622390564711+e*(-16.262479672107002+e*(19.562619833175948+e*-8.198089802484825)))),i=1+e*(-14.740913729888538+e*(70.49610280856842+e*(-147.1791292232726+e*(139.51056146574857+e*-49.18853881490881))))),n/i)}PP.exports=Ioe});var EP=v((g5e,AP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function koe(e){var r,n,i;return e===0?.08333333333333809:(e<0?r=-e:r=e,r<=1?(n=28.536655482610616+e*(-25.56901049652825+e*(6.968710824104713+e*(-.5634242780008963+e*.002967721961301243))),i=342.43986579130785+e*(-383.8770957603691+e*(147.0656354026815+e*(-21.947795316429207+e*1)))):(e=1/e,n=.002967721961301243+e*(-.5634242780008963+e*(6.968710824104713+e*(-25.56901049652825+e*28.536655482610616))),i=1+e*(-21.947795316429207+e*(147.0656354026815+e*(-383.8770957603691+e*342.43986579130785)))),n/i)}AP.exports=koe});var qP=v((h5e,zP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C code, long comment, copyright, license, and constants are from [Cephes]{@link http://www.netlib.org/cephes}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright 1984, 1995, 2000 by Stephen L. Moshier
*
* Some software in this archive may be from the book _Methods and Programs for Mathematical Functions_ (Prentice-Hall or Simon & Schuster International, 1989) or from the Cephes Mathematical Library, a commercial product. In either event, it is copyrighted by the author. What you see here may be used freely but it comes with no support or guarantee.
*
* Stephen L. Moshier
* moshier@na-net.ornl.gov
* ```
*/var Ooe=L(),Noe=ue(),DP=b1(),Poe=xP(),xoe=EP(),Aoe=6123233995736766e-32;function Eoe(e){var r,n,i,t,o;if(Ooe(e))return NaN;if(e>0?i=e:(r=!0,i=-e),i>1)return NaN;if(i>.625)n=1-i,t=n*xoe(n),n=Noe(n+n),o=DP-n,n=n*t-Aoe,o-=n,o+=DP;else{if(i<1e-8)return e;n=i*i,o=n*Poe(n),o=i*o+i}return r?-o:o}zP.exports=Eoe});var nl=v((y5e,TP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Doe=qP();TP.exports=Doe});var CP=v((b5e,jP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function zoe(e){var r,n,i;return e===0?1/0:(e<0?r=-e:r=e,r<=1?(n=709811.662581658+e*(679979.8474157227+e*(293136.7857211597+e*(74887.54032914672+e*(12555.290582413863+e*(1443.4299244417066+e*(115.24194596137347+e*(6.309239205732627+e*(.22668404630224365+e*(.004826466289237662+e*4624429436045379e-20))))))))),i=0+e*(362880+e*(1026576+e*(1172700+e*(723680+e*(269325+e*(63273+e*(9450+e*(870+e*(45+e*1)))))))))):(e=1/e,n=4624429436045379e-20+e*(.004826466289237662+e*(.22668404630224365+e*(6.309239205732627+e*(115.24194596137347+e*(1443.4299244417066+e*(12555.290582413863+e*(74887.54032914672+e*(293136.7857211597+e*(679979.8474157227+e*709811.662581658))))))))),i=1+e*(45+e*(870+e*(9450+e*(63273+e*(269325+e*(723680+e*(1172700+e*(1026576+e*(362880+e*0)))))))))),n/i)}jP.exports=zoe});var FP=v(($5e,UP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{http://www.boost.org/doc/libs/1_85_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var RP=L(),qoe=Lr(),Toe=ue(),joe=Y(),Coe=ke(),$1=Ne(),Roe=Rn(),_1=Pr(),w1=CP(),S1=10.900511;function Uoe(e,r){var n,i,t,o,a,s,u;return RP(e)||RP(r)?NaN:e<0||r<0?NaN:r===1?1/e:e===1?1/r:(u=e+r,u<_1?(a=u/e,a/=r,a):u===e&&r<_1?1/r:u===r&&e<_1?1/e:(e<r&&(s=r,r=e,e=s),i=e+S1-.5,t=r+S1-.5,o=u+S1-.5,a=w1(e)*(w1(r)/w1(u)),n=e-.5-r,joe(r*n)<o*100&&e>100?a*=Coe(n*qoe(-r/o)):a*=$1(i/o,n),o>1e10?a*=$1(i/o*(t/o),r):a*=$1(i*t/(o*o),r),a*=Toe(Roe/t),a))}UP.exports=Uoe});var I1=v((_5e,MP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Foe=FP();MP.exports=Foe});var k1=v((w5e,LP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Moe=2147483647;LP.exports=Moe});var il=v((S5e,ZP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Loe=1.5707963267948966;ZP.exports=Loe});var VP=v((I5e,Zoe)=>{Zoe.exports=[1,1,2,6,24,120,720,5040,40320,362880,3628800,39916800,479001600,6227020800,87178291200,1307674368e3,20922789888e3,355687428096e3,6402373705728e3,121645100408832e3,243290200817664e4,5109094217170944e4,11240007277776077e5,2585201673888498e7,6204484017332394e8,15511210043330986e9,40329146112660565e10,10888869450418352e12,30488834461171387e13,8841761993739702e15,26525285981219107e16,8222838654177922e18,2631308369336935e20,8683317618811886e21,29523279903960416e22,10333147966386145e24,37199332678990125e25,13763753091226346e27,5230226174666011e29,20397882081197444e30,8159152832478977e32,3345252661316381e34,140500611775288e37,6041526306337383e37,2658271574788449e39,11962222086548019e40,5502622159812089e42,25862324151116818e43,12413915592536073e45,6082818640342675e47,30414093201713376e48,15511187532873822e50,8065817517094388e52,42748832840600255e53,2308436973392414e56,12696403353658276e57,7109985878048635e59,40526919504877214e60,23505613312828785e62,13868311854568984e64,832098711274139e67,5075802138772248e68,3146997326038794e70,198260831540444e73,12688693218588417e73,8247650592082472e75,5443449390774431e77,3647111091818868e79,24800355424368305e80,1711224524281413e83,11978571669969892e84,8504785885678623e86,61234458376886085e87,44701154615126844e89,3307885441519386e92,248091408113954e95,18854947016660504e95,14518309202828587e97,11324281178206297e99,8946182130782976e101,7156945704626381e103,5797126020747368e105,4753643337012842e107,3945523969720659e109,3314240134565353e111,281710411438055e114,24227095383672734e114,2107757298379528e117,18548264225739844e118,1650795516090846e121,14857159644817615e122,1352001527678403e125,12438414054641308e126,11567725070816416e128,1087366156656743e131,1032997848823906e133,9916779348709496e134,9619275968248212e136,9426890448883248e138,9332621544394415e140,9332621544394415e142,942594775983836e145,9614466715035127e146,990290071648618e149,10299016745145628e150,1081396758240291e153,11462805637347084e154,1226520203196138e157,1324641819451829e159,14438595832024937e160,1588245541522743e163,17629525510902446e164,1974506857221074e167,22311927486598138e168,25435597334721877e170,2925093693493016e173,3393108684451898e175,3969937160808721e177,4684525849754291e179,5574585761207606e181,6689502913449127e183,8094298525273444e185,9875044200833601e187,1214630436702533e190,1506141741511141e192,1882677176888926e194,2372173242880047e196,30126600184576594e197,3856204823625804e200,4974504222477287e202,6466855489220474e204,847158069087882e207,11182486511960043e208,14872707060906857e210,19929427461615188e212,26904727073180504e214,3659042881952549e217,5012888748274992e219,6917786472619489e221,9615723196941089e223,13462012475717526e225,1898143759076171e228,2695364137888163e230,3854370717180073e232,55502938327393044e233,8047926057471992e236,11749972043909107e238,1727245890454639e241,25563239178728654e242,380892263763057e246,5713383956445855e247,862720977423324e250,13113358856834524e251,20063439050956823e253,30897696138473508e255,4789142901463394e258,7471062926282894e260,11729568794264145e262,1853271869493735e265,29467022724950384e266,47147236359920616e268,7590705053947219e271,12296942187394494e273,20044015765453026e275,3287218585534296e278,5423910666131589e280,9003691705778438e282,1503616514864999e285,25260757449731984e286,4269068009004705e289,7257415615307999e291]});var WP=v((k5e,BP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Voe=L(),Boe=Tn(),Woe=Mr(),Goe=pe(),Hoe=wa(),Koe=VP();function Joe(e){return Voe(e)?NaN:Boe(e)?e<0?NaN:e<=Hoe?Koe[e]:Goe:Woe(e+1)}BP.exports=Joe});var O1=v((O5e,GP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Xoe=WP();GP.exports=Xoe});var KP=v((N5e,HP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2024 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Qoe(e){var r,n,i;return e===0?1/0:(e<0?r=-e:r=e,r<=1?(n=3847467039331777e-5+e*(3685766504351951e-5+e*(1588920245372942e-5+e*(4059208354298835e-6+e*(6805476611834733e-7+e*(7823975500312005e-8+e*(6246580776401795e-9+e*(341986.3488721347+e*(12287.194511824551+e*(261.61404416416684+e*2.5066282746310007))))))))),i=0+e*(362880+e*(1026576+e*(1172700+e*(723680+e*(269325+e*(63273+e*(9450+e*(870+e*(45+e*1)))))))))):(e=1/e,n=2.5066282746310007+e*(261.61404416416684+e*(12287.194511824551+e*(341986.3488721347+e*(6246580776401795e-9+e*(7823975500312005e-8+e*(6805476611834733e-7+e*(4059208354298835e-6+e*(1588920245372942e-5+e*(3685766504351951e-5+e*3847467039331777e-5))))))))),i=1+e*(45+e*(870+e*(9450+e*(63273+e*(269325+e*(723680+e*(1172700+e*(1026576+e*(362880+e*0)))))))))),n/i)}HP.exports=Qoe});var XP=v((P5e,JP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/lanczos.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Yoe=KP();JP.exports=Yoe});var YP=v((x5e,QP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var eae=XP();QP.exports=eae});var ux=v((A5e,sx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_85_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006-7, 2013-14.
* Copyright Paul A. Bristow 2007, 2013-14.
* Copyright Nikhar Agrawal 2013-14.
* Copyright Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var ex=YP(),rae=Mr(),tae=Lr(),rx=Y(),tx=ke(),nx=Ne(),ix=Pr(),nae=Rn(),iae=Bi(),ox=wa(),oae=4269068009004705e289;function ax(e,r){var n,i,t;return e<ix?r>=ox?(i=ax(r,ox-r),i*=e,i*=oae,1/i):1/(e*rae(e+r)):(t=e+iae-.5,e+r===e?rx(r/t)<ix?n=tx(-r):n=1:(rx(r)<10?n=tx((.5-e)*tae(r/t)):n=nx(t/(t+r),e-.5),n*=ex(e)/ex(e+r)),n*=nx(nae/(t+r),r),n)}sx.exports=ax});var px=v((E5e,mx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_85_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006-7, 2013-14.
* Copyright Paul A. Bristow 2007, 2013-14.
* Copyright Nikhar Agrawal 2013-14.
* Copyright Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var aae=Y(),cx=Nr(),lx=Mr(),dx=O1(),fx=wa(),sae=ux();function uae(e,r){var n,i,t;if(e<=0||e+r<=0)return lx(e)/lx(e+r);if(i=cx(r),i===r){if(t=cx(e),t===e&&e<=fx&&e+r<=fx)return dx(t-1)/dx(i+t-1);if(aae(r)<20){if(r===0)return 1;if(r<0){for(e-=1,n=e,r+=1;r!==0;)e-=1,n*=e,r+=1;return n}for(n=1/e,r-=1;r!==0;)e+=1,n/=e,r-=1;return n}}return sae(e,r)}mx.exports=uae});var ol=v((D5e,vx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cae=px();vx.exports=cae});var bx=v((z5e,yx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_37_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var to=ke(),al=Ne(),lae=le(),gx=mt(),hx=jn();function dae(e,r){var n,i;return i=e*lae(r),r>=1?i<gx&&-r>hx?n=al(r,e)*to(-r):e>=1?n=al(r/to(r/e),e):n=to(i-r):i>hx?n=al(r,e)*to(-r):r/e<gx?n=al(r/to(r/e),e):n=to(i-r),n}yx.exports=dae});var wx=v((q5e,_x)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/gamma.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006-7, 2013-14.
* Copyright Paul A. Bristow 2007, 2013-14.
* Copyright Nikhar Agrawal 2013-14.
* Copyright Christopher Kormanyos 2013-14.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var fae=ka(),mae=Mi(),pae=Mr(),vae=Lr(),gae=ue(),hae=Y(),en=ke(),Ma=Ne(),N1=Cn(),P1=Gt(),$x=le(),sl=mt(),La=jn(),x1=Bi(),yae=Rn();function bae(e,r){var n,i,t,o,a,s,u;return t=e+x1-.5,u=(r-e-x1+.5)/t,e<1?r<=La?en(e*$x(r)-r-mae(e)):Ma(r,e)*en(-r)/pae(e):(hae(u*u*e)<=100&&e>150?(n=e*(vae(u)-u)+r*(.5-x1)/t,n=en(n)):(o=e*$x(r/t),a=e-r,P1(o,a)<=La||N1(o,a)>=sl?(i=a/e,P1(o,a)/2>La&&N1(o,a)/2<sl?(s=Ma(r/t,e/2)*en(a/2),n=s*s):P1(o,a)/4>La&&N1(o,a)/4<sl&&r>e?(s=Ma(r/t,e/4)*en(a/4),n=s*s,n*=n):i>La&&i<sl?n=Ma(r*en(i)/t,e):n=en(o+a)):n=Ma(r/t,e)*en(a)),n*=gae(t/yae)/fae(e),n)}_x.exports=bae});var Nx=v((T5e,Ox)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var $ae=ol(),Sx=O1(),_ae=Aa(),wae=Lr(),ul=Y(),Ix=Ne(),Sae=le(),Iae=Lt(),kx=Pr(),kae=bx(),Oae=wx(),rn=new Array(30);function Nae(e,r,n,i,t,o,a){var s,u,c,l,d,f,m,g,h,b,y,S,$,N,P,A,E,U;if(f=r-1,E=e+f/2,i<.35?b=wae(-i):b=Sae(n),U=-E*b,S=Oae(r,U),S<=Iae)return t;for(a?(s=S/$ae(e,r),s/=Ix(E,r)):s=kae(r,U)/Ix(E,r),s*=o,rn[0]=1,$=_ae(U,r,!0,!0),$/=S,l=t+s*$,c=1,m=b/2,m*=m,g=1,y=4*E*E,d=r,P=1;P<rn.length;++P){for(c+=2,rn[P]=0,h=r-P,u=3,N=1;N<P;++N)h=N*r-P,rn[P]+=h*rn[P-N]/Sx(u),u+=2;if(rn[P]/=P,rn[P]+=f/Sx(c),$=(d*(d+1)*$+(U+d+1)*g)/y,g*=m,d+=2,A=s*rn[P]*$,l+=A,A>1){if(ul(A)<ul(kx*l))break}else if(ul(A/kx)<ul(l))break}return l}Ox.exports=Nae});var xx=v((j5e,Px)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_37_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/function Pae(e,r,n){var i,t;if(n===0)return 1;for(i=1,t=0;t<n;t++)i*=(e+t)/(r+t);return i}Px.exports=Pae});var Dx=v((C5e,Ex)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ax=Y(),xae=Cn();function Aae(e,r){return xae(Ax(e),Ax(r))}Ex.exports=Aae});var qx=v((R5e,zx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Eae=Dx();zx.exports=Eae});var Cx=v((U5e,jx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Tx=Y(),Dae=Gt();function zae(e,r){return Dae(Tx(e),Tx(r))}jx.exports=zae});var Ux=v((F5e,Rx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qae=Cx();Rx.exports=qae});var ll=v((M5e,Lx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var A1=ka(),Tae=qx(),jae=Ux(),Fx=Un(),tn=Lr(),Mx=ue(),cl=Y(),Wr=ke(),Gr=Ne(),Cae=Gt(),br=le(),Hr=mt(),no=jn(),E1=Bi(),Rae=Rn();function Uae(e,r,n,i,t){var o,a,s,u,c,l,d,f,m,g,h,b,y,S;if(!t)return Gr(n,e)*Gr(i,r);if(y=e+r,u=e+E1-.5,c=r+E1-.5,l=y+E1-.5,o=A1(y),o/=A1(e)*A1(r),o*=Mx(c/Rae),o*=Mx(u/l),d=(n*r-i*u)/u,f=(i*e-n*c)/c,jae(d,f)<.2)if(d*f>0||Cae(e,r)<1)cl(d)<.1?o*=Wr(e*tn(d)):o*=Gr(n*l/u,e),cl(f)<.1?o*=Wr(r*tn(f)):o*=Gr(i*l/c,r);else if(Tae(d,f)<.5)a=e<r,s=r/e,a&&s*f<.1||!a&&d/s>.1?(m=Fx(s*tn(f)),m=d+m+m*d,m=e*tn(m),o*=Wr(m)):(m=Fx(tn(d)/s),m=f+m+m*f,m=r*tn(m),o*=Wr(m));else if(cl(d)<cl(f))if(S=e*tn(d)+r*br(i*l/c),S<=no||S>=Hr){if(S+=br(o),S>=Hr)return NaN;o=Wr(S)}else o*=Wr(S);else if(S=r*tn(f)+e*br(n*l/u),S<=no||S>=Hr){if(S+=br(o),S>=Hr)return NaN;o=Wr(S)}else o*=Wr(S);else if(h=n*l/u,b=i*l/c,d=e*br(h),f=r*br(b),d>=Hr||d<=no||f>=Hr||f<=no)if(e<r)if(g=Gr(b,r/e),m=e*(br(h)+br(g)),m<Hr&&m>no)o*=Gr(g*h,e);else{if(f+=d+br(o),f>=Hr)return NaN;o=Wr(f)}else if(g=Gr(h,e/r),m=(br(g)+br(b))*r,m<Hr&&m>no)o*=Gr(g*b,r);else{if(f+=d+br(o),f>=Hr)return NaN;o=Wr(f)}else o*=Gr(h,e)*Gr(b,r);return o}Lx.exports=Uae});var Vx=v((L5e,Zx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Fae=Lg(),Mae=ll(),Lae={keep:!0,maxIter:1e3};function Zae(e,r,n,i){var t=0;return o;function o(){var a,s,u;return s=(e+t-1)*(e+r+t-1)*t*(r-t)*n*n,a=e+2*t-1,s/=a*a,u=t,u+=t*(r-t)*n/(e+2*t-1),u+=(e+t)*(e*i-r*n+1+t*(2-n))/(e+2*t+1),t+=1,[s,u]}}function Vae(e,r,n,i,t,o){var a,s,u;return a=Mae(e,r,n,i,t),o&&(o[1]=a),a===0?a:(u=Zae(e,r,n,i),s=Fae(u,Lae),a/s)}Zx.exports=Vae});var Wx=v((Z5e,Bx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Bae=9007199254740991;Bx.exports=Bae});var Hx=v((V5e,Gx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Wae(e,r){var n=0,i;if(e===0)return r;if(r===0)return e;for(;(e&1)===0&&(r&1)===0;)e>>>=1,r>>>=1,n+=1;for(;(e&1)===0;)e>>>=1;for(;r;){for(;(r&1)===0;)r>>>=1;e>r&&(i=r,r=e,e=i),r-=e}return e<<n}Gx.exports=Wae});var Jx=v((B5e,Kx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Gae(e,r){var n=1,i;if(e===0)return r;if(r===0)return e;for(;e%2===0&&r%2===0;)e/=2,r/=2,n*=2;for(;e%2===0;)e/=2;for(;r;){for(;r%2===0;)r/=2;e>r&&(i=r,r=e,e=i),r-=e}return n*e}Kx.exports=Gae});var nA=v((W5e,tA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Xx=L(),Qx=Tn(),Yx=pe(),eA=He(),rA=k1(),Hae=Hx(),Kae=Jx();function Jae(e,r){return Xx(e)||Xx(r)?NaN:e===Yx||r===Yx||e===eA||r===eA?NaN:Qx(e)&&Qx(r)?(e<0&&(e=-e),r<0&&(r=-r),e<=rA&&r<=rA?Hae(e,r):Kae(e,r)):NaN}tA.exports=Jae});var oA=v((G5e,iA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Xae=nA();iA.exports=Xae});var cA=v((H5e,uA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Qae=Wx(),Yae=pe(),aA=Tn(),sA=L(),ese=zc(),rse=Nr(),tse=oA();function D1(e,r){var n,i,t,o,a,s,u;if(sA(e)||sA(r))return NaN;if(!aA(e)||!aA(r))return NaN;if(r<0||(i=1,e<0&&(e=-e+r-1,ese(r)&&(i*=-1)),r>e))return 0;if(r===0||r===e)return i;if(r===1||r===e-1)return i*e;for(e-r<r&&(r=e-r),u=rse(Qae/e),n=1,a=1;a<=r&&!(n>u);a++)n*=e,n/=a,e-=1;return a>r?i*n:(t=D1(e,r-a+1),t===Yae?i*t:(o=D1(r,r-a+1),s=tse(t,o),t/=s,o/=s,n/=o,i*n*t))}uA.exports=D1});var dA=v((K5e,lA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nse=cA();lA.exports=nse});var pA=v((J5e,mA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var fA=dA(),Ln=Nr(),Za=Ne(),ise=Lt();function ose(e,r,n,i){var t,o,a,s,u;if(o=Za(n,e),o>ise)for(s=o,u=Ln(e-1);u>r;u--)s*=(u+1)*i/((e-u)*n),o+=s;else if(a=Ln(e*n),a<=r+1&&(a=Ln(r+2)),o=Za(n,a)*Za(i,e-a),o*=fA(Ln(e),Ln(a)),o===0)for(u=a-1;u>r;u--)o+=Za(n,u)*Za(i,e-u),o*=fA(Ln(e),Ln(u));else{for(s=o,t=o,u=a-1;u>r;u--)s*=(u+1)*i/((e-u)*n),o+=s;for(s=t,u=a+1;u<=e;u++)s*=(e-u+1)*n/(u*i),o+=s}return o}mA.exports=ose});var gA=v((X5e,vA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var ase=ll();function sse(e,r,n,i,t,o,a){var s,u,c,l;if(s=ase(e,r,n,i,o),a&&(a[1]=s),s/=e,s===0)return s;for(c=1,u=1,l=0;l<t-1;++l)u*=(e+r+l)*n/(e+l+1),c+=u;return s*=c,s}vA.exports=sse});var _A=v((Q5e,$A)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var z1=ka(),use=Zi(),cse=Lr(),lse=ue(),q1=ke(),dl=Ne(),Va=le(),dse=Lt(),hA=mt(),yA=jn(),T1=Bi(),fse=Rn(),bA={maxTerms:100};function mse(e,r,n,i){var t=1-r,o=1;return a;function a(){var s=i/e;return e+=1,i*=t*n/o,o+=1,t+=1,s}}function pse(e,r,n,i,t,o,a){var s,u,c,l,d,f,m,g;return t?(m=e+r,u=e+T1-.5,c=r+T1-.5,l=m+T1-.5,s=z1(m)/(z1(e)*z1(r)),d=Va(l/c)*(r-.5),f=Va(n*l/u)*e,d>yA&&d<hA&&f>yA&&f<hA?(e*r<c*10?s*=q1((r-.5)*cse(e/c)):s*=dl(l/c,r-.5),s*=dl(n*l/u,e),s*=lse(u/fse),o&&(o[1]=s*dl(a,r))):(s=Va(s)+d+f+(Va(u)-1)/2,o&&(o[1]=q1(s+r*Va(a))),s=q1(s))):s=dl(n,e),s<dse?i:(g=mse(e,r,n,s),bA.initialValue=i,use(g,bA))}$A.exports=pse});var R1=v((Y5e,PA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/beta.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
* (C) Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var vse=L(),gse=Un(),fl=Nr(),wA=Lr(),SA=nl(),$r=I1(),j1=ue(),hse=ke(),Ba=Ne(),yse=Cn(),IA=Gt(),ml=Wt(),kA=Lt(),bse=k1(),$se=il(),NA=ft(),nn=Nx(),C1=xx(),_se=ll(),OA=Vx(),wse=pA(),Wa=gA(),Kr=_A(),Sse=1/NA;function Ise(e,r,n,i,t,o,a,s){var u,c,l,d,f,m,g,h,b,y,S,$;if($=1-e,g=s,h=s+a,o[h]=-1,vse(e)||e<0||e>1)return o[g]=NaN,o[h]=NaN,o;if(i){if(r<0||n<0)return o[g]=NaN,o[h]=NaN,o;if(r===0){if(n===0)return o[g]=NaN,o[h]=NaN,o;if(n>0)return o[g]=t?0:1,o}else if(n===0&&r>0)return o[g]=t?1:0,o}else if(r<=0||n<=0)return o[g]=NaN,o[h]=NaN,o;return e===0?(r===1?o[h]=1:o[h]=r<1?ml/2:kA*2,t?(o[g]=i?1:$r(r,n),o):(o[g]=0,o)):e===1?(n===1?o[h]=1:o[h]=n<1?ml/2:kA*2,t?o[g]=0:o[g]=i?1:$r(r,n),o):r===.5&&n===.5?(o[h]=Sse*j1($*e),S=SA(j1(t?$:e)),S/=$se,i||(S*=NA),o[g]=S,o):(r===1&&(m=n,n=r,r=m,m=$,$=e,e=m,t=!t),n===1?r===1?(o[g]=t?$:e,o[h]=1,o):(o[h]=r*Ba(e,r-1),$<.5?S=t?-gse(r*wA(-$)):hse(r*wA(-$)):S=t?-(Ba(e,r)-1):Ba(e,r),i||(S/=r),o[g]=S,o):(IA(r,n)<=1?(e>.5&&(m=n,n=r,r=m,m=$,$=e,e=m,t=!t),yse(r,n)<=1?r>=IA(.2,n)||Ba(e,r)<=.9?t?(l=-(i?1:$r(r,n)),t=!1,l=-Kr(r,n,e,l,i,o,$)):l=Kr(r,n,e,0,i,o,$):(m=n,n=r,r=m,m=$,$=e,e=m,t=!t,$>=.3?t?(l=-(i?1:$r(r,n)),t=!1,l=-Kr(r,n,e,l,i,o,$)):l=Kr(r,n,e,0,i,o,$):(i?c=1:c=C1(r+n,r,20),l=Wa(r,n,e,$,20,i,o),t?(l-=i?1:$r(r,n),t=!1,l=-nn(r+20,n,e,$,l,c,i)):l=nn(r+20,n,e,$,l,c,i))):n<=1||e<.1&&Ba(n*e,r)<=.7?t?(l=-(i?1:$r(r,n)),t=!1,l=-Kr(r,n,e,l,i,o,$)):l=Kr(r,n,e,0,i,o,$):(m=n,n=r,r=m,m=$,$=e,e=m,t=!t,$>=.3?t?(l=-(i?1:$r(r,n)),t=!1,l=-Kr(r,n,e,l,i,o,$)):l=Kr(r,n,e,0,i,o,$):r>=15?t?(l=-(i?1:$r(r,n)),t=!1,l=-nn(r,n,e,$,l,1,i)):l=nn(r,n,e,$,0,1,i):(i?c=1:c=C1(r+n,r,20),l=Wa(r,n,e,$,20,i,o),t?(l-=i?1:$r(r,n),t=!1,l=-nn(r+20,n,e,$,l,c,i)):l=nn(r+20,n,e,$,l,c,i)))):(r<n?u=r-(r+n)*e:u=(r+n)*$-n,u<0&&(m=n,n=r,r=m,m=$,$=e,e=m,t=!t),n<40?fl(r)===r&&fl(n)===n&&r<bse-100?(b=r-1,y=n+b,l=wse(y,b,e,$),i||(l*=$r(r,n))):n*e<=.7?t?(l=-(i?1:$r(r,n)),t=!1,l=-Kr(r,n,e,l,i,o,$)):l=Kr(r,n,e,0,i,o,$):r>15?(y=fl(n),y===n&&(y-=1),d=n-y,i?c=1:c=C1(r+d,d,y),l=Wa(d,r,$,e,y,i),l=nn(r,d,e,$,l,1,i),l/=c):i?(y=fl(n),d=n-y,d<=0&&(y-=1,d+=1),l=Wa(d,r,$,e,y,i),l+=Wa(r,d,e,$,20,i),t&&(l-=1),l=nn(r+20,d,e,$,l,1,i),t&&(l=-l,t=!1)):l=OA(r,n,e,$,i,o):l=OA(r,n,e,$,i,o)),o[h]<0&&(o[h]=_se(r,n,e,$,!0)),f=$*e,o[h]!==0&&(ml*f<o[h]?o[h]=ml/2:o[h]/=f),o[g]=t?(i?1:$r(r,n))-l:l,o))}PA.exports=Ise});var AA=v((e_e,xA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kse=R1();function Ose(e,r,n,i,t){return kse(e,r,n,i,t,[0,0],1,0)}xA.exports=Ose});var U1=v((r_e,DA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Nse=Ze(),EA=AA(),Pse=R1();Nse(EA,"assign",Pse);DA.exports=EA});var qA=v((t_e,zA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xse=U1().assign;function Ase(e,r,n,i,t){var o=[0,0];return i=i!==!1,t=t===!0,xse(e,r,n,i,t,o,1,0),o[0]}zA.exports=Ase});var io=v((n_e,TA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ese=qA();TA.exports=Ese});var UA=v((i_e,RA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var jA=io(),CA=L(),Dse=Ne();function zse(e,r){var n,i,t;return CA(e)||CA(r)||r<=0?NaN:e===0?.5:(n=Dse(e,2),r>2*n?(t=n/(r+n),i=jA(t,.5,r/2,!0,!0)/2):(t=r/(r+n),i=jA(t,r/2,.5,!0,!1)/2),e>0?1-i:i)}RA.exports=zse});var ZA=v((o_e,LA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qse=Ar(),FA=io(),MA=L(),Tse=Ne();function jse(e){if(MA(e)||e<=0)return qse(NaN);return r;function r(n){var i,t,o;return MA(n)?NaN:n===0?.5:(i=Tse(n,2),e>2*i?(o=i/(e+i),t=FA(o,.5,e/2,!0,!0)/2):(o=e/(e+i),t=FA(o,e/2,.5,!0,!1)/2),n>0?1-t:t)}}LA.exports=jse});var WA=v((a_e,BA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Cse=Ze(),VA=UA(),Rse=ZA();Cse(VA,"factory",Rse);BA.exports=VA});var JA=v((s_e,KA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C code, long comment, copyright, license, and constants are from [Cephes]{@link http://www.netlib.org/cephes}. The implementation follows the original, but has been modified for JavaScript.
*
* ```text
* Copyright 1984, 1995, 2000 by Stephen L. Moshier
*
* Some software in this archive may be from the book _Methods and Programs for Mathematical Functions_ (Prentice-Hall or Simon & Schuster International, 1989) or from the Cephes Mathematical Library, a commercial product. In either event, it is copyrighted by the author. What you see here may be used freely but it comes with no support or guarantee.
*
* Stephen L. Moshier
* moshier@na-net.ornl.gov
* ```
*/var Use=L(),GA=nl(),Fse=ue(),HA=b1(),Mse=6123233995736766e-32;function Lse(e){var r;return Use(e)?NaN:e<-1||e>1?NaN:e>.5?2*GA(Fse(.5-.5*e)):(r=HA-GA(e),r+=Mse,r+=HA,r)}KA.exports=Lse});var QA=v((u_e,XA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Zse=JA();XA.exports=Zse});var pl=v((c_e,YA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Vse=1.4142135623730951;YA.exports=Vse});var rE=v((l_e,eE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Bse(e){return e===0?.16666666666666666:.16666666666666666+e*.16666666666666666}eE.exports=Bse});var nE=v((d_e,tE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Wse(e){return e===0?.058333333333333334:.058333333333333334+e*(.06666666666666667+e*.008333333333333333)}tE.exports=Wse});var oE=v((f_e,iE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Gse(e){return e===0?.0251984126984127:.0251984126984127+e*(.026785714285714284+e*(.0017857142857142857+e*.0001984126984126984))}iE.exports=Gse});var sE=v((m_e,aE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Hse(e){return e===0?.012039792768959435:.012039792768959435+e*(.010559964726631394+e*(-.0011078042328042327+e*(.0003747795414462081+e*27557319223985893e-22)))}aE.exports=Hse});var cE=v((p_e,uE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Kse(e){return e===0?.003837005972422639:.003837005972422639+e*(.00610392115600449+e*(-.0016095979637646305+e*(.0005945867404200738+e*(-6270542728876062e-20+e*2505210838544172e-23))))}uE.exports=Kse});var dE=v((v_e,lE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Jse(e){return e===0?.0032177478835464946:.0032177478835464946+e*(.0010898206731540065+e*(-.0012579159844784845+e*(.0006908420797309686+e*(-.00016376804137220805+e*(154012654012654e-19+e*16059043836821613e-26)))))}lE.exports=Jse});var mE=v((g_e,fE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Xse(e){return e===0?.001743826229834001:.001743826229834001+e*(3353097688001788e-20+e*(-.0007624513544032393+e*(.0006451304695145635+e*(-.000249472580470431+e*(49255746366361444e-21+e*(-39851014346715405e-22+e*7647163731819816e-28))))))}fE.exports=Xse});var vE=v((h_e,pE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Qse(e){return e===0?.0009647274732138864:.0009647274732138864+e*(-.0003110108632631878+e*(-.00036307660358786886+e*(.0005140660578834113+e*(-.00029133414466938067+e*(9086710793521991e-20+e*(-15303004486655377e-21+e*(10914179173496788e-22+e*28114572543455206e-31)))))))}pE.exports=Qse});var hE=v((y_e,gE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Yse(e){return e===0?.0005422926281312969:.0005422926281312969+e*(-.0003694266780000966+e*(-.00010230378073700413+e*(.00035764655430568635+e*(-.00028690924218514614+e*(.00012645437628698076+e*(-33202652391372056e-21+e*(4890304529197534e-21+e*(-3123956959982987e-22+e*822063524662433e-32))))))))}gE.exports=Yse});var bE=v((b_e,yE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/special_functions/detail/t_distribution_inv.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var eue=ol(),rue=vt(),tue=ue(),nue=ft(),iue=rE(),oue=nE(),aue=oE(),sue=sE(),uue=cE(),cue=dE(),lue=mE(),due=vE(),fue=hE(),mue=0,Jr=[1,0,0,0,0,0,0,0,0,0];function pue(e,r){var n,i;return i=eue(e/2,.5)*tue(e*nue)*(r-.5),n=1/e,Jr[1]=iue(n),Jr[2]=oue(n),Jr[3]=aue(n),Jr[4]=sue(n),Jr[5]=uue(n),Jr[6]=cue(n),Jr[7]=lue(n),Jr[8]=due(n),Jr[9]=fue(n),mue+i*rue(Jr,i*i)}yE.exports=pue});var wE=v(($_e,_E)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/detail/t_distribution_inv.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var vue=ol(),gue=vt(),$E=ue(),hue=Ne(),yue=ft(),on=[0,0,0,0,0,0,0];function bue(e,r){var n,i,t,o,a,s,u,c;return c=vue(e/2,.5)*$E(e*yue)*r,o=e+2,a=e+4,s=e+6,on[0]=1,on[1]=-(e+1)/(2*o),o*=e+2,on[2]=-e*(e+1)*(e+3)/(8*o*a),o*=e+2,on[3]=-e*(e+1)*(e+5)*((3*e+7)*e-2)/(48*o*a*s),o*=e+2,a*=e+4,on[4]=-e*(e+1)*(e+7)*(((((15*e+154)*e+465)*e+286)*e-336)*e+64)/(384*o*a*s*(e+8)),o*=e+2,on[5]=-e*(e+1)*(e+3)*(e+9)*((((((35*e+452)*e+1573)*e+600)*e-2020)*e+928)*e-128)/(1280*o*a*s*(e+8)*(e+10)),o*=e+2,a*=e+4,s*=e+6,on[6]=-e*(e+1)*(e+11)*(((((((((((945*e+31506)*e+425858)*e+2980236)*e+11266745)*e+20675018)*e+7747124)*e-22574632)*e-8565600)*e+18108416)*e-7099392)*e+884736)/(46080*o*a*s*(e+8)*(e+10)*(e+12)),u=$E(e),t=hue(u*c,1/e),i=t*t,n=gue(on,i),n*=u,n/=t,-n}_E.exports=bue});var NE=v((__e,OE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_61_0/boost/math/special_functions/detail/t_distribution_inv.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var SE=Hi(),$ue=Un(),IE=ue(),_ue=Ne(),wue=il(),kE=pl();function Sue(e,r){var n,i,t,o,a,s,u;return e>1e20?-SE(2*r)*kE:(n=1/(e-.5),i=48/(n*n),t=((20700*n/i-98)*n-16)*n+96.36,o=((94.5/(i+t)-3)/i+1)*IE(n*wue)*e,u=_ue(o*2*r,2/e),u>.05+n?(s=-SE(2*r)*kE,u=s*s,e<5&&(t+=.3*(e-4.5)*(s+.6)),t+=(((.05*o*s-5)*s-7)*s-2)*s+i,u=(((((.4*u+6.3)*u+36)*u+94.5)/t-u-3)/i+1)*s,u=$ue(n*u*u)):u=((1/(((e+6)/(e*u)-.089*o-.822)*(e+2)*3)+.5/(e+4))*u-1)*(e+1)/(e+2)+1/u,a=IE(e*u),-a)}OE.exports=Sue});var CE=v((w_e,jE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/special_functions/detail/t_distribution_inv.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var PE=Hi(),xE=Nr(),F1=zn(),AE=cg(),Iue=QA(),vl=ue(),kue=Y(),EE=Ec(),Oue=Ne(),Nue=Ui(),DE=pl(),zE=ft(),qE=bE(),gl=wE(),M1=NE(),TE=268435456,Pue=1/3,xue=106/3,Aue=.8549879733383485;function Eue(e,r,n){var i,t,o,a,s,u,c,l,d,f,m,g,h,b,y,S;if(s=0,r>n?(c=n,n=r,r=c,a=!0):a=!1,xE(e)===e&&e<20)switch(t=F1(1,xue),xE(e)){case 1:r===.5?s=0:s=-EE(zE*r)/Nue(zE*r);break;case 2:s=(2*r-1)/vl(2*r*n);break;case 4:u=4*r*n,o=vl(u),h=4*EE(Iue(o)/3)/o,b=vl(h-4),s=r-.5<0?-b:b;break;case 6:if(r<1e-150)return(a?-1:1)*M1(e,r);y=4*(r-r*r),S=Oue(y,Pue),g=6*(1+Aue*(1/S-1));do d=g*g,f=d*d,m=g*f,l=g,g=2*(8*y*m-270*d+2187)/(5*(4*y*f-216*g-243));while(kue((g-l)/g)>t);g=vl(g-e),s=r-.5<0?-g:g;break;default:e>TE?s=PE(2*r)*DE:e<3?(i=.2742-e*.0242143,r>i?s=qE(e,r):s=gl(e,r)):(i=F1(1,AE(e/-.654)),r>i?s=M1(e,r):s=gl(e,r))}else e>TE?s=-PE(2*r)*DE:e<3?(i=.2742-e*.0242143,r>i?s=qE(e,r):s=gl(e,r)):(i=F1(1,AE(e/-.654)),r>i?s=M1(e,r):s=gl(e,r));return a?-s:s}jE.exports=Eue});var UE=v((S_e,RE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/special_functions/detail/t_distribution_inv.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Due=CE();function zue(e,r,n){var i,t,o,a;return t=r/2,o=1-t,i=e*2,a=Due(i,t,o),n&&(n.value=a*a/(i+a*a)),i/(i+a*a)}RE.exports=zue});var LE=v((I_e,ME)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/detail/ibeta_inverse.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var hl=vt(),que=Hi(),FE=ue(),Tue=ke(),ht=pl(),we=[0,0,0,0,0,0,0],Ga=[0,0,0,0];function jue(e,r,n){var i,t,o,a,s,u,c;return i=que(2*n),i/=-FE(e/2),Ga[0]=i,u=r-e,a=u*u,s=a*u,we[0]=-u*ht/2,we[1]=(1-2*u)/8,we[2]=-(u*ht/48),we[3]=-1/192,we[4]=-u*ht/3840,we[5]=0,we[6]=0,Ga[1]=hl(we,i),we[0]=u*ht*(3*u-2)/12,we[1]=(20*a-12*u+1)/128,we[2]=u*ht*(20*u-1)/960,we[3]=(16*a+30*u-15)/4608,we[4]=u*ht*(21*u+32)/53760,we[5]=(-(32*a)+63)/368640,we[6]=-u*ht*(120*u+17)/25804480,Ga[2]=hl(we,i),we[0]=u*ht*(-75*a+80*u-16)/480,we[1]=(-1080*s+868*a-90*u-45)/9216,we[2]=u*ht*(-1190*a+84*u+373)/53760,we[3]=(-2240*s-2508*a+2100*u-165)/368640,we[4]=0,we[5]=0,we[6]=0,Ga[3]=hl(we,i),o=hl(Ga,1/e),t=o*o,c=-Tue(-t/2),t===0?.5:(1+o*FE((1+c)/t))/2}ME.exports=jue});var L1=v((k_e,VE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/special_functions/detail/ibeta_inverse.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var ZE=le(),Cue=Wt(),yl=Cue/4;function Rue(e,r){return n;function n(i){var t,o,a;return a=1-i,a===0?[-yl,-yl]:i===0?[-yl,-yl]:(o=ZE(i)+r*ZE(a)+e,t=1/i-r/a,[o,t])}}VE.exports=Rue});var WE=v((O_e,BE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Uue=L();function Fue(e){return e===0||Uue(e)?e:e<0?-1:1}BE.exports=Fue});var Ha=v((N_e,GE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Mue=WE();GE.exports=Mue});var V1=v((P_e,KE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/tools/roots.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var HE=Ha(),bl=Y(),Lue=zn(),Z1=Wt();function Zue(e,r,n,i,t,o){var a,s,u,c,l,d,f,m,g,h;g=0,a=0,l=r,c=Lue(1,1-t),f=Z1,s=Z1,u=Z1,d=o;do{if(a=g,u=s,s=f,m=e(l),g=m[0],h=m[1],d-=1,g===0)break;if(h===0?(a===0&&(l===n?r=i:r=n,a=e(r),f=r-l),HE(a)*HE(g)<0?f<0?f=(l-n)/2:f=(l-i)/2:f<0?f=(l-i)/2:f=(l-n)/2):f=g/h,bl(f*2)>bl(u)&&(f=f>0?(l-n)/2:(l-i)/2),r=l,l-=f,l<=n){if(f=.5*(r-n),l=r-f,l===n||l===i)break}else if(l>=i&&(f=.5*(r-i),l=r-f,l===n||l===i))break;f>0?i=r:n=r}while(d&&bl(l*c)<bl(f));return l}KE.exports=Zue});var XE=v((x_e,JE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Vue(e){return e===0?-1:-1+e*(-5+e*5)}JE.exports=Vue});var YE=v((A_e,QE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Bue(e){return e===0?1:1+e*(21+e*(-69+e*46))}QE.exports=Bue});var rD=v((E_e,eD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Wue(e){return e===0?7:7+e*(-2+e*(33+e*(-62+e*31)))}eD.exports=Wue});var nD=v((D_e,tD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Gue(e){return e===0?25:25+e*(-52+e*(-17+e*(88+e*(-115+e*46))))}tD.exports=Gue});var oD=v((z_e,iD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Hue(e){return e===0?7:7+e*(12+e*(-78+e*52))}iD.exports=Hue});var sD=v((q_e,aD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Kue(e){return e===0?-7:-7+e*(2+e*(183+e*(-370+e*185)))}aD.exports=Kue});var cD=v((T_e,uD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Jue(e){return e===0?-533:-533+e*(776+e*(-1835+e*(10240+e*(-13525+e*5410))))}uD.exports=Jue});var dD=v((j_e,lD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Xue(e){return e===0?-1579:-1579+e*(3747+e*(-3372+e*(-15821+e*(45588+e*(-45213+e*15071)))))}lD.exports=Xue});var mD=v((C_e,fD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Que(e){return e===0?449:449+e*(-1259+e*(-769+e*(6686+e*(-9260+e*3704))))}fD.exports=Que});var vD=v((R_e,pD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Yue(e){return e===0?63149:63149+e*(-151557+e*(140052+e*(-727469+e*(2239932+e*(-2251437+e*750479)))))}pD.exports=Yue});var hD=v((U_e,gD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function ece(e){return e===0?29233:29233+e*(-78755+e*(105222+e*(146879+e*(-1602610+e*(3195183+e*(-2554139+e*729754))))))}gD.exports=ece});var bD=v((F_e,yD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function rce(e){return e===0?1:1+e*(-13+e*13)}yD.exports=rce});var _D=v((M_e,$D)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function tce(e){return e===0?1:1+e*(21+e*(-69+e*46))}$D.exports=tce});var ID=v((L_e,SD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/detail/ibeta_inverse.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var oo=vt(),nce=Hi(),ice=Y(),oce=ke(),wD=le(),ace=ue(),sce=Ui(),uce=Ec(),cce=L1(),lce=V1(),dce=XE(),fce=YE(),mce=rD(),pce=nD(),vce=oD(),gce=sD(),hce=cD(),yce=dD(),bce=mD(),$ce=vD(),_ce=hD(),wce=bD(),Sce=_D(),Q=[0,0,0,0,0,0],Ka=[0,0,0,0];function Ice(e,r,n){var i,t,o,a,s,u,c,l,d,f,m,g,h,b,y,S,$,N,P,A;return s=nce(2*e)/-ace(r/2),N=sce(n),$=uce(n),Ka[0]=s,y=N*N,S=$*$,h=N*$,g=h*h,m=g*h,f=g*g,d=g*m,l=m*m,c=f*m,Q[0]=(2*y-1)/(3*h),Q[1]=-dce(y)/(36*g),Q[2]=fce(y)/(1620*m),Q[3]=mce(y)/(6480*f),Q[4]=pce(y)/(90720*d),Q[5]=0,Ka[1]=oo(Q,s),Q[0]=-vce(y)/(405*m),Q[1]=gce(y)/(2592*f),Q[2]=-hce(y)/(204120*d),Q[3]=-yce(y)/(2099520*l),Q[4]=0,Q[5]=0,Ka[2]=oo(Q,s),Q[0]=bce(y)/(102060*d),Q[1]=-$ce(y)/(20995200*l),Q[2]=_ce(y)/(36741600*c),Q[3]=0,Q[4]=0,Q[5]=0,Ka[3]=oo(Q,s),u=oo(Ka,1/r),o=$/N,o*=o,b=-(u*u)/(2*y)+wD(y)+S*wD(S)/y,ice(u)<.7?(Q[0]=y,Q[1]=h,Q[2]=(1-2*y)/3,Q[3]=wce(y)/(36*h),Q[4]=Sce(y)/(270*g),Q[5]=0,A=oo(Q,u)):(P=oce(b),Q[0]=P,Q[1]=o,Q[2]=0,Q[3]=3*o*(3*o+1)/6,Q[4]=4*o*(4*o+1)*(4*o+2)/24,Q[5]=5*o*(5*o+1)*(5*o+2)*(5*o+3)/120,A=oo(Q,P),(A-y)*u<0&&(A=1-A)),u<0?(t=0,i=y):(t=y,i=1),(A<t||A>i)&&(A=(t+i)/2),a=cce(-b,o),A=lce(a,A,t,i,32,100),A}SD.exports=Ice});var OD=v((Z_e,kD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kce=5e-324;kD.exports=kce});var AD=v((V_e,xD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/detail/ibeta_inverse.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var ND=Wc(),PD=le(),Oce=ue(),Nce=OD(),Pce=L1(),xce=V1();function Ace(e,r,n,i){var t,o,a,s,u,c,l,d,f,m,g,h,b,y,S,$,N,P,A,E,U,K,de,ae,me,Ie,Te,D,j,Gn;return n<i?u=ND(n,r,!0):u=ND(i,r,!1),u/=e,y=r/e,D=Oce(1+y),P=D*D,A=P*D,E=P*P,U=A*P,K=A*A,de=E*A,ae=E*E,me=U*E,l=U*U,Te=u-y,S=Te*Te,$=S*Te,N=S*S,Ie=D+1,d=Ie*Ie,f=Ie*d,m=d*d,g=(D+2)*(D-1)/(3*D),g+=(A+9*P+21*D+5)*Te/(36*P*Ie),g-=(E-13*A+69*P+167*D+46)*S/(1620*d*A),g-=(7*U+21*E+70*A+26*P-93*D-31)*$/(6480*f*E),g-=(75*K+202*U+188*E-888*A-1345*P+118*D+138)*N/(272160*m*U),h=(28*E+131*A+402*P+581*D+208)*(D-1)/(1620*Ie*A),h-=(35*K-154*U-623*E-1636*A-3983*P-3514*D-925)*Te/(12960*d*E),h-=(2132*de+7915*K+16821*U+35066*E+87490*A+141183*P+95993*D+21640)*S/(816480*U*f),h-=(11053*ae+53308*de+117010*K+163924*U+116188*E-258428*A-677042*P-481940*D-105497)*$/(14696640*m*K),b=-((3592*de+8375*K-1323*U-29198*E-89578*A-154413*P-116063*D-29632)*(D-1))/(816480*U*d),b-=(442043*me+2054169*ae+3803094*de+3470754*K+2141568*U-2393568*E-19904934*A-34714674*P-23128299*D-5253353)*Te/(146966400*K*f),b-=(116932*l+819281*me+2378172*ae+4341330*de+6806004*K+10622748*U+18739500*E+30651894*A+30869976*P+15431867*D+2919016)*S/(146966400*m*de),c=u+g/e+h/(e*e)+b/(e*e*e),c<=0&&(c=Nce),j=c-y*PD(c)+(1+y)*PD(1+y)-y,t=1/(1+y),a=c<y?t:0,s=c<y?1:t,Gn=(a+s)/2,o=Pce(j,y),xce(o,Gn,a,s,32,100)}xD.exports=Ace});var DD=v((B_e,ED)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/tools/roots.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Ee=Y(),Ece=zn(),B1=Ha(),Dce=Cn(),W1=Wt();function zce(e,r,n,i,t,o){var a,s,u,c,l,d,f,m,g,h,b,y,S,$,N,P;$=0,s=!1,d=r,l=Ece(1,1-t),g=Dce(1e7*r,1e7),f=0,u=g,c=g,m=o;do{if(f=$,c=u,u=g,S=e(d),$=S[0],N=S[1],P=S[2],m-=1,$===0)break;if(N===0?(f===0&&(d===n?r=i:r=n,f=e(r),g=r-d),B1(f)*B1($)<0?g<0?g=(d-n)/2:g=(d-i)/2:g<0?g=(d-i)/2:g=(d-n)/2):P===0?g=$/N:(h=2*$,y=2*N-$*(P/N),Ee(y)<1&&Ee(h)>=Ee(y)*W1?g=$/N:g=h/y,g*N/$<0&&(g=$/N,Ee(g)>2*Ee(r)&&(g=(g<0?-1:1)*2*Ee(r)))),a=Ee(g/c),a>.8&&a<2&&(g=g>0?(d-n)/2:(d-i)/2,Ee(g)>d&&(g=B1(g)*d),c=g*3),r=d,d-=g,d<n){if(Ee(n)<1&&Ee(d)>1&&W1/Ee(d)<Ee(n)?b=1e3:b=d/n,Ee(b)<1&&(b=1/b),!s&&b>0&&b<3)g=.99*(r-n),d=r-g,s=!0;else if(g=(r-n)/2,d=r-g,d===n||d===i)break}else if(d>i){if(Ee(i)<1&&Ee(d)>1&&W1/Ee(d)<Ee(i)?b=1e3:b=d/i,Ee(b)<1&&(b=1/b),!s&&b>0&&b<3)g=.99*(r-i),d=r-g,s=!0;else if(g=(r-i)/2,d=r-g,d===n||d===i)break}g>0?i=r:n=r}while(m&&Ee(d*l)<Ee(g));return d}ED.exports=zce});var qD=v((W_e,zD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_64_0/boost/math/special_functions/detail/ibeta_inverse.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var qce=U1().assign,Tce=Y(),jce=Wt(),G1=Lt();function Cce(e,r,n,i){return t;function t(o){var a,s,u,c,l;return l=1-o,a=[0,0],qce(o,e,r,!0,i,a,1,0),c=a[0]-n,s=a[1],i&&(s=-s),l===0&&(l=G1*64),o===0&&(o=G1*64),u=s*(-(l*e)+(r-2)*o+1),Tce(u)<l*o*jce&&(u/=l*o),i&&(u=-u),s===0&&(s=(i?-1:1)*G1*64),[c,s,u]}}zD.exports=Cce});var VD=v((G_e,ZD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_62_0/boost/math/special_functions/detail/ibeta_inverse.hpp}. The implementation has been modified for JavaScript.
*
* ```text
* Copyright John Maddock 2006.
* Copyright Paul A. Bristow 2007.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var Rce=vt(),TD=io(),H1=Un(),jD=Lr(),Uce=nl(),ao=I1(),CD=ue(),Fce=Y(),RD=ke(),Xr=Ne(),UD=Ui(),Mce=Cn(),Lce=Gt(),FD=le(),K1=Lt(),MD=il(),LD=Pr(),Zce=UE(),Vce=LE(),Bce=ID(),Wce=AD(),Gce=DD(),Hce=qD(),Kce=32,Jce=1e3,Zn=[0,0,0,0,0];function Xce(e,r,n,i){var t,o,a,s,u,c,l,d,f,m,g,h,b,y,S,$,N,P,A,E,U,K,de,ae,me,Ie,Te,D,j;if(o=!1,i===0)return[1,0];if(n===0)return[0,1];if(e===1){if(r===1)return[n,1-n];h=r,r=e,e=h,h=i,i=n,n=h,o=!0}if(D=0,s=0,c=1,e===.5){if(r===.5)return D=UD(n*MD),D*=D,j=UD(i*MD),j*=j,[D,j];r>.5&&(h=r,r=e,e=h,h=i,i=n,n=h,o=!o)}if(r===.5&&e>=.5&&n!==1)U={},D=Zce(e,n,U),j=U.value;else{if(r===1)return n<i?e>1?(D=Xr(n,1/e),j=-H1(FD(n)/e)):(D=Xr(n,1/e),j=1-D):(D=RD(jD(-i)/e),j=-H1(jD(-i)/e)),o&&(h=j,j=D,D=h),[D,j];if(e+r>5)n>.5&&(h=r,r=e,e=h,h=i,i=n,n=h,o=!o),f=Lce(e,r),d=Mce(e,r),CD(f)>d-f&&f>5?(D=Vce(e,r,n),j=1-D):(me=e+r,u=Uce(CD(e/me)),a=f/me,a>=.2&&a<=.8&&me>=10?(g=Xr(n,1/e),g<.0025&&e+r<200?D=g*Xr(e*ao(e,r),1/e):D=Bce(n,me,u),j=1-D):(e<r&&(h=r,r=e,e=h,h=i,i=n,n=h,o=!o),m=0,r<2&&(m=ao(e,r)),m===0?j=1:(j=Xr(r*i*m,1/r),D=1-j)),j>1e-5&&(D=Wce(e,r,n,i),j=1-D));else if(e<1&&r<1){if(E=(1-e)/(2-e-r),$=TD(E,e,r)-n,Fce($)/n<LD*3)return o?[1-E,E]:[E,1-E];$<0&&(h=r,r=e,e=h,h=i,i=n,n=h,o=!o,E=1-E),A=Xr(e*n*ao(e,r),1/e),D=A/(1+A),j=1/(1+A),D>E&&(D=E),c=E}else e>1&&r>1?(E=(e-1)/(e+r-2),b=(r-1)/(e+r-2),P=TD(E,e,r)-n,P<0&&(h=r,r=e,e=h,h=i,i=n,n=h,h=b,b=E,E=h,o=!o),N=FD(n*e*ao(e,r))/e,D=RD(N),j=D<.9?1-D:-H1(N),r<e&&D<.2&&(y=e-1,S=r-1,K=e*e,de=e*K,ae=r*r,Zn[0]=0,Zn[1]=1,Zn[2]=S/y,y*=y,Zn[3]=S*(3*e*r+5*r+K-e-4)/(2*(e+2)*y),y*=e+1,Zn[4]=S*(33*e*ae+31*ae+8*K*ae-30*e*r-47*r+11*K*r+6*de*r+18+4*e-de+K*K-10*K),Zn[4]/=3*(e+3)*(e+2)*y,D=Rce(Zn,D)),D>E&&(D=E),c=E):(r<e&&(h=r,r=e,e=h,h=i,i=n,n=h,o=!o),Xr(n,1/e)<.5?(D=Xr(n*e*ao(e,r),1/e),D===0&&(D=K1),j=1-D):(j=Xr(1-Xr(n,r*ao(e,r)),1/r),j===0&&(j=K1),D=1-j))}return D>.5&&(h=r,r=e,e=h,h=i,i=n,n=h,h=j,j=D,D=h,o=!o,Ie=1-c,Te=1-s,s=Ie,c=Te),s===0&&(o?(s=LD,D<s&&(D=s)):s=K1,D<s&&(D=s)),t=Kce,D<1e-50&&(e<1||r<1)&&(t*=3,t/=2),l=Hce(e,r,n<i?n:i,n>=i),D=Gce(l,D,s,c,t,Jce),D===s&&(D=0),o?[1-D,D]:[D,1-D]}ZD.exports=Xce});var Ja=v((H_e,BD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Qce=VD();BD.exports=Qce});var HD=v((K_e,GD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Yce=Ja(),WD=L(),ele=Ha(),rle=ue();function tle(e,r){var n,i;return WD(r)||WD(e)||r<=0||e<0||e>1?NaN:(n=e>.5?1-e:e,i=Yce(r/2,.5,2*n,1-2*n),ele(e-.5)*rle(r*i[1]/i[0]))}GD.exports=tle});var XD=v((J_e,JD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nle=Ar(),ile=Ja(),KD=L(),ole=Ha(),ale=ue();function sle(e){if(KD(e)||e<=0)return nle(NaN);return r;function r(n){var i,t;return KD(n)||n<0||n>1?NaN:(i=n>.5?1-n:n,t=ile(e/2,.5,2*i,1-2*i),ole(n-.5)*ale(e*t[1]/t[0]))}}JD.exports=sle});var ez=v((X_e,YD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ule=Ze(),QD=HD(),cle=XD();ule(QD,"factory",cle);YD.exports=QD});var tz=v((Q_e,rz)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var lle=Ia(),dle=ue(),J1=L();function fle(e,r,n){var i,t;return J1(e)||J1(r)||J1(n)||n<0?NaN:n===0?e<r?0:1:(i=n*dle(2),t=e-r,.5*lle(-t/i))}rz.exports=fle});var iz=v((Y_e,nz)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var mle=Ar(),ple=Hg().factory,X1=L(),vle=ue(),gle=Ia();function hle(e,r){var n;if(X1(e)||X1(r)||r<0)return mle(NaN);if(r===0)return ple(e);return n=r*vle(2),i;function i(t){var o;return X1(t)?NaN:(o=t-e,.5*gle(-o/n))}}nz.exports=hle});var sz=v((e7e,az)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yle=Ze(),oz=tz(),ble=iz();yle(oz,"factory",ble);az.exports=oz});var cz=v((r7e,uz)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function $le(e){var r,n,i;return e===0?-.0005087819496582806:(e<0?r=-e:r=e,r<=1?(n=-.0005087819496582806+e*(-.008368748197417368+e*(.03348066254097446+e*(-.012692614766297404+e*(-.03656379714117627+e*(.02198786811111689+e*(.008226878746769157+e*(-.005387729650712429+e*(0+e*0)))))))),i=1+e*(-.9700050433032906+e*(-1.5657455823417585+e*(1.5622155839842302+e*(.662328840472003+e*(-.7122890234154284+e*(-.05273963823400997+e*(.07952836873415717+e*(-.0023339375937419+e*.0008862163904564247))))))))):(e=1/e,n=0+e*(0+e*(-.005387729650712429+e*(.008226878746769157+e*(.02198786811111689+e*(-.03656379714117627+e*(-.012692614766297404+e*(.03348066254097446+e*(-.008368748197417368+e*-.0005087819496582806)))))))),i=.0008862163904564247+e*(-.0023339375937419+e*(.07952836873415717+e*(-.05273963823400997+e*(-.7122890234154284+e*(.662328840472003+e*(1.5622155839842302+e*(-1.5657455823417585+e*(-.9700050433032906+e*1))))))))),n/i)}uz.exports=$le});var dz=v((t7e,lz)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function _le(e){var r,n,i;return e===0?-.20243350835593876:(e<0?r=-e:r=e,r<=1?(n=-.20243350835593876+e*(.10526468069939171+e*(8.3705032834312+e*(17.644729840837403+e*(-18.851064805871424+e*(-44.6382324441787+e*(17.445385985570866+e*(21.12946554483405+e*-3.6719225470772936))))))),i=1+e*(6.242641248542475+e*(3.971343795334387+e*(-28.66081804998+e*(-20.14326346804852+e*(48.560921310873994+e*(10.826866735546016+e*(-22.643693341313973+e*1.7211476576120028)))))))):(e=1/e,n=-3.6719225470772936+e*(21.12946554483405+e*(17.445385985570866+e*(-44.6382324441787+e*(-18.851064805871424+e*(17.644729840837403+e*(8.3705032834312+e*(.10526468069939171+e*-.20243350835593876))))))),i=1.7211476576120028+e*(-22.643693341313973+e*(10.826866735546016+e*(48.560921310873994+e*(-20.14326346804852+e*(-28.66081804998+e*(3.971343795334387+e*(6.242641248542475+e*1)))))))),n/i)}lz.exports=_le});var mz=v((n7e,fz)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function wle(e){var r,n,i;return e===0?-.1311027816799519:(e<0?r=-e:r=e,r<=1?(n=-.1311027816799519+e*(-.16379404719331705+e*(.11703015634199525+e*(.38707973897260434+e*(.3377855389120359+e*(.14286953440815717+e*(.029015791000532906+e*(.0021455899538880526+e*(-6794655751811263e-22+e*(28522533178221704e-24+e*-681149956853777e-24))))))))),i=1+e*(3.4662540724256723+e*(5.381683457070069+e*(4.778465929458438+e*(2.5930192162362027+e*(.848854343457902+e*(.15226433829533179+e*(.011059242293464892+e*(0+e*(0+e*0)))))))))):(e=1/e,n=-681149956853777e-24+e*(28522533178221704e-24+e*(-6794655751811263e-22+e*(.0021455899538880526+e*(.029015791000532906+e*(.14286953440815717+e*(.3377855389120359+e*(.38707973897260434+e*(.11703015634199525+e*(-.16379404719331705+e*-.1311027816799519))))))))),i=0+e*(0+e*(0+e*(.011059242293464892+e*(.15226433829533179+e*(.848854343457902+e*(2.5930192162362027+e*(4.778465929458438+e*(5.381683457070069+e*(3.4662540724256723+e*1)))))))))),n/i)}fz.exports=wle});var vz=v((i7e,pz)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Sle(e){var r,n,i;return e===0?-.0350353787183178:(e<0?r=-e:r=e,r<=1?(n=-.0350353787183178+e*(-.0022242652921344794+e*(.018557330651423107+e*(.009508047013259196+e*(.0018712349281955923+e*(.00015754461742496055+e*(460469890584318e-20+e*(-2304047769118826e-25+e*26633922742578204e-28))))))),i=1+e*(1.3653349817554064+e*(.7620591645536234+e*(.22009110576413124+e*(.03415891436709477+e*(.00263861676657016+e*(7646752923027944e-20+e*(0+e*0)))))))):(e=1/e,n=26633922742578204e-28+e*(-2304047769118826e-25+e*(460469890584318e-20+e*(.00015754461742496055+e*(.0018712349281955923+e*(.009508047013259196+e*(.018557330651423107+e*(-.0022242652921344794+e*-.0350353787183178))))))),i=0+e*(0+e*(7646752923027944e-20+e*(.00263861676657016+e*(.03415891436709477+e*(.22009110576413124+e*(.7620591645536234+e*(1.3653349817554064+e*1)))))))),n/i)}pz.exports=Sle});var hz=v((o7e,gz)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2022 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function Ile(e){var r,n,i;return e===0?-.016743100507663373:(e<0?r=-e:r=e,r<=1?(n=-.016743100507663373+e*(-.0011295143874558028+e*(.001056288621524929+e*(.00020938631748758808+e*(14962478375834237e-21+e*(44969678992770644e-23+e*(4625961635228786e-24+e*(-2811287356288318e-29+e*9905570997331033e-32))))))),i=1+e*(.5914293448864175+e*(.1381518657490833+e*(.016074608709367652+e*(.0009640118070051656+e*(27533547476472603e-21+e*(282243172016108e-21+e*(0+e*0)))))))):(e=1/e,n=9905570997331033e-32+e*(-2811287356288318e-29+e*(4625961635228786e-24+e*(44969678992770644e-23+e*(14962478375834237e-21+e*(.00020938631748758808+e*(.001056288621524929+e*(-.0011295143874558028+e*-.016743100507663373))))))),i=0+e*(0+e*(282243172016108e-21+e*(27533547476472603e-21+e*(.0009640118070051656+e*(.016074608709367652+e*(.1381518657490833+e*(.5914293448864175+e*1)))))))),n/i)}gz.exports=Ile});var _z=v((a7e,$z)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*
*
* ## Notice
*
* The original C++ code and copyright notice are from the [Boost library]{@link http://www.boost.org/doc/libs/1_48_0/boost/math/special_functions/detail/erf_inv.hpp}. This implementation follows the original, but has been modified for JavaScript.
*
* ```text
* (C) Copyright John Maddock 2006.
*
* Use, modification and distribution are subject to the
* Boost Software License, Version 1.0. (See accompanying file
* LICENSE or copy at http://www.boost.org/LICENSE_1_0.txt)
* ```
*/var kle=L(),yz=ue(),bz=le(),Ole=pe(),Nle=He(),Ple=cz(),xle=dz(),Ale=mz(),Ele=vz(),Dle=hz(),zle=.08913147449493408,qle=2.249481201171875,Tle=.807220458984375,jle=.9399557113647461,Cle=.9836282730102539;function Rle(e){var r,n,i,t,o,a;return kle(e)?NaN:e===1?Ole:e===-1?Nle:e===0?e:e>1||e<-1?NaN:(e<0?(r=-1,n=-e):(r=1,n=e),t=1-n,n<=.5?(o=n*(n+10),a=Ple(n),r*(o*zle+o*a)):t>=.25?(o=yz(-2*bz(t)),t-=.25,a=xle(t),r*(o/(qle+a))):(t=yz(-bz(t)),t<3?(i=t-1.125,a=Ale(i),r*(Tle*t+a*t)):t<6?(i=t-3,a=Ele(i),r*(jle*t+a*t)):(i=t-6,a=Dle(i),r*(Cle*t+a*t))))}$z.exports=Rle});var Q1=v((s7e,wz)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ule=_z();wz.exports=Ule});var Iz=v((u7e,Sz)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Fle=Q1(),Y1=L(),Mle=ue();function Lle(e,r,n){var i,t;return Y1(r)||Y1(n)||Y1(e)||n<0||e<0||e>1?NaN:n===0?r:(i=r,t=n*Mle(2),i+t*Fle(2*e-1))}Sz.exports=Lle});var Oz=v((c7e,kz)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Zle=Ar(),Vle=a1().factory,Ble=Q1(),eh=L(),Wle=ue();function Gle(e,r){var n,i;if(eh(e)||eh(r)||r<0)return Zle(NaN);return r===0&&Vle(e),n=e,i=r*Wle(2),t;function t(o){return eh(o)||o<0||o>1?NaN:n+i*Ble(2*o-1)}}kz.exports=Gle});var xz=v((l7e,Pz)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Hle=Ze(),Nz=Iz(),Kle=Oz();Hle(Nz,"factory",Kle);Pz.exports=Nz});var Hq=v((DSe,Gq)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Wq=io(),mh=L(),_fe=pe();function wfe(e,r,n){return mh(e)||mh(r)||mh(n)||r<=0||n<=0?NaN:e<=0?0:e===_fe?1:r*e>n?Wq(r*e/(n+r*e),r/2,n/2,!0,!1):Wq(n/(n+r*e),n/2,r/2,!0,!0)}Gq.exports=wfe});var Xq=v((zSe,Jq)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Sfe=Ar(),Kq=io(),ph=L(),Ife=pe();function kfe(e,r){if(ph(e)||ph(r)||e<=0||r<=0)return Sfe(NaN);return n;function n(i){return ph(i)?NaN:i<=0?0:i===Ife?1:e*i>r?Kq(e*i/(r+e*i),e/2,r/2,!0,!1):Kq(r/(r+e*i),r/2,e/2,!0,!0)}}Jq.exports=kfe});var eT=v((qSe,Yq)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ofe=Ze(),Qq=Hq(),Nfe=Xq();Ofe(Qq,"factory",Nfe);Yq.exports=Qq});var tT=v((TSe,rT)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Pfe=Ja(),vh=L();function xfe(e,r,n){var i;return vh(e)||vh(r)||vh(n)||r<=0||n<=0||e<0||e>1?NaN:(i=Pfe(r/2,n/2,e,1-e),n*i[0]/(r*i[1]))}rT.exports=xfe});var iT=v((jSe,nT)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Afe=Ar(),Efe=Ja(),gh=L();function Dfe(e,r){if(gh(e)||gh(r)||e<=0||r<=0)return Afe(NaN);return n;function n(i){var t;return gh(i)||i<0||i>1?NaN:(t=Efe(e/2,r/2,i,1-i),r*t[0]/(e*t[1]))}}nT.exports=Dfe});var sT=v((CSe,aT)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var zfe=Ze(),oT=tT(),qfe=iT();zfe(oT,"factory",qfe);aT.exports=oT});function sj(e,r){let n=new Map,i=0;for(let t of e){let o=r(t,i++),a=n.get(o);a?a.push(t):n.set(o,[t])}return n}Object.hasOwn(Map,"groupBy")||(Map.groupBy=sj);import{dirname as Bme}from"node:path";import{fileURLToPath as Wme}from"node:url";import{readdir as xh,readFile as uj}from"node:fs/promises";import{join as Nh,relative as cj,sep as lj}from"node:path";var Ah="manifest.json";async function Eh(e){let r=/^https?:/.test(e)?await mj(new URL(e)):await dj(e);if(r.length===0)throw new Error(`No release was found at ${e}; expected a folder with a ${Ah}, or the address of a release or of a house.`);return r}async function dj(e){return(await xh(e,{recursive:!0,withFileTypes:!0}).catch(()=>[])).filter(n=>n.isFile()&&n.name===Ah).map(({parentPath:n})=>fj(n)).sort((n,i)=>n.name<i.name?-1:1)}var fj=e=>({name:e,read:r=>uj(Nh(e,r)).catch(()=>null),list:async()=>(await xh(e,{recursive:!0,withFileTypes:!0})).filter(n=>n.isFile()).map(({parentPath:n,name:i})=>cj(e,Nh(n,i)).replaceAll(lj,"/"))});async function mj(e){if(/\/v1\/releases\/[^/]+\/\d+\/?$/.test(e.pathname))return[Ph(e.href.replace(/\/?$/,"/"))];let r=await Dh(new URL("/v1/releases",e).href);if(!r)return[];let{items:n}=JSON.parse(new TextDecoder().decode(r));return n.map(({edition:i,revision:t})=>Ph(new URL(`/v1/releases/${i}/${t}/`,e).href))}var Ph=e=>({name:e,read:r=>Dh(e+r),list:()=>Promise.resolve(null)});async function Dh(e){let r=await fetch(e);return r.ok?new Uint8Array(await r.arrayBuffer()):null}function zh(e){let r=new Set(e.map(({digest:n})=>n));return e.flatMap(({edition:n,revision:i,previousDigest:t})=>{let o=(a,s)=>[{file:`${n}/${i}/manifest.json`,where:"/previousDigest",found:a,expected:s}];if(i>1){let a=e.find(s=>s.edition===n&&s.revision===i-1);if(a&&a.digest!==t)return o(String(t),a.digest)}return t===null||r.has(t)?[]:e.length>1?o(t,"the digest of a release that is there"):[]})}import{createPublicKey as qme,verify as Tme}from"node:crypto";import{createHash as pj,randomBytes as n0e,randomInt as i0e}from"node:crypto";function et(e){return pj("sha256").update(e).digest("hex")}var p={};Yr(p,{$brand:()=>ud,$input:()=>Tm,$output:()=>qm,INVALID:()=>er,NEVER:()=>sd,TimePrecision:()=>Gm,ZodAny:()=>qp,ZodArray:()=>Rp,ZodBase64:()=>Ju,ZodBase64URL:()=>Xu,ZodBigInt:()=>Ei,ZodBigIntFormat:()=>ec,ZodBoolean:()=>Ai,ZodCIDRv4:()=>Hu,ZodCIDRv6:()=>Ku,ZodCUID:()=>Mu,ZodCUID2:()=>Lu,ZodCatch:()=>ov,ZodCodec:()=>sa,ZodCompileAsyncError:()=>Ir,ZodCompileUnsupportedError:()=>X,ZodCreditCard:()=>Op,ZodCustom:()=>ua,ZodCustomStringFormat:()=>Sn,ZodDate:()=>ra,ZodDefault:()=>Yp,ZodDiscriminatedUnion:()=>Fp,ZodE164:()=>Qu,ZodEmail:()=>Cu,ZodEmoji:()=>Uu,ZodEnum:()=>Ni,ZodError:()=>zF,ZodExactOptional:()=>ic,ZodFile:()=>Kp,ZodFirstPartyTypeKind:()=>bv,ZodFunction:()=>vv,ZodGUID:()=>Ru,ZodIBAN:()=>Np,ZodIPv4:()=>Wu,ZodIPv6:()=>Gu,ZodISODate:()=>Et,ZodISODateTime:()=>At,ZodISODuration:()=>zt,ZodISOTime:()=>Dt,ZodInstanceOf:()=>yv,ZodIntersection:()=>Mp,ZodIssueCode:()=>jF,ZodJWT:()=>Yu,ZodKSUID:()=>Bu,ZodLazy:()=>fv,ZodLiteral:()=>Hp,ZodMAC:()=>kp,ZodMap:()=>Wp,ZodNaN:()=>sv,ZodNanoID:()=>Fu,ZodNever:()=>jp,ZodNonOptional:()=>oc,ZodNull:()=>Dp,ZodNullable:()=>Qp,ZodNumber:()=>xi,ZodNumberFormat:()=>In,ZodObject:()=>na,ZodOptional:()=>oa,ZodPipe:()=>aa,ZodPrefault:()=>rv,ZodPreprocess:()=>uv,ZodPromise:()=>pv,ZodReadonly:()=>cv,ZodRealError:()=>ur,ZodRecord:()=>Oi,ZodSet:()=>Gp,ZodString:()=>Pi,ZodStringFormat:()=>se,ZodSuccess:()=>iv,ZodSymbol:()=>Ap,ZodTemplateLiteral:()=>dv,ZodTransform:()=>Jp,ZodTuple:()=>Zp,ZodType:()=>G,ZodULID:()=>Zu,ZodURL:()=>ea,ZodUUID:()=>Rr,ZodUndefined:()=>Ep,ZodUnion:()=>ia,ZodUnknown:()=>Tp,ZodVoid:()=>Cp,ZodXID:()=>Vu,ZodXor:()=>Up,_ZodString:()=>ju,_default:()=>ev,_function:()=>m2,any:()=>V6,array:()=>ta,base64:()=>I6,base64url:()=>k6,bigint:()=>U6,boolean:()=>xp,catch:()=>av,check:()=>p2,cidrv4:()=>w6,cidrv6:()=>S6,clone:()=>re,codec:()=>c2,coerce:()=>_v,compile:()=>Um,config:()=>Oe,core:()=>ot,creditCard:()=>N6,cuid:()=>p6,cuid2:()=>v6,currencyCode:()=>z6,custom:()=>v2,date:()=>W6,decode:()=>yp,decodeAsync:()=>$p,deepPartial:()=>P2,describe:()=>g2,discriminatedUnion:()=>Q6,e164:()=>O6,email:()=>i6,emoji:()=>f6,encode:()=>hp,encodeAsync:()=>bp,endsWith:()=>vi,enum:()=>tc,exactOptional:()=>Xp,file:()=>o2,flattenError:()=>So,float32:()=>T6,float64:()=>j6,formatError:()=>Io,fromJSONSchema:()=>O2,function:()=>m2,getDiscriminatedOption:()=>um,getErrorMap:()=>RF,globalRegistry:()=>Me,gt:()=>jr,gte:()=>dr,guid:()=>o6,hash:()=>q6,hex:()=>D6,hostname:()=>E6,httpUrl:()=>d6,iban:()=>P6,includes:()=>mi,input:()=>A2,instanceof:()=>y2,int:()=>qu,int32:()=>C6,int64:()=>F6,intersection:()=>Lp,invertCodec:()=>l2,ipv4:()=>b6,ipv6:()=>_6,iso:()=>ca,json:()=>$2,jwt:()=>x6,keyof:()=>G6,ksuid:()=>y6,lazy:()=>mv,length:()=>yn,literal:()=>i2,locales:()=>Vo,looseObject:()=>J6,looseRecord:()=>e2,lowercase:()=>di,lt:()=>Tr,lte:()=>lr,mac:()=>$6,map:()=>r2,maxLength:()=>hn,maxSize:()=>Ot,memoizer:()=>Lo,meta:()=>h2,mime:()=>hi,minLength:()=>it,minSize:()=>Cr,multipleOf:()=>kt,nan:()=>u2,nanoid:()=>m6,nativeEnum:()=>n2,negative:()=>Su,never:()=>rc,nonnegative:()=>ku,nonoptional:()=>nv,nonpositive:()=>Iu,normalize:()=>yi,null:()=>zp,nullable:()=>Yo,nullish:()=>a2,number:()=>Pp,object:()=>H6,optional:()=>_n,output:()=>E2,overwrite:()=>kr,parse:()=>mp,parseAsync:()=>pp,partialRecord:()=>Y6,pipe:()=>Tu,positive:()=>wu,prefault:()=>tv,preprocess:()=>_2,prettifyError:()=>md,promise:()=>f2,properties:()=>gi,property:()=>Ou,readonly:()=>lv,record:()=>Bp,refine:()=>gv,regex:()=>li,regexes:()=>gr,registry:()=>Xs,safeDecode:()=>wp,safeDecodeAsync:()=>Ip,safeEncode:()=>_p,safeEncodeAsync:()=>Sp,safeParse:()=>vp,safeParseAsync:()=>gp,set:()=>t2,setErrorMap:()=>CF,size:()=>gn,slugify:()=>wi,startsWith:()=>pi,strictObject:()=>K6,string:()=>Qo,stringFormat:()=>A6,stringbool:()=>b2,success:()=>s2,superRefine:()=>hv,symbol:()=>L6,templateLiteral:()=>d2,toJSONSchema:()=>Au,toLowerCase:()=>$i,toUpperCase:()=>_i,toZod:()=>mo,transform:()=>nc,treeifyError:()=>fd,trim:()=>bi,tuple:()=>Vp,uint32:()=>R6,uint64:()=>M6,ulid:()=>g6,undefined:()=>Z6,union:()=>Di,unknown:()=>$n,uppercase:()=>fi,url:()=>l6,util:()=>I,uuid:()=>a6,uuidv4:()=>s6,uuidv6:()=>u6,uuidv7:()=>c6,validate:()=>ko,validateAsync:()=>Oo,void:()=>B6,withParser:()=>Qs,xid:()=>h6,xor:()=>X6});var ot={};Yr(ot,{$ZodAny:()=>Yf,$ZodArray:()=>om,$ZodAsyncError:()=>ar,$ZodBase64:()=>Mf,$ZodBase64URL:()=>Lf,$ZodBigInt:()=>Cs,$ZodBigIntFormat:()=>Kf,$ZodBoolean:()=>jo,$ZodCIDRv4:()=>Uf,$ZodCIDRv6:()=>Ff,$ZodCUID:()=>Nf,$ZodCUID2:()=>Pf,$ZodCatch:()=>Im,$ZodCheck:()=>ce,$ZodCheckBigIntFormat:()=>Yd,$ZodCheckEndsWith:()=>ff,$ZodCheckGreaterThan:()=>_s,$ZodCheckIncludes:()=>lf,$ZodCheckLengthEquals:()=>af,$ZodCheckLessThan:()=>$s,$ZodCheckLowerCase:()=>uf,$ZodCheckMaxLength:()=>nf,$ZodCheckMaxSize:()=>ef,$ZodCheckMimeType:()=>vf,$ZodCheckMinLength:()=>of,$ZodCheckMinSize:()=>rf,$ZodCheckMultipleOf:()=>Xd,$ZodCheckNumberFormat:()=>Qd,$ZodCheckOverwrite:()=>gf,$ZodCheckProperties:()=>pf,$ZodCheckProperty:()=>mf,$ZodCheckRegex:()=>sf,$ZodCheckSizeEquals:()=>tf,$ZodCheckStartsWith:()=>df,$ZodCheckStringFormat:()=>oi,$ZodCheckUpperCase:()=>cf,$ZodCodec:()=>Ro,$ZodCreditCard:()=>Vf,$ZodCustom:()=>Em,$ZodCustomStringFormat:()=>Gf,$ZodCyclicError:()=>Vs,$ZodDate:()=>nm,$ZodDefault:()=>$m,$ZodDiscriminatedUnion:()=>cm,$ZodE164:()=>Zf,$ZodEmail:()=>_f,$ZodEmoji:()=>kf,$ZodEncodeError:()=>St,$ZodEnum:()=>pm,$ZodError:()=>dd,$ZodExactOptional:()=>ym,$ZodFile:()=>gm,$ZodFunction:()=>xm,$ZodGUID:()=>bf,$ZodIBAN:()=>Bf,$ZodIPv4:()=>jf,$ZodIPv6:()=>Cf,$ZodISODate:()=>zf,$ZodISODateTime:()=>Df,$ZodISODuration:()=>Tf,$ZodISOTime:()=>qf,$ZodIntersection:()=>lm,$ZodJWT:()=>Wf,$ZodKSUID:()=>Ef,$ZodLazy:()=>Uo,$ZodLiteral:()=>vm,$ZodMAC:()=>Rf,$ZodMap:()=>fm,$ZodNaN:()=>km,$ZodNanoID:()=>Of,$ZodNever:()=>rm,$ZodNonOptional:()=>wm,$ZodNull:()=>Qf,$ZodNullable:()=>bm,$ZodNumber:()=>js,$ZodNumberFormat:()=>Hf,$ZodObject:()=>py,$ZodObjectJIT:()=>am,$ZodOptional:()=>Us,$ZodPipe:()=>Fs,$ZodPrefault:()=>_m,$ZodPreprocess:()=>Om,$ZodPromise:()=>Am,$ZodReadonly:()=>Nm,$ZodRealError:()=>sr,$ZodRecord:()=>dm,$ZodRegistry:()=>Js,$ZodSet:()=>mm,$ZodString:()=>fn,$ZodStringFormat:()=>te,$ZodSuccess:()=>Sm,$ZodSymbol:()=>Jf,$ZodTemplateLiteral:()=>Pm,$ZodTransform:()=>hm,$ZodTuple:()=>Rs,$ZodType:()=>Z,$ZodULID:()=>xf,$ZodURL:()=>If,$ZodUUID:()=>$f,$ZodUndefined:()=>Xf,$ZodUnion:()=>Co,$ZodUnknown:()=>em,$ZodVoid:()=>tm,$ZodXID:()=>Af,$ZodXor:()=>sm,$brand:()=>ud,$constructor:()=>_,$input:()=>Tm,$output:()=>qm,Doc:()=>dn,INVALID:()=>er,JSONSchema:()=>r6,JSONSchemaGenerator:()=>Eu,NEVER:()=>sd,TimePrecision:()=>Gm,URL_BAD_FORMAT:()=>wf,URL_UNPARSEABLE:()=>Eo,ZodCompileAsyncError:()=>Ir,ZodCompileUnsupportedError:()=>X,_any:()=>l0,_array:()=>h0,_base64:()=>yu,_base64url:()=>bu,_bigint:()=>n0,_boolean:()=>r0,_catch:()=>_F,_check:()=>Ub,_cidrv4:()=>gu,_cidrv6:()=>hu,_coercedBigint:()=>i0,_coercedBoolean:()=>t0,_coercedDate:()=>v0,_coercedNumber:()=>Km,_coercedString:()=>Zm,_creditCard:()=>Bm,_cuid:()=>cu,_cuid2:()=>lu,_custom:()=>b0,_date:()=>p0,_decode:()=>cs,_decodeAsync:()=>ds,_default:()=>yF,_discriminatedUnion:()=>aF,_e164:()=>$u,_email:()=>ru,_emoji:()=>su,_encode:()=>us,_encodeAsync:()=>ls,_endsWith:()=>vi,_enum:()=>fF,_file:()=>y0,_float32:()=>Xm,_float64:()=>Qm,_gt:()=>jr,_gte:()=>dr,_guid:()=>tu,_iban:()=>Wm,_includes:()=>mi,_int:()=>Jm,_int32:()=>Ym,_int64:()=>o0,_intersection:()=>sF,_ipv4:()=>pu,_ipv6:()=>vu,_isoDate:()=>Go,_isoDateTime:()=>Wo,_isoDuration:()=>Ko,_isoTime:()=>Ho,_jwt:()=>_u,_ksuid:()=>mu,_lazy:()=>kF,_length:()=>yn,_literal:()=>pF,_lowercase:()=>di,_lt:()=>Tr,_lte:()=>lr,_mac:()=>Vm,_map:()=>lF,_max:()=>lr,_maxLength:()=>hn,_maxSize:()=>Ot,_mime:()=>hi,_min:()=>dr,_minLength:()=>it,_minSize:()=>Cr,_multipleOf:()=>kt,_nan:()=>g0,_nanoid:()=>uu,_nativeEnum:()=>mF,_negative:()=>Su,_never:()=>f0,_nonnegative:()=>ku,_nonoptional:()=>bF,_nonpositive:()=>Iu,_normalize:()=>yi,_null:()=>c0,_nullable:()=>hF,_number:()=>Hm,_optional:()=>gF,_overwrite:()=>kr,_parse:()=>ri,_parseAsync:()=>ti,_pipe:()=>wF,_positive:()=>wu,_promise:()=>OF,_properties:()=>gi,_property:()=>Ou,_readonly:()=>SF,_record:()=>cF,_refine:()=>$0,_regex:()=>li,_safeDecode:()=>ms,_safeDecodeAsync:()=>vs,_safeEncode:()=>fs,_safeEncodeAsync:()=>ps,_safeParse:()=>ni,_safeParseAsync:()=>ii,_set:()=>dF,_size:()=>gn,_slugify:()=>wi,_startsWith:()=>pi,_string:()=>Lm,_stringFormat:()=>bn,_stringbool:()=>I0,_success:()=>$F,_superRefine:()=>_0,_symbol:()=>s0,_templateLiteral:()=>IF,_toLowerCase:()=>$i,_toUpperCase:()=>_i,_transform:()=>vF,_trim:()=>bi,_tuple:()=>uF,_uint32:()=>e0,_uint64:()=>a0,_ulid:()=>du,_undefined:()=>u0,_union:()=>iF,_unknown:()=>d0,_uppercase:()=>fi,_url:()=>Bo,_uuid:()=>nu,_uuidv4:()=>iu,_uuidv6:()=>ou,_uuidv7:()=>au,_void:()=>m0,_xid:()=>fu,_xor:()=>oF,base64Charset:()=>Es,base64urlCharset:()=>To,canParseURL:()=>Sf,clone:()=>re,compile:()=>Um,compileFn:()=>Ys,config:()=>Oe,createStandardJSONSchemaMethod:()=>Si,createToJSONSchemaMethod:()=>O0,decode:()=>oC,decodeAsync:()=>sC,describe:()=>w0,encode:()=>iC,encodeAsync:()=>aC,extractDefs:()=>Pt,finalize:()=>xt,flattenError:()=>So,formatError:()=>Io,getDiscriminatedOption:()=>um,globalConfig:()=>je,globalRegistry:()=>Me,handleUnrepresentable:()=>De,initializeContext:()=>Nt,isBackEdge:()=>Ws,isRecursiveSchema:()=>Bs,isValidBase64:()=>qo,isValidBase64URL:()=>Ds,isValidCIDRv6:()=>As,isValidCreditCard:()=>zs,isValidIBAN:()=>qs,isValidIPv6:()=>zo,isValidJWT:()=>Ts,locales:()=>Vo,memoizer:()=>Lo,mergeValues:()=>ai,meta:()=>S0,parse:()=>as,parseAsync:()=>ss,parseURLObject:()=>dy,prettifyError:()=>md,process:()=>ne,processSchema:()=>ne,regexes:()=>gr,registry:()=>Xs,safeDecode:()=>cC,safeDecodeAsync:()=>dC,safeEncode:()=>uC,safeEncodeAsync:()=>lC,safeParse:()=>Yj,safeParseAsync:()=>eC,standardProps:()=>Os,stripTabAndNewline:()=>Do,toDotPath:()=>Vh,toJSONSchema:()=>Au,toZod:()=>mo,treeifyError:()=>fd,urlHostnameOk:()=>Ps,urlProtocolOk:()=>xs,util:()=>I,validate:()=>ko,validateAsync:()=>Oo,validateURL:()=>Ns,version:()=>hf,withParser:()=>Qs});var I={};Yr(I,{BIGINT_FORMAT_RANGES:()=>yo,CONSTANT_CATCH:()=>is,Class:()=>Xl,NUMBER_FORMAT_RANGES:()=>ho,aborted:()=>Ye,allowsEval:()=>ed,assert:()=>bj,assertEqual:()=>vj,assertIs:()=>hj,assertNever:()=>yj,assertNotEqual:()=>gj,assignProp:()=>Fe,attachSchema:()=>bo,base64ToUint8Array:()=>Rh,base64urlToUint8Array:()=>Rj,cached:()=>Xn,captureStackTrace:()=>ts,cleanEnum:()=>Cj,cleanRegex:()=>tt,clone:()=>re,cloneDef:()=>wj,codePointLength:()=>cn,constantCatch:()=>od,createTransparentProxy:()=>Pj,defineLazy:()=>Ql,defineLazyInternal:()=>H,derived:()=>Lj,esc:()=>Qe,escapeRegex:()=>vr,explicitlyAborted:()=>nd,extend:()=>Ej,finalizeIssue:()=>or,floatSafeRemainder:()=>po,getElementAtPath:()=>Sj,getEnumValues:()=>Kn,getLengthableOrigin:()=>_o,getParsedType:()=>Nj,getSizableOrigin:()=>$o,hexToUint8Array:()=>Fj,hide:()=>wo,installLazyProp:()=>Wj,isObject:()=>un,isPlainObject:()=>pr,issue:()=>ei,joinValues:()=>w,jsonStringifyReplacer:()=>Jn,members:()=>id,merge:()=>zj,mergeDefs:()=>Sr,normalizeParams:()=>z,nullish:()=>rs,numKeys:()=>Oj,objectClone:()=>$j,omit:()=>Aj,optionalKeys:()=>td,own:()=>wt,parsedType:()=>O,partial:()=>qj,pick:()=>xj,prefixIssues:()=>ir,primitiveTypes:()=>rd,promiseAllObject:()=>Ij,propertyKeyTypes:()=>go,randomString:()=>kj,rawShape:()=>Qn,required:()=>Tj,safeExtend:()=>Dj,shallowClone:()=>vo,sizeCaps:()=>Yn,slugify:()=>Yl,stringifyPrimitive:()=>k,toZod:()=>mo,uint8ArrayToBase64:()=>Uh,uint8ArrayToBase64url:()=>Uj,uint8ArrayToHex:()=>Mj,unwrapMessage:()=>Hn});function vj(e){return e}function gj(e){return e}function mo(){return e=>e}function hj(e){}function yj(e){throw new Error("Unexpected value in exhaustive check")}function bj(e){}function Kn(e){let r=Object.values(e).filter(i=>typeof i=="number");return Object.entries(e).filter(([i,t])=>r.indexOf(+i)===-1).map(([i,t])=>t)}function w(e,r="|"){return e.map(n=>k(n)).join(r)}function Jn(e,r){return typeof r=="bigint"?r.toString():r}var Jl=class{constructor(r){this._getter=r,this._value=void 0}get value(){let r=this._getter;return r!==void 0&&(this._value=r(),this._getter=void 0),this._value}};function Xn(e){return new Jl(e)}function rs(e){return e==null}function tt(e){let r=e.startsWith("^")?1:0,n=e.endsWith("$")?e.length-1:e.length;return e.slice(r,n)}function po(e,r){let n=e/r,i=Math.round(n),t=4*Number.EPSILON*Math.max(Math.abs(n),1);return Math.abs(n-i)<t?0:n-i}var qh=Symbol("evaluating");function Ql(e,r,n){let i;Object.defineProperty(e,r,{get(){if(i!==qh)return i===void 0&&(i=qh,i=n()),i},set(t){Object.defineProperty(e,r,{value:t})},configurable:!0})}function $j(e){return Object.create(Object.getPrototypeOf(e),Object.getOwnPropertyDescriptors(e))}function Fe(e,r,n){Object.defineProperty(e,r,{value:n,writable:!0,enumerable:!0,configurable:!0})}function Qn(e){let r=Object.getOwnPropertyDescriptor(e,"shape");return r?.get?r.get.raw:r?.value}function rt(e){return Qn(e._zod.def)??e._zod.def.shape}function Th(e,r,n){Object.defineProperty(e,r,{get(){let i=n();return Fe(this,r,i),i},enumerable:!0,configurable:!0})}function jh(e,r,n){r in e?Fe(e,r,n):e[r]=n}function sn(e,r,n,i){let t=rt(r);for(let o of n){let a=Object.getOwnPropertyDescriptor(t,o);a.enumerable&&(a.get?Th(e,o,()=>{let s=r._zod.def.shape[o];return i?i(s,o):s}):jh(e,o,i?i(a.value,o):a.value))}}function _j(e,r){for(let n of Reflect.ownKeys(r)){let i=Object.getOwnPropertyDescriptor(r,n);i.enumerable&&(i.get?Th(e,n,()=>r[n]):jh(e,n,i.value))}}function Sr(...e){let r={};for(let n of e){let i=Object.getOwnPropertyDescriptors(n);Object.assign(r,i)}return Object.defineProperties({},r)}function wj(e){return Sr(e._zod.def)}function Sj(e,r){return r?r.reduce((n,i)=>n?.[i],e):e}function Ij(e){let r=Object.keys(e),n=r.map(i=>e[i]);return Promise.all(n).then(i=>{let t={};for(let o=0;o<r.length;o++)t[r[o]]=i[o];return t})}function kj(e=10){let r="abcdefghijklmnopqrstuvwxyz",n="";for(let i=0;i<e;i++)n+=r[Math.floor(Math.random()*r.length)];return n}function Qe(e){return JSON.stringify(e)}function Yl(e){return e.toLowerCase().trim().replace(/[^\w\s-]/g,"").replace(/[\s_-]+/g,"-").replace(/^-+|-+$/g,"")}var ts="captureStackTrace"in Error?Error.captureStackTrace:(...e)=>{};function un(e){return typeof e=="object"&&e!==null&&!Array.isArray(e)}var ed=Xn(()=>{if(je.jitless||typeof navigator<"u"&&navigator?.userAgent?.includes("Cloudflare"))return!1;try{let e=Function;return new e(""),!0}catch{return!1}});function pr(e){if(un(e)===!1)return!1;let r=e.constructor;if(r===void 0||typeof r!="function")return!0;let n=r.prototype;return!(un(n)===!1||Object.prototype.hasOwnProperty.call(n,"isPrototypeOf")===!1)}function vo(e){return pr(e)?{...e}:Array.isArray(e)?[...e]:e instanceof Map?new Map(e):e instanceof Set?new Set(e):e}function Oj(e){let r=0;for(let n in e)Object.prototype.hasOwnProperty.call(e,n)&&r++;return r}var Nj=e=>{let r=typeof e;switch(r){case"undefined":return"undefined";case"string":return"string";case"number":return Number.isNaN(e)?"nan":"number";case"boolean":return"boolean";case"function":return"function";case"bigint":return"bigint";case"symbol":return"symbol";case"object":return Array.isArray(e)?"array":e===null?"null":e.then&&typeof e.then=="function"&&e.catch&&typeof e.catch=="function"?"promise":typeof Map<"u"&&e instanceof Map?"map":typeof Set<"u"&&e instanceof Set?"set":typeof Date<"u"&&e instanceof Date?"date":typeof File<"u"&&e instanceof File?"file":"object";default:throw new Error(`Unknown data type: ${r}`)}},go=new Set(["string","number","symbol"]),rd=new Set(["string","number","bigint","boolean","symbol","undefined"]);function vr(e){return e.replace(/[.*+?^${}()|[\]\\]/g,"\\$&")}function re(e,r,n){let i=new e._zod.constr(r??e._zod.def);return(!r||n?.parent)&&(i._zod.parent=e),i}function z(e){let r=e;if(!r)return{};if(typeof r=="string")return{error:()=>r};if(r?.message!==void 0){if(r?.error!==void 0)throw new Error("Cannot specify both `message` and `error` params");r.error=r.message}return delete r.message,typeof r.error=="string"?{...r,error:()=>r.error}:r}function Pj(e){let r;return new Proxy({},{get(n,i,t){return r??(r=e()),Reflect.get(r,i,t)},set(n,i,t,o){return r??(r=e()),Reflect.set(r,i,t,o)},has(n,i){return r??(r=e()),Reflect.has(r,i)},deleteProperty(n,i){return r??(r=e()),Reflect.deleteProperty(r,i)},ownKeys(n){return r??(r=e()),Reflect.ownKeys(r)},getOwnPropertyDescriptor(n,i){return r??(r=e()),Reflect.getOwnPropertyDescriptor(r,i)},defineProperty(n,i,t){return r??(r=e()),Reflect.defineProperty(r,i,t)}})}function k(e){return typeof e=="bigint"?e.toString()+"n":typeof e=="string"?`"${e}"`:`${e}`}function td(e){return Object.keys(e).filter(r=>e[r]._zod.optin!==void 0&&e[r]._zod.optout==="optional")}var ho={safeint:[Number.MIN_SAFE_INTEGER,Number.MAX_SAFE_INTEGER],int32:[-2147483648,2147483647],uint32:[0,4294967295],float32:[-34028234663852886e22,34028234663852886e22],float64:[-Number.MAX_VALUE,Number.MAX_VALUE]},yo={int64:[BigInt("-9223372036854775808"),BigInt("9223372036854775807")],uint64:[BigInt(0),BigInt("18446744073709551615")]};function xj(e,r){let n=e._zod.def,i=n.checks;if(i&&i.length>0)throw new Error(".pick() cannot be used on object schemas containing refinements");let o={};return sn(o,e,ns(e,r)),re(e,Sr(n,{shape:o,checks:[]}))}function ns(e,r){let n=rt(e),i=[];for(let t of Reflect.ownKeys(r)){if(!Object.getOwnPropertyDescriptor(n,t)?.enumerable)throw new Error(`Unrecognized key: "${String(t)}"`);r[t]&&i.push(t)}return i}function Aj(e,r){let n=e._zod.def,i=n.checks;if(i&&i.length>0)throw new Error(".omit() cannot be used on object schemas containing refinements");let o=new Set(ns(e,r)),a={};return sn(a,e,Reflect.ownKeys(rt(e)).filter(s=>!o.has(s))),re(e,Sr(n,{shape:a,checks:[]}))}function Ej(e,r){if(!pr(r))throw new Error("Invalid input to extend: expected a plain object");let n=e._zod.def.checks;if(n&&n.length>0){let t=rt(e);for(let o of Reflect.ownKeys(r))if(Object.getOwnPropertyDescriptor(t,o)!==void 0)throw new Error("Cannot overwrite keys on object schemas containing refinements. Use `.safeExtend()` instead.")}return re(e,Sr(e._zod.def,{shape:Ch(e,r)}))}function Ch(e,r){let n={};return sn(n,e,Reflect.ownKeys(rt(e))),_j(n,r),n}function Dj(e,r){if(!pr(r))throw new Error("Invalid input to safeExtend: expected a plain object");return re(e,Sr(e._zod.def,{shape:Ch(e,r)}))}function zj(e,r){if(!r?._zod?.def)throw new Error("Invalid input to merge: expected an object schema. To merge a plain shape, use `.extend()`.");if(e._zod.def.checks?.length)throw new Error(".merge() cannot be used on object schemas containing refinements. Use .safeExtend() instead.");let n={};sn(n,e,Reflect.ownKeys(rt(e))),sn(n,r,Reflect.ownKeys(rt(r)));let i=Sr(e._zod.def,{shape:n,get catchall(){return r._zod.def.catchall},checks:r._zod.def.checks??[]});return re(e,i)}function qj(e,r,n,i="partial"){let o=r._zod.def.checks;if(o&&o.length>0)throw new Error(`.${i}() cannot be used on object schemas containing refinements`);let s=n?new Set(ns(r,n)):void 0,u={};return sn(u,r,Reflect.ownKeys(rt(r)),e&&((c,l)=>s&&!s.has(l)?c:new e({type:"optional",innerType:c}))),re(r,Sr(r._zod.def,{shape:u,checks:[]}))}function Tj(e,r,n){let i=n?new Set(ns(r,n)):void 0,t={};return sn(t,r,Reflect.ownKeys(rt(r)),(o,a)=>i&&!i.has(a)?o:new e({type:"nonoptional",innerType:o})),re(r,Sr(r._zod.def,{shape:t}))}function Ye(e,r=0){if(e.aborted===!0)return!0;for(let n=r;n<e.issues.length;n++)if(e.issues[n]?.continue!==!0)return!0;return!1}function nd(e,r=0){if(e.aborted===!0)return!0;for(let n=r;n<e.issues.length;n++)if(e.issues[n]?.continue===!1)return!0;return!1}function ir(e,r){return r.map(n=>{var i;return(i=n).path??(i.path=[]),n.path.unshift(e),n})}function Hn(e){return typeof e=="string"?e:e?.message}function Yn(e){let r=[];for(let n of e??[]){let i=n._zod.def;if(!/_(length|size)$|_equals$/.test(i.check))break;let t=i.maximum??i.length??i.size;t>=0&&r.push([t,n])}return r}function bo(e,r,n){var i;for(let t=r;t<e.length;t++)(i=e[t]).schema??(i.schema=n)}function or(e,r,n){var i;let t=e.inst?._zod?.traits;t?.has("$ZodType")&&(t.has("$ZodCheck")?(i=e).schema??(i.schema=e.inst):e.schema=e.inst);let o=e.schema!==e.inst?e.schema?._zod.def?.error:void 0,a=e.message?e.message:Hn(e.inst?._zod.def?.error?.(e))??Hn(o?.(e))??Hn(r?.error?.(e))??Hn(n.customError?.(e))??Hn(n.localeError?.(e))??"Invalid input",s={};for(let u of Object.keys(e))u==="inst"||u==="schema"||u==="continue"||u==="input"||u==="__proto__"||(s[u]=e[u]);return s.path??(s.path=[]),s.message=a,r?.reportInput&&(s.input=e.input),s}function $o(e){return e instanceof Set?"set":e instanceof Map?"map":e instanceof File?"file":"unknown"}var jj=/[\uD800-\uDBFF]/;function cn(e){let r=e.length;if(!jj.test(e))return r;let n=r;for(let i=0;i<r-1;i++)(e.charCodeAt(i)&64512)===55296&&(e.charCodeAt(i+1)&64512)===56320&&(n--,i++);return n}function _o(e){return Array.isArray(e)?"array":typeof e=="string"?"string":"unknown"}function O(e){let r=typeof e;switch(r){case"number":return Number.isNaN(e)?"nan":"number";case"object":{if(e===null)return"null";if(Array.isArray(e))return"array";let n=e;if(n&&Object.getPrototypeOf(n)!==Object.prototype&&"constructor"in n&&n.constructor)return n.constructor.name}}return r}function ei(...e){let[r,n,i]=e;return typeof r=="string"?{message:r,code:"custom",input:n,inst:i}:{...r}}function Cj(e){return Object.entries(e).filter(([r,n])=>Number.isNaN(Number.parseInt(r,10))).map(r=>r[1])}function Rh(e){let r=atob(e),n=new Uint8Array(r.length);for(let i=0;i<r.length;i++)n[i]=r.charCodeAt(i);return n}function Uh(e){let r="";for(let n=0;n<e.length;n++)r+=String.fromCharCode(e[n]);return btoa(r)}function Rj(e){let r=e.replace(/-/g,"+").replace(/_/g,"/"),n="=".repeat((4-r.length%4)%4);return Rh(r+n)}function Uj(e){return Uh(e).replace(/\+/g,"-").replace(/\//g,"_").replace(/=/g,"")}function Fj(e){let r=e.replace(/^0x/,"");if(r.length%2!==0)throw new Error("Invalid hex string length");let n=new Uint8Array(r.length/2);for(let i=0;i<r.length;i+=2)n[i/2]=Number.parseInt(r.slice(i,i+2),16);return n}function Mj(e){return Array.from(e).map(r=>r.toString(16).padStart(2,"0")).join("")}var Xl=class{constructor(...r){}};function id(e,r){for(let n in r){let i=Object.getOwnPropertyDescriptor(r,n);i.get?Object.defineProperty(e,n,{...i,enumerable:!1}):Zj(e,n,i.value)}}function wt(e,r,n,i=!0){return Object.defineProperty(e,r,{configurable:!0,writable:!0,enumerable:i,value:n}),n}function wo(e,r,n){return wt(e,r,n,!1)}function Lj(e,r){for(let n in e){let i=e[n];Object.defineProperty(r,n,{configurable:!0,enumerable:!0,get(){return wt(this,n,i(this))},set(t){wt(this,n,t)}})}return r}function Zj(e,r,n){Object.defineProperty(e,r,{configurable:!0,get(){return this==null?n:wt(this,r,n.bind(this))},set(i){wt(this,r,i)}})}function Vj(e,r){let n=Object.getPrototypeOf(e);return r in n?void 0:n}var Kl,_t=!1,Bj={configurable:!0,get(){_t=!0}};function H(e,r,n){let i=Object.getPrototypeOf(e._zod);if(r in i&&Kl!==e._zod){Kl=void 0;return}Kl=e._zod,Object.defineProperty(i,r,{configurable:!0,get(){Object.defineProperty(this,r,Bj);let t=_t;_t=!1;try{let o=n(this);return _t?delete this[r]:Object.defineProperty(this,r,{configurable:!0,writable:!0,value:o}),_t=_t||t,o}catch(o){throw delete this[r],_t=_t||t,o}},set(t){Object.defineProperty(this,r,{configurable:!0,writable:!0,value:t})}})}function Wj(e,r,n,i){let t=Vj(e,r);t&&Object.defineProperty(t,r,{configurable:!0,get(){let o={configurable:!0,writable:!0,enumerable:i,value:void 0};return Object.defineProperty(this,r,o),o.value=n(this),Object.defineProperty(this,r,o),o.value},set(o){Object.defineProperty(this,r,{configurable:!0,writable:!0,enumerable:i,value:o})}})}var is="~constantCatch";function od(e){let r=()=>e;return r[is]=!0,r}var Fh,sd=Object.freeze({status:"aborted"}),ad={value:void 0,enumerable:!1},Mh="captureStackTrace"in Error?Error:null;function Gj(e){let r=Mh;if(r){let n=r.stackTraceLimit;if(typeof n=="number"){try{r.stackTraceLimit=0}catch{return Mh=null,new e}try{return new e}finally{r.stackTraceLimit=n}}}return new e}function _(e,r,n,i){let t={};function o(f){this.def=f,this.constr=d,this.traits=new Set}o.prototype=t;let a=n,s=a&&new WeakSet;function u(f,m){if(f._zod){if(f._zod.traits.has(e))return}else{ad.value=new o(m);try{Object.defineProperty(f,"_zod",ad)}finally{ad.value=void 0}}if(f._zod.traits.add(e),r(f,m),s){let h=Object.getPrototypeOf(f),b=f._zod.constr.prototype,y=h;for(;y&&y!==b;)y=Object.getPrototypeOf(y);let S=y??h;s.has(S)||(s.add(S),id(S,a))}let g=d.prototype;for(let h in g)Object.prototype.hasOwnProperty.call(g,h)&&(h in f||(f[h]=g[h].bind(f)))}let c=i?.Parent??Object;class l extends c{}Object.defineProperty(l,"name",{value:e});function d(f){let m=i?.Parent?Gj(l):this;u(m,f);let g=m._zod.deferred;if(g){for(let b of g)b();m._zod.deferred=void 0}let h=globalThis.__zod_globalConfig?.postProcessor;return h&&h(m),m}return Object.defineProperty(d,"init",{value:u}),Object.defineProperty(d,Symbol.hasInstance,{value:f=>i?.Parent&&f instanceof i.Parent?!0:f?._zod?.traits?.has(e)}),Object.defineProperty(d,"name",{value:e}),d}var ud=Symbol("zod_brand"),ar=class extends Error{constructor(){super("Encountered Promise during synchronous parse. Use .parseAsync() instead.")}},St=class extends Error{constructor(r){super(`Encountered unidirectional transform during encode: ${r}`),this.name="ZodEncodeError"}};(Fh=globalThis).__zod_globalConfig??(Fh.__zod_globalConfig={});var je=globalThis.__zod_globalConfig;function Oe(e){return e&&Object.assign(je,e),je}function Hj(){let e=this._zod;return e.message??(e.message=JSON.stringify(e.def,Jn,2)),e.message}function Kj(e){this._zod.message=e}var Jj={get:Hj,set:Kj,enumerable:!0,configurable:!0},ld={value:void 0,enumerable:!1},Lh=new WeakSet([Object.prototype,Error.prototype]),Zh=(e,r)=>{e.name="$ZodError",ld.value=r,Object.defineProperty(e,"issues",ld),ld.value=void 0,Object.defineProperty(e,"message",Jj);let n=Object.getPrototypeOf(e);Lh.has(n)||(Lh.add(n),Object.defineProperty(n,"toString",{configurable:!0,enumerable:!1,get(){let i=()=>this.message;return Object.defineProperty(this,"toString",{value:i,configurable:!0,writable:!0}),i},set(i){Object.defineProperty(this,"toString",{value:i,configurable:!0,writable:!0})}}))},dd=_("$ZodError",Zh),sr=_("$ZodError",Zh,void 0,{Parent:Error});function Xj(e,r,n){return Object.prototype.hasOwnProperty.call(e,r)||(r==="__proto__"?Object.defineProperty(e,r,{value:n(),writable:!0,enumerable:!0,configurable:!0}):e[r]=n()),e[r]}function So(e,r=n=>n.message){let n={},i=[];for(let t of e.issues)t.path.length>0?Xj(n,t.path[0],()=>[]).push(r(t)):i.push(r(t));return{formErrors:i,fieldErrors:n}}function Io(e,r=n=>n.message){let n={_errors:[]},i=(t,o=[])=>{for(let a of t.issues)if(a.code==="invalid_union"&&a.errors.length)a.errors.map(s=>i({issues:s},[...o,...a.path]));else if(a.code==="invalid_key")i({issues:a.issues},[...o,...a.path]);else if(a.code==="invalid_element")i({issues:a.issues},[...o,...a.path]);else{let s=[...o,...a.path];if(s.length===0)n._errors.push(r(a));else{let u=n,c=0;for(;c<s.length;){let l=s[c],d=c===s.length-1;if(l==="_errors"){d&&u._errors.push(r(a)),c++;continue}Object.prototype.hasOwnProperty.call(u,l)||Object.defineProperty(u,l,{value:{_errors:[]},enumerable:!0,writable:!0,configurable:!0});let f=u[l];d&&f._errors.push(r(a)),u=f,c++}}}};return i(e),n}function fd(e,r=n=>n.message){let n={errors:[]},i=(t,o=[])=>{var a;for(let s of t.issues)if(s.code==="invalid_union"&&s.errors.length)s.errors.map(u=>i({issues:u},[...o,...s.path]));else if(s.code==="invalid_key")i({issues:s.issues},[...o,...s.path]);else if(s.code==="invalid_element")i({issues:s.issues},[...o,...s.path]);else{let u=[...o,...s.path];if(u.length===0){n.errors.push(r(s));continue}let c=n,l=0;for(;l<u.length;){let d=u[l],f=l===u.length-1;typeof d=="string"?(c.properties??(c.properties={}),Object.prototype.hasOwnProperty.call(c.properties,d)||Object.defineProperty(c.properties,d,{value:{errors:[]},enumerable:!0,writable:!0,configurable:!0}),c=c.properties[d]):(c.items??(c.items=[]),(a=c.items)[d]??(a[d]={errors:[]}),c=c.items[d]),f&&c.errors.push(r(s)),l++}}};return i(e),n}function Vh(e){let r=[],n=e.map(i=>typeof i=="object"?i.key:i);for(let i of n)typeof i=="number"?r.push(`[${i}]`):typeof i=="symbol"?r.push(`[${JSON.stringify(String(i))}]`):/[^\w$]/.test(i)?r.push(`[${JSON.stringify(i)}]`):(r.length&&r.push("."),r.push(i));return r.join("")}function md(e){let r=[],n=[...e.issues].sort((i,t)=>(i.path??[]).length-(t.path??[]).length);for(let i of n)r.push(`✖ ${i.message}`),i.path?.length&&r.push(`  → at ${Vh(i.path)}`);return r.join(`
`)}function os(e,r){return{callee:r?.callee??e,Err:r?.Err}}var ri=e=>{let r=(n,i,t,o)=>{let a=t?{...t,async:!1}:{async:!1},s=n._zod.run({value:i,issues:[]},a);if(s instanceof Promise)throw new ar;if(s.issues.length){let u=new(o?.Err??e)(s.issues.map(c=>or(c,a,Oe())));throw ts(u,o?.callee??r),u}return s.value};return r},as=ri(sr),ti=e=>{let r=async(n,i,t,o)=>{let a=t?{...t,async:!0}:{async:!0},s=n._zod.run({value:i,issues:[]},a);if(s instanceof Promise&&(s=await s),s.issues.length){let u=new(o?.Err??e)(s.issues.map(c=>or(c,a,Oe())));throw ts(u,o?.callee??r),u}return s.value};return r},ss=ti(sr),ni=e=>(r,n,i)=>{let t=i?{...i,async:!1}:{async:!1},o=r._zod.run({value:n,issues:[]},t);if(o instanceof Promise)throw new ar;return o.issues.length?Bh(e,o.issues,t):{success:!0,data:o.value}},Yj=ni(sr);function Bh(e,r,n){let i;return{success:!1,get error(){return i||(i=new e(r.map(t=>or(t,n,Oe()))),r=void 0,n=void 0),i},set error(t){i=t,r=void 0,n=void 0}}}var ii=e=>async(r,n,i)=>{let t=i?{...i,async:!0}:{async:!0},o=r._zod.run({value:n,issues:[]},t);return o instanceof Promise&&(o=await o),o.issues.length?Bh(e,o.issues,t):{success:!0,data:o.value}},eC=ii(sr),rC=Symbol.for("zod.compile.invalid"),tC=Symbol.for("zod.compile.fallback"),ko=((e,r,n)=>{let i=e._zod.bag.validator;if(i!==void 0){if(i(r)!==rC)return!0;if(i.definite===!0&&n===void 0)return!1}return nC(e,r,n)});function nC(e,r,n){let i=n?{...n,async:!1,abortEarly:!0}:{async:!1,abortEarly:!0},t=e._zod.bag.fallbackRun,o;if(t?(i[tC]=!0,o=t({value:r,issues:[]},i)):o=e._zod.run({value:r,issues:[]},i),o instanceof Promise)throw new ar;return o.issues.length===0}var Oo=async(e,r,n)=>{let i=n?{...n,async:!0,abortEarly:!0}:{async:!0,abortEarly:!0},t=e._zod.run({value:r,issues:[]},i);return t instanceof Promise&&(t=await t),t.issues.length===0},us=e=>{let r=ri(e),n=(i,t,o,a)=>{let s=o?{...o,direction:"backward"}:{direction:"backward"};return r(i,t,s,os(n,a))};return n},iC=us(sr),cs=e=>{let r=ri(e),n=(i,t,o,a)=>r(i,t,o,os(n,a));return n},oC=cs(sr),ls=e=>{let r=ti(e),n=async(i,t,o,a)=>{let s=o?{...o,direction:"backward"}:{direction:"backward"};return await r(i,t,s,os(n,a))};return n},aC=ls(sr),ds=e=>{let r=ti(e),n=async(i,t,o,a)=>await r(i,t,o,os(n,a));return n},sC=ds(sr),fs=e=>(r,n,i)=>{let t=i?{...i,direction:"backward"}:{direction:"backward"};return ni(e)(r,n,t)},uC=fs(sr),ms=e=>(r,n,i)=>ni(e)(r,n,i),cC=ms(sr),ps=e=>async(r,n,i)=>{let t=i?{...i,direction:"backward"}:{direction:"backward"};return ii(e)(r,n,t)},lC=ps(sr),vs=e=>async(r,n,i)=>ii(e)(r,n,i),dC=vs(sr);var gr={};Yr(gr,{anyString:()=>Fd,base64:()=>Ed,base64url:()=>Dd,bigint:()=>Ld,boolean:()=>Zd,browserEmail:()=>bC,cidrv4:()=>xd,cidrv6:()=>Ad,creditCard:()=>gs,cuid:()=>vd,cuid2:()=>gd,currencyCode:()=>jd,date:()=>Cd,datetime:()=>Ud,domain:()=>qd,duration:()=>wd,e164:()=>Td,email:()=>Id,emoji:()=>kd,extendedDuration:()=>fC,guid:()=>Sd,hex:()=>Hd,hostname:()=>zd,html5Email:()=>gC,httpProtocol:()=>No,iban:()=>hs,idnEmail:()=>yC,integer:()=>Po,ipv4:()=>Od,ipv6:()=>Nd,ksuid:()=>bd,lowercase:()=>Wd,mac:()=>Pd,md5_base64:()=>SC,md5_base64url:()=>IC,md5_hex:()=>wC,nanoid:()=>$d,nanoidOfLength:()=>_d,null:()=>Vd,number:()=>nt,rfc5322Email:()=>hC,sha1_base64:()=>OC,sha1_base64url:()=>NC,sha1_hex:()=>kC,sha256_base64:()=>xC,sha256_base64url:()=>AC,sha256_hex:()=>PC,sha384_base64:()=>DC,sha384_base64url:()=>zC,sha384_hex:()=>EC,sha512_base64:()=>TC,sha512_base64url:()=>jC,sha512_hex:()=>qC,string:()=>Md,time:()=>Rd,ulid:()=>hd,undefined:()=>Bd,unicodeEmail:()=>Wh,uppercase:()=>Gd,uuid:()=>ln,uuid4:()=>mC,uuid6:()=>pC,uuid7:()=>vC,xid:()=>yd});var vd=/^[cC][0-9a-z]{6,}$/,gd=/^[0-9a-z]+$/,hd=/^[0-7][0-9A-HJKMNP-TV-Za-hjkmnp-tv-z]{25}$/,yd=/^[0-9a-vA-V]{20}$/,bd=/^[A-Za-z0-9]{27}$/,$d=/^[a-zA-Z0-9_-]{21}$/;function _d(e){return new RegExp(`^[a-zA-Z0-9_-]{${e}}$`)}var wd=/^P(?:(\d+W)|(?!.*W)(?=\d|T\d)(\d+Y)?(\d+M)?(\d+D)?(T(?=\d)(\d+H)?(\d+M)?(\d+([.,]\d+)?S)?)?)$/,fC=/^[-+]?P(?!$)(?:(?:[-+]?\d+Y)|(?:[-+]?\d+[.,]\d+Y$))?(?:(?:[-+]?\d+M)|(?:[-+]?\d+[.,]\d+M$))?(?:(?:[-+]?\d+W)|(?:[-+]?\d+[.,]\d+W$))?(?:(?:[-+]?\d+D)|(?:[-+]?\d+[.,]\d+D$))?(?:T(?=[\d+-])(?:(?:[-+]?\d+H)|(?:[-+]?\d+[.,]\d+H$))?(?:(?:[-+]?\d+M)|(?:[-+]?\d+[.,]\d+M$))?(?:[-+]?\d+(?:[.,]\d+)?S)?)??$/,Sd=/^([0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12})$/,ln=e=>e?new RegExp(`^([0-9a-fA-F]{8}-[0-9a-fA-F]{4}-${e}[0-9a-fA-F]{3}-[89abAB][0-9a-fA-F]{3}-[0-9a-fA-F]{12})$`):/^([0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[1-8][0-9a-fA-F]{3}-[89abAB][0-9a-fA-F]{3}-[0-9a-fA-F]{12}|00000000-0000-0000-0000-000000000000|ffffffff-ffff-ffff-ffff-ffffffffffff)$/,mC=ln(4),pC=ln(6),vC=ln(7),Id=/^(?:[A-Za-z0-9_'+\-]+\.)*[A-Za-z0-9_'+\-]*[A-Za-z0-9_+-]@(?:[A-Za-z0-9][A-Za-z0-9\-]*\.)+[A-Za-z]{2,}$/,gC=/^[a-zA-Z0-9.!#$%&'*+/=?^_`{|}~-]+@[a-zA-Z0-9](?:[a-zA-Z0-9-]{0,61}[a-zA-Z0-9])?(?:\.[a-zA-Z0-9](?:[a-zA-Z0-9-]{0,61}[a-zA-Z0-9])?)*$/,hC=/^(([^<>()\[\]\\.,;:\s@"]+(\.[^<>()\[\]\\.,;:\s@"]+)*)|(".+"))@((\[[0-9]{1,3}\.[0-9]{1,3}\.[0-9]{1,3}\.[0-9]{1,3}])|(([a-zA-Z\-0-9]+\.)+[a-zA-Z]{2,}))$/,Wh=/^[^\s@"]{1,64}@[^\s@]{1,255}$/u,yC=Wh,bC=/^[a-zA-Z0-9.!#$%&'*+/=?^_`{|}~-]+@[a-zA-Z0-9](?:[a-zA-Z0-9-]{0,61}[a-zA-Z0-9])?(?:\.[a-zA-Z0-9](?:[a-zA-Z0-9-]{0,61}[a-zA-Z0-9])?)*$/,$C="^(?=[\\s\\S]*[\\p{Extended_Pictographic}\\p{Regional_Indicator}\\u20E3])[\\p{Extended_Pictographic}\\p{Emoji_Component}]+$";function kd(){return new RegExp($C,"u")}var Od=/^(?:(?:25[0-5]|2[0-4][0-9]|1[0-9][0-9]|[1-9][0-9]|[0-9])\.){3}(?:25[0-5]|2[0-4][0-9]|1[0-9][0-9]|[1-9][0-9]|[0-9])$/,Nd=/^(([0-9a-fA-F]{1,4}:){7}[0-9a-fA-F]{1,4}|([0-9a-fA-F]{1,4}:){1,7}:|([0-9a-fA-F]{1,4}:){1,6}:[0-9a-fA-F]{1,4}|([0-9a-fA-F]{1,4}:){1,5}(:[0-9a-fA-F]{1,4}){1,2}|([0-9a-fA-F]{1,4}:){1,4}(:[0-9a-fA-F]{1,4}){1,3}|([0-9a-fA-F]{1,4}:){1,3}(:[0-9a-fA-F]{1,4}){1,4}|([0-9a-fA-F]{1,4}:){1,2}(:[0-9a-fA-F]{1,4}){1,5}|[0-9a-fA-F]{1,4}:((:[0-9a-fA-F]{1,4}){1,6})|:((:[0-9a-fA-F]{1,4}){1,7}|:))$/,Pd=e=>{let r=vr(e??":");return new RegExp(`^(?:[0-9A-F]{2}${r}){5}[0-9A-F]{2}$|^(?:[0-9a-f]{2}${r}){5}[0-9a-f]{2}$`)},xd=/^((25[0-5]|2[0-4][0-9]|1[0-9][0-9]|[1-9][0-9]|[0-9])\.){3}(25[0-5]|2[0-4][0-9]|1[0-9][0-9]|[1-9][0-9]|[0-9])\/([0-9]|[1-2][0-9]|3[0-2])$/,Ad=/^(([0-9a-fA-F]{1,4}:){7}[0-9a-fA-F]{1,4}|([0-9a-fA-F]{1,4}:){1,7}:|([0-9a-fA-F]{1,4}:){1,6}:[0-9a-fA-F]{1,4}|([0-9a-fA-F]{1,4}:){1,5}(:[0-9a-fA-F]{1,4}){1,2}|([0-9a-fA-F]{1,4}:){1,4}(:[0-9a-fA-F]{1,4}){1,3}|([0-9a-fA-F]{1,4}:){1,3}(:[0-9a-fA-F]{1,4}){1,4}|([0-9a-fA-F]{1,4}:){1,2}(:[0-9a-fA-F]{1,4}){1,5}|[0-9a-fA-F]{1,4}:((:[0-9a-fA-F]{1,4}){1,6})|:((:[0-9a-fA-F]{1,4}){1,7}|:))\/(12[0-8]|1[01][0-9]|[1-9]?[0-9])$/,Ed=/^$|^(?:[0-9a-zA-Z+/]{4})*(?:(?:[0-9a-zA-Z+/]{2}==)|(?:[0-9a-zA-Z+/]{3}=))?$/,Dd=/^(?:[A-Za-z0-9_-]{4})*(?:[A-Za-z0-9_-]{2,3})?$/,zd=/^(?=.{1,253}\.?$)[a-zA-Z0-9](?:[a-zA-Z0-9-]{0,61}[a-zA-Z0-9])?(?:\.[a-zA-Z0-9](?:[-0-9a-zA-Z]{0,61}[0-9a-zA-Z])?)*\.?$/,qd=/^(?=.{1,253}$)([a-zA-Z0-9](?:[a-zA-Z0-9-]{0,61}[a-zA-Z0-9])?\.)+[a-zA-Z]{2,63}$/,No=/^https?$/,Td=/^\+[1-9]\d{6,14}$/,gs=/^\d(?:[ -]?\d){11,18}$/,jd=/^(?:AED|AFN|ALL|AMD|AOA|ARS|AUD|AWG|AZN|BAM|BBD|BDT|BHD|BIF|BMD|BND|BOB|BOV|BRL|BSD|BTN|BWP|BYN|BZD|CAD|CDF|CHE|CHF|CHW|CLF|CLP|CNY|COP|COU|CRC|CUP|CVE|CZK|DJF|DKK|DOP|DZD|EGP|ERN|ETB|EUR|FJD|FKP|GBP|GEL|GHS|GIP|GMD|GNF|GTQ|GYD|HKD|HNL|HTG|HUF|IDR|ILS|INR|IQD|IRR|ISK|JMD|JOD|JPY|KES|KGS|KHR|KMF|KPW|KRW|KWD|KYD|KZT|LAK|LBP|LKR|LRD|LSL|LYD|MAD|MDL|MGA|MKD|MMK|MNT|MOP|MRU|MUR|MVR|MWK|MXN|MXV|MYR|MZN|NAD|NGN|NIO|NOK|NPR|NZD|OMR|PAB|PEN|PGK|PHP|PKR|PLN|PYG|QAR|RON|RSD|RUB|RWF|SAR|SBD|SCR|SDG|SEK|SGD|SHP|SLE|SOS|SRD|SSP|STN|SVC|SYP|SZL|THB|TJS|TMT|TND|TOP|TRY|TTD|TWD|TZS|UAH|UGX|USD|USN|UYI|UYU|UYW|UZS|VED|VES|VND|VUV|WST|XAD|XAF|XAG|XAU|XBA|XBB|XBC|XBD|XCD|XCG|XDR|XOF|XPD|XPF|XPT|XSU|XTS|XUA|XXX|YER|ZAR|ZMW|ZWG)$/,hs=/^[A-Z]{2}(?!00|01|99)\d{2}[A-Z0-9]{11,30}$/,Gh="(?:(?:\\d\\d[2468][048]|\\d\\d[13579][26]|\\d\\d0[48]|[02468][048]00|[13579][26]00)-02-29|\\d{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\\d|30)|(?:02)-(?:0[1-9]|1\\d|2[0-8])))";function _C(e){return new RegExp(`^${e}$`)}var Cd=_C(Gh);function pd(e){let r="(?:[01]\\d|2[0-3]):[0-5]\\d";return typeof e.precision=="number"?e.precision===-1?`${r}`:e.precision===0?`${r}:[0-5]\\d`:`${r}:[0-5]\\d\\.\\d{${e.precision}}`:e.seconds?`${r}:[0-5]\\d(?:\\.\\d+)?`:`${r}(?::[0-5]\\d(?:\\.\\d+)?)?`}function Rd(e){return new RegExp(`^${pd(e)}$`)}function Ud(e){let r=["Z"];e.offset&&r.push("([+-](?:[01]\\d|2[0-3]):[0-5]\\d)");let n=`${pd({precision:e.precision,seconds:!0})}(?:${r.join("|")})`,i=e.local?`${n}|${pd({precision:e.precision})}`:n;return new RegExp(`^${Gh}T(?:${i})$`)}var Fd=/^[\s\S]{0,}$/,Md=e=>{let r=e?`[\\s\\S]{${e?.minimum??0},${e?.maximum??""}}`:"[\\s\\S]*";return new RegExp(`^${r}$`)},Ld=/^-?\d+n?$/,Po=/^-?\d+$/,nt=/^-?\d+(?:\.\d+)?$/,Zd=/^(?:true|false)$/i,Vd=/^null$/i;var Bd=/^undefined$/i;var Wd=/^[^A-Z]*$/,Gd=/^[^a-z]*$/,Hd=/^[0-9a-fA-F]*$/;function xo(e,r){return new RegExp(`^[A-Za-z0-9+/]{${e}}${r}$`)}function Ao(e){return new RegExp(`^[A-Za-z0-9_-]{${e}}$`)}var wC=/^[0-9a-fA-F]{32}$/,SC=xo(22,"=="),IC=Ao(22),kC=/^[0-9a-fA-F]{40}$/,OC=xo(27,"="),NC=Ao(27),PC=/^[0-9a-fA-F]{64}$/,xC=xo(43,"="),AC=Ao(43),EC=/^[0-9a-fA-F]{96}$/,DC=xo(64,""),zC=Ao(64),qC=/^[0-9a-fA-F]{128}$/,TC=xo(86,"=="),jC=Ao(86);var ce=_("$ZodCheck",(e,r)=>{var n;e._zod??(e._zod={}),e._zod.def=r,(n=e._zod).onattach??(n.onattach=[])}),Kd=e=>{let r=e.value;return!rs(r)&&r.size!==void 0},Jd=e=>{let r=e.value;return!rs(r)&&r.length!==void 0},ys={number:"number",bigint:"bigint",object:"date"},$s=_("$ZodCheckLessThan",(e,r)=>{ce.init(e,r);let n=ys[typeof r.value];e._zod.check=i=>{(r.inclusive?i.value<=r.value:i.value<r.value)||i.issues.push({origin:ys[typeof i.value]??n,code:"too_big",maximum:typeof r.value=="object"?r.value.getTime():r.value,input:i.value,inclusive:r.inclusive,inst:e,continue:!r.abort})}}),_s=_("$ZodCheckGreaterThan",(e,r)=>{ce.init(e,r);let n=ys[typeof r.value];e._zod.check=i=>{(r.inclusive?i.value>=r.value:i.value>r.value)||i.issues.push({origin:ys[typeof i.value]??n,code:"too_small",minimum:typeof r.value=="object"?r.value.getTime():r.value,input:i.value,inclusive:r.inclusive,inst:e,continue:!r.abort})}}),Xd=_("$ZodCheckMultipleOf",(e,r)=>{ce.init(e,r),e._zod.check=n=>{if(typeof n.value!=typeof r.value)throw new Error("Cannot mix number and bigint in multiple_of check.");(typeof n.value=="bigint"?r.value!==BigInt(0)&&n.value%r.value===BigInt(0):po(n.value,r.value)===0)||n.issues.push({origin:typeof n.value,code:"not_multiple_of",divisor:r.value,input:n.value,inst:e,continue:!r.abort})}}),Qd=_("$ZodCheckNumberFormat",(e,r)=>{ce.init(e,r),r.format=r.format||"float64";let n=r.format?.includes("int"),i=n?"int":"number",[t,o]=ho[r.format];e._zod.check=a=>{let s=a.value;if(n){if(!Number.isInteger(s)){a.issues.push({expected:i,format:r.format,code:"invalid_type",continue:!1,input:s,inst:e});return}if(!Number.isSafeInteger(s)){s>0?a.issues.push({input:s,code:"too_big",maximum:Number.MAX_SAFE_INTEGER,note:"Integers must be within the safe integer range.",inst:e,origin:i,inclusive:!0,continue:!r.abort}):a.issues.push({input:s,code:"too_small",minimum:Number.MIN_SAFE_INTEGER,note:"Integers must be within the safe integer range.",inst:e,origin:i,inclusive:!0,continue:!r.abort});return}}s<t&&a.issues.push({origin:"number",input:s,code:"too_small",minimum:t,inclusive:!0,inst:e,continue:!r.abort}),s>o&&a.issues.push({origin:"number",input:s,code:"too_big",maximum:o,inclusive:!0,inst:e,continue:!r.abort})}}),Yd=_("$ZodCheckBigIntFormat",(e,r)=>{ce.init(e,r);let[n,i]=yo[r.format];e._zod.check=t=>{let o=t.value;o<n&&t.issues.push({origin:"bigint",input:o,code:"too_small",minimum:n,inclusive:!0,inst:e,continue:!r.abort}),o>i&&t.issues.push({origin:"bigint",input:o,code:"too_big",maximum:i,inclusive:!0,inst:e,continue:!r.abort})}}),ef=_("$ZodCheckMaxSize",(e,r)=>{var n;ce.init(e,r),(n=e._zod.def).when??(n.when=Kd),e._zod.check=i=>{let t=i.value;t.size<=r.maximum||i.issues.push({origin:$o(t),code:"too_big",maximum:r.maximum,inclusive:!0,input:t,inst:e,continue:!r.abort})}}),rf=_("$ZodCheckMinSize",(e,r)=>{var n;ce.init(e,r),(n=e._zod.def).when??(n.when=Kd),e._zod.check=i=>{let t=i.value;t.size>=r.minimum||i.issues.push({origin:$o(t),code:"too_small",minimum:r.minimum,inclusive:!0,input:t,inst:e,continue:!r.abort})}}),tf=_("$ZodCheckSizeEquals",(e,r)=>{var n;ce.init(e,r),(n=e._zod.def).when??(n.when=Kd),e._zod.check=i=>{let t=i.value,o=t.size;if(o===r.size)return;let a=o>r.size;i.issues.push({origin:$o(t),...a?{code:"too_big",maximum:r.size}:{code:"too_small",minimum:r.size},inclusive:!0,exact:!0,input:i.value,inst:e,continue:!r.abort})}}),nf=_("$ZodCheckMaxLength",(e,r)=>{var n;ce.init(e,r),(n=e._zod.def).when??(n.when=Jd),e._zod.check=i=>{let t=i.value,o=t.length;if((typeof t=="string"&&o>r.maximum?cn(t):o)<=r.maximum)return;let s=_o(t);i.issues.push({origin:s,code:"too_big",maximum:r.maximum,inclusive:!0,input:t,inst:e,continue:!r.abort})}}),of=_("$ZodCheckMinLength",(e,r)=>{var n;ce.init(e,r),(n=e._zod.def).when??(n.when=Jd),e._zod.check=i=>{let t=i.value,o=t.length;if((typeof t=="string"&&o>=r.minimum&&o<r.minimum*2?cn(t):o)>=r.minimum)return;let s=_o(t);i.issues.push({origin:s,code:"too_small",minimum:r.minimum,inclusive:!0,input:t,inst:e,continue:!r.abort})}}),af=_("$ZodCheckLengthEquals",(e,r)=>{var n;ce.init(e,r),(n=e._zod.def).when??(n.when=Jd),e._zod.check=i=>{let t=i.value,o=t.length,a=typeof t=="string"&&o>=r.length&&o<=r.length*2?cn(t):o;if(a===r.length)return;let s=_o(t),u=a>r.length;i.issues.push({origin:s,...u?{code:"too_big",maximum:r.length}:{code:"too_small",minimum:r.length},inclusive:!0,exact:!0,input:i.value,inst:e,continue:!r.abort})}}),oi=_("$ZodCheckStringFormat",(e,r)=>{var n,i;ce.init(e,r),r.pattern?(n=e._zod).check??(n.check=t=>{r.pattern.lastIndex=0,!r.pattern.test(t.value)&&t.issues.push({origin:"string",code:"invalid_format",format:r.format,input:t.value,...r.pattern?{pattern:r.pattern.toString()}:{},inst:e,continue:!r.abort})}):(i=e._zod).check??(i.check=()=>{})}),sf=_("$ZodCheckRegex",(e,r)=>{oi.init(e,r),e._zod.check=n=>{r.pattern.lastIndex=0,!r.pattern.test(n.value)&&n.issues.push({origin:"string",code:"invalid_format",format:"regex",input:n.value,pattern:r.pattern.toString(),inst:e,continue:!r.abort})}}),uf=_("$ZodCheckLowerCase",(e,r)=>{r.pattern??(r.pattern=Wd),oi.init(e,r)}),cf=_("$ZodCheckUpperCase",(e,r)=>{r.pattern??(r.pattern=Gd),oi.init(e,r)}),lf=_("$ZodCheckIncludes",(e,r)=>{ce.init(e,r);let n=vr(r.includes),i=new RegExp(typeof r.position=="number"?`^.{${r.position},}${n}`:n);r.pattern=i,e._zod.check=t=>{t.value.includes(r.includes,r.position)||t.issues.push({origin:"string",code:"invalid_format",format:"includes",includes:r.includes,input:t.value,inst:e,continue:!r.abort})}}),df=_("$ZodCheckStartsWith",(e,r)=>{ce.init(e,r);let n=new RegExp(`^${vr(r.prefix)}.*`);r.pattern??(r.pattern=n),e._zod.check=i=>{i.value.startsWith(r.prefix)||i.issues.push({origin:"string",code:"invalid_format",format:"starts_with",prefix:r.prefix,input:i.value,inst:e,continue:!r.abort})}}),ff=_("$ZodCheckEndsWith",(e,r)=>{ce.init(e,r);let n=new RegExp(`.*${vr(r.suffix)}$`);r.pattern??(r.pattern=n),e._zod.check=i=>{i.value.endsWith(r.suffix)||i.issues.push({origin:"string",code:"invalid_format",format:"ends_with",suffix:r.suffix,input:i.value,inst:e,continue:!r.abort})}});function bs(e,r,n){e.issues.length&&r.issues.push(...ir(n,e.issues))}var mf=_("$ZodCheckProperty",(e,r)=>{ce.init(e,r),e._zod.check=n=>{let i=r.schema._zod.run({value:n.value[r.property],issues:[]},{});if(i instanceof Promise)return i.then(t=>bs(t,n,r.property));bs(i,n,r.property)}}),pf=_("$ZodCheckProperties",(e,r)=>{ce.init(e,r),wo(e,Symbol.iterator,function*(){yield e});let n;e._zod.check=i=>{if(i.value==null){i.issues.push({expected:"object",code:"invalid_type",input:i.value,inst:e});return}n??(n=Reflect.ownKeys(r.shape).map(a=>[a,r.shape[a]]));let t=i.value,o;for(let[a,s]of n){let u=s._zod.run({value:t[a],issues:[]},{});u instanceof Promise?(o??(o=[]),o.push(u.then(c=>bs(c,i,a)))):bs(u,i,a)}if(o)return Promise.all(o).then(()=>{})}}),vf=_("$ZodCheckMimeType",(e,r)=>{ce.init(e,r);let n=new Set(r.mime);e._zod.check=i=>{n.has(i.value.type)||i.issues.push({code:"invalid_value",values:r.mime,input:i.value.type,inst:e,continue:!r.abort})}}),gf=_("$ZodCheckOverwrite",(e,r)=>{ce.init(e,r),e._zod.check=n=>{n.value=r.tx(n.value)}});var dn=class{constructor(r=[],n={}){this.content=[],this.indent=0,this.args=r,this.closed=n}indented(r){this.indent+=1;try{r(this)}finally{this.indent-=1}}write(r){if(typeof r=="function"){r(this,{execution:"sync"}),r(this,{execution:"async"});return}let i=r.split(`
`).filter(a=>a),t=Math.min(...i.map(a=>a.length-a.trimStart().length)),o=i.map(a=>a.slice(t)).map(a=>" ".repeat(this.indent*2)+a);for(let a of o)this.content.push(a)}compile(){let r=Function,n=this?.content??[""];return new r(...Object.keys(this.closed),`return function (${this.args.join(", ")}) {
${n.join(`
`)}
};`)(...Object.values(this.closed))}};var hf={major:4,minor:6,patch:7};var Z=_("$ZodType",(e,r)=>{var n;e??(e={}),e._zod.def=r,e._zod.bag=e._zod.bag||{},e._zod.version=hf;let i=e._zod.def.checks,t=e._zod.traits.has("$ZodCheck")?[e,...i??[]]:i?.length?[...i]:[];for(let o of t)for(let a of o._zod.onattach)a(e);if(t.length===0)(n=e._zod).deferred??(n.deferred=[]),e._zod.deferred?.push(()=>{e._zod.run=e._zod.parse});else{let o=(s,u,c)=>{if(s.memo)return s;let l=Ye(s),d;for(let f of u){if(f._zod.def.when){if(nd(s)||!f._zod.def.when(s))continue}else if(l)continue;let m=s.issues.length,g=f._zod.check(s);if(g instanceof Promise&&c?.async===!1)throw new ar;if(d||g instanceof Promise)d=(d??Promise.resolve()).then(async()=>{await g,s.issues.length!==m&&(bo(s.issues,m,e),l||(l=Ye(s,m)))});else{if(s.issues.length===m)continue;bo(s.issues,m,e),l||(l=Ye(s,m))}}return d?d.then(()=>s):s},a=(s,u,c)=>{if(Ye(s))return s.aborted=!0,s;let l=o(u,t,c);if(l instanceof Promise){if(c.async===!1)throw new ar;return l.then(d=>e._zod.parse(d,c))}return e._zod.parse(l,c)};e._zod.run=(s,u)=>{if(u.skipChecks)return e._zod.parse(s,u);if(u.direction==="backward"){let l=e._zod.parse({value:s.value,issues:[]},{...u,skipChecks:!0});return l instanceof Promise?l.then(d=>a(d,s,u)):a(l,s,u)}let c=e._zod.parse(s,u);if(c instanceof Promise){if(u.async===!1)throw new ar;return c.then(l=>o(l,t,u))}return o(c,t,u)}}},{get"~standard"(){return wo(this,"~standard",Os(this))},set"~standard"(e){wt(this,"~standard",e)}}),ly=(e,r)=>e.issues.length?{issues:e.issues.map(n=>or(n,r,Oe()))}:{value:e.value};async function CC(e,r){let n={async:!0};return ly(await e._zod.run({value:r,issues:[]},n),n)}function Os(e){return{validate:r=>{let n={async:!1};try{let i=e._zod.run({value:r,issues:[]},n);if(!(i instanceof Promise))return ly(i,n)}catch{}return CC(e,r)},vendor:"zod",version:1}}var fn=_("$ZodString",(e,r)=>{Z.init(e,r),e._zod.pattern=r.pattern??Fd,e._zod.parse=(n,i)=>{if(r.coerce)try{n.value=String(n.value)}catch{}return typeof n.value=="string"||n.issues.push({expected:"string",code:"invalid_type",input:n.value,inst:e}),n}}),te=_("$ZodStringFormat",(e,r)=>{oi.init(e,r),fn.init(e,r)}),bf=_("$ZodGUID",(e,r)=>{r.pattern??(r.pattern=Sd),te.init(e,r)}),$f=_("$ZodUUID",(e,r)=>{if(r.version){let i={v1:1,v2:2,v3:3,v4:4,v5:5,v6:6,v7:7,v8:8}[r.version];if(i===void 0)throw new Error(`Invalid UUID version: "${r.version}"`);r.pattern??(r.pattern=ln(i))}else r.pattern??(r.pattern=ln());te.init(e,r)}),_f=_("$ZodEmail",(e,r)=>{r.pattern??(r.pattern=Id),te.init(e,r)}),wf=1,Eo=2;function Sf(e){try{return typeof URL<"u"&&typeof URL.canParse=="function"?URL.canParse(e):(new URL(e),!0)}catch{return!1}}function Ns(e,r){return!("normalize"in r)&&!("hostname"in r)&&!("protocol"in r)?Sf(e)||Eo:dy(e,r)}function dy(e,r){if(!r.normalize&&r.protocol?.source===No.source&&!/^https?:\/\//i.test(e))return wf;try{if(typeof URL<"u"){let n=URL;if(typeof n.parse=="function")return n.parse(e)??Eo}return new URL(e)}catch{return Eo}}var RC=/[\t\n\r]/g;function Do(e){return e.replace(RC,"")}function Ps(e,r){return r.lastIndex=0,r.test(e.hostname)}function xs(e,r){return r.lastIndex=0,r.test(e.protocol.endsWith(":")?e.protocol.slice(0,-1):e.protocol)}var If=_("$ZodURL",(e,r)=>{te.init(e,r),e._zod.check=n=>{try{let i=n.value.trim(),t=Ns(i,r);if(t===wf){n.issues.push({code:"invalid_format",format:"url",note:"Invalid URL format",input:n.value,inst:e,continue:!r.abort});return}if(t===Eo){n.issues.push({code:"invalid_format",format:"url",input:n.value,inst:e,continue:!r.abort});return}if(t===!0){n.value=Do(i);return}r.hostname&&!Ps(t,r.hostname)&&n.issues.push({code:"invalid_format",format:"url",note:"Invalid hostname",pattern:r.hostname.source,input:n.value,inst:e,continue:!r.abort}),r.protocol&&!xs(t,r.protocol)&&n.issues.push({code:"invalid_format",format:"url",note:"Invalid protocol",pattern:r.protocol.source,input:n.value,inst:e,continue:!r.abort}),n.value=r.normalize?t.href:Do(i);return}catch{n.issues.push({code:"invalid_format",format:"url",input:n.value,inst:e,continue:!r.abort})}}}),kf=_("$ZodEmoji",(e,r)=>{r.pattern??(r.pattern=kd()),te.init(e,r)}),Of=_("$ZodNanoID",(e,r)=>{if(r.length!==void 0&&(!Number.isInteger(r.length)||r.length<1))throw new Error(`Invalid nanoid length: ${r.length}`);r.pattern??(r.pattern=r.length===void 0?$d:_d(r.length)),te.init(e,r)}),Nf=_("$ZodCUID",(e,r)=>{r.pattern??(r.pattern=vd),te.init(e,r)}),Pf=_("$ZodCUID2",(e,r)=>{r.pattern??(r.pattern=gd),te.init(e,r)}),xf=_("$ZodULID",(e,r)=>{r.pattern??(r.pattern=hd),te.init(e,r)}),Af=_("$ZodXID",(e,r)=>{r.pattern??(r.pattern=yd),te.init(e,r)}),Ef=_("$ZodKSUID",(e,r)=>{r.pattern??(r.pattern=bd),te.init(e,r)}),Df=_("$ZodISODateTime",(e,r)=>{r.pattern??(r.pattern=Ud(r)),te.init(e,r)}),zf=_("$ZodISODate",(e,r)=>{r.pattern??(r.pattern=Cd),te.init(e,r)}),qf=_("$ZodISOTime",(e,r)=>{r.pattern??(r.pattern=Rd(r)),te.init(e,r)}),Tf=_("$ZodISODuration",(e,r)=>{r.pattern??(r.pattern=wd),te.init(e,r)}),jf=_("$ZodIPv4",(e,r)=>{r.pattern??(r.pattern=Od),te.init(e,r)}),UC=/^[0-9a-fA-F:.]+$/;function zo(e){return UC.test(e)?Sf(`http://[${e}]`):!1}var Cf=_("$ZodIPv6",(e,r)=>{r.pattern??(r.pattern=Nd),te.init(e,r),e._zod.check=n=>{zo(n.value)||n.issues.push({code:"invalid_format",format:"ipv6",input:n.value,inst:e,continue:!r.abort})}}),Rf=_("$ZodMAC",(e,r)=>{r.pattern??(r.pattern=Pd(r.delimiter)),te.init(e,r)}),Uf=_("$ZodCIDRv4",(e,r)=>{r.pattern??(r.pattern=xd),te.init(e,r)});function As(e){let r=e.split("/");if(r.length!==2)return!1;let[n,i]=r;if(!i)return!1;let t=Number(i);return`${t}`!==i||t<0||t>128?!1:zo(n)}var Ff=_("$ZodCIDRv6",(e,r)=>{r.pattern??(r.pattern=Ad),te.init(e,r),e._zod.check=n=>{As(n.value)||n.issues.push({code:"invalid_format",format:"cidrv6",input:n.value,inst:e,continue:!r.abort})}});function qo(e){if(e==="")return!0;if(/\s/.test(e)||e.length%4!==0)return!1;try{return atob(e),!0}catch{return!1}}var Es=/^[0-9a-zA-Z+/]*={0,2}$/,Mf=_("$ZodBase64",(e,r)=>{r.pattern??(r.pattern=Es),te.init(e,r),e._zod.check=n=>{qo(n.value)||n.issues.push({code:"invalid_format",format:"base64",input:n.value,inst:e,continue:!r.abort})}}),To=/^[A-Za-z0-9_-]*$/;function Ds(e){if(!To.test(e))return!1;let r=e.replace(/[-_]/g,i=>i==="-"?"+":"/"),n=r.padEnd(Math.ceil(r.length/4)*4,"=");return qo(n)}var Lf=_("$ZodBase64URL",(e,r)=>{r.pattern??(r.pattern=To),te.init(e,r),e._zod.check=n=>{Ds(n.value)||n.issues.push({code:"invalid_format",format:"base64url",input:n.value,inst:e,continue:!r.abort})}}),Zf=_("$ZodE164",(e,r)=>{r.pattern??(r.pattern=Td),te.init(e,r)}),FC=/[- ]/g;function MC(e){let r=e.length,n=1,i=0;for(;r;){let t=e.charCodeAt(--r)-48;n^=1,i+=n?[0,2,4,6,8,1,3,5,7,9][t]:t}return i%10===0}function zs(e){return gs.test(e)?MC(e.replace(FC,"")):!1}var Vf=_("$ZodCreditCard",(e,r)=>{r.pattern??(r.pattern=gs),te.init(e,r),e._zod.check=n=>{zs(n.value)||n.issues.push({code:"invalid_format",format:"credit_card",input:n.value,inst:e,continue:!r.abort})}});function LC(e){let r=0,n=e.length;for(let i=4;i<n;i++){let t=e.charCodeAt(i);r=(t>=65?r*100+(t-55):r*10+(t-48))%97}for(let i=0;i<4;i++){let t=e.charCodeAt(i);r=(t>=65?r*100+(t-55):r*10+(t-48))%97}return r===1}function qs(e){return hs.test(e)?LC(e):!1}var Bf=_("$ZodIBAN",(e,r)=>{r.pattern??(r.pattern=hs),te.init(e,r),e._zod.check=n=>{qs(n.value)||n.issues.push({code:"invalid_format",format:"iban",input:n.value,inst:e,continue:!r.abort})}});function Ts(e,r=null){try{let n=e.split(".");if(n.length!==3)return!1;let[i]=n;if(!i)return!1;let t=JSON.parse(atob(i));return!("typ"in t&&t?.typ!=="JWT"||!t.alg||r&&(!("alg"in t)||t.alg!==r))}catch{return!1}}var Wf=_("$ZodJWT",(e,r)=>{te.init(e,r),e._zod.check=n=>{Ts(n.value,r.alg)||n.issues.push({code:"invalid_format",format:"jwt",input:n.value,inst:e,continue:!r.abort})}}),Gf=_("$ZodCustomStringFormat",(e,r)=>{te.init(e,r),e._zod.check=n=>{r.fn(n.value)||n.issues.push({code:"invalid_format",format:r.format,input:n.value,inst:e,continue:!r.abort})}}),js=_("$ZodNumber",(e,r)=>{Z.init(e,r),e._zod.pattern=nt,e._zod.parse=(n,i)=>{if(r.coerce)try{n.value=Number(n.value)}catch{}let t=n.value;if(typeof t=="number"&&!Number.isNaN(t)&&Number.isFinite(t))return n;let o=typeof t=="number"?Number.isNaN(t)?"NaN":Number.isFinite(t)?void 0:String(t):void 0;return n.issues.push({expected:"number",code:"invalid_type",input:t,inst:e,...o?{received:o}:{}}),n}}),Hf=_("$ZodNumberFormat",(e,r)=>{Qd.init(e,r),js.init(e,r)}),jo=_("$ZodBoolean",(e,r)=>{Z.init(e,r),e._zod.pattern=Zd,e._zod.parse=(n,i)=>{if(r.coerce)try{n.value=!!n.value}catch{}let t=n.value;return typeof t=="boolean"||n.issues.push({expected:"boolean",code:"invalid_type",input:t,inst:e}),n}}),Cs=_("$ZodBigInt",(e,r)=>{Z.init(e,r),e._zod.pattern=Ld,e._zod.parse=(n,i)=>{if(r.coerce)try{n.value=BigInt(n.value)}catch{}return typeof n.value=="bigint"||n.issues.push({expected:"bigint",code:"invalid_type",input:n.value,inst:e}),n}}),Kf=_("$ZodBigIntFormat",(e,r)=>{Yd.init(e,r),Cs.init(e,r)}),Jf=_("$ZodSymbol",(e,r)=>{Z.init(e,r),e._zod.parse=(n,i)=>{let t=n.value;return typeof t=="symbol"||n.issues.push({expected:"symbol",code:"invalid_type",input:t,inst:e}),n}}),Xf=_("$ZodUndefined",(e,r)=>{Z.init(e,r),e._zod.pattern=Bd,e._zod.values=new Set([void 0]),e._zod.parse=(n,i)=>{let t=n.value;return typeof t>"u"||n.issues.push({expected:"undefined",code:"invalid_type",input:t,inst:e}),n}}),Qf=_("$ZodNull",(e,r)=>{Z.init(e,r),e._zod.pattern=Vd,e._zod.values=new Set([null]),e._zod.parse=(n,i)=>{let t=n.value;return t===null||n.issues.push({expected:"null",code:"invalid_type",input:t,inst:e}),n}}),Yf=_("$ZodAny",(e,r)=>{Z.init(e,r),e._zod.parse=n=>n}),em=_("$ZodUnknown",(e,r)=>{Z.init(e,r),e._zod.parse=n=>n}),rm=_("$ZodNever",(e,r)=>{Z.init(e,r),e._zod.parse=(n,i)=>(n.issues.push({expected:"never",code:"invalid_type",input:n.value,inst:e}),n)}),tm=_("$ZodVoid",(e,r)=>{Z.init(e,r),e._zod.parse=(n,i)=>{let t=n.value;return typeof t>"u"||n.issues.push({expected:"void",code:"invalid_type",input:t,inst:e}),n}}),nm=_("$ZodDate",(e,r)=>{Z.init(e,r),e._zod.parse=(n,i)=>{if(r.coerce)try{n.value=new Date(n.value)}catch{}let t=n.value,o=t instanceof Date;return o&&!Number.isNaN(t.getTime())||n.issues.push({expected:"date",code:"invalid_type",input:t,...o?{received:"Invalid Date"}:{},inst:e}),n}});function im(e,r){let n=Yn(e._zod.def.checks);if(!n.length)return;let i=Math.min(...n.map(o=>o[0])),t=e._zod.parse;e._zod.parse=(o,a)=>{let s=r(o.value);if(s>i&&!a?.skipChecks&&a?.direction!=="backward"){for(let[u,c]of Yn(e._zod.def.checks))if(s>u&&c._zod.def.when(o)){let l=o.issues.length;return c._zod.check(o),o.issues[l].continue=!1,bo(o.issues,l,e),o}}return t(o,a)}}var ZC=e=>Array.isArray(e)?e.length:-1,VC=e=>e instanceof Map?e.size:-1,BC=e=>e instanceof Set?e.size:-1;function Kh(e,r,n){e.issues.length&&r.issues.push(...ir(n,e.issues)),r.value[n]=e.value}var om=_("$ZodArray",(e,r)=>{Z.init(e,r);let n=je.memoizer;n?.attach(e),e._zod.parse=(i,t)=>{let o=i.value;if(!Array.isArray(o))return i.issues.push({expected:"array",code:"invalid_type",input:o,inst:e}),i;i.value=n?n.alloc(e,i,Array(o.length),t):Array(o.length);let a=[],s=t?.abortEarly;for(let u=0;u<o.length;u++){let c=o[u],l=r.element._zod.run({value:c,issues:[]},t);if(l instanceof Promise)a.push(l.then(d=>Kh(d,i,u)));else if(Kh(l,i,u),s&&l.issues.length!==0&&Ye(l))break}return a.length?Promise.all(a).then(()=>i):i},im(e,ZC)});function ks(e,r,n,i,t,o){let a=n in i,s=o==="optional";if(!(!a&&s&&t==="optional")){if(e.issues.length){if(t!==void 0&&s&&!a)return;r.issues.push(...ir(n,e.issues))}if(!a&&t===void 0){e.issues.length||r.issues.push({code:"invalid_type",expected:"nonoptional",input:void 0,path:[n]});return}e.value===void 0?(a||t==="defaulted"&&!s)&&(r.value[n]=void 0):r.value[n]=e.value}}var WC=[];function fy(e){let r=Object.keys(e.shape),n=Object.getOwnPropertySymbols(e.shape),i=n.length?n:WC,t=i.length?[...r,...i]:r;for(let a of t)if(!e.shape?.[a]?._zod?.traits?.has("$ZodType"))throw new Error(`Invalid element at key "${String(a)}": expected a Zod schema`);let o=td(e.shape);return{...e,allKeys:t,symbolKeys:i,keySet:new Set(r),numKeys:r.length,optionalKeys:new Set(o)}}function my(e,r,n,i,t,o,a){let s=[],u=t.keySet,c=t.catchall._zod,l=c.def.type,d=c.optin,f=c.optout,m=0;for(let g in r){if(a&&n.issues.length!==m){if(Ye(n,m))break;m=n.issues.length}if(u.has(g))continue;if(g==="__proto__"){l==="never"&&s.push(g);continue}if(l==="never"){s.push(g);continue}let h=c.run({value:r[g],issues:[]},i);h instanceof Promise?e.push(h.then(b=>ks(b,n,g,r,d,f))):ks(h,n,g,r,d,f)}return s.length&&n.issues.push({code:"unrecognized_keys",keys:s,input:r,inst:o,continue:!0}),e.length?Promise.all(e).then(()=>n):n}var py=_("$ZodObject",(e,r)=>{Z.init(e,r);let n=Object.getOwnPropertyDescriptor(r,"shape"),i=n?.get?n.get.raw:r.shape??{};if(i){let c=()=>{let l={...i};return Object.defineProperty(r,"shape",{value:l}),c.raw=l,l};c.raw=i,Object.defineProperty(r,"shape",{get:c})}let t=Xn(()=>fy(r));H(e,"propValues",c=>{let l=c.def.shape,d={};for(let f in l){let m=l[f]._zod;if(m.values){Object.prototype.hasOwnProperty.call(d,f)||Fe(d,f,new Set);for(let g of m.values)d[f].add(g);m.optin!==void 0&&d[f].add(void 0)}}return d});let o=un,a=r.catchall,s,u=je.memoizer;u?.attach(e),e._zod.parse=(c,l)=>{s??(s=t.value);let d=c.value;if(!o(d))return c.issues.push({expected:"object",code:"invalid_type",input:d,inst:e}),c;c.value=u?u.alloc(e,c,{},l):{};let f=[],m=s.shape,g=l?.abortEarly,h=c.issues.length;for(let b of s.allKeys){if(g&&c.issues.length!==h){if(Ye(c,h))break;h=c.issues.length}if(b==="__proto__")continue;let y=m[b],S=y._zod.optin,$=y._zod.optout,N=y._zod.run({value:d[b],issues:[]},l);N instanceof Promise?f.push(N.then(P=>ks(P,c,b,d,S,$))):ks(N,c,b,d,S,$)}return a?my(f,d,c,l,t.value,e,g===!0):f.length?Promise.all(f).then(()=>c):c}}),am=_("$ZodObjectJIT",(e,r)=>{py.init(e,r);let n=e._zod.parse,i=Xn(()=>fy(r)),t=je.memoizer,o=m=>{let g=i.value,h=g.symbolKeys,b=new dn(["payload","ctx"],{shape:m,inst:e,memo:t,syms:h}),y=P=>`shape[${P}]._zod.run({ value: input[${P}], issues: [] }, ctx)`,S=(P,A)=>`
          let ${P}_ab = false;
          for (let i = 0; i < ${P}.issues.length; i++) {
            const iss = ${P}.issues[i];
            iss.path = iss.path ? [${A}, ...iss.path] : [${A}];
            payload.issues.push(iss);
            if (iss.continue !== true) ${P}_ab = true;
          }
          if (${P}_ab && ctx && ctx.abortEarly) {
            payload.value = newResult;
            return payload;
          }`;b.write("const input = payload.value;");let $=Object.create(null),N=0;for(let P of g.allKeys)$[P]=`key_${N++}`;b.write(t?"const newResult = memo.alloc(inst, payload, {}, ctx);":"const newResult = {};");for(let P of g.allKeys){if(P==="__proto__")continue;let A=$[P],E=typeof P=="symbol"?`syms[${h.indexOf(P)}]`:Qe(P),U=`${E} in input`,K=m[P],de=K?._zod?.optin,ae=de!==void 0,me=K?._zod?.optout==="optional";if(b.write(`const ${A} = ${y(E)};`),ae&&me){let Ie=de==="optional"?`${A}_present`:`${A}.value !== undefined || ${A}_present`;b.write(`
        const ${A}_present = ${U};
        if (!${A}.issues.length || ${A}_present) {
          if (${A}.issues.length) {${S(A,E)}
          }

          if (${Ie}) {
            newResult[${E}] = ${A}.value;
          }
        }

      `)}else ae?(b.write(`
        if (${A}.issues.length) {${S(A,E)}
        }
      `),de==="defaulted"?b.write(`newResult[${E}] = ${A}.value;`):b.write(`
        if (${A}.value !== undefined || ${U}) {
          newResult[${E}] = ${A}.value;
        }
      `)):b.write(`
        const ${A}_present = ${U};
        if (${A}.issues.length) {${S(A,E)}
        }
        if (!${A}_present && !${A}.issues.length) {
          payload.issues.push({
            code: "invalid_type",
            expected: "nonoptional",
            input: undefined,
            path: [${E}]
          });
          if (ctx && ctx.abortEarly) {
            payload.value = newResult;
            return payload;
          }
        }

        if (${A}_present) {
          newResult[${E}] = ${A}.value;
        }

      `)}return b.write("payload.value = newResult;"),b.write("return payload;"),b.compile()},a,s=un,u=!je.jitless,l=u&&ed.value,d=r.catchall,f;e._zod.parse=(m,g)=>{f??(f=i.value);let h=m.value;return s(h)?u&&l&&g?.async===!1&&g.jitless!==!0?(a||(a=o(r.shape)),m=a(m,g),d?my([],h,m,g,f,e,g?.abortEarly===!0):m):n(m,g):(m.issues.push({expected:"object",code:"invalid_type",input:h,inst:e}),m)}});function Jh(e,r,n,i){for(let o of e)if(o.issues.length===0)return r.value=o.value,r;let t=e.filter(o=>!Ye(o));return t.length===1?(r.value=t[0].value,t[0]):(r.issues.push({code:"invalid_union",input:r.value,inst:n,errors:e.map(o=>o.issues.map(a=>or(a,i,Oe())))}),r)}var Co=_("$ZodUnion",(e,r)=>{Z.init(e,r),H(e,"optin",i=>i.def.options.some(t=>t._zod.optin==="defaulted")?"defaulted":i.def.options.some(t=>t._zod.optin!==void 0)?"optional":void 0),H(e,"optout",i=>i.def.options.some(t=>t._zod.optout==="optional")?"optional":void 0),H(e,"values",i=>{if(i.def.options.every(t=>t._zod.values))return new Set(i.def.options.flatMap(t=>Array.from(t._zod.values)))}),H(e,"pattern",i=>{if(i.def.options.every(t=>t._zod.pattern)){let t=i.def.options.map(o=>o._zod.pattern);return new RegExp(`^(${t.map(o=>tt(o.source)).join("|")})$`)}});let n=r.options.length===1?r.options[0]._zod.run:null;e._zod.parse=(i,t)=>{if(n)return n(i,t);let o=!1,a=[];for(let s of r.options){let u=s._zod.run({value:i.value,issues:[]},t);if(u instanceof Promise)a.push(u),o=!0;else{if(u.issues.length===0)return u;a.push(u)}}return o?Promise.all(a).then(s=>Jh(s,i,e,t)):Jh(a,i,e,t)}});function Xh(e,r,n,i){let t=[];for(let o=0;o<e.length;o++)e[o].issues.length===0&&t.push(o);return t.length===1?(r.value=e[t[0]].value,r):(t.length===0?r.issues.push({code:"invalid_union",input:r.value,inst:n,errors:e.map(o=>o.issues.map(a=>or(a,i,Oe())))}):r.issues.push({code:"invalid_union",input:r.value,inst:n,errors:[],inclusive:!1,matches:t}),r)}var sm=_("$ZodXor",(e,r)=>{Co.init(e,r),r.inclusive=!1;let n=r.options.length===1?r.options[0]._zod.run:null;e._zod.parse=(i,t)=>{if(n)return n(i,t);let o=!1,a=[];for(let s of r.options){let u=s._zod.run({value:i.value,issues:[]},t);u instanceof Promise?(a.push(u),o=!0):a.push(u)}return o?Promise.all(a).then(s=>Xh(s,i,e,t)):Xh(a,i,e,t)}});function um(e,r){let n=e._zod,i=n.bag.optionsMap;i||(i=vy(n.def),n.bag.optionsMap=i);let t=i.get(r);if(t===null)throw new Error(`Ambiguous discriminator value "${String(r)}"`);return t}function vy(e){let r=new Map;for(let n of e.options){let i=n._zod.propValues?.[e.discriminator];if(!i||i.size===0)throw new Error(`Invalid discriminated union option at index "${e.options.indexOf(n)}"`);for(let t of i)if(r.has(t)){if(t!==void 0)throw new Error(`Duplicate discriminator value "${String(t)}"`);r.set(t,null)}else r.set(t,n)}return r}var cm=_("$ZodDiscriminatedUnion",(e,r)=>{r.inclusive=!1,Co.init(e,r);let n=e._zod.parse;H(e,"propValues",t=>{let o={},a=0;for(let s of t.def.options){let u=s._zod.propValues;if(!u||Object.keys(u).length===0)throw new Error(`Invalid discriminated union option at index "${t.def.options.indexOf(s)}"`);u[t.def.discriminator]?.has(void 0)&&a++;for(let[c,l]of Object.entries(u)){Object.prototype.hasOwnProperty.call(o,c)||Fe(o,c,new Set);for(let d of l)o[c].add(d)}}return!t.def.unionFallback&&a>1&&o[t.def.discriminator]?.delete(void 0),o}),r.options.forEach((t,o)=>{let a=Qn(t._zod.def);if(a&&!Object.prototype.hasOwnProperty.call(a,r.discriminator))throw new Error(`Invalid discriminated union option at index "${o}"`)});let i=Xn(()=>vy(r));e._zod.parse=(t,o)=>{let a=t.value;if(!un(a))return t.issues.push({code:"invalid_type",expected:"object",input:a,inst:e}),t;let s=a?.[r.discriminator],u=i.value.get(s);return u&&(s!==void 0||o.direction!=="backward")?u._zod.run(t,o):r.unionFallback||o.direction==="backward"?n(t,o):(t.issues.push({code:"invalid_union",errors:[],note:"No matching discriminator",discriminator:r.discriminator,options:Array.from(i.value.keys()).filter(c=>i.value.get(c)!==null),input:a,path:[r.discriminator],inst:e}),t)}}),lm=_("$ZodIntersection",(e,r)=>{Z.init(e,r),e._zod.parse=(n,i)=>{let t=n.value,o=r.left._zod.run({value:t,issues:[]},i),a=r.right._zod.run({value:t,issues:[]},i);return o instanceof Promise||a instanceof Promise?Promise.all([o,a]).then(([u,c])=>Qh(n,u,c)):Qh(n,o,a)}});function ai(e,r){if(e===r)return{valid:!0,data:e};if(e instanceof Date&&r instanceof Date&&+e==+r)return{valid:!0,data:e};if(pr(e)&&pr(r)){let n=Object.keys(r),i=Object.keys(e).filter(o=>n.indexOf(o)!==-1),t={...e,...r};Object.prototype.hasOwnProperty.call(t,"__proto__")&&delete t.__proto__;for(let o of i){if(o==="__proto__")continue;let a=ai(e[o],r[o]);if(!a.valid)return{valid:!1,mergeErrorPath:[o,...a.mergeErrorPath]};t[o]=a.data}return{valid:!0,data:t}}if(Array.isArray(e)&&Array.isArray(r)){if(e.length!==r.length)return{valid:!1,mergeErrorPath:[]};let n=[];for(let i=0;i<e.length;i++){let t=e[i],o=r[i],a=ai(t,o);if(!a.valid)return{valid:!1,mergeErrorPath:[i,...a.mergeErrorPath]};n.push(a.data)}return{valid:!0,data:n}}return{valid:!1,mergeErrorPath:[]}}function Qh(e,r,n){let i=new Map,t,o=new Map,a=(c,l)=>{let d;if(c.code==="unrecognized_keys"&&!c.path?.length)t??(t=c),d=c.keys;else if(c.code==="invalid_key"&&c.origin==="record"&&c.path?.length===1){let f=String(c.path[0]);o.has(f)||o.set(f,c),d=[f]}else return!1;for(let f of d)i.has(f)||i.set(f,{}),i.get(f)[l]=!0;return!0};for(let c of r.issues)a(c,"l")||e.issues.push(c);for(let c of n.issues)a(c,"r")||e.issues.push(c);let s=[...i].filter(([,c])=>c.l&&c.r).map(([c])=>c);if(s.length){let c=t?s.filter(l=>t.keys.includes(l)):[];c.length&&e.issues.push({...t,keys:c});for(let l of s)!c.includes(l)&&o.has(l)&&e.issues.push(o.get(l))}let u=ai(r.value,n.value);if(!u.valid){if(Ye(e))return e;throw new Error(`Unmergable intersection. Error path: ${JSON.stringify(u.mergeErrorPath)}`)}return e.value=u.data,e}var Rs=_("$ZodTuple",(e,r)=>{Z.init(e,r);let n=r.items,i=je.memoizer;i?.attach(e),e._zod.parse=(t,o)=>{let a=t.value;if(!Array.isArray(a))return t.issues.push({input:a,inst:e,expected:"tuple",code:"invalid_type"}),t;t.value=i?i.alloc(e,t,[],o):[];let s=[],u=Yh(n,"optin"),c=Yh(n,"optout");if(!r.rest){if(a.length<u)return t.issues.push({code:"too_small",minimum:u,inclusive:!0,input:a,inst:e,origin:"array"}),t;a.length>n.length&&t.issues.push({code:"too_big",maximum:n.length,inclusive:!0,input:a,inst:e,origin:"array"})}let l=new Array(n.length),d=r.rest?o?.abortEarly:void 0,f=!1;for(let m=0;m<n.length;m++){let g=n[m]._zod.run({value:a[m],issues:[]},o);g instanceof Promise?s.push(g.then(h=>{l[m]=h})):(l[m]=g,d&&!f&&g.issues.length&&(f=Ye(g)))}if(r.rest&&!f){let m=n.length-1,g=a.slice(n.length),h=t.issues.length;for(let b of g){if(d&&t.issues.length!==h){if(Ye(t,h))break;h=t.issues.length}m++;let y=r.rest._zod.run({value:b,issues:[]},o);y instanceof Promise?s.push(y.then(S=>ey(S,t,m))):ey(y,t,m)}}return s.length?Promise.all(s).then(()=>ry(l,t,n,a,c)):ry(l,t,n,a,c)}});function Yh(e,r){for(let n=e.length-1;n>=0;n--)if(!(r==="optin"?e[n]._zod.optin!==void 0:e[n]._zod.optout==="optional"))return n+1;return 0}function ey(e,r,n){e.issues.length&&r.issues.push(...ir(n,e.issues)),r.value[n]=e.value}function ry(e,r,n,i,t){for(let o=0;o<n.length;o++){let a=e[o],s=o<i.length;if(!s&&o>=t&&n[o]._zod.optin==="optional"){r.value.length=o;break}if(a.issues.length){if(!s&&o>=t){r.value.length=o;break}r.issues.push(...ir(o,a.issues))}r.value[o]=a.value}for(let o=r.value.length-1;o>=i.length&&(n[o]._zod.optout==="optional"&&r.value[o]===void 0);o--)r.value.length=o;return r}var dm=_("$ZodRecord",(e,r)=>{Z.init(e,r);let n=je.memoizer;n?.attach(e),e._zod.parse=(i,t)=>{let o=i.value;if(!pr(o))return i.issues.push({expected:"record",code:"invalid_type",input:o,inst:e}),i;let a=[],s=r.keyType._zod.values;if(s&&!r.partial){i.value=n?n.alloc(e,i,{},t):{};let u=new Set;for(let l of s)if(typeof l=="string"||typeof l=="number"||typeof l=="symbol"){if(u.add(typeof l=="number"?l.toString():l),l==="__proto__")continue;let d=r.keyType._zod.run({value:l,issues:[]},t);if(d instanceof Promise)throw new Error("Async schemas not supported in object keys currently");if(d.issues.length){i.issues.push({code:"invalid_key",origin:"record",issues:d.issues.map(g=>or(g,t,Oe())),input:l,path:[l],inst:e});continue}let f=d.value;if(f==="__proto__")continue;let m=r.valueType._zod.run({value:o[l],issues:[]},t);m instanceof Promise?a.push(m.then(g=>{g.issues.length&&i.issues.push(...ir(l,g.issues)),i.value[f]=g.value})):(m.issues.length&&i.issues.push(...ir(l,m.issues)),i.value[f]=m.value)}let c;for(let l in o)if(!u.has(l))if(r.mode==="loose"){if(l==="__proto__")continue;i.value[l]=o[l]}else c=c??[],c.push(l);c&&c.length>0&&i.issues.push({code:"unrecognized_keys",input:o,inst:e,keys:c,continue:!0})}else{i.value=n?n.alloc(e,i,{},t):{};let u;for(let c of Reflect.ownKeys(o)){if(c==="__proto__"||!Object.prototype.propertyIsEnumerable.call(o,c))continue;let l=r.keyType._zod.run({value:c,issues:[]},t);if(l instanceof Promise)throw new Error("Async schemas not supported in object keys currently");if(typeof c=="string"&&nt.test(c)&&l.issues.length){let g=r.keyType._zod.run({value:Number(c),issues:[]},t);if(g instanceof Promise)throw new Error("Async schemas not supported in object keys currently");g.issues.length===0&&(l=g)}if(l.issues.length){r.mode==="loose"?i.value[c]=o[c]:s?(u=u??[],u.push(c)):i.issues.push({code:"invalid_key",origin:"record",issues:l.issues.map(g=>or(g,t,Oe())),input:c,path:[c],inst:e});continue}let f=l.value;if(f==="__proto__")continue;let m=r.valueType._zod.run({value:o[c],issues:[]},t);m instanceof Promise?a.push(m.then(g=>{g.issues.length&&i.issues.push(...ir(c,g.issues)),i.value[f]=g.value})):(m.issues.length&&i.issues.push(...ir(c,m.issues)),i.value[f]=m.value)}u&&u.length>0&&i.issues.push({code:"unrecognized_keys",input:o,inst:e,keys:u,continue:!0})}return a.length?Promise.all(a).then(()=>i):i}}),fm=_("$ZodMap",(e,r)=>{Z.init(e,r);let n=je.memoizer;n?.attach(e),e._zod.parse=(i,t)=>{let o=i.value;if(!(o instanceof Map))return i.issues.push({expected:"map",code:"invalid_type",input:o,inst:e}),i;let a=[];i.value=n?n.alloc(e,i,new Map,t):new Map;let s=t?.abortEarly,u=i.issues.length;for(let[c,l]of o){if(s&&i.issues.length!==u){if(Ye(i,u))break;u=i.issues.length}let d=r.keyType._zod.run({value:c,issues:[]},t),f=r.valueType._zod.run({value:l,issues:[]},t);d instanceof Promise||f instanceof Promise?a.push(Promise.all([d,f]).then(([m,g])=>{ty(m,g,i,c,o,e,t)})):ty(d,f,i,c,o,e,t)}return a.length?Promise.all(a).then(()=>i):i},im(e,VC)});function ty(e,r,n,i,t,o,a){e.issues.length&&(go.has(typeof i)?n.issues.push(...ir(i,e.issues)):n.issues.push({code:"invalid_key",origin:"map",input:t,inst:o,issues:e.issues.map(s=>or(s,a,Oe()))})),r.issues.length&&(go.has(typeof i)?n.issues.push(...ir(i,r.issues)):n.issues.push({origin:"map",code:"invalid_element",input:t,inst:o,key:i,issues:r.issues.map(s=>or(s,a,Oe()))})),n.value.set(e.value,r.value)}var mm=_("$ZodSet",(e,r)=>{Z.init(e,r);let n=je.memoizer;n?.attach(e),e._zod.parse=(i,t)=>{let o=i.value;if(!(o instanceof Set))return i.issues.push({input:o,inst:e,expected:"set",code:"invalid_type"}),i;let a=[];i.value=n?n.alloc(e,i,new Set,t):new Set;let s=t?.abortEarly,u=i.issues.length;for(let c of o){if(s&&i.issues.length!==u){if(Ye(i,u))break;u=i.issues.length}let l=r.valueType._zod.run({value:c,issues:[]},t);l instanceof Promise?a.push(l.then(d=>ny(d,i))):ny(l,i)}return a.length?Promise.all(a).then(()=>i):i},im(e,BC)});function ny(e,r){e.issues.length&&r.issues.push(...e.issues),r.value.add(e.value)}var pm=_("$ZodEnum",(e,r)=>{Z.init(e,r);let n=Kn(r.entries),i=new Set(n);e._zod.values=i,H(e,"pattern",t=>{let o=Kn(t.def.entries).filter(a=>go.has(typeof a));return new RegExp(o.length?`^(${o.map(a=>vr(a.toString())).join("|")})$`:"^[^\\s\\S]$")}),e._zod.parse=(t,o)=>{let a=t.value;return i.has(a)||t.issues.push({code:"invalid_value",values:n,input:a,inst:e}),t}}),vm=_("$ZodLiteral",(e,r)=>{Z.init(e,r);let n=new Set(r.values);e._zod.values=n,H(e,"pattern",i=>{let t=i.def.values;return new RegExp(t.length?`^(${t.map(o=>typeof o=="string"?vr(o):o?vr(o.toString()):String(o)).join("|")})$`:"^[^\\s\\S]$")}),e._zod.parse=(i,t)=>{let o=i.value;return n.has(o)||i.issues.push({code:"invalid_value",values:r.values,input:o,inst:e}),i}}),gm=_("$ZodFile",(e,r)=>{Z.init(e,r),e._zod.parse=(n,i)=>{let t=n.value;return t instanceof File||n.issues.push({expected:"file",code:"invalid_type",input:t,inst:e}),n}}),hm=_("$ZodTransform",(e,r)=>{Z.init(e,r),e._zod.optin="optional",je.memoizer?.guard(e),e._zod.parse=(n,i)=>{if(i.direction==="backward")throw new St(e.constructor.name);let t=r.transform(n.value,n);if(i.async)return(t instanceof Promise?t:Promise.resolve(t)).then(a=>(n.value=a,n));if(t instanceof Promise)throw new ar;return n.value=t,n}});function iy(e,r){return e.value=r.issues.length?void 0:r.value,e}var Us=_("$ZodOptional",(e,r)=>{Z.init(e,r),H(e,"optin",n=>n.def.innerType._zod.optin==="defaulted"?"defaulted":"optional"),e._zod.optout="optional",H(e,"values",n=>{let i=n.def.innerType._zod.values;return i?new Set([...i,void 0]):void 0}),H(e,"pattern",n=>{let i=n.def.innerType._zod.pattern;return i?new RegExp(`^(${tt(i.source)})?$`):void 0}),e._zod.parse=(n,i)=>{if(n.value===void 0){if(r.innerType._zod.optin!=="defaulted")return n;let t=r.innerType._zod.run({value:n.value,issues:[]},i);return t instanceof Promise?t.then(o=>iy(n,o)):iy(n,t)}return r.innerType._zod.run(n,i)}}),ym=_("$ZodExactOptional",(e,r)=>{Us.init(e,r),H(e,"values",n=>n.def.innerType._zod.values),H(e,"pattern",n=>n.def.innerType._zod.pattern),e._zod.parse=(n,i)=>r.innerType._zod.run(n,i)}),bm=_("$ZodNullable",(e,r)=>{Z.init(e,r),H(e,"optin",n=>n.def.innerType._zod.optin),H(e,"optout",n=>n.def.innerType._zod.optout),H(e,"pattern",n=>{let i=n.def.innerType._zod.pattern;return i?new RegExp(`^(${tt(i.source)}|null)$`):void 0}),H(e,"values",n=>n.def.innerType._zod.values?new Set([...n.def.innerType._zod.values,null]):void 0),e._zod.parse=(n,i)=>n.value===null?n:r.innerType._zod.run(n,i)}),$m=_("$ZodDefault",(e,r)=>{Z.init(e,r),e._zod.optin="defaulted",H(e,"values",n=>n.def.innerType._zod.values),e._zod.parse=(n,i)=>{if(i.direction==="backward")return r.innerType._zod.run(n,i);if(n.value===void 0)return n.value=r.defaultValue,n;let t=r.innerType._zod.run(n,i);return t instanceof Promise?t.then(o=>oy(o,r)):oy(t,r)}});function oy(e,r){return e.value===void 0&&(e.value=r.defaultValue),e}var _m=_("$ZodPrefault",(e,r)=>{Z.init(e,r),e._zod.optin="defaulted",H(e,"values",n=>n.def.innerType._zod.values),e._zod.parse=(n,i)=>(i.direction==="backward"||n.value===void 0&&(n.value=r.defaultValue),r.innerType._zod.run(n,i))}),wm=_("$ZodNonOptional",(e,r)=>{Z.init(e,r),H(e,"values",n=>{let i=n.def.innerType._zod.values;return i?new Set([...i].filter(t=>t!==void 0)):void 0}),e._zod.parse=(n,i)=>{let t=r.innerType._zod.run(n,i);return t instanceof Promise?t.then(o=>ay(o,e)):ay(t,e)}});function ay(e,r){return!e.issues.length&&e.value===void 0&&e.issues.push({code:"invalid_type",expected:"nonoptional",input:e.value,inst:r}),e}var Sm=_("$ZodSuccess",(e,r)=>{Z.init(e,r),e._zod.parse=(n,i)=>{if(i.direction==="backward")throw new St("ZodSuccess");let t=r.innerType._zod.run(n,i);return t instanceof Promise?t.then(o=>(n.value=o.issues.length===0,n)):(n.value=t.issues.length===0,n)}});function sy(e,r,n,i){return r.issues.length?(e.value=n.catchValue({...r,value:e.value,error:{issues:r.issues.map(t=>or(t,i,Oe()))},input:e.value}),e):(e.value=r.value,r.memo&&(e.memo=!0),e)}var Im=_("$ZodCatch",(e,r)=>{Z.init(e,r),H(e,"optin",n=>n.def.innerType._zod.optin==="defaulted"?"defaulted":"optional"),H(e,"optout",n=>n.def.innerType._zod.optout),H(e,"values",n=>n.def.innerType._zod.values),e._zod.parse=(n,i)=>{if(i.direction==="backward")return r.innerType._zod.run(n,i);let t=r.innerType._zod.run({value:n.value,issues:[]},i);return t instanceof Promise?t.then(o=>sy(n,o,r,i)):sy(n,t,r,i)}}),km=_("$ZodNaN",(e,r)=>{Z.init(e,r),e._zod.parse=(n,i)=>((typeof n.value!="number"||!Number.isNaN(n.value))&&n.issues.push({input:n.value,inst:e,expected:"nan",code:"invalid_type"}),n)}),Fs=_("$ZodPipe",(e,r)=>{Z.init(e,r),H(e,"values",n=>n.def.in._zod.values),H(e,"optin",n=>n.def.in._zod.optin),H(e,"optout",n=>n.def.out._zod.optout),H(e,"propValues",n=>n.def.in._zod.propValues),e._zod.parse=(n,i)=>{if(i.direction==="backward"){let o=r.out._zod.run(n,i);return o instanceof Promise?o.then(a=>ws(a,r.in,i)):ws(o,r.in,i)}let t=r.in._zod.run(n,i);return t instanceof Promise?t.then(o=>ws(o,r.out,i)):ws(t,r.out,i)}});function ws(e,r,n){return e.issues.some(i=>i.code!=="unrecognized_keys")?(e.aborted=!0,e):r._zod.run({value:e.value,issues:e.issues},n)}var Ro=_("$ZodCodec",(e,r)=>{Z.init(e,r),H(e,"values",n=>n.def.in._zod.values),H(e,"optin",n=>n.def.in._zod.optin),H(e,"optout",n=>n.def.out._zod.optout),H(e,"propValues",n=>n.def.in._zod.propValues),e._zod.parse=(n,i)=>{if((i.direction||"forward")==="forward"){let o=r.in._zod.run(n,i);return o instanceof Promise?o.then(a=>Ss(a,r,i)):Ss(o,r,i)}else{let o=r.out._zod.run(n,i);return o instanceof Promise?o.then(a=>Ss(a,r,i)):Ss(o,r,i)}}});function Ss(e,r,n){if(e.issues.length)return e.aborted=!0,e;if((n.direction||"forward")==="forward"){let t=r.transform(e.value,e);return t instanceof Promise?t.then(o=>Is(e,o,r.out,n)):Is(e,t,r.out,n)}else{let t=r.reverseTransform(e.value,e);return t instanceof Promise?t.then(o=>Is(e,o,r.in,n)):Is(e,t,r.in,n)}}function Is(e,r,n,i){return e.issues.length?(e.aborted=!0,e):n._zod.run({value:r,issues:e.issues},i)}var Om=_("$ZodPreprocess",(e,r)=>{Fs.init(e,r)}),Nm=_("$ZodReadonly",(e,r)=>{Z.init(e,r),H(e,"propValues",n=>n.def.innerType._zod.propValues),H(e,"values",n=>n.def.innerType._zod.values),H(e,"optin",n=>n.def.innerType?._zod?.optin),H(e,"optout",n=>n.def.innerType?._zod?.optout),e._zod.parse=(n,i)=>{if(i.direction==="backward")return r.innerType._zod.run(n,i);let t=r.innerType._zod.run(n,i);return t instanceof Promise?t.then(uy):uy(t)}});function uy(e){return e.memo||(e.value=Object.freeze(e.value)),e}function GC(e){let r=e._zod.def,n=r.pattern,i=!!r.format?.includes("int"),t,o;for(let s of r.checks??[]){let u=s._zod.def;u.pattern&&(n=u.pattern),i||(i=!!u.format?.includes("int"));let c=u.minimum??u.length,l=u.maximum??u.length;c!==void 0&&(t===void 0||c>t)&&(t=c),l!==void 0&&(o===void 0||l<o)&&(o=l)}if(n)return n.source;if(t!==void 0&&o!==void 0&&t>o)return"(?!)";if(t!==void 0||o!==void 0)return Md({minimum:t,maximum:o}).source;let a=e._zod.pattern;return(i&&a===nt?Po:a)?.source}function yf(e){let r=e._zod.def,n=e._zod.pattern?.source,i=r.innerType??e._zod.innerType;if(i){let t=i._zod.pattern?.source,o=yf(i);return n&&t&&o&&o!==t?n.replace(tt(t),()=>tt(o)):n}if(r.options){let t=r.options.map(yf);if(t.every(Boolean))return`^(${t.map(o=>tt(o)).join("|")})$`}return GC(e)}var Pm=_("$ZodTemplateLiteral",(e,r)=>{Z.init(e,r);let n=[];for(let i of r.parts)if(typeof i=="object"&&i!==null){let t=yf(i);if(!t)throw new Error(`Invalid template literal part, no pattern found: ${[...i._zod.traits].shift()}`);n.push(tt(t))}else if(i===null||rd.has(typeof i))n.push(vr(`${i}`));else throw new Error(`Invalid template literal part: ${i}`);e._zod.pattern=new RegExp(`^${n.join("")}$`),e._zod.parse=(i,t)=>typeof i.value!="string"?(i.issues.push({input:i.value,inst:e,expected:"string",code:"invalid_type"}),i):(e._zod.pattern.lastIndex=0,e._zod.pattern.test(i.value)||i.issues.push({input:i.value,inst:e,code:"invalid_format",format:r.format??"template_literal",pattern:e._zod.pattern.source}),i)}),xm=_("$ZodFunction",(e,r)=>(Z.init(e,r),Object.defineProperty(e,"_def",{value:r}),e._zod.def=r,e.implement=n=>{if(typeof n!="function")throw new Error("implement() must be called with a function");return Object.defineProperty(function(...i){let t=e._def.input?as(e._def.input,i):i,o=Reflect.apply(n,this,t);return e._def.output?as(e._def.output,o):o},"_zod",{value:e._zod,enumerable:!1})},e.implementAsync=n=>{if(typeof n!="function")throw new Error("implementAsync() must be called with a function");return Object.defineProperty(async function(...i){let t=e._def.input?await ss(e._def.input,i):i,o=await Reflect.apply(n,this,t);return e._def.output?await ss(e._def.output,o):o},"_zod",{value:e._zod,enumerable:!1})},e._zod.parse=(n,i)=>typeof n.value!="function"?(n.issues.push({code:"invalid_type",expected:"function",input:n.value,inst:e}),n):(e._def.output&&e._def.output._zod.def.type==="promise"?n.value=e.implementAsync(n.value):n.value=e.implement(n.value),n),e.input=(...n)=>{let i=e.constructor;return Array.isArray(n[0])?new i({type:"function",input:new Rs({type:"tuple",items:n[0],rest:n[1]}),output:e._def.output}):new i({type:"function",input:n[0],output:e._def.output})},e.output=n=>{let i=e.constructor;return new i({type:"function",input:e._def.input,output:n})},e)),Am=_("$ZodPromise",(e,r)=>{Z.init(e,r),e._zod.parse=(n,i)=>Promise.resolve(n.value).then(t=>r.innerType._zod.run({value:t,issues:[]},i))}),Uo=_("$ZodLazy",(e,r)=>{Z.init(e,r),Ql(e._zod,"innerType",()=>{let n=r;return n._cachedInner||(n._cachedInner=r.getter()),n._cachedInner}),H(e,"pattern",n=>n.innerType?._zod?.pattern),H(e,"propValues",n=>n.innerType?._zod?.propValues),H(e,"optin",n=>n.innerType?._zod?.optin??void 0),H(e,"optout",n=>n.innerType?._zod?.optout??void 0),e._zod.parse=(n,i)=>e._zod.innerType._zod.run(n,i)}),Em=_("$ZodCustom",(e,r)=>{ce.init(e,r),Z.init(e,r),e._zod.parse=(n,i)=>n,e._zod.check=n=>{let i=n.value,t=r.fn(i);if(t instanceof Promise)return t.then(o=>cy(o,n,i,e));cy(t,n,i,e)}});function cy(e,r,n,i){if(!e){let t={code:"custom",input:n,inst:i,path:[...i._zod.def.path??[]],continue:!i._zod.def.abort};i._zod.def.params&&(t.params=i._zod.def.params),r.issues.push(ei(t))}}var Vs=class extends Error{constructor(){super("Cannot parse a reference cycle that closes through a transform"),this.name="ZodCyclicError"}},zm="~memo",hy=[];function yy(e){return e!==null&&typeof e=="object"}function Dm(e){return e.map(r=>r.path?{...r,path:r.path.slice()}:{...r})}var by=new WeakMap,si=0,Zs=1,Fo=2;function Mo(e,r,n){let i=by.get(e);if(i!==void 0)return i?Fo:si;if(r.has(e))return Fo;r.add(e);let t=si,o=l=>{if(t!==Fo&&l?._zod){let d=Mo(l,r,n);d>t&&(t=d)}},a=(l,d)=>{let f=si;for(let m of Reflect.ownKeys(l)){let g=Object.getOwnPropertyDescriptor(l,m);if(d&&!g.enumerable)continue;let h=g.get?Zs:g.value?._zod?Mo(g.value,r,n):si;h>f&&(f=h)}return f},s=l=>{l>t&&(t=l)},u=e._zod.def,c=u.type;switch(c){case"object":{let l=Qn(u);s(l?a(l,!0):Zs),o(u.catchall);break}case"array":o(u.element);break;case"tuple":for(let l of u.items)o(l);o(u.rest);break;case"record":case"map":o(u.keyType),o(u.valueType);break;case"set":o(u.valueType);break;case"union":for(let l of u.options)o(l);break;case"intersection":o(u.left),o(u.right);break;case"optional":case"nullable":case"default":case"prefault":case"catch":case"readonly":case"nonoptional":case"promise":case"success":o(u.innerType);break;case"pipe":o(u.in),o(u.out);break;case"function":o(u.input),o(u.output);break;case"lazy":{let l=u._cachedInner??(n?e._zod.innerType:void 0);s(l?Mo(l,r,!1):Zs);break}case"template_literal":case"string":case"number":case"int":case"boolean":case"bigint":case"symbol":case"undefined":case"null":case"void":case"never":case"any":case"unknown":case"date":case"nan":case"enum":case"literal":case"file":case"transform":case"custom":break;default:for(let l in u){let d=Object.getOwnPropertyDescriptor(u,l);if(!d||d.get)continue;let f=d.value;if(!(!f||typeof f!="object")){if(f._zod)o(f);else if(Array.isArray(f))for(let m of f)o(m)}}}return r.delete(e),HC(e,t)}function HC(e,r){return r!==Zs&&by.set(e,r===Fo),r}function Bs(e){return Mo(e,new Set,!0)!==si}function KC(e,r){let n=e.buckets.get(r);return n||(n=new WeakMap,e.buckets.set(r,n)),n}var Ms,Ls=[],JC={alloc(e,r,n){let i=Ms;if(!i)return n;Ms=void 0;let t={value:n,issues:null};return i.set(r.value,t),Ls.push(t),n},guard(e){var r;(r=e._zod).deferred??(r.deferred=[]),e._zod.deferred.push(()=>{let n=e._zod.parse,i=(t,o)=>{if(o.direction!=="backward"&&Ws(o,t.value))throw new Vs;return n(t,o)};e._zod.parse=i,e._zod.run===n&&(e._zod.run=i)})},attach(e){var r;let n,i=!1,t,o;(r=e._zod).deferred??(r.deferred=[]),e._zod.deferred.push(()=>{let a=e._zod.parse,s=(u,c)=>{if(n===void 0){let y=Mo(e,new Set,!1);if(y===si)return e._zod.parse=a,e._zod.run===s&&(e._zod.run=a),a(u,c);y===Fo||i?n=!0:i=!0}let l=u.value;if(!yy(l))return a(u,c);let d=c[zm];d||(d={buckets:new WeakMap,backEdges:void 0},c[zm]=d);let f;t===c?f=o:(f=KC(d,e),t=c,o=f);let m=f.get(l);if(m)return u.value=m.value,m.issues?m.issues.length&&u.issues.push(...Dm(m.issues)):(u.memo=!0,d.backEdges??(d.backEdges=new WeakSet),d.backEdges.add(m.value)),u;Ms=f;let g=Ls.length,h=a(u,c);Ms=void 0;let b=Ls.length>g?Ls.pop():void 0;return h instanceof Promise?h.then(y=>(b&&(b.issues=y.issues.length?Dm(y.issues):hy),y)):(b&&(b.issues=h.issues.length?Dm(h.issues):hy),h)};e._zod.parse=s,e._zod.run===a&&(e._zod.run=s)})}};function Lo(){return JC}function Ws(e,r){let n=e[zm]?.backEdges;return n!==void 0&&yy(r)&&n.has(r)}var Vo={};Yr(Vo,{ar:()=>$y,az:()=>_y,be:()=>Sy,bg:()=>Iy,bn:()=>ky,ca:()=>Oy,ckb:()=>Ny,cs:()=>Py,da:()=>xy,de:()=>Ay,el:()=>Ey,en:()=>Gs,eo:()=>Dy,es:()=>zy,fa:()=>qy,fi:()=>Ty,fr:()=>jy,frCA:()=>Cy,gu:()=>Ry,he:()=>Uy,hi:()=>Fy,hr:()=>My,hu:()=>Ly,hy:()=>Vy,id:()=>By,is:()=>Wy,it:()=>Gy,ja:()=>Hy,ka:()=>Ky,kh:()=>Jy,km:()=>Hs,kn:()=>Xy,ko:()=>Qy,lt:()=>eb,mk:()=>rb,ms:()=>tb,ne:()=>nb,nl:()=>ib,nn:()=>ob,no:()=>ab,ota:()=>sb,pl:()=>cb,ps:()=>ub,pt:()=>lb,ptBR:()=>db,ro:()=>fb,ru:()=>pb,sk:()=>vb,sl:()=>gb,sv:()=>hb,ta:()=>yb,tg:()=>bb,th:()=>$b,tk:()=>_b,tr:()=>wb,ua:()=>Sb,uk:()=>Ks,ur:()=>Ib,uz:()=>kb,vi:()=>Ob,yo:()=>xb,zhCN:()=>Nb,zhTW:()=>Pb});var XC=()=>{let e={string:{unit:"حرف",verb:"أن يحوي"},file:{unit:"بايت",verb:"أن يحوي"},array:{unit:"عنصر",verb:"أن يحوي"},set:{unit:"عنصر",verb:"أن يحوي"},map:{unit:"عنصر",verb:"أن يحوي"}};function r(t){return e[t]??null}let n={regex:"مدخل",email:"بريد إلكتروني",url:"رابط",emoji:"إيموجي",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"تاريخ ووقت بمعيار ISO",date:"تاريخ بمعيار ISO",time:"وقت بمعيار ISO",duration:"مدة بمعيار ISO",ipv4:"عنوان IPv4",ipv6:"عنوان IPv6",mac:"عنوان MAC",cidrv4:"مدى عناوين بصيغة IPv4",cidrv6:"مدى عناوين بصيغة IPv6",base64:"نَص بترميز base64-encoded",base64url:"نَص بترميز base64url-encoded",json_string:"نَص على هيئة JSON",e164:"رقم هاتف بمعيار E.164",credit_card:"رقم بطاقة الائتمان",currency_code:"رمز العملة",iban:"IBAN",jwt:"JWT",template_literal:"مدخل"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`مدخلات غير مقبولة: يفترض إدخال instanceof ${t.expected}، ولكن تم إدخال ${s}`:`مدخلات غير مقبولة: يفترض إدخال ${o}، ولكن تم إدخال ${s}`}case"invalid_value":return t.values.length===1?`مدخلات غير مقبولة: يفترض إدخال ${k(t.values[0])}`:`اختيار غير مقبول: يتوقع انتقاء أحد هذه الخيارات: ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?` أكبر من اللازم: يفترض أن تكون ${t.origin??"القيمة"} ${o} ${t.maximum.toString()} ${a.unit??"عنصر"}`:`أكبر من اللازم: يفترض أن تكون ${t.origin??"القيمة"} ${o} ${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`أصغر من اللازم: يفترض لـ ${t.origin} أن يكون ${o} ${t.minimum.toString()} ${a.unit}`:`أصغر من اللازم: يفترض لـ ${t.origin} أن يكون ${o} ${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`نَص غير مقبول: يجب أن يبدأ بـ "${t.prefix}"`:o.format==="ends_with"?`نَص غير مقبول: يجب أن ينتهي بـ "${o.suffix}"`:o.format==="includes"?`نَص غير مقبول: يجب أن يتضمَّن "${o.includes}"`:o.format==="regex"?`نَص غير مقبول: يجب أن يطابق النمط ${o.pattern}`:`${n[o.format]??t.format} غير مقبول`}case"not_multiple_of":return`رقم غير مقبول: يجب أن يكون من مضاعفات ${t.divisor}`;case"unrecognized_keys":return`معرف${t.keys.length>1?"ات":""} غريب${t.keys.length>1?"ة":""}: ${w(t.keys,"، ")}`;case"invalid_key":return`معرف غير مقبول في ${t.origin}`;case"invalid_union":return"مدخل غير مقبول";case"invalid_element":return`مدخل غير مقبول في ${t.origin}`;default:return"مدخل غير مقبول"}}};function $y(){return{localeError:XC()}}var QC=()=>{let e={string:{unit:"simvol",verb:"olmalıdır"},file:{unit:"bayt",verb:"olmalıdır"},array:{unit:"element",verb:"olmalıdır"},set:{unit:"element",verb:"olmalıdır"},map:{unit:"element",verb:"olmalıdır"}};function r(t){return e[t]??null}let n={regex:"input",email:"email address",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO datetime",date:"ISO date",time:"ISO time",duration:"ISO duration",ipv4:"IPv4 address",ipv6:"IPv6 address",mac:"MAC address",cidrv4:"IPv4 range",cidrv6:"IPv6 range",base64:"base64-encoded string",base64url:"base64url-encoded string",json_string:"JSON string",e164:"E.164 number",credit_card:"kredit kartı nömrəsi",currency_code:"valyuta kodu",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Yanlış dəyər: gözlənilən instanceof ${t.expected}, daxil olan ${s}`:`Yanlış dəyər: gözlənilən ${o}, daxil olan ${s}`}case"invalid_value":return t.values.length===1?`Yanlış dəyər: gözlənilən ${k(t.values[0])}`:`Yanlış seçim: aşağıdakılardan biri olmalıdır: ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Çox böyük: gözlənilən ${t.origin??"dəyər"} ${o}${t.maximum.toString()} ${a.unit??"element"}`:`Çox böyük: gözlənilən ${t.origin??"dəyər"} ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Çox kiçik: gözlənilən ${t.origin} ${o}${t.minimum.toString()} ${a.unit}`:`Çox kiçik: gözlənilən ${t.origin} ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Yanlış mətn: "${o.prefix}" ilə başlamalıdır`:o.format==="ends_with"?`Yanlış mətn: "${o.suffix}" ilə bitməlidir`:o.format==="includes"?`Yanlış mətn: "${o.includes}" daxil olmalıdır`:o.format==="regex"?`Yanlış mətn: ${o.pattern} şablonuna uyğun olmalıdır`:`Yanlış ${n[o.format]??t.format}`}case"not_multiple_of":return`Yanlış ədəd: ${t.divisor} ilə bölünə bilən olmalıdır`;case"unrecognized_keys":return`Tanınmayan açar${t.keys.length>1?"lar":""}: ${w(t.keys,", ")}`;case"invalid_key":return`${t.origin} daxilində yanlış açar`;case"invalid_union":return"Yanlış dəyər";case"invalid_element":return`${t.origin} daxilində yanlış dəyər`;default:return"Yanlış dəyər"}}};function _y(){return{localeError:QC()}}function wy(e,r,n,i){let t=Math.abs(e),o=t%10,a=t%100;return a>=11&&a<=19?i:o===1?r:o>=2&&o<=4?n:i}var YC=()=>{let e={string:{unit:{one:"сімвал",few:"сімвалы",many:"сімвалаў"},verb:"мець"},array:{unit:{one:"элемент",few:"элементы",many:"элементаў"},verb:"мець"},set:{unit:{one:"элемент",few:"элементы",many:"элементаў"},verb:"мець"},map:{unit:{one:"элемент",few:"элементы",many:"элементаў"},verb:"мець"},file:{unit:{one:"байт",few:"байты",many:"байтаў"},verb:"мець"}};function r(t){return e[t]??null}let n={regex:"увод",email:"email адрас",url:"URL",emoji:"эмодзі",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO дата і час",date:"ISO дата",time:"ISO час",duration:"ISO працягласць",ipv4:"IPv4 адрас",ipv6:"IPv6 адрас",mac:"MAC адрас",cidrv4:"IPv4 дыяпазон",cidrv6:"IPv6 дыяпазон",base64:"радок у фармаце base64",base64url:"радок у фармаце base64url",json_string:"JSON радок",e164:"нумар E.164",credit_card:"нумар крэдытнай карты",currency_code:"код валюты",iban:"IBAN",jwt:"JWT",template_literal:"увод"},i={nan:"NaN",number:"лік",array:"масіў"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Няправільны ўвод: чакаўся instanceof ${t.expected}, атрымана ${s}`:`Няправільны ўвод: чакаўся ${o}, атрымана ${s}`}case"invalid_value":return t.values.length===1?`Няправільны ўвод: чакалася ${k(t.values[0])}`:`Няправільны варыянт: чакаўся адзін з ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);if(a){let s=Number(t.maximum),u=wy(s,a.unit.one,a.unit.few,a.unit.many);return`Занадта вялікі: чакалася, што ${t.origin??"значэнне"} павінна ${a.verb} ${o}${t.maximum.toString()} ${u}`}return`Занадта вялікі: чакалася, што ${t.origin??"значэнне"} павінна быць ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);if(a){let s=Number(t.minimum),u=wy(s,a.unit.one,a.unit.few,a.unit.many);return`Занадта малы: чакалася, што ${t.origin} павінна ${a.verb} ${o}${t.minimum.toString()} ${u}`}return`Занадта малы: чакалася, што ${t.origin} павінна быць ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Няправільны радок: павінен пачынацца з "${o.prefix}"`:o.format==="ends_with"?`Няправільны радок: павінен заканчвацца на "${o.suffix}"`:o.format==="includes"?`Няправільны радок: павінен змяшчаць "${o.includes}"`:o.format==="regex"?`Няправільны радок: павінен адпавядаць шаблону ${o.pattern}`:`Няправільны ${n[o.format]??t.format}`}case"not_multiple_of":return`Няправільны лік: павінен быць кратным ${t.divisor}`;case"unrecognized_keys":return`Нераспазнаны ${t.keys.length>1?"ключы":"ключ"}: ${w(t.keys,", ")}`;case"invalid_key":return`Няправільны ключ у ${t.origin}`;case"invalid_union":return"Няправільны ўвод";case"invalid_element":return`Няправільнае значэнне ў ${t.origin}`;default:return"Няправільны ўвод"}}};function Sy(){return{localeError:YC()}}var eR=()=>{let e={string:{unit:"символа",verb:"да съдържа"},file:{unit:"байта",verb:"да съдържа"},array:{unit:"елемента",verb:"да съдържа"},set:{unit:"елемента",verb:"да съдържа"},map:{unit:"елемента",verb:"да съдържа"}};function r(t){return e[t]??null}let n={regex:"вход",email:"имейл адрес",url:"URL",emoji:"емоджи",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO време",date:"ISO дата",time:"ISO време",duration:"ISO продължителност",ipv4:"IPv4 адрес",ipv6:"IPv6 адрес",mac:"MAC адрес",cidrv4:"IPv4 диапазон",cidrv6:"IPv6 диапазон",base64:"base64-кодиран низ",base64url:"base64url-кодиран низ",json_string:"JSON низ",e164:"E.164 номер",credit_card:"номер на кредитна карта",currency_code:"код на валута",iban:"IBAN",jwt:"JWT",template_literal:"вход"},i={nan:"NaN",number:"число",array:"масив"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Невалиден вход: очакван instanceof ${t.expected}, получен ${s}`:`Невалиден вход: очакван ${o}, получен ${s}`}case"invalid_value":return t.values.length===1?`Невалиден вход: очакван ${k(t.values[0])}`:`Невалидна опция: очаквано едно от ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Твърде голямо: очаква се ${t.origin??"стойност"} да съдържа ${o}${t.maximum.toString()} ${a.unit??"елемента"}`:`Твърде голямо: очаква се ${t.origin??"стойност"} да бъде ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Твърде малко: очаква се ${t.origin} да съдържа ${o}${t.minimum.toString()} ${a.unit}`:`Твърде малко: очаква се ${t.origin} да бъде ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;if(o.format==="starts_with")return`Невалиден низ: трябва да започва с "${o.prefix}"`;if(o.format==="ends_with")return`Невалиден низ: трябва да завършва с "${o.suffix}"`;if(o.format==="includes")return`Невалиден низ: трябва да включва "${o.includes}"`;if(o.format==="regex")return`Невалиден низ: трябва да съвпада с ${o.pattern}`;let a="Невалиден";return o.format==="emoji"&&(a="Невалидно"),o.format==="datetime"&&(a="Невалидно"),o.format==="date"&&(a="Невалидна"),o.format==="time"&&(a="Невалидно"),o.format==="duration"&&(a="Невалидна"),`${a} ${n[o.format]??t.format}`}case"not_multiple_of":return`Невалидно число: трябва да бъде кратно на ${t.divisor}`;case"unrecognized_keys":return`Неразпознат${t.keys.length>1?"и":""} ключ${t.keys.length>1?"ове":""}: ${w(t.keys,", ")}`;case"invalid_key":return`Невалиден ключ в ${t.origin}`;case"invalid_union":return"Невалиден вход";case"invalid_element":return`Невалидна стойност в ${t.origin}`;default:return"Невалиден вход"}}};function Iy(){return{localeError:eR()}}var rR=()=>{let e={string:{unit:"অক্ষর",verb:"থাকতে হবে"},file:{unit:"বাইট",verb:"থাকতে হবে"},array:{unit:"আইটেম",verb:"থাকতে হবে"},set:{unit:"আইটেম",verb:"থাকতে হবে"},map:{unit:"এন্ট্রি",verb:"থাকতে হবে"}};function r(t){return e[t]??null}let n={regex:"ইনপুট",email:"ইমেইল ঠিকানা",url:"URL",emoji:"ইমোজি",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO তারিখ ও সময়",date:"ISO তারিখ",time:"ISO সময়",duration:"ISO সময়কাল",ipv4:"IPv4 ঠিকানা",ipv6:"IPv6 ঠিকানা",mac:"MAC ঠিকানা",cidrv4:"IPv4 রেঞ্জ",cidrv6:"IPv6 রেঞ্জ",base64:"base64-এনকোডেড স্ট্রিং",base64url:"base64url-এনকোডেড স্ট্রিং",json_string:"JSON স্ট্রিং",e164:"E.164 নম্বর",credit_card:"ক্রেডিট কার্ড নম্বর",currency_code:"মুদ্রা কোড",iban:"IBAN",jwt:"JWT",template_literal:"ইনপুট"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return`অবৈধ ইনপুট: প্রত্যাশিত ${o}, প্রাপ্ত ${s}`}case"invalid_value":return t.values.length===1?`অবৈধ ইনপুট: প্রত্যাশিত ${k(t.values[0])}`:`অবৈধ অপশন: ${w(t.values," | ")} এর মধ্যে একটি প্রত্যাশিত`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`অনেক বড়: ${t.origin??"মান"} ${o}${t.maximum.toString()} ${a.unit??"এলিমেন্ট"} হতে হবে`:`অনেক বড়: ${t.origin??"মান"} ${o}${t.maximum.toString()} হতে হবে`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`অনেক ছোট: ${t.origin} ${o}${t.minimum.toString()} ${a.unit} হতে হবে`:`অনেক ছোট: ${t.origin} ${o}${t.minimum.toString()} হতে হবে`}case"invalid_format":{let o=t;return o.format==="starts_with"?`অবৈধ স্ট্রিং: "${o.prefix}" দিয়ে শুরু হতে হবে`:o.format==="ends_with"?`অবৈধ স্ট্রিং: "${o.suffix}" দিয়ে শেষ হতে হবে`:o.format==="includes"?`অবৈধ স্ট্রিং: "${o.includes}" অন্তর্ভুক্ত থাকতে হবে`:o.format==="regex"?`অবৈধ স্ট্রিং: ${o.pattern} প্যাটার্ন মিলতে হবে`:`অবৈধ ${n[o.format]??t.format}`}case"not_multiple_of":return`অবৈধ নম্বর: ${t.divisor} এর গুণিতক হতে হবে`;case"unrecognized_keys":return`অচেনা কী${t.keys.length>1?"গুলো":""}: ${w(t.keys,", ")}`;case"invalid_key":return`${t.origin} এ অবৈধ কী`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`অবৈধ ডিসক্রিমিনেটর মান। প্রত্যাশিত ${t.options.map(a=>`'${a}'`).join(" | ")}`:"অবৈধ ইনপুট";case"invalid_element":return`${t.origin} এ অবৈধ মান`;default:return"অবৈধ ইনপুট"}}};function ky(){return{localeError:rR()}}var tR=()=>{let e={string:{unit:"caràcters",verb:"contenir"},file:{unit:"bytes",verb:"contenir"},array:{unit:"elements",verb:"contenir"},set:{unit:"elements",verb:"contenir"},map:{unit:"elements",verb:"contenir"}};function r(t){return e[t]??null}let n={regex:"entrada",email:"adreça electrònica",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"data i hora ISO",date:"data ISO",time:"hora ISO",duration:"durada ISO",ipv4:"adreça IPv4",ipv6:"adreça IPv6",mac:"adreça MAC",cidrv4:"rang IPv4",cidrv6:"rang IPv6",base64:"cadena codificada en base64",base64url:"cadena codificada en base64url",json_string:"cadena JSON",e164:"número E.164",credit_card:"número de targeta de crèdit",currency_code:"codi de moneda",iban:"IBAN",jwt:"JWT",template_literal:"entrada"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Tipus invàlid: s'esperava instanceof ${t.expected}, s'ha rebut ${s}`:`Tipus invàlid: s'esperava ${o}, s'ha rebut ${s}`}case"invalid_value":return t.values.length===1?`Valor invàlid: s'esperava ${k(t.values[0])}`:`Opció invàlida: s'esperava una de ${w(t.values," o ")}`;case"too_big":{let o=t.inclusive?"com a màxim":"menys de",a=r(t.origin);return a?`Massa gran: s'esperava que ${t.origin??"el valor"} contingués ${o} ${t.maximum.toString()} ${a.unit??"elements"}`:`Massa gran: s'esperava que ${t.origin??"el valor"} fos ${o} ${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?"com a mínim":"més de",a=r(t.origin);return a?`Massa petit: s'esperava que ${t.origin} contingués ${o} ${t.minimum.toString()} ${a.unit}`:`Massa petit: s'esperava que ${t.origin} fos ${o} ${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Format invàlid: ha de començar amb "${o.prefix}"`:o.format==="ends_with"?`Format invàlid: ha d'acabar amb "${o.suffix}"`:o.format==="includes"?`Format invàlid: ha d'incloure "${o.includes}"`:o.format==="regex"?`Format invàlid: ha de coincidir amb el patró ${o.pattern}`:`Format invàlid per a ${n[o.format]??t.format}`}case"not_multiple_of":return`Número invàlid: ha de ser múltiple de ${t.divisor}`;case"unrecognized_keys":return`Clau${t.keys.length>1?"s":""} no reconeguda${t.keys.length>1?"s":""}: ${w(t.keys,", ")}`;case"invalid_key":return`Clau invàlida a ${t.origin}`;case"invalid_union":return"Entrada invàlida";case"invalid_element":return`Element invàlid a ${t.origin}`;default:return"Entrada invàlida"}}};function Oy(){return{localeError:tR()}}var nR=()=>{let e={string:{unit:"پیت",verb:"بێت"},file:{unit:"بایت",verb:"بێت"},array:{unit:"دانە",verb:"بێت"},set:{unit:"دانە",verb:"بێت"},map:{unit:"دانە",verb:"بێت"}};function r(t){return e[t]??null}let n={regex:"regex",email:"ئیمەیڵ",url:"بەستەر (URL)",emoji:"ئیمۆجی",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ڕێکەوت و کات",date:"ڕێکەوت",time:"کات",duration:"ماوە",ipv4:"ناونیشانی IPv4",ipv6:"ناونیشانی IPv6",mac:"ناونیشانی MAC",cidrv4:"مەودای IPv4",cidrv6:"مەودای IPv6",base64:"دەقی base64",base64url:"دەقی base64url",json_string:"دەقی JSON",e164:"ژمارەی E.164",credit_card:"ژمارەی کارتی کرێدیت",currency_code:"کۆدی دراو",iban:"IBAN",jwt:"JWT",template_literal:"تێکردە"},i={nan:"NaN",string:"نووسین",number:"ژمارە",boolean:"boolean",array:"array",object:"object",date:"ڕێکەوت",integer:"ژمارە",float:"ژمارە",null:"null",undefined:"undefined",function:"function",symbol:"symbol",unknown:"unknown",promise:"promise",void:"void",never:"never",map:"map",set:"set"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a,u=["ا","و","ۆ","وو","ە","ی","ێ"].some(l=>s.endsWith(l))?"یە":"ە",c=/^[a-zA-Z]+$/.test(s);return a==="null"||a==="undefined"?"داواکراوە":`چاوەڕوانکراوە ${o} بێت، بەڵام ${s}${c?"":u}`}case"invalid_value":return t.values.length===1?`بەهاکە نادرووستە: چاوەڕوانکراوە ${k(t.values[0])} بێت`:`هەڵبژاردەی نادروست: چاوەڕوانکراوە یەکێک بێت لە ${w(t.values,"|")}`;case"too_big":{let o=r(t.origin);return o?`پێویستە بە لایەنی زۆرەوە ${t.maximum.toString()} ${o.unit} ${o.verb}`:`پێویستە بە لایەنی زۆرەوە ${t.maximum.toString()} بێت`}case"too_small":{let o=r(t.origin);return o?`پێویستە بە لایەنی کەمەوە ${t.minimum.toString()} ${o.unit} ${o.verb}`:`پێویستە بە لایەنی کەمەوە ${t.minimum.toString()} بێت`}case"invalid_format":{let o=t;return o.format==="starts_with"?`دەقی نادروست: پێویستە دەستپێبکات بە "${o.prefix}"`:o.format==="ends_with"?`دەقی نادروست: پێویستە کۆتاییبێت بە "${o.suffix}"`:o.format==="includes"?`دەقی نادروست: پێویستە "${o.includes}" لەخۆبگرێت`:o.format==="regex"?`دەقی نادروست: پێویستە لەگەڵ پاتێرنی ${o.pattern} بگونجێت`:`بەهای ${n[o.format]??t.format} نادروستە`}case"not_multiple_of":return`ژمارەی نادروست: دەبێت چەند هێندە بێت بۆ ${t.divisor}`;case"unrecognized_keys":return`کلیلی نەناسراو: ${w(t.keys,", ")}`;case"invalid_key":return`کلیلی نادروست لە ${t.origin}`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`بەهای نەناسراو هەیە. بەهای چاوەڕوانکراو: ${t.options.map(a=>`'${a}'`).join(" | ")}`:"یەکگرتنی نادروست";case"invalid_element":return`${t.origin} بەهاکە نادروستە`;default:return"تێکردەی نادروست"}}};function Ny(){return{localeError:nR()}}var iR=()=>{let e={string:{unit:"znaků",verb:"mít"},file:{unit:"bajtů",verb:"mít"},array:{unit:"prvků",verb:"mít"},set:{unit:"prvků",verb:"mít"},map:{unit:"prvků",verb:"mít"}};function r(t){return e[t]??null}let n={regex:"regulární výraz",email:"e-mailová adresa",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"datum a čas ve formátu ISO",date:"datum ve formátu ISO",time:"čas ve formátu ISO",duration:"doba trvání ISO",ipv4:"IPv4 adresa",ipv6:"IPv6 adresa",mac:"MAC adresa",cidrv4:"rozsah IPv4",cidrv6:"rozsah IPv6",base64:"řetězec zakódovaný ve formátu base64",base64url:"řetězec zakódovaný ve formátu base64url",json_string:"řetězec ve formátu JSON",e164:"číslo E.164",credit_card:"číslo kreditní karty",currency_code:"kód měny",iban:"IBAN",jwt:"JWT",template_literal:"vstup"},i={nan:"NaN",number:"číslo",string:"řetězec",function:"funkce",array:"pole"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Neplatný vstup: očekáváno instanceof ${t.expected}, obdrženo ${s}`:`Neplatný vstup: očekáváno ${o}, obdrženo ${s}`}case"invalid_value":return t.values.length===1?`Neplatný vstup: očekáváno ${k(t.values[0])}`:`Neplatná možnost: očekávána jedna z hodnot ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Hodnota je příliš velká: ${t.origin??"hodnota"} musí mít ${o}${t.maximum.toString()} ${a.unit??"prvků"}`:`Hodnota je příliš velká: ${t.origin??"hodnota"} musí být ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Hodnota je příliš malá: ${t.origin??"hodnota"} musí mít ${o}${t.minimum.toString()} ${a.unit??"prvků"}`:`Hodnota je příliš malá: ${t.origin??"hodnota"} musí být ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Neplatný řetězec: musí začínat na "${o.prefix}"`:o.format==="ends_with"?`Neplatný řetězec: musí končit na "${o.suffix}"`:o.format==="includes"?`Neplatný řetězec: musí obsahovat "${o.includes}"`:o.format==="regex"?`Neplatný řetězec: musí odpovídat vzoru ${o.pattern}`:`Neplatný formát ${n[o.format]??t.format}`}case"not_multiple_of":return`Neplatné číslo: musí být násobkem ${t.divisor}`;case"unrecognized_keys":return`Neznámé klíče: ${w(t.keys,", ")}`;case"invalid_key":return`Neplatný klíč v ${t.origin}`;case"invalid_union":return"Neplatný vstup";case"invalid_element":return`Neplatná hodnota v ${t.origin}`;default:return"Neplatný vstup"}}};function Py(){return{localeError:iR()}}var oR=()=>{let e={string:{unit:"tegn",verb:"havde"},file:{unit:"bytes",verb:"havde"},array:{unit:"elementer",verb:"indeholdt"},set:{unit:"elementer",verb:"indeholdt"},map:{unit:"elementer",verb:"indeholdt"}};function r(t){return e[t]??null}let n={regex:"input",email:"e-mailadresse",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO dato- og klokkeslæt",date:"ISO-dato",time:"ISO-klokkeslæt",duration:"ISO-varighed",ipv4:"IPv4-adresse",ipv6:"IPv6-adresse",mac:"MAC-adresse",cidrv4:"IPv4-spektrum",cidrv6:"IPv6-spektrum",base64:"base64-kodet streng",base64url:"base64url-kodet streng",json_string:"JSON-streng",e164:"E.164-nummer",credit_card:"kreditkortnummer",currency_code:"valutakode",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN",string:"streng",number:"tal",boolean:"boolean",array:"liste",object:"objekt",set:"sæt",file:"fil"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ugyldigt input: forventede instanceof ${t.expected}, fik ${s}`:`Ugyldigt input: forventede ${o}, fik ${s}`}case"invalid_value":return t.values.length===1?`Ugyldig værdi: forventede ${k(t.values[0])}`:`Ugyldigt valg: forventede en af følgende ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin),s=i[t.origin]??t.origin;return a?`For stor: forventede ${s??"value"} ${a.verb} ${o} ${t.maximum.toString()} ${a.unit??"elementer"}`:`For stor: forventede ${s??"value"} havde ${o} ${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin),s=i[t.origin]??t.origin;return a?`For lille: forventede ${s} ${a.verb} ${o} ${t.minimum.toString()} ${a.unit}`:`For lille: forventede ${s} havde ${o} ${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ugyldig streng: skal starte med "${o.prefix}"`:o.format==="ends_with"?`Ugyldig streng: skal ende med "${o.suffix}"`:o.format==="includes"?`Ugyldig streng: skal indeholde "${o.includes}"`:o.format==="regex"?`Ugyldig streng: skal matche mønsteret ${o.pattern}`:`Ugyldig ${n[o.format]??t.format}`}case"not_multiple_of":return`Ugyldigt tal: skal være deleligt med ${t.divisor}`;case"unrecognized_keys":return`${t.keys.length>1?"Ukendte nøgler":"Ukendt nøgle"}: ${w(t.keys,", ")}`;case"invalid_key":return`Ugyldig nøgle i ${t.origin}`;case"invalid_union":return"Ugyldigt input: matcher ingen af de tilladte typer";case"invalid_element":return`Ugyldig værdi i ${t.origin}`;default:return"Ugyldigt input"}}};function xy(){return{localeError:oR()}}var aR=()=>{let e={string:{unit:"Zeichen",verb:"zu haben"},file:{unit:"Bytes",verb:"zu haben"},array:{unit:"Elemente",verb:"zu haben"},set:{unit:"Elemente",verb:"zu haben"},map:{unit:"Elemente",verb:"zu haben"}};function r(t){return e[t]??null}let n={regex:"Eingabe",email:"E-Mail-Adresse",url:"URL",emoji:"Emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO-Datum und -Uhrzeit",date:"ISO-Datum",time:"ISO-Uhrzeit",duration:"ISO-Dauer",ipv4:"IPv4-Adresse",ipv6:"IPv6-Adresse",mac:"MAC-Adresse",cidrv4:"IPv4-Bereich",cidrv6:"IPv6-Bereich",base64:"Base64-codierter String",base64url:"Base64-URL-codierter String",json_string:"JSON-String",e164:"E.164-Nummer",credit_card:"Kreditkartennummer",currency_code:"Währungscode",iban:"IBAN",jwt:"JWT",template_literal:"Eingabe"},i={nan:"NaN",number:"Zahl",array:"Array"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ungültige Eingabe: erwartet instanceof ${t.expected}, erhalten ${s}`:`Ungültige Eingabe: erwartet ${o}, erhalten ${s}`}case"invalid_value":return t.values.length===1?`Ungültige Eingabe: erwartet ${k(t.values[0])}`:`Ungültige Option: erwartet eine von ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Zu groß: erwartet, dass ${t.origin??"Wert"} ${o}${t.maximum.toString()} ${a.unit??"Elemente"} hat`:`Zu groß: erwartet, dass ${t.origin??"Wert"} ${o}${t.maximum.toString()} ist`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Zu klein: erwartet, dass ${t.origin} ${o}${t.minimum.toString()} ${a.unit} hat`:`Zu klein: erwartet, dass ${t.origin} ${o}${t.minimum.toString()} ist`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ungültiger String: muss mit "${o.prefix}" beginnen`:o.format==="ends_with"?`Ungültiger String: muss mit "${o.suffix}" enden`:o.format==="includes"?`Ungültiger String: muss "${o.includes}" enthalten`:o.format==="regex"?`Ungültiger String: muss dem Muster ${o.pattern} entsprechen`:`Ungültig: ${n[o.format]??t.format}`}case"not_multiple_of":return`Ungültige Zahl: muss ein Vielfaches von ${t.divisor} sein`;case"unrecognized_keys":return`${t.keys.length>1?"Unbekannte Schlüssel":"Unbekannter Schlüssel"}: ${w(t.keys,", ")}`;case"invalid_key":return`Ungültiger Schlüssel in ${t.origin}`;case"invalid_union":return"Ungültige Eingabe";case"invalid_element":return`Ungültiger Wert in ${t.origin}`;default:return"Ungültige Eingabe"}}};function Ay(){return{localeError:aR()}}var sR=()=>{let e={string:{unit:"χαρακτήρες",verb:"να έχει"},file:{unit:"bytes",verb:"να έχει"},array:{unit:"στοιχεία",verb:"να έχει"},set:{unit:"στοιχεία",verb:"να έχει"},map:{unit:"καταχωρήσεις",verb:"να έχει"}};function r(t){return e[t]??null}let n={regex:"είσοδος",email:"διεύθυνση email",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO ημερομηνία και ώρα",date:"ISO ημερομηνία",time:"ISO ώρα",duration:"ISO διάρκεια",ipv4:"διεύθυνση IPv4",ipv6:"διεύθυνση IPv6",mac:"διεύθυνση MAC",cidrv4:"εύρος IPv4",cidrv6:"εύρος IPv6",base64:"συμβολοσειρά κωδικοποιημένη σε base64",base64url:"συμβολοσειρά κωδικοποιημένη σε base64url",json_string:"συμβολοσειρά JSON",e164:"αριθμός E.164",credit_card:"αριθμός πιστωτικής κάρτας",currency_code:"κωδικός νομίσματος",iban:"IBAN",jwt:"JWT",template_literal:"είσοδος"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return typeof t.expected=="string"&&/^[A-Z]/.test(t.expected)?`Μη έγκυρη είσοδος: αναμενόταν instanceof ${t.expected}, λήφθηκε ${s}`:`Μη έγκυρη είσοδος: αναμενόταν ${o}, λήφθηκε ${s}`}case"invalid_value":return t.values.length===1?`Μη έγκυρη είσοδος: αναμενόταν ${k(t.values[0])}`:`Μη έγκυρη επιλογή: αναμενόταν ένα από ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Πολύ μεγάλο: αναμενόταν ${t.origin??"τιμή"} να έχει ${o}${t.maximum.toString()} ${a.unit??"στοιχεία"}`:`Πολύ μεγάλο: αναμενόταν ${t.origin??"τιμή"} να είναι ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Πολύ μικρό: αναμενόταν ${t.origin} να έχει ${o}${t.minimum.toString()} ${a.unit}`:`Πολύ μικρό: αναμενόταν ${t.origin} να είναι ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Μη έγκυρη συμβολοσειρά: πρέπει να ξεκινά με "${o.prefix}"`:o.format==="ends_with"?`Μη έγκυρη συμβολοσειρά: πρέπει να τελειώνει με "${o.suffix}"`:o.format==="includes"?`Μη έγκυρη συμβολοσειρά: πρέπει να περιέχει "${o.includes}"`:o.format==="regex"?`Μη έγκυρη συμβολοσειρά: πρέπει να ταιριάζει με το μοτίβο ${o.pattern}`:`Μη έγκυρο: ${n[o.format]??t.format}`}case"not_multiple_of":return`Μη έγκυρος αριθμός: πρέπει να είναι πολλαπλάσιο του ${t.divisor}`;case"unrecognized_keys":return`Άγνωστ${t.keys.length>1?"α":"ο"} κλειδ${t.keys.length>1?"ιά":"ί"}: ${w(t.keys,", ")}`;case"invalid_key":return`Μη έγκυρο κλειδί στο ${t.origin}`;case"invalid_union":return"Μη έγκυρη είσοδος";case"invalid_element":return`Μη έγκυρη τιμή στο ${t.origin}`;default:return"Μη έγκυρη είσοδος"}}};function Ey(){return{localeError:sR()}}var uR=()=>{let e={string:{unit:"characters",verb:"to have"},file:{unit:"bytes",verb:"to have"},array:{unit:"items",verb:"to have"},set:{unit:"items",verb:"to have"},map:{unit:"entries",verb:"to have"}};function r(o){return e[o]??null}let n={regex:"input",email:"email address",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO datetime",date:"ISO date",time:"ISO time",duration:"ISO duration",ipv4:"IPv4 address",ipv6:"IPv6 address",mac:"MAC address",cidrv4:"IPv4 range",cidrv6:"IPv6 range",base64:"base64-encoded string",base64url:"base64url-encoded string",json_string:"JSON string",e164:"E.164 number",currency_code:"currency code",credit_card:"credit card number",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN"};function t(o,a){return o==="number"&&typeof a=="number"&&!Number.isFinite(a)?String(a):i[o]??o}return o=>{switch(o.code){case"invalid_type":{let a=t(o.expected),s=O(o.input),u=t(s,o.input);return`Invalid input: expected ${a}, received ${u}`}case"invalid_value":return o.values.length===1?`Invalid input: expected ${k(o.values[0])}`:`Invalid option: expected one of ${w(o.values,"|")}`;case"too_big":{let a=o.exact?"exactly ":o.inclusive?"<=":"<",s=r(o.origin);return s?`Too big: expected ${o.origin??"value"} to have ${a}${o.maximum.toString()} ${s.unit??"elements"}`:`Too big: expected ${o.origin??"value"} to be ${a}${o.maximum.toString()}`}case"too_small":{let a=o.exact?"exactly ":o.inclusive?">=":">",s=r(o.origin);return s?`Too small: expected ${o.origin} to have ${a}${o.minimum.toString()} ${s.unit}`:`Too small: expected ${o.origin} to be ${a}${o.minimum.toString()}`}case"invalid_format":{let a=o;return a.format==="starts_with"?`Invalid string: must start with "${a.prefix}"`:a.format==="ends_with"?`Invalid string: must end with "${a.suffix}"`:a.format==="includes"?`Invalid string: must include "${a.includes}"`:a.format==="regex"?`Invalid string: must match pattern ${a.pattern}`:`Invalid ${n[a.format]??o.format}`}case"not_multiple_of":return`Invalid number: must be a multiple of ${o.divisor}`;case"unrecognized_keys":return`Unrecognized key${o.keys.length>1?"s":""}: ${w(o.keys,", ")}`;case"invalid_key":return`Invalid key in ${o.origin}`;case"invalid_union":return o.options&&Array.isArray(o.options)&&o.options.length>0?`Invalid discriminator value. Expected ${o.options.map(s=>`'${s}'`).join(" | ")}`:o.inclusive===!1?"Invalid input: more than one option matched":"Invalid input";case"invalid_element":return`Invalid value in ${o.origin}`;default:return"Invalid input"}}};function Gs(){return{localeError:uR()}}var cR=()=>{let e={string:{unit:"karaktrojn",verb:"havi"},file:{unit:"bajtojn",verb:"havi"},array:{unit:"elementojn",verb:"havi"},set:{unit:"elementojn",verb:"havi"},map:{unit:"elementojn",verb:"havi"}};function r(t){return e[t]??null}let n={regex:"enigo",email:"retadreso",url:"URL",emoji:"emoĝio",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO-datotempo",date:"ISO-dato",time:"ISO-tempo",duration:"ISO-daŭro",ipv4:"IPv4-adreso",ipv6:"IPv6-adreso",mac:"MAC-adreso",cidrv4:"IPv4-rango",cidrv6:"IPv6-rango",base64:"64-ume kodita karaktraro",base64url:"URL-64-ume kodita karaktraro",json_string:"JSON-karaktraro",e164:"E.164-nombro",credit_card:"kreditkarta numero",currency_code:"valuta kodo",iban:"IBAN",jwt:"JWT",template_literal:"enigo"},i={nan:"NaN",number:"nombro",array:"tabelo",null:"senvalora"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Nevalida enigo: atendiĝis instanceof ${t.expected}, riceviĝis ${s}`:`Nevalida enigo: atendiĝis ${o}, riceviĝis ${s}`}case"invalid_value":return t.values.length===1?`Nevalida enigo: atendiĝis ${k(t.values[0])}`:`Nevalida opcio: atendiĝis unu el ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Tro granda: atendiĝis ke ${t.origin??"valoro"} havu ${o}${t.maximum.toString()} ${a.unit??"elementojn"}`:`Tro granda: atendiĝis ke ${t.origin??"valoro"} havu ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Tro malgranda: atendiĝis ke ${t.origin} havu ${o}${t.minimum.toString()} ${a.unit}`:`Tro malgranda: atendiĝis ke ${t.origin} estu ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Nevalida karaktraro: devas komenciĝi per "${o.prefix}"`:o.format==="ends_with"?`Nevalida karaktraro: devas finiĝi per "${o.suffix}"`:o.format==="includes"?`Nevalida karaktraro: devas inkluzivi "${o.includes}"`:o.format==="regex"?`Nevalida karaktraro: devas kongrui kun la modelo ${o.pattern}`:`Nevalida ${n[o.format]??t.format}`}case"not_multiple_of":return`Nevalida nombro: devas esti oblo de ${t.divisor}`;case"unrecognized_keys":return`Nekonata${t.keys.length>1?"j":""} ŝlosilo${t.keys.length>1?"j":""}: ${w(t.keys,", ")}`;case"invalid_key":return`Nevalida ŝlosilo en ${t.origin}`;case"invalid_union":return"Nevalida enigo";case"invalid_element":return`Nevalida valoro en ${t.origin}`;default:return"Nevalida enigo"}}};function Dy(){return{localeError:cR()}}var lR=()=>{let e={string:{unit:"caracteres",verb:"tener"},file:{unit:"bytes",verb:"tener"},array:{unit:"elementos",verb:"tener"},set:{unit:"elementos",verb:"tener"}};function r(t){return e[t]??null}let n={regex:"entrada",email:"dirección de correo electrónico",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"fecha y hora ISO",date:"fecha ISO",time:"hora ISO",duration:"duración ISO",ipv4:"dirección IPv4",ipv6:"dirección IPv6",mac:"dirección MAC",cidrv4:"rango IPv4",cidrv6:"rango IPv6",base64:"cadena codificada en base64",base64url:"URL codificada en base64",json_string:"cadena JSON",e164:"número E.164",credit_card:"número de tarjeta de crédito",currency_code:"código de moneda",iban:"IBAN",jwt:"JWT",template_literal:"entrada"},i={nan:"NaN",string:"texto",number:"número",boolean:"booleano",array:"arreglo",object:"objeto",set:"conjunto",file:"archivo",date:"fecha",bigint:"número grande",symbol:"símbolo",undefined:"indefinido",null:"nulo",function:"función",map:"mapa",record:"registro",tuple:"tupla",enum:"enumeración",union:"unión",literal:"literal",promise:"promesa",void:"vacío",never:"nunca",unknown:"desconocido",any:"cualquiera"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Entrada inválida: se esperaba instanceof ${t.expected}, recibido ${s}`:`Entrada inválida: se esperaba ${o}, recibido ${s}`}case"invalid_value":return t.values.length===1?`Entrada inválida: se esperaba ${k(t.values[0])}`:`Opción inválida: se esperaba una de ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin),s=i[t.origin]??t.origin;return a?`Demasiado grande: se esperaba que ${s??"valor"} tuviera ${o}${t.maximum.toString()} ${a.unit??"elementos"}`:`Demasiado grande: se esperaba que ${s??"valor"} fuera ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin),s=i[t.origin]??t.origin;return a?`Demasiado pequeño: se esperaba que ${s} tuviera ${o}${t.minimum.toString()} ${a.unit}`:`Demasiado pequeño: se esperaba que ${s} fuera ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Cadena inválida: debe comenzar con "${o.prefix}"`:o.format==="ends_with"?`Cadena inválida: debe terminar en "${o.suffix}"`:o.format==="includes"?`Cadena inválida: debe incluir "${o.includes}"`:o.format==="regex"?`Cadena inválida: debe coincidir con el patrón ${o.pattern}`:`Inválido ${n[o.format]??t.format}`}case"not_multiple_of":return`Número inválido: debe ser múltiplo de ${t.divisor}`;case"unrecognized_keys":return`Llave${t.keys.length>1?"s":""} desconocida${t.keys.length>1?"s":""}: ${w(t.keys,", ")}`;case"invalid_key":return`Llave inválida en ${i[t.origin]??t.origin}`;case"invalid_union":return"Entrada inválida";case"invalid_element":return`Valor inválido en ${i[t.origin]??t.origin}`;default:return"Entrada inválida"}}};function zy(){return{localeError:lR()}}var dR=()=>{let e={string:{unit:"کاراکتر",verb:"داشته باشد"},file:{unit:"بایت",verb:"داشته باشد"},array:{unit:"آیتم",verb:"داشته باشد"},set:{unit:"آیتم",verb:"داشته باشد"},map:{unit:"آیتم",verb:"داشته باشد"}};function r(t){return e[t]??null}let n={regex:"ورودی",email:"آدرس ایمیل",url:"URL",emoji:"ایموجی",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"تاریخ و زمان ایزو",date:"تاریخ ایزو",time:"زمان ایزو",duration:"مدت زمان ایزو",ipv4:"IPv4 آدرس",ipv6:"IPv6 آدرس",mac:"MAC آدرس",cidrv4:"IPv4 دامنه",cidrv6:"IPv6 دامنه",base64:"base64-encoded رشته",base64url:"base64url-encoded رشته",json_string:"JSON رشته",e164:"E.164 عدد",credit_card:"شماره کارت اعتباری",currency_code:"کد ارز",iban:"IBAN",jwt:"JWT",template_literal:"ورودی"},i={nan:"NaN",number:"عدد",array:"آرایه"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`ورودی نامعتبر: می‌بایست instanceof ${t.expected} می‌بود، ${s} دریافت شد`:`ورودی نامعتبر: می‌بایست ${o} می‌بود، ${s} دریافت شد`}case"invalid_value":return t.values.length===1?`ورودی نامعتبر: می‌بایست ${k(t.values[0])} می‌بود`:`گزینه نامعتبر: می‌بایست یکی از ${w(t.values,"|")} می‌بود`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`خیلی بزرگ: ${t.origin??"مقدار"} باید ${o}${t.maximum.toString()} ${a.unit??"عنصر"} باشد`:`خیلی بزرگ: ${t.origin??"مقدار"} باید ${o}${t.maximum.toString()} باشد`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`خیلی کوچک: ${t.origin} باید ${o}${t.minimum.toString()} ${a.unit} باشد`:`خیلی کوچک: ${t.origin} باید ${o}${t.minimum.toString()} باشد`}case"invalid_format":{let o=t;return o.format==="starts_with"?`رشته نامعتبر: باید با "${o.prefix}" شروع شود`:o.format==="ends_with"?`رشته نامعتبر: باید با "${o.suffix}" تمام شود`:o.format==="includes"?`رشته نامعتبر: باید شامل "${o.includes}" باشد`:o.format==="regex"?`رشته نامعتبر: باید با الگوی ${o.pattern} مطابقت داشته باشد`:`${n[o.format]??t.format} نامعتبر`}case"not_multiple_of":return`عدد نامعتبر: باید مضرب ${t.divisor} باشد`;case"unrecognized_keys":return`کلید${t.keys.length>1?"های":""} ناشناس: ${w(t.keys,", ")}`;case"invalid_key":return`کلید ناشناس در ${t.origin}`;case"invalid_union":return"ورودی نامعتبر";case"invalid_element":return`مقدار نامعتبر در ${t.origin}`;default:return"ورودی نامعتبر"}}};function qy(){return{localeError:dR()}}var fR=()=>{let e={string:{unit:"merkkiä",subject:"merkkijonon"},file:{unit:"tavua",subject:"tiedoston"},array:{unit:"alkiota",subject:"listan"},set:{unit:"alkiota",subject:"joukon"},map:{unit:"alkiota",subject:"kuvauksen"},number:{unit:"",subject:"luvun"},bigint:{unit:"",subject:"suuren kokonaisluvun"},int:{unit:"",subject:"kokonaisluvun"},date:{unit:"",subject:"päivämäärän"}};function r(t){return e[t]??null}let n={regex:"säännöllinen lauseke",email:"sähköpostiosoite",url:"URL-osoite",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO-aikaleima",date:"ISO-päivämäärä",time:"ISO-aika",duration:"ISO-kesto",ipv4:"IPv4-osoite",ipv6:"IPv6-osoite",mac:"MAC-osoite",cidrv4:"IPv4-alue",cidrv6:"IPv6-alue",base64:"base64-koodattu merkkijono",base64url:"base64url-koodattu merkkijono",json_string:"JSON-merkkijono",e164:"E.164-luku",credit_card:"luottokortin numero",currency_code:"valuuttakoodi",iban:"IBAN",jwt:"JWT",template_literal:"templaattimerkkijono"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Virheellinen tyyppi: odotettiin instanceof ${t.expected}, oli ${s}`:`Virheellinen tyyppi: odotettiin ${o}, oli ${s}`}case"invalid_value":return t.values.length===1?`Virheellinen syöte: täytyy olla ${k(t.values[0])}`:`Virheellinen valinta: täytyy olla yksi seuraavista: ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Liian suuri: ${a.subject} täytyy olla ${o}${t.maximum.toString()} ${a.unit}`.trim():`Liian suuri: arvon täytyy olla ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Liian pieni: ${a.subject} täytyy olla ${o}${t.minimum.toString()} ${a.unit}`.trim():`Liian pieni: arvon täytyy olla ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Virheellinen syöte: täytyy alkaa "${o.prefix}"`:o.format==="ends_with"?`Virheellinen syöte: täytyy loppua "${o.suffix}"`:o.format==="includes"?`Virheellinen syöte: täytyy sisältää "${o.includes}"`:o.format==="regex"?`Virheellinen syöte: täytyy vastata säännöllistä lauseketta ${o.pattern}`:`Virheellinen ${n[o.format]??t.format}`}case"not_multiple_of":return`Virheellinen luku: täytyy olla luvun ${t.divisor} monikerta`;case"unrecognized_keys":return`${t.keys.length>1?"Tuntemattomat avaimet":"Tuntematon avain"}: ${w(t.keys,", ")}`;case"invalid_key":return"Virheellinen avain tietueessa";case"invalid_union":return"Virheellinen unioni";case"invalid_element":return"Virheellinen arvo joukossa";default:return"Virheellinen syöte"}}};function Ty(){return{localeError:fR()}}var mR=()=>{let e={string:{unit:"caractères",verb:"avoir"},file:{unit:"octets",verb:"avoir"},array:{unit:"éléments",verb:"avoir"},set:{unit:"éléments",verb:"avoir"}};function r(t){return e[t]??null}let n={regex:"expression régulière",email:"adresse e-mail",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"date et heure ISO",date:"date ISO",time:"heure ISO",duration:"durée ISO",ipv4:"adresse IPv4",ipv6:"adresse IPv6",mac:"adresse MAC",cidrv4:"plage IPv4",cidrv6:"plage IPv6",base64:"chaîne de caractères encodée en base64",base64url:"chaîne de caractères encodée en base64url",json_string:"chaîne de caractères JSON",e164:"numéro au format E.164",credit_card:"numéro de carte de crédit",currency_code:"code de devise",iban:"IBAN",jwt:"JWT",template_literal:"entrée"},i={string:"chaîne de caractères",number:"nombre",int:"entier",boolean:"booléen",bigint:"grand entier",symbol:"symbole",undefined:"indéfini",null:"null",never:"jamais",void:"vide",date:"date",array:"tableau",object:"objet",tuple:"tuple",record:"record",map:"map",set:"ensemble",file:"fichier",nonoptional:"non optionnel",nan:"NaN",function:"fonction"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Entrée invalide : instance de ${t.expected} attendu, ${s} reçu`:`Entrée invalide : ${o} attendu, ${s} reçu`}case"invalid_value":return t.values.length===1?`Entrée invalide : ${k(t.values[0])} attendu`:`Option invalide : une valeur parmi ${w(t.values,"|")} attendue`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Trop grand : ${i[t.origin]??"valeur"} doit ${a.verb} ${o}${t.maximum.toString()} ${a.unit??"élément(s)"}`:`Trop grand : ${i[t.origin]??"valeur"} doit être ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Trop petit : ${i[t.origin]??"valeur"} doit ${a.verb} ${o}${t.minimum.toString()} ${a.unit}`:`Trop petit : ${i[t.origin]??"valeur"} doit être ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Chaîne de caractères invalide : doit commencer par "${o.prefix}"`:o.format==="ends_with"?`Chaîne de caractères invalide : doit se terminer par "${o.suffix}"`:o.format==="includes"?`Chaîne de caractères invalide : doit inclure "${o.includes}"`:o.format==="regex"?`Chaîne de caractères invalide : doit correspondre au motif ${o.pattern}`:`${n[o.format]??t.format} invalide`}case"not_multiple_of":return`Nombre invalide : doit être un multiple de ${t.divisor}`;case"unrecognized_keys":return`Clé${t.keys.length>1?"s":""} non reconnue${t.keys.length>1?"s":""} : ${w(t.keys,", ")}`;case"invalid_key":return`Clé invalide dans ${t.origin}`;case"invalid_union":return"Entrée invalide";case"invalid_element":return`Valeur invalide dans ${t.origin}`;default:return"Entrée invalide"}}};function jy(){return{localeError:mR()}}var pR=()=>{let e={string:{unit:"caractères",verb:"avoir"},file:{unit:"octets",verb:"avoir"},array:{unit:"éléments",verb:"avoir"},set:{unit:"éléments",verb:"avoir"},map:{unit:"éléments",verb:"avoir"}};function r(t){return e[t]??null}let n={regex:"entrée",email:"adresse courriel",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"date-heure ISO",date:"date ISO",time:"heure ISO",duration:"durée ISO",ipv4:"adresse IPv4",ipv6:"adresse IPv6",mac:"adresse MAC",cidrv4:"plage IPv4",cidrv6:"plage IPv6",base64:"chaîne encodée en base64",base64url:"chaîne encodée en base64url",json_string:"chaîne JSON",e164:"numéro E.164",credit_card:"numéro de carte de crédit",currency_code:"code de devise",iban:"IBAN",jwt:"JWT",template_literal:"entrée"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Entrée invalide : attendu instanceof ${t.expected}, reçu ${s}`:`Entrée invalide : attendu ${o}, reçu ${s}`}case"invalid_value":return t.values.length===1?`Entrée invalide : attendu ${k(t.values[0])}`:`Option invalide : attendu l'une des valeurs suivantes ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"≤":"<",a=r(t.origin);return a?`Trop grand : attendu que ${t.origin??"la valeur"} ait ${o}${t.maximum.toString()} ${a.unit}`:`Trop grand : attendu que ${t.origin??"la valeur"} soit ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?"≥":">",a=r(t.origin);return a?`Trop petit : attendu que ${t.origin} ait ${o}${t.minimum.toString()} ${a.unit}`:`Trop petit : attendu que ${t.origin} soit ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Chaîne invalide : doit commencer par "${o.prefix}"`:o.format==="ends_with"?`Chaîne invalide : doit se terminer par "${o.suffix}"`:o.format==="includes"?`Chaîne invalide : doit inclure "${o.includes}"`:o.format==="regex"?`Chaîne invalide : doit correspondre au motif ${o.pattern}`:`${n[o.format]??t.format} invalide`}case"not_multiple_of":return`Nombre invalide : doit être un multiple de ${t.divisor}`;case"unrecognized_keys":return`Clé${t.keys.length>1?"s":""} non reconnue${t.keys.length>1?"s":""} : ${w(t.keys,", ")}`;case"invalid_key":return`Clé invalide dans ${t.origin}`;case"invalid_union":return"Entrée invalide";case"invalid_element":return`Valeur invalide dans ${t.origin}`;default:return"Entrée invalide"}}};function Cy(){return{localeError:pR()}}var vR=()=>{let e={string:{unit:"અક્ષર",verb:"હોવા જોઈએ"},file:{unit:"બાયટ",verb:"હોવા જોઈએ"},array:{unit:"આઇટમ",verb:"હોવા જોઈએ"},set:{unit:"આઇટમ",verb:"હોવા જોઈએ"},map:{unit:"એન્ટ્રી",verb:"હોવા જોઈએ"}};function r(t){return e[t]??null}let n={regex:"ઇનપુટ",email:"ઈમેઇલ એડ્રેસ",url:"URL",emoji:"ઇમોજી",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO તારીખ અને સમય",date:"ISO તારીખ",time:"ISO સમય",duration:"ISO અવધિ",ipv4:"IPv4 એડ્રેસ",ipv6:"IPv6 એડ્રેસ",mac:"MAC એડ્રેસ",cidrv4:"IPv4 શ્રેણી",cidrv6:"IPv6 શ્રેણી",base64:"base64-એન્કોડેડ સ્ટ્રિંગ",base64url:"base64url-એન્કોડેડ સ્ટ્રિંગ",json_string:"JSON સ્ટ્રિંગ",e164:"E.164 નંબર",credit_card:"ક્રેડિટ કાર્ડ નંબર",currency_code:"ચલણ કોડ",iban:"IBAN",jwt:"JWT",template_literal:"ઇનપુટ"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return`અમાન્ય ઇનપુટ: અપેક્ષિત ${o}, પ્રાપ્ત ${s}`}case"invalid_value":return t.values.length===1?`અમાન્ય ઇનપુટ: અપેક્ષિત ${k(t.values[0])}`:`અમાન્ય વિકલ્પ: ${w(t.values," | ")} માધ્યમથી એક અપેક્ષિત`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`ખૂબ મોટું: ${t.origin??"મૂલ્ય"} ${o}${t.maximum.toString()} ${a.unit??"એલિમેન્ટ"} હોવા જોઈએ`:`ખૂબ મોટું: ${t.origin??"મૂલ્ય"} ${o}${t.maximum.toString()} હોવું જોઈએ`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`ખૂબ નાનું: ${t.origin} ${o}${t.minimum.toString()} ${a.unit} હોવા જોઈએ`:`ખૂબ નાનું: ${t.origin} ${o}${t.minimum.toString()} હોવું જોઈએ`}case"invalid_format":{let o=t;return o.format==="starts_with"?`અમાન્ય સ્ટ્રિંગ: "${o.prefix}" થી શરૂ થવું જોઈએ`:o.format==="ends_with"?`અમાન્ય સ્ટ્રિંગ: "${o.suffix}" પર સમાપ્ત થવું જોઈએ`:o.format==="includes"?`અમાન્ય સ્ટ્રિંગ: "${o.includes}" શામેલ હોવું જોઈએ`:o.format==="regex"?`અમાન્ય સ્ટ્રિંગ: પેટર્ન ${o.pattern} સાથે મેળ ખાવું જોઈએ`:`અમાન્ય ${n[o.format]??t.format}`}case"not_multiple_of":return`અમાન્ય નંબર: ${t.divisor} નો ગુણાંક હોવો જોઈએ`;case"unrecognized_keys":return`ઓળખી શકાતા નહીં તે કી${t.keys.length>1?"ઓ":""}: ${w(t.keys,", ")}`;case"invalid_key":return`${t.origin} માં અમાન્ય કી`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`અમાન્ય ડિસ્ક્રિમિનેટર મૂલ્ય. અપેક્ષિત ${t.options.map(a=>`'${a}'`).join(" | ")}`:"અમાન્ય ઇનપુટ";case"invalid_element":return`${t.origin} માં અમાન્ય મૂલ્ય`;default:return"અમાન્ય ઇનપુટ"}}};function Ry(){return{localeError:vR()}}var gR=()=>{let e={string:{label:"מחרוזת",gender:"f"},number:{label:"מספר",gender:"m"},boolean:{label:"ערך בוליאני",gender:"m"},bigint:{label:"BigInt",gender:"m"},date:{label:"תאריך",gender:"m"},array:{label:"מערך",gender:"m"},object:{label:"אובייקט",gender:"m"},null:{label:"ערך ריק (null)",gender:"m"},undefined:{label:"ערך לא מוגדר (undefined)",gender:"m"},symbol:{label:"סימבול (Symbol)",gender:"m"},function:{label:"פונקציה",gender:"f"},map:{label:"מפה (Map)",gender:"f"},set:{label:"קבוצה (Set)",gender:"f"},file:{label:"קובץ",gender:"m"},promise:{label:"Promise",gender:"m"},NaN:{label:"NaN",gender:"m"},unknown:{label:"ערך לא ידוע",gender:"m"},value:{label:"ערך",gender:"m"}},r={string:{unit:"תווים",shortLabel:"קצר",longLabel:"ארוך"},file:{unit:"בייטים",shortLabel:"קטן",longLabel:"גדול"},array:{unit:"פריטים",shortLabel:"קטן",longLabel:"גדול"},set:{unit:"פריטים",shortLabel:"קטן",longLabel:"גדול"},number:{unit:"",shortLabel:"קטן",longLabel:"גדול"}},n=c=>c?e[c]:void 0,i=c=>{let l=n(c);return l?l.label:c??e.unknown.label},t=c=>`ה${i(c)}`,o=c=>(n(c)?.gender??"m")==="f"?"צריכה להיות":"צריך להיות",a=c=>c?r[c]??null:null,s={regex:{label:"קלט",gender:"m"},email:{label:"כתובת אימייל",gender:"f"},url:{label:"כתובת רשת",gender:"f"},emoji:{label:"אימוג'י",gender:"m"},uuid:{label:"UUID",gender:"m"},uuidv4:{label:"UUIDv4",gender:"m"},uuidv6:{label:"UUIDv6",gender:"m"},nanoid:{label:"nanoid",gender:"m"},guid:{label:"GUID",gender:"m"},cuid:{label:"cuid",gender:"m"},cuid2:{label:"cuid2",gender:"m"},ulid:{label:"ULID",gender:"m"},xid:{label:"XID",gender:"m"},ksuid:{label:"KSUID",gender:"m"},datetime:{label:"תאריך וזמן ISO",gender:"m"},date:{label:"תאריך ISO",gender:"m"},time:{label:"זמן ISO",gender:"m"},duration:{label:"משך זמן ISO",gender:"m"},ipv4:{label:"כתובת IPv4",gender:"f"},ipv6:{label:"כתובת IPv6",gender:"f"},mac:{label:"כתובת MAC",gender:"f"},cidrv4:{label:"טווח IPv4",gender:"m"},cidrv6:{label:"טווח IPv6",gender:"m"},base64:{label:"מחרוזת בבסיס 64",gender:"f"},base64url:{label:"מחרוזת בבסיס 64 לכתובות רשת",gender:"f"},json_string:{label:"מחרוזת JSON",gender:"f"},e164:{label:"מספר E.164",gender:"m"},credit_card:{label:"מספר כרטיס אשראי",gender:"m"},currency_code:{label:"קוד מטבע",gender:"m"},iban:{label:"IBAN",gender:"m"},jwt:{label:"JWT",gender:"m"},template_literal:{label:"קלט",gender:"m"},ends_with:{label:"קלט",gender:"m"},includes:{label:"קלט",gender:"m"},lowercase:{label:"קלט",gender:"m"},starts_with:{label:"קלט",gender:"m"},uppercase:{label:"קלט",gender:"m"}},u={nan:"NaN"};return c=>{switch(c.code){case"invalid_type":{let l=c.expected,d=u[l??""]??i(l),f=O(c.input),m=u[f]??e[f]?.label??f;return/^[A-Z]/.test(c.expected)?`קלט לא תקין: צריך להיות instanceof ${c.expected}, התקבל ${m}`:`קלט לא תקין: צריך להיות ${d}, התקבל ${m}`}case"invalid_value":{if(c.values.length===1)return`ערך לא תקין: הערך חייב להיות ${k(c.values[0])}`;let l=c.values.map(m=>k(m));if(c.values.length===2)return`ערך לא תקין: האפשרויות המתאימות הן ${l[0]} או ${l[1]}`;let d=l[l.length-1];return`ערך לא תקין: האפשרויות המתאימות הן ${l.slice(0,-1).join(", ")} או ${d}`}case"too_big":{let l=a(c.origin),d=t(c.origin??"value");if(c.origin==="string")return`${l?.longLabel??"ארוך"} מדי: ${d} צריכה להכיל ${c.maximum.toString()} ${l?.unit??""} ${c.inclusive?"או פחות":"לכל היותר"}`.trim();if(c.origin==="number"){let g=c.inclusive?`קטן או שווה ל-${c.maximum}`:`קטן מ-${c.maximum}`;return`גדול מדי: ${d} צריך להיות ${g}`}if(c.origin==="array"||c.origin==="set"){let g=c.origin==="set"?"צריכה":"צריך",h=c.inclusive?`${c.maximum} ${l?.unit??""} או פחות`:`פחות מ-${c.maximum} ${l?.unit??""}`;return`גדול מדי: ${d} ${g} להכיל ${h}`.trim()}let f=c.inclusive?"<=":"<",m=o(c.origin??"value");return l?.unit?`${l.longLabel} מדי: ${d} ${m} ${f}${c.maximum.toString()} ${l.unit}`:`${l?.longLabel??"גדול"} מדי: ${d} ${m} ${f}${c.maximum.toString()}`}case"too_small":{let l=a(c.origin),d=t(c.origin??"value");if(c.origin==="string")return`${l?.shortLabel??"קצר"} מדי: ${d} צריכה להכיל ${c.minimum.toString()} ${l?.unit??""} ${c.inclusive?"או יותר":"לפחות"}`.trim();if(c.origin==="number"){let g=c.inclusive?`גדול או שווה ל-${c.minimum}`:`גדול מ-${c.minimum}`;return`קטן מדי: ${d} צריך להיות ${g}`}if(c.origin==="array"||c.origin==="set"){let g=c.origin==="set"?"צריכה":"צריך";if(c.minimum===1&&c.inclusive){let b=(c.origin==="set","לפחות פריט אחד");return`קטן מדי: ${d} ${g} להכיל ${b}`}let h=c.inclusive?`${c.minimum} ${l?.unit??""} או יותר`:`יותר מ-${c.minimum} ${l?.unit??""}`;return`קטן מדי: ${d} ${g} להכיל ${h}`.trim()}let f=c.inclusive?">=":">",m=o(c.origin??"value");return l?.unit?`${l.shortLabel} מדי: ${d} ${m} ${f}${c.minimum.toString()} ${l.unit}`:`${l?.shortLabel??"קטן"} מדי: ${d} ${m} ${f}${c.minimum.toString()}`}case"invalid_format":{let l=c;if(l.format==="starts_with")return`המחרוזת חייבת להתחיל ב "${l.prefix}"`;if(l.format==="ends_with")return`המחרוזת חייבת להסתיים ב "${l.suffix}"`;if(l.format==="includes")return`המחרוזת חייבת לכלול "${l.includes}"`;if(l.format==="regex")return`המחרוזת חייבת להתאים לתבנית ${l.pattern}`;let d=s[l.format],f=d?.label??l.format,g=(d?.gender??"m")==="f"?"תקינה":"תקין";return`${f} לא ${g}`}case"not_multiple_of":return`מספר לא תקין: חייב להיות מכפלה של ${c.divisor}`;case"unrecognized_keys":return`מפתח${c.keys.length>1?"ות":""} לא מזוה${c.keys.length>1?"ים":"ה"}: ${w(c.keys,", ")}`;case"invalid_key":return"שדה לא תקין באובייקט";case"invalid_union":return"קלט לא תקין";case"invalid_element":return`ערך לא תקין ב${t(c.origin??"array")}`;default:return"קלט לא תקין"}}};function Uy(){return{localeError:gR()}}var hR=()=>{let e={string:{unit:"अक्षर",verb:"रखने के लिए"},file:{unit:"बाइट्स",verb:"रखने के लिए"},array:{unit:"तत्व",verb:"रखने के लिए"},set:{unit:"तत्व",verb:"रखने के लिए"},map:{unit:"प्रविष्टियाँ",verb:"रखने के लिए"}};function r(t){return e[t]??null}let n={regex:"इनपुट",email:"ईमेल पता",url:"URL",emoji:"इमोजी",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO तिथि और समय",date:"ISO तिथि",time:"ISO समय",duration:"ISO अवधि",ipv4:"IPv4 पता",ipv6:"IPv6 पता",mac:"MAC पता",cidrv4:"IPv4 श्रेणी",cidrv6:"IPv6 श्रेणी",base64:"Base64-एन्कोडेड स्ट्रिंग",base64url:"Base64URL-एन्कोडेड स्ट्रिंग",json_string:"JSON स्ट्रिंग",e164:"E.164 संख्या",credit_card:"क्रेडिट कार्ड संख्या",currency_code:"मुद्रा कोड",iban:"IBAN",jwt:"JWT",template_literal:"इनपुट"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return`अमान्य इनपुट: अपेक्षित ${o}, प्राप्त ${s}`}case"invalid_value":return t.values.length===1?`अमान्य इनपुट: अपेक्षित ${k(t.values[0])}`:`अमान्य विकल्प: अपेक्षित मानों में से एक ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`बहुत बड़ा: अपेक्षित था कि ${t.origin??"मान"} में ${o}${t.maximum} ${a.unit} हों`:`बहुत बड़ा: अपेक्षित था कि ${t.origin??"मान"} ${o}${t.maximum} हो`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`बहुत छोटा: अपेक्षित था कि ${t.origin} में ${o}${t.minimum} ${a.unit} हों`:`बहुत छोटा: अपेक्षित था कि ${t.origin} ${o}${t.minimum} हो`}case"invalid_format":{let o=t;return o.format==="starts_with"?`अमान्य स्ट्रिंग: "${o.prefix}" से शुरू होना चाहिए`:o.format==="ends_with"?`अमान्य स्ट्रिंग: "${o.suffix}" पर समाप्त होना चाहिए`:o.format==="includes"?`अमान्य स्ट्रिंग: इसमें "${o.includes}" शामिल होना चाहिए`:o.format==="regex"?`अमान्य स्ट्रिंग: पैटर्न ${o.pattern} से मेल खाना चाहिए`:`अमान्य ${n[o.format]??t.format}`}case"not_multiple_of":return`अमान्य संख्या: यह ${t.divisor} का गुणज होना चाहिए`;case"unrecognized_keys":return`अपरिचित कुंजी${t.keys.length>1?"याँ":""}: ${w(t.keys,", ")}`;case"invalid_key":return`अमान्य कुंजी: ${t.origin} में`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`अमान्य डिस्क्रिमिनेटर मान: अपेक्षित ${t.options.map(a=>`'${a}'`).join(" | ")}`:"अमान्य इनपुट";case"invalid_element":return`अमान्य मान: ${t.origin} में`;default:return"अमान्य इनपुट"}}};function Fy(){return{localeError:hR()}}var yR=()=>{let e={string:{unit:"znakova",verb:"imati"},file:{unit:"bajtova",verb:"imati"},array:{unit:"stavki",verb:"imati"},set:{unit:"stavki",verb:"imati"}};function r(t){return e[t]??null}let n={regex:"unos",email:"email adresa",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO datum i vrijeme",date:"ISO datum",time:"ISO vrijeme",duration:"ISO trajanje",ipv4:"IPv4 adresa",ipv6:"IPv6 adresa",mac:"MAC adresa",cidrv4:"IPv4 raspon",cidrv6:"IPv6 raspon",base64:"base64 kodirani tekst",base64url:"base64url kodirani tekst",json_string:"JSON tekst",e164:"E.164 broj",credit_card:"broj kreditne kartice",currency_code:"kod valute",iban:"IBAN",jwt:"JWT",template_literal:"unos"},i={nan:"NaN",string:"tekst",number:"broj",boolean:"boolean",array:"niz",object:"objekt",set:"skup",file:"datoteka",date:"datum",bigint:"bigint",symbol:"simbol",undefined:"undefined",null:"null",function:"funkcija",map:"mapa"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Neispravan unos: očekuje se instanceof ${t.expected}, a primljeno je ${s}`:`Neispravan unos: očekuje se ${o}, a primljeno je ${s}`}case"invalid_value":return t.values.length===1?`Neispravna vrijednost: očekivano ${k(t.values[0])}`:`Neispravna opcija: očekivano jedno od ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin),s=i[t.origin]??t.origin;return a?`Preveliko: očekivano da ${s??"vrijednost"} ima ${o}${t.maximum.toString()} ${a.unit??"elemenata"}`:`Preveliko: očekivano da ${s??"vrijednost"} bude ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin),s=i[t.origin]??t.origin;return a?`Premalo: očekivano da ${s} ima ${o}${t.minimum.toString()} ${a.unit}`:`Premalo: očekivano da ${s} bude ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Neispravan tekst: mora započinjati s "${o.prefix}"`:o.format==="ends_with"?`Neispravan tekst: mora završavati s "${o.suffix}"`:o.format==="includes"?`Neispravan tekst: mora sadržavati "${o.includes}"`:o.format==="regex"?`Neispravan tekst: mora odgovarati uzorku ${o.pattern}`:`Neispravna ${n[o.format]??t.format}`}case"not_multiple_of":return`Neispravan broj: mora biti višekratnik od ${t.divisor}`;case"unrecognized_keys":return`Neprepoznat${t.keys.length>1?"i ključevi":" ključ"}: ${w(t.keys,", ")}`;case"invalid_key":return`Neispravan ključ u ${i[t.origin]??t.origin}`;case"invalid_union":return"Neispravan unos";case"invalid_element":return`Neispravna vrijednost u ${i[t.origin]??t.origin}`;default:return"Neispravan unos"}}};function My(){return{localeError:yR()}}var bR=()=>{let e={string:{unit:"karakter",verb:"legyen"},file:{unit:"byte",verb:"legyen"},array:{unit:"elem",verb:"legyen"},set:{unit:"elem",verb:"legyen"},map:{unit:"elem",verb:"legyen"}};function r(t){return e[t]??null}let n={regex:"bemenet",email:"email cím",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO időbélyeg",date:"ISO dátum",time:"ISO idő",duration:"ISO időintervallum",ipv4:"IPv4 cím",ipv6:"IPv6 cím",mac:"MAC cím",cidrv4:"IPv4 tartomány",cidrv6:"IPv6 tartomány",base64:"base64-kódolt string",base64url:"base64url-kódolt string",json_string:"JSON string",e164:"E.164 szám",credit_card:"hitelkártyaszám",currency_code:"pénznemkód",iban:"IBAN",jwt:"JWT",template_literal:"bemenet"},i={nan:"NaN",number:"szám",array:"tömb"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Érvénytelen bemenet: a várt érték instanceof ${t.expected}, a kapott érték ${s}`:`Érvénytelen bemenet: a várt érték ${o}, a kapott érték ${s}`}case"invalid_value":return t.values.length===1?`Érvénytelen bemenet: a várt érték ${k(t.values[0])}`:`Érvénytelen opció: valamelyik érték várt ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Túl nagy: ${t.origin??"érték"} mérete túl nagy ${o}${t.maximum.toString()} ${a.unit??"elem"}`:`Túl nagy: a bemeneti érték ${t.origin??"érték"} túl nagy: ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Túl kicsi: a bemeneti érték ${t.origin} mérete túl kicsi ${o}${t.minimum.toString()} ${a.unit}`:`Túl kicsi: a bemeneti érték ${t.origin} túl kicsi ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Érvénytelen string: "${o.prefix}" értékkel kell kezdődnie`:o.format==="ends_with"?`Érvénytelen string: "${o.suffix}" értékkel kell végződnie`:o.format==="includes"?`Érvénytelen string: "${o.includes}" értéket kell tartalmaznia`:o.format==="regex"?`Érvénytelen string: ${o.pattern} mintának kell megfelelnie`:`Érvénytelen ${n[o.format]??t.format}`}case"not_multiple_of":return`Érvénytelen szám: ${t.divisor} többszörösének kell lennie`;case"unrecognized_keys":return`Ismeretlen kulcs${t.keys.length>1?"s":""}: ${w(t.keys,", ")}`;case"invalid_key":return`Érvénytelen kulcs ${t.origin}`;case"invalid_union":return"Érvénytelen bemenet";case"invalid_element":return`Érvénytelen érték: ${t.origin}`;default:return"Érvénytelen bemenet"}}};function Ly(){return{localeError:bR()}}function Zy(e,r,n){return Math.abs(e)===1?r:n}function ui(e){if(!e)return"";let r=["ա","ե","ը","ի","ո","ու","օ"],n=e[e.length-1];return e+(r.includes(n)?"ն":"ը")}var $R=()=>{let e={string:{unit:{one:"նշան",many:"նշաններ"},verb:"ունենալ"},file:{unit:{one:"բայթ",many:"բայթեր"},verb:"ունենալ"},array:{unit:{one:"տարր",many:"տարրեր"},verb:"ունենալ"},set:{unit:{one:"տարր",many:"տարրեր"},verb:"ունենալ"},map:{unit:{one:"տարր",many:"տարրեր"},verb:"ունենալ"}};function r(t){return e[t]??null}let n={regex:"մուտք",email:"էլ. հասցե",url:"URL",emoji:"էմոջի",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO ամսաթիվ և ժամ",date:"ISO ամսաթիվ",time:"ISO ժամ",duration:"ISO տևողություն",ipv4:"IPv4 հասցե",ipv6:"IPv6 հասցե",mac:"MAC հասցե",cidrv4:"IPv4 միջակայք",cidrv6:"IPv6 միջակայք",base64:"base64 ձևաչափով տող",base64url:"base64url ձևաչափով տող",json_string:"JSON տող",e164:"E.164 համար",credit_card:"կրեդիտ քարտի համար",currency_code:"արժույթի կոդ",iban:"IBAN",jwt:"JWT",template_literal:"մուտք"},i={nan:"NaN",number:"թիվ",array:"զանգված"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Սխալ մուտքագրում․ սպասվում էր instanceof ${t.expected}, ստացվել է ${s}`:`Սխալ մուտքագրում․ սպասվում էր ${o}, ստացվել է ${s}`}case"invalid_value":return t.values.length===1?`Սխալ մուտքագրում․ սպասվում էր ${k(t.values[1])}`:`Սխալ տարբերակ․ սպասվում էր հետևյալներից մեկը՝ ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);if(a){let s=Number(t.maximum),u=Zy(s,a.unit.one,a.unit.many);return`Չափազանց մեծ արժեք․ սպասվում է, որ ${ui(t.origin??"արժեք")} կունենա ${o}${t.maximum.toString()} ${u}`}return`Չափազանց մեծ արժեք․ սպասվում է, որ ${ui(t.origin??"արժեք")} լինի ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);if(a){let s=Number(t.minimum),u=Zy(s,a.unit.one,a.unit.many);return`Չափազանց փոքր արժեք․ սպասվում է, որ ${ui(t.origin)} կունենա ${o}${t.minimum.toString()} ${u}`}return`Չափազանց փոքր արժեք․ սպասվում է, որ ${ui(t.origin)} լինի ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Սխալ տող․ պետք է սկսվի "${o.prefix}"-ով`:o.format==="ends_with"?`Սխալ տող․ պետք է ավարտվի "${o.suffix}"-ով`:o.format==="includes"?`Սխալ տող․ պետք է պարունակի "${o.includes}"`:o.format==="regex"?`Սխալ տող․ պետք է համապատասխանի ${o.pattern} ձևաչափին`:`Սխալ ${n[o.format]??t.format}`}case"not_multiple_of":return`Սխալ թիվ․ պետք է բազմապատիկ լինի ${t.divisor}-ի`;case"unrecognized_keys":return`Չճանաչված բանալի${t.keys.length>1?"ներ":""}. ${w(t.keys,", ")}`;case"invalid_key":return`Սխալ բանալի ${ui(t.origin)}-ում`;case"invalid_union":return"Սխալ մուտքագրում";case"invalid_element":return`Սխալ արժեք ${ui(t.origin)}-ում`;default:return"Սխալ մուտքագրում"}}};function Vy(){return{localeError:$R()}}var _R=()=>{let e={string:{unit:"karakter",verb:"memiliki"},file:{unit:"byte",verb:"memiliki"},array:{unit:"item",verb:"memiliki"},set:{unit:"item",verb:"memiliki"},map:{unit:"item",verb:"memiliki"}};function r(t){return e[t]??null}let n={regex:"input",email:"alamat email",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"tanggal dan waktu format ISO",date:"tanggal format ISO",time:"jam format ISO",duration:"durasi format ISO",ipv4:"alamat IPv4",ipv6:"alamat IPv6",mac:"alamat MAC",cidrv4:"rentang alamat IPv4",cidrv6:"rentang alamat IPv6",base64:"string dengan enkode base64",base64url:"string dengan enkode base64url",json_string:"string JSON",e164:"angka E.164",credit_card:"nomor kartu kredit",currency_code:"kode mata uang",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Input tidak valid: diharapkan instanceof ${t.expected}, diterima ${s}`:`Input tidak valid: diharapkan ${o}, diterima ${s}`}case"invalid_value":return t.values.length===1?`Input tidak valid: diharapkan ${k(t.values[0])}`:`Pilihan tidak valid: diharapkan salah satu dari ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Terlalu besar: diharapkan ${t.origin??"value"} memiliki ${o}${t.maximum.toString()} ${a.unit??"elemen"}`:`Terlalu besar: diharapkan ${t.origin??"value"} menjadi ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Terlalu kecil: diharapkan ${t.origin} memiliki ${o}${t.minimum.toString()} ${a.unit}`:`Terlalu kecil: diharapkan ${t.origin} menjadi ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`String tidak valid: harus dimulai dengan "${o.prefix}"`:o.format==="ends_with"?`String tidak valid: harus berakhir dengan "${o.suffix}"`:o.format==="includes"?`String tidak valid: harus menyertakan "${o.includes}"`:o.format==="regex"?`String tidak valid: harus sesuai pola ${o.pattern}`:`${n[o.format]??t.format} tidak valid`}case"not_multiple_of":return`Angka tidak valid: harus kelipatan dari ${t.divisor}`;case"unrecognized_keys":return`Kunci tidak dikenali ${t.keys.length>1?"s":""}: ${w(t.keys,", ")}`;case"invalid_key":return`Kunci tidak valid di ${t.origin}`;case"invalid_union":return"Input tidak valid";case"invalid_element":return`Nilai tidak valid di ${t.origin}`;default:return"Input tidak valid"}}};function By(){return{localeError:_R()}}var wR=()=>{let e={string:{unit:"stafi",verb:"að hafa"},file:{unit:"bæti",verb:"að hafa"},array:{unit:"hluti",verb:"að hafa"},set:{unit:"hluti",verb:"að hafa"},map:{unit:"hluti",verb:"að hafa"}};function r(t){return e[t]??null}let n={regex:"gildi",email:"netfang",url:"vefslóð",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO dagsetning og tími",date:"ISO dagsetning",time:"ISO tími",duration:"ISO tímalengd",ipv4:"IPv4 address",ipv6:"IPv6 address",mac:"MAC address",cidrv4:"IPv4 range",cidrv6:"IPv6 range",base64:"base64-encoded strengur",base64url:"base64url-encoded strengur",json_string:"JSON strengur",e164:"E.164 tölugildi",credit_card:"kreditkortanúmer",currency_code:"gjaldmiðilskóði",iban:"IBAN",jwt:"JWT",template_literal:"gildi"},i={nan:"NaN",number:"númer",array:"fylki"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Rangt gildi: Þú slóst inn ${s} þar sem á að vera instanceof ${t.expected}`:`Rangt gildi: Þú slóst inn ${s} þar sem á að vera ${o}`}case"invalid_value":return t.values.length===1?`Rangt gildi: gert ráð fyrir ${k(t.values[0])}`:`Ógilt val: má vera eitt af eftirfarandi ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Of stórt: gert er ráð fyrir að ${t.origin??"gildi"} hafi ${o}${t.maximum.toString()} ${a.unit??"hluti"}`:`Of stórt: gert er ráð fyrir að ${t.origin??"gildi"} sé ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Of lítið: gert er ráð fyrir að ${t.origin} hafi ${o}${t.minimum.toString()} ${a.unit}`:`Of lítið: gert er ráð fyrir að ${t.origin} sé ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ógildur strengur: verður að byrja á "${o.prefix}"`:o.format==="ends_with"?`Ógildur strengur: verður að enda á "${o.suffix}"`:o.format==="includes"?`Ógildur strengur: verður að innihalda "${o.includes}"`:o.format==="regex"?`Ógildur strengur: verður að fylgja mynstri ${o.pattern}`:`Rangt ${n[o.format]??t.format}`}case"not_multiple_of":return`Röng tala: verður að vera margfeldi af ${t.divisor}`;case"unrecognized_keys":return`Óþekkt ${t.keys.length>1?"ir lyklar":"ur lykill"}: ${w(t.keys,", ")}`;case"invalid_key":return`Rangur lykill í ${t.origin}`;case"invalid_union":return"Rangt gildi";case"invalid_element":return`Rangt gildi í ${t.origin}`;default:return"Rangt gildi"}}};function Wy(){return{localeError:wR()}}var SR=()=>{let e={string:{unit:"caratteri",verb:"avere"},file:{unit:"byte",verb:"avere"},array:{unit:"elementi",verb:"avere"},set:{unit:"elementi",verb:"avere"},map:{unit:"elementi",verb:"avere"}};function r(t){return e[t]??null}let n={regex:"input",email:"indirizzo email",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"data e ora ISO",date:"data ISO",time:"ora ISO",duration:"durata ISO",ipv4:"indirizzo IPv4",ipv6:"indirizzo IPv6",mac:"indirizzo MAC",cidrv4:"intervallo IPv4",cidrv6:"intervallo IPv6",base64:"stringa codificata in base64",base64url:"URL codificata in base64",json_string:"stringa JSON",e164:"numero E.164",credit_card:"numero di carta di credito",currency_code:"codice valuta",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN",number:"numero",array:"vettore"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Input non valido: atteso instanceof ${t.expected}, ricevuto ${s}`:`Input non valido: atteso ${o}, ricevuto ${s}`}case"invalid_value":return t.values.length===1?`Input non valido: atteso ${k(t.values[0])}`:`Opzione non valida: atteso uno tra ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Troppo grande: ${t.origin??"valore"} deve avere ${o}${t.maximum.toString()} ${a.unit??"elementi"}`:`Troppo grande: ${t.origin??"valore"} deve essere ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Troppo piccolo: ${t.origin} deve avere ${o}${t.minimum.toString()} ${a.unit}`:`Troppo piccolo: ${t.origin} deve essere ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Stringa non valida: deve iniziare con "${o.prefix}"`:o.format==="ends_with"?`Stringa non valida: deve terminare con "${o.suffix}"`:o.format==="includes"?`Stringa non valida: deve includere "${o.includes}"`:o.format==="regex"?`Stringa non valida: deve corrispondere al pattern ${o.pattern}`:`Input non valido: ${n[o.format]??t.format}`}case"not_multiple_of":return`Numero non valido: deve essere un multiplo di ${t.divisor}`;case"unrecognized_keys":return`Chiav${t.keys.length>1?"i":"e"} non riconosciut${t.keys.length>1?"e":"a"}: ${w(t.keys,", ")}`;case"invalid_key":return`Chiave non valida in ${t.origin}`;case"invalid_union":return"Input non valido";case"invalid_element":return`Valore non valido in ${t.origin}`;default:return"Input non valido"}}};function Gy(){return{localeError:SR()}}var IR=()=>{let e={string:{unit:"文字",verb:"である"},file:{unit:"バイト",verb:"である"},array:{unit:"要素",verb:"である"},set:{unit:"要素",verb:"である"},map:{unit:"要素",verb:"である"}};function r(t){return e[t]??null}let n={regex:"入力値",email:"メールアドレス",url:"URL",emoji:"絵文字",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO日時",date:"ISO日付",time:"ISO時刻",duration:"ISO期間",ipv4:"IPv4アドレス",ipv6:"IPv6アドレス",mac:"MACアドレス",cidrv4:"IPv4範囲",cidrv6:"IPv6範囲",base64:"base64エンコード文字列",base64url:"base64urlエンコード文字列",json_string:"JSON文字列",e164:"E.164番号",credit_card:"クレジットカード番号",currency_code:"通貨コード",iban:"IBAN",jwt:"JWT",template_literal:"入力値"},i={nan:"NaN",number:"数値",array:"配列"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`無効な入力: instanceof ${t.expected}が期待されましたが、${s}が入力されました`:`無効な入力: ${o}が期待されましたが、${s}が入力されました`}case"invalid_value":return t.values.length===1?`無効な入力: ${k(t.values[0])}が期待されました`:`無効な選択: ${w(t.values,"、")}のいずれかである必要があります`;case"too_big":{let o=t.inclusive?"以下である":"より小さい",a=r(t.origin);return a?`大きすぎる値: ${t.origin??"値"}は${t.maximum.toString()}${a.unit??"要素"}${o}必要があります`:`大きすぎる値: ${t.origin??"値"}は${t.maximum.toString()}${o}必要があります`}case"too_small":{let o=t.inclusive?"以上である":"より大きい",a=r(t.origin);return a?`小さすぎる値: ${t.origin}は${t.minimum.toString()}${a.unit}${o}必要があります`:`小さすぎる値: ${t.origin}は${t.minimum.toString()}${o}必要があります`}case"invalid_format":{let o=t;return o.format==="starts_with"?`無効な文字列: "${o.prefix}"で始まる必要があります`:o.format==="ends_with"?`無効な文字列: "${o.suffix}"で終わる必要があります`:o.format==="includes"?`無効な文字列: "${o.includes}"を含む必要があります`:o.format==="regex"?`無効な文字列: パターン${o.pattern}に一致する必要があります`:`無効な${n[o.format]??t.format}`}case"not_multiple_of":return`無効な数値: ${t.divisor}の倍数である必要があります`;case"unrecognized_keys":return`認識されていないキー${t.keys.length>1?"群":""}: ${w(t.keys,"、")}`;case"invalid_key":return`${t.origin}内の無効なキー`;case"invalid_union":return"無効な入力";case"invalid_element":return`${t.origin}内の無効な値`;default:return"無効な入力"}}};function Hy(){return{localeError:IR()}}var kR=()=>{let e={string:{unit:"სიმბოლო",verb:"უნდა შეიცავდეს"},file:{unit:"ბაიტი",verb:"უნდა შეიცავდეს"},array:{unit:"ელემენტი",verb:"უნდა შეიცავდეს"},set:{unit:"ელემენტი",verb:"უნდა შეიცავდეს"},map:{unit:"ელემენტი",verb:"უნდა შეიცავდეს"}};function r(t){return e[t]??null}let n={regex:"შეყვანა",email:"ელ-ფოსტის მისამართი",url:"URL",emoji:"ემოჯი",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"თარიღი-დრო",date:"თარიღი",time:"დრო",duration:"ხანგრძლივობა",ipv4:"IPv4 მისამართი",ipv6:"IPv6 მისამართი",mac:"MAC მისამართი",cidrv4:"IPv4 დიაპაზონი",cidrv6:"IPv6 დიაპაზონი",base64:"base64-კოდირებული ველი",base64url:"base64url-კოდირებული ველი",json_string:"JSON ველი",e164:"E.164 ნომერი",credit_card:"საკრედიტო ბარათის ნომერი",currency_code:"ვალუტის კოდი",iban:"IBAN",jwt:"JWT",template_literal:"შეყვანა"},i={nan:"NaN",number:"რიცხვი",string:"ველი",boolean:"ბულეანი",function:"ფუნქცია",array:"მასივი"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`არასწორი შეყვანა: მოსალოდნელი instanceof ${t.expected}, მიღებული ${s}`:`არასწორი შეყვანა: მოსალოდნელი ${o}, მიღებული ${s}`}case"invalid_value":return t.values.length===1?`არასწორი შეყვანა: მოსალოდნელი ${k(t.values[0])}`:`არასწორი ვარიანტი: მოსალოდნელია ერთ-ერთი ${w(t.values,"|")}-დან`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`ზედმეტად დიდი: მოსალოდნელი ${t.origin??"მნიშვნელობა"} ${a.verb} ${o}${t.maximum.toString()} ${a.unit}`:`ზედმეტად დიდი: მოსალოდნელი ${t.origin??"მნიშვნელობა"} იყოს ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`ზედმეტად პატარა: მოსალოდნელი ${t.origin} ${a.verb} ${o}${t.minimum.toString()} ${a.unit}`:`ზედმეტად პატარა: მოსალოდნელი ${t.origin} იყოს ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`არასწორი ველი: უნდა იწყებოდეს "${o.prefix}"-ით`:o.format==="ends_with"?`არასწორი ველი: უნდა მთავრდებოდეს "${o.suffix}"-ით`:o.format==="includes"?`არასწორი ველი: უნდა შეიცავდეს "${o.includes}"-ს`:o.format==="regex"?`არასწორი ველი: უნდა შეესაბამებოდეს შაბლონს ${o.pattern}`:`არასწორი ${n[o.format]??t.format}`}case"not_multiple_of":return`არასწორი რიცხვი: უნდა იყოს ${t.divisor}-ის ჯერადი`;case"unrecognized_keys":return`უცნობი გასაღებ${t.keys.length>1?"ები":"ი"}: ${w(t.keys,", ")}`;case"invalid_key":return`არასწორი გასაღები ${t.origin}-ში`;case"invalid_union":return"არასწორი შეყვანა";case"invalid_element":return`არასწორი მნიშვნელობა ${t.origin}-ში`;default:return"არასწორი შეყვანა"}}};function Ky(){return{localeError:kR()}}var OR=()=>{let e={string:{unit:"តួអក្សរ",verb:"គួរមាន"},file:{unit:"បៃ",verb:"គួរមាន"},array:{unit:"ធាតុ",verb:"គួរមាន"},set:{unit:"ធាតុ",verb:"គួរមាន"},map:{unit:"ធាតុ",verb:"គួរមាន"}};function r(t){return e[t]??null}let n={regex:"ទិន្នន័យបញ្ចូល",email:"អាសយដ្ឋានអ៊ីមែល",url:"URL",emoji:"សញ្ញាអារម្មណ៍",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"កាលបរិច្ឆេទ និងម៉ោង ISO",date:"កាលបរិច្ឆេទ ISO",time:"ម៉ោង ISO",duration:"រយៈពេល ISO",ipv4:"អាសយដ្ឋាន IPv4",ipv6:"អាសយដ្ឋាន IPv6",mac:"អាសយដ្ឋាន MAC",cidrv4:"ដែនអាសយដ្ឋាន IPv4",cidrv6:"ដែនអាសយដ្ឋាន IPv6",base64:"ខ្សែអក្សរអ៊ិកូដ base64",base64url:"ខ្សែអក្សរអ៊ិកូដ base64url",json_string:"ខ្សែអក្សរ JSON",e164:"លេខ E.164",credit_card:"លេខប័ណ្ណឥណទាន",currency_code:"កូដរូបិយប័ណ្ណ",iban:"IBAN",jwt:"JWT",template_literal:"ទិន្នន័យបញ្ចូល"},i={nan:"NaN",number:"លេខ",array:"អារេ (Array)",null:"គ្មានតម្លៃ (null)"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`ទិន្នន័យបញ្ចូលមិនត្រឹមត្រូវ៖ ត្រូវការ instanceof ${t.expected} ប៉ុន្តែទទួលបាន ${s}`:`ទិន្នន័យបញ្ចូលមិនត្រឹមត្រូវ៖ ត្រូវការ ${o} ប៉ុន្តែទទួលបាន ${s}`}case"invalid_value":return t.values.length===1?`ទិន្នន័យបញ្ចូលមិនត្រឹមត្រូវ៖ ត្រូវការ ${k(t.values[0])}`:`ជម្រើសមិនត្រឹមត្រូវ៖ ត្រូវជាមួយក្នុងចំណោម ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`ធំពេក៖ ត្រូវការ ${t.origin??"តម្លៃ"} ${o} ${t.maximum.toString()} ${a.unit??"ធាតុ"}`:`ធំពេក៖ ត្រូវការ ${t.origin??"តម្លៃ"} ${o} ${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`តូចពេក៖ ត្រូវការ ${t.origin} ${o} ${t.minimum.toString()} ${a.unit}`:`តូចពេក៖ ត្រូវការ ${t.origin} ${o} ${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`ខ្សែអក្សរមិនត្រឹមត្រូវ៖ ត្រូវចាប់ផ្តើមដោយ "${o.prefix}"`:o.format==="ends_with"?`ខ្សែអក្សរមិនត្រឹមត្រូវ៖ ត្រូវបញ្ចប់ដោយ "${o.suffix}"`:o.format==="includes"?`ខ្សែអក្សរមិនត្រឹមត្រូវ៖ ត្រូវមាន "${o.includes}"`:o.format==="regex"?`ខ្សែអក្សរមិនត្រឹមត្រូវ៖ ត្រូវតែផ្គូផ្គងនឹងទម្រង់ដែលបានកំណត់ ${o.pattern}`:`មិនត្រឹមត្រូវ៖ ${n[o.format]??t.format}`}case"not_multiple_of":return`លេខមិនត្រឹមត្រូវ៖ ត្រូវតែជាពហុគុណនៃ ${t.divisor}`;case"unrecognized_keys":return`រកឃើញសោមិនស្គាល់៖ ${w(t.keys,", ")}`;case"invalid_key":return`សោមិនត្រឹមត្រូវនៅក្នុង ${t.origin}`;case"invalid_union":return"ទិន្នន័យមិនត្រឹមត្រូវ";case"invalid_element":return`ទិន្នន័យមិនត្រឹមត្រូវនៅក្នុង ${t.origin}`;default:return"ទិន្នន័យមិនត្រឹមត្រូវ"}}};function Hs(){return{localeError:OR()}}function Jy(){return Hs()}var NR=()=>{let e={string:{unit:"ಅಕ್ಷರಗಳು",verb:"ಹೊಂದಲು"},file:{unit:"ಬೈಟ್‌ಗಳು",verb:"ಹೊಂದಲು"},array:{unit:"ವಸ್ತುಗಳು",verb:"ಹೊಂದಲು"},set:{unit:"ವಸ್ತುಗಳು",verb:"ಹೊಂದಲು"},map:{unit:"entries",verb:"ಹೊಂದಲು"}};function r(t){return e[t]??null}let n={regex:"ಇನ್ಪುಟ್",email:"email ವಿಳಾಸ",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO ದಿನಾಂಕದ ಸಮಯ",date:"ISO ದಿನಾಂಕ",time:"ISO ಸಮಯ",duration:"ISO ಅವಧಿ",ipv4:"IPv4 ವಿಳಾಸ",ipv6:"IPv6 ವಿಳಾಸ",mac:"MAC ವಿಳಾಸ",cidrv4:"IPv4 ವ್ಯಾಪ್ತಿಯ",cidrv6:"IPv6 ವ್ಯಾಪ್ತಿಯ",base64:"base64-encodedಸ್ಟ್ರಿಂಗ್",base64url:"base64url-encodedಸ್ಟ್ರಿಂಗ್",json_string:"JSONಸ್ಟ್ರಿಂಗ್",e164:"E.164 ಸಂಖ್ಯೆ",credit_card:"ಕ್ರೆಡಿಟ್ ಕಾರ್ಡ್ ಸಂಖ್ಯೆ",currency_code:"ಕರೆನ್ಸಿ ಕೋಡ್",iban:"IBAN",jwt:"JWT",template_literal:"ಇನ್ಪುಟ್"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return`ಅಮಾನ್ಯ ಇನ್‌ಪುಟ್: ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${o}, ಸ್ವೀಕರಿಸಿದನು ${s}`}case"invalid_value":return t.values.length===1?`ಅಮಾನ್ಯ ಇನ್‌ಪುಟ್: ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${k(t.values[0])}`:`ಅಮಾನ್ಯ ಆಯ್ಕೆ: ಇವುಗಳಲ್ಲಿ ಒಂದನ್ನು ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`ತುಂಬಾ ದೊಡ್ಡದು: ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${t.origin??"value"} ಹೊಂದಲು ${o}${t.maximum.toString()} ${a.unit??"ಅಂಶಗಳು"}`:`ತುಂಬಾ ದೊಡ್ಡದು: ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${t.origin??"value"} ಎಂದು ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`ತುಂಬಾ ಚಿಕ್ಕದು: ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${t.origin} ಹೊಂದಲು ${o}${t.minimum.toString()} ${a.unit}`:`ತುಂಬಾ ಚಿಕ್ಕದು: ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${t.origin} ಎಂದು ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`ಅಮಾನ್ಯವಾದ ಸ್ಟ್ರಿಂಗ್: ಇದರೊಂದಿಗೆ ಪ್ರಾರಂಭಿಸಬೇಕು "${o.prefix}"`:o.format==="ends_with"?`ಅಮಾನ್ಯವಾದ ಸ್ಟ್ರಿಂಗ್: ಇದರೊಂದಿಗೆ ಕೊನೆಗೊಳ್ಳಬೇಕು "${o.suffix}"`:o.format==="includes"?`ಅಮಾನ್ಯ ಸ್ಟ್ರಿಂಗ್: ಒಳಗೊಂಡಿರಬೇಕು "${o.includes}"`:o.format==="regex"?`ಅಮಾನ್ಯವಾದ ಸ್ಟ್ರಿಂಗ್: ಮಾದರಿಗೆ ಹೊಂದಿಕೆಯಾಗಬೇಕು ${o.pattern}`:`ಅಮಾನ್ಯ ${n[o.format]??t.format}`}case"not_multiple_of":return`ಅಮಾನ್ಯ ಸಂಖ್ಯೆ: ಬಹುಸಂಖ್ಯೆಯಾಗಿರಬೇಕು ${t.divisor}`;case"unrecognized_keys":return`ಗುರುತಿಸಲಾಗದ ಕೀ ${t.keys.length>1?"s":""}: ${w(t.keys,", ")}`;case"invalid_key":return`ಅಮಾನ್ಯವಾದ ಕೀ ಇನ್ ${t.origin}`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`ಅಮಾನ್ಯ ತಾರತಮ್ಯ ಮೌಲ್ಯ. ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${t.options.map(a=>`'${a}'`).join(" | ")}`:"ಅಮಾನ್ಯ ಇನ್‌ಪುಟ್";case"invalid_element":return`ರಲ್ಲಿ ಅಮಾನ್ಯ ಮೌಲ್ಯ ${t.origin}`;default:return"ಅಮಾನ್ಯ ಇನ್‌ಪುಟ್"}}};function Xy(){return{localeError:NR()}}var PR=()=>{let e={string:{unit:"문자",verb:"to have"},file:{unit:"바이트",verb:"to have"},array:{unit:"개",verb:"to have"},set:{unit:"개",verb:"to have"},map:{unit:"개",verb:"to have"}};function r(t){return e[t]??null}let n={regex:"입력",email:"이메일 주소",url:"URL",emoji:"이모지",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO 날짜시간",date:"ISO 날짜",time:"ISO 시간",duration:"ISO 기간",ipv4:"IPv4 주소",ipv6:"IPv6 주소",mac:"MAC 주소",cidrv4:"IPv4 범위",cidrv6:"IPv6 범위",base64:"base64 인코딩 문자열",base64url:"base64url 인코딩 문자열",json_string:"JSON 문자열",e164:"E.164 번호",credit_card:"신용카드 번호",currency_code:"통화 코드",iban:"IBAN",jwt:"JWT",template_literal:"입력"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`잘못된 입력: 예상 타입은 instanceof ${t.expected}, 받은 타입은 ${s}입니다`:`잘못된 입력: 예상 타입은 ${o}, 받은 타입은 ${s}입니다`}case"invalid_value":return t.values.length===1?`잘못된 입력: 값은 ${k(t.values[0])} 이어야 합니다`:`잘못된 옵션: ${w(t.values,"또는 ")} 중 하나여야 합니다`;case"too_big":{let o=t.inclusive?"이하":"미만",a=o==="미만"?"이어야 합니다":"여야 합니다",s=r(t.origin),u=s?.unit??"요소";return s?`${t.origin??"값"}이 너무 큽니다: ${t.maximum.toString()}${u} ${o}${a}`:`${t.origin??"값"}이 너무 큽니다: ${t.maximum.toString()} ${o}${a}`}case"too_small":{let o=t.inclusive?"이상":"초과",a=o==="이상"?"이어야 합니다":"여야 합니다",s=r(t.origin),u=s?.unit??"요소";return s?`${t.origin??"값"}이 너무 작습니다: ${t.minimum.toString()}${u} ${o}${a}`:`${t.origin??"값"}이 너무 작습니다: ${t.minimum.toString()} ${o}${a}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`잘못된 문자열: "${o.prefix}"(으)로 시작해야 합니다`:o.format==="ends_with"?`잘못된 문자열: "${o.suffix}"(으)로 끝나야 합니다`:o.format==="includes"?`잘못된 문자열: "${o.includes}"을(를) 포함해야 합니다`:o.format==="regex"?`잘못된 문자열: 정규식 ${o.pattern} 패턴과 일치해야 합니다`:`잘못된 ${n[o.format]??t.format}`}case"not_multiple_of":return`잘못된 숫자: ${t.divisor}의 배수여야 합니다`;case"unrecognized_keys":return`인식할 수 없는 키: ${w(t.keys,", ")}`;case"invalid_key":return`잘못된 키: ${t.origin}`;case"invalid_union":return"잘못된 입력";case"invalid_element":return`잘못된 값: ${t.origin}`;default:return"잘못된 입력"}}};function Qy(){return{localeError:PR()}}var Zo=e=>e.charAt(0).toUpperCase()+e.slice(1);function Yy(e){let r=Math.abs(e),n=r%10,i=r%100;return i>=11&&i<=19||n===0?"many":n===1?"one":"few"}var xR=()=>{let e={string:{unit:{one:"simbolis",few:"simboliai",many:"simbolių"},verb:{smaller:{inclusive:"turi būti ne ilgesnė kaip",notInclusive:"turi būti trumpesnė kaip"},bigger:{inclusive:"turi būti ne trumpesnė kaip",notInclusive:"turi būti ilgesnė kaip"}}},file:{unit:{one:"baitas",few:"baitai",many:"baitų"},verb:{smaller:{inclusive:"turi būti ne didesnis kaip",notInclusive:"turi būti mažesnis kaip"},bigger:{inclusive:"turi būti ne mažesnis kaip",notInclusive:"turi būti didesnis kaip"}}},array:{unit:{one:"elementą",few:"elementus",many:"elementų"},verb:{smaller:{inclusive:"turi turėti ne daugiau kaip",notInclusive:"turi turėti mažiau kaip"},bigger:{inclusive:"turi turėti ne mažiau kaip",notInclusive:"turi turėti daugiau kaip"}}},set:{unit:{one:"elementą",few:"elementus",many:"elementų"},verb:{smaller:{inclusive:"turi turėti ne daugiau kaip",notInclusive:"turi turėti mažiau kaip"},bigger:{inclusive:"turi turėti ne mažiau kaip",notInclusive:"turi turėti daugiau kaip"}}}};function r(t,o,a,s){let u=e[t]??null;return u===null?u:{unit:u.unit[o],verb:u.verb[s][a?"inclusive":"notInclusive"]}}let n={regex:"įvestis",email:"el. pašto adresas",url:"URL",emoji:"jaustukas",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO data ir laikas",date:"ISO data",time:"ISO laikas",duration:"ISO trukmė",ipv4:"IPv4 adresas",ipv6:"IPv6 adresas",mac:"MAC adresas",cidrv4:"IPv4 tinklo prefiksas (CIDR)",cidrv6:"IPv6 tinklo prefiksas (CIDR)",base64:"base64 užkoduota eilutė",base64url:"base64url užkoduota eilutė",json_string:"JSON eilutė",e164:"E.164 numeris",credit_card:"kredito kortelės numeris",currency_code:"valiutos kodas",iban:"IBAN",jwt:"JWT",template_literal:"įvestis"},i={nan:"NaN",number:"skaičius",bigint:"sveikasis skaičius",string:"eilutė",boolean:"loginė reikšmė",undefined:"neapibrėžta reikšmė",function:"funkcija",symbol:"simbolis",array:"masyvas",object:"objektas",null:"nulinė reikšmė"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Gautas tipas ${s}, o tikėtasi - instanceof ${t.expected}`:`Gautas tipas ${s}, o tikėtasi - ${o}`}case"invalid_value":return t.values.length===1?`Privalo būti ${k(t.values[0])}`:`Privalo būti vienas iš ${w(t.values,"|")} pasirinkimų`;case"too_big":{let o=i[t.origin]??t.origin,a=r(t.origin,Yy(Number(t.maximum)),t.inclusive??!1,"smaller");if(a?.verb)return`${Zo(o??t.origin??"reikšmė")} ${a.verb} ${t.maximum.toString()} ${a.unit??"elementų"}`;let s=t.inclusive?"ne didesnis kaip":"mažesnis kaip";return`${Zo(o??t.origin??"reikšmė")} turi būti ${s} ${t.maximum.toString()} ${a?.unit}`}case"too_small":{let o=i[t.origin]??t.origin,a=r(t.origin,Yy(Number(t.minimum)),t.inclusive??!1,"bigger");if(a?.verb)return`${Zo(o??t.origin??"reikšmė")} ${a.verb} ${t.minimum.toString()} ${a.unit??"elementų"}`;let s=t.inclusive?"ne mažesnis kaip":"didesnis kaip";return`${Zo(o??t.origin??"reikšmė")} turi būti ${s} ${t.minimum.toString()} ${a?.unit}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Eilutė privalo prasidėti "${o.prefix}"`:o.format==="ends_with"?`Eilutė privalo pasibaigti "${o.suffix}"`:o.format==="includes"?`Eilutė privalo įtraukti "${o.includes}"`:o.format==="regex"?`Eilutė privalo atitikti ${o.pattern}`:`Neteisingas ${n[o.format]??t.format}`}case"not_multiple_of":return`Skaičius privalo būti ${t.divisor} kartotinis.`;case"unrecognized_keys":return`Neatpažint${t.keys.length>1?"i":"as"} rakt${t.keys.length>1?"ai":"as"}: ${w(t.keys,", ")}`;case"invalid_key":return"Rastas klaidingas raktas";case"invalid_union":return"Klaidinga įvestis";case"invalid_element":{let o=i[t.origin]??t.origin;return`${Zo(o??t.origin??"reikšmė")} turi klaidingą įvestį`}default:return"Klaidinga įvestis"}}};function eb(){return{localeError:xR()}}var AR=()=>{let e={string:{unit:"знаци",verb:"да имаат"},file:{unit:"бајти",verb:"да имаат"},array:{unit:"ставки",verb:"да имаат"},set:{unit:"ставки",verb:"да имаат"},map:{unit:"ставки",verb:"да имаат"}};function r(t){return e[t]??null}let n={regex:"внес",email:"адреса на е-пошта",url:"URL",emoji:"емоџи",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO датум и време",date:"ISO датум",time:"ISO време",duration:"ISO времетраење",ipv4:"IPv4 адреса",ipv6:"IPv6 адреса",mac:"MAC адреса",cidrv4:"IPv4 опсег",cidrv6:"IPv6 опсег",base64:"base64-енкодирана низа",base64url:"base64url-енкодирана низа",json_string:"JSON низа",e164:"E.164 број",credit_card:"број на кредитна картичка",currency_code:"код на валута",iban:"IBAN",jwt:"JWT",template_literal:"внес"},i={nan:"NaN",number:"број",array:"низа"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Грешен внес: се очекува instanceof ${t.expected}, примено ${s}`:`Грешен внес: се очекува ${o}, примено ${s}`}case"invalid_value":return t.values.length===1?`Invalid input: expected ${k(t.values[0])}`:`Грешана опција: се очекува една ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Премногу голем: се очекува ${t.origin??"вредноста"} да има ${o}${t.maximum.toString()} ${a.unit??"елементи"}`:`Премногу голем: се очекува ${t.origin??"вредноста"} да биде ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Премногу мал: се очекува ${t.origin} да има ${o}${t.minimum.toString()} ${a.unit}`:`Премногу мал: се очекува ${t.origin} да биде ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Неважечка низа: мора да започнува со "${o.prefix}"`:o.format==="ends_with"?`Неважечка низа: мора да завршува со "${o.suffix}"`:o.format==="includes"?`Неважечка низа: мора да вклучува "${o.includes}"`:o.format==="regex"?`Неважечка низа: мора да одгоара на патернот ${o.pattern}`:`Invalid ${n[o.format]??t.format}`}case"not_multiple_of":return`Грешен број: мора да биде делив со ${t.divisor}`;case"unrecognized_keys":return`${t.keys.length>1?"Непрепознаени клучеви":"Непрепознаен клуч"}: ${w(t.keys,", ")}`;case"invalid_key":return`Грешен клуч во ${t.origin}`;case"invalid_union":return"Грешен внес";case"invalid_element":return`Грешна вредност во ${t.origin}`;default:return"Грешен внес"}}};function rb(){return{localeError:AR()}}var ER=()=>{let e={string:{unit:"aksara",verb:"mempunyai"},file:{unit:"bait",verb:"mempunyai"},array:{unit:"elemen",verb:"mempunyai"},set:{unit:"elemen",verb:"mempunyai"},map:{unit:"elemen",verb:"mempunyai"}};function r(t){return e[t]??null}let n={regex:"input",email:"alamat e-mel",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"tarikh masa ISO",date:"tarikh ISO",time:"masa ISO",duration:"tempoh ISO",ipv4:"alamat IPv4",ipv6:"alamat IPv6",mac:"alamat MAC",cidrv4:"julat IPv4",cidrv6:"julat IPv6",base64:"string dikodkan base64",base64url:"string dikodkan base64url",json_string:"string JSON",e164:"nombor E.164",credit_card:"nombor kad kredit",currency_code:"kod mata wang",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN",number:"nombor"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Input tidak sah: dijangka instanceof ${t.expected}, diterima ${s}`:`Input tidak sah: dijangka ${o}, diterima ${s}`}case"invalid_value":return t.values.length===1?`Input tidak sah: dijangka ${k(t.values[0])}`:`Pilihan tidak sah: dijangka salah satu daripada ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Terlalu besar: dijangka ${t.origin??"nilai"} ${a.verb} ${o}${t.maximum.toString()} ${a.unit??"elemen"}`:`Terlalu besar: dijangka ${t.origin??"nilai"} adalah ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Terlalu kecil: dijangka ${t.origin} ${a.verb} ${o}${t.minimum.toString()} ${a.unit}`:`Terlalu kecil: dijangka ${t.origin} adalah ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`String tidak sah: mesti bermula dengan "${o.prefix}"`:o.format==="ends_with"?`String tidak sah: mesti berakhir dengan "${o.suffix}"`:o.format==="includes"?`String tidak sah: mesti mengandungi "${o.includes}"`:o.format==="regex"?`String tidak sah: mesti sepadan dengan corak ${o.pattern}`:`${n[o.format]??t.format} tidak sah`}case"not_multiple_of":return`Nombor tidak sah: perlu gandaan ${t.divisor}`;case"unrecognized_keys":return`Kunci tidak dikenali: ${w(t.keys,", ")}`;case"invalid_key":return`Kunci tidak sah dalam ${t.origin}`;case"invalid_union":return"Input tidak sah";case"invalid_element":return`Nilai tidak sah dalam ${t.origin}`;default:return"Input tidak sah"}}};function tb(){return{localeError:ER()}}var DR=()=>{let e={string:{unit:"अक्षर",verb:"हुनुपर्छ"},file:{unit:"बाइट",verb:"हुनुपर्छ"},array:{unit:"तत्व",verb:"हुनुपर्छ"},set:{unit:"तत्व",verb:"हुनुपर्छ"},map:{unit:"प्रविष्टि",verb:"हुनुपर्छ"}};function r(t){return e[t]??null}let n={regex:"इनपुट",email:"इमेल ठेगाना",url:"URL",emoji:"इमोजी",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO मिति र समय",date:"ISO मिति",time:"ISO समय",duration:"ISO अवधि",ipv4:"IPv4 ठेगाना",ipv6:"IPv6 ठेगाना",mac:"MAC ठेगाना",cidrv4:"IPv4 दायरा",cidrv6:"IPv6 दायरा",base64:"base64-इन्कोड गरिएको स्ट्रिङ",base64url:"base64url-इन्कोड गरिएको स्ट्रिङ",json_string:"JSON स्ट्रिङ",e164:"E.164 नम्बर",credit_card:"क्रेडिट कार्ड नम्बर",currency_code:"मुद्रा कोड",iban:"IBAN",jwt:"JWT",template_literal:"इनपुट"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return`अमान्य इनपुट: अपेक्षित ${o}, प्राप्त ${s}`}case"invalid_value":return t.values.length===1?`अमान्य इनपुट: अपेक्षित ${k(t.values[0])}`:`अमान्य विकल्प: अपेक्षित मानहरू मध्ये एक ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`धेरै ठूलो: ${t.origin??"मान"} मा ${o}${t.maximum.toString()} ${a.unit} ${a.verb}`:`धेरै ठूलो: ${t.origin??"मान"} ${o}${t.maximum.toString()} हुनुपर्छ`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`धेरै सानो: ${t.origin} मा ${o}${t.minimum.toString()} ${a.unit} ${a.verb}`:`धेरै सानो: ${t.origin} ${o}${t.minimum.toString()} हुनुपर्छ`}case"invalid_format":{let o=t;return o.format==="starts_with"?`अमान्य स्ट्रिङ: "${o.prefix}" बाट सुरु हुनुपर्छ`:o.format==="ends_with"?`अमान्य स्ट्रिङ: "${o.suffix}" मा समाप्त हुनुपर्छ`:o.format==="includes"?`अमान्य स्ट्रिङ: "${o.includes}" समावेश हुनुपर्छ`:o.format==="regex"?`अमान्य स्ट्रिङ: ढाँचा ${o.pattern} सँग मेल खानुपर्छ`:`अमान्य ${n[o.format]??t.format}`}case"not_multiple_of":return`अमान्य संख्या: ${t.divisor} को गुणज हुनुपर्छ`;case"unrecognized_keys":return`अपरिचित कुञ्जी${t.keys.length>1?"हरू":""}: ${w(t.keys,", ")}`;case"invalid_key":return`अमान्य कुञ्जी: ${t.origin} मा`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`अमान्य डिस्क्रिमिनेटर मान: अपेक्षित ${t.options.map(a=>`'${a}'`).join(" | ")}`:"अमान्य इनपुट";case"invalid_element":return`अमान्य मान: ${t.origin} मा`;default:return"अमान्य इनपुट"}}};function nb(){return{localeError:DR()}}var zR=()=>{let e={string:{unit:"tekens",verb:"heeft"},file:{unit:"bytes",verb:"heeft"},array:{unit:"elementen",verb:"heeft"},set:{unit:"elementen",verb:"heeft"},map:{unit:"elementen",verb:"heeft"}};function r(t){return e[t]??null}let n={regex:"invoer",email:"emailadres",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO datum en tijd",date:"ISO datum",time:"ISO tijd",duration:"ISO duur",ipv4:"IPv4-adres",ipv6:"IPv6-adres",mac:"MAC-adres",cidrv4:"IPv4-bereik",cidrv6:"IPv6-bereik",base64:"base64-gecodeerde tekst",base64url:"base64 URL-gecodeerde tekst",json_string:"JSON string",e164:"E.164-nummer",credit_card:"creditcardnummer",currency_code:"valutacode",iban:"IBAN",jwt:"JWT",template_literal:"invoer"},i={nan:"NaN",number:"getal"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ongeldige invoer: verwacht instanceof ${t.expected}, ontving ${s}`:`Ongeldige invoer: verwacht ${o}, ontving ${s}`}case"invalid_value":return t.values.length===1?`Ongeldige invoer: verwacht ${k(t.values[0])}`:`Ongeldige optie: verwacht één van ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin),s=t.origin==="date"?"laat":t.origin==="string"?"lang":"groot";return a?`Te ${s}: verwacht dat ${t.origin??"waarde"} ${o}${t.maximum.toString()} ${a.unit??"elementen"} ${a.verb}`:`Te ${s}: verwacht dat ${t.origin??"waarde"} ${o}${t.maximum.toString()} is`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin),s=t.origin==="date"?"vroeg":t.origin==="string"?"kort":"klein";return a?`Te ${s}: verwacht dat ${t.origin} ${o}${t.minimum.toString()} ${a.unit} ${a.verb}`:`Te ${s}: verwacht dat ${t.origin} ${o}${t.minimum.toString()} is`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ongeldige tekst: moet met "${o.prefix}" beginnen`:o.format==="ends_with"?`Ongeldige tekst: moet op "${o.suffix}" eindigen`:o.format==="includes"?`Ongeldige tekst: moet "${o.includes}" bevatten`:o.format==="regex"?`Ongeldige tekst: moet overeenkomen met patroon ${o.pattern}`:`Ongeldig: ${n[o.format]??t.format}`}case"not_multiple_of":return`Ongeldig getal: moet een veelvoud van ${t.divisor} zijn`;case"unrecognized_keys":return`Onbekende key${t.keys.length>1?"s":""}: ${w(t.keys,", ")}`;case"invalid_key":return`Ongeldige key in ${t.origin}`;case"invalid_union":return"Ongeldige invoer";case"invalid_element":return`Ongeldige waarde in ${t.origin}`;default:return"Ongeldige invoer"}}};function ib(){return{localeError:zR()}}var qR=()=>{let e={string:{unit:"teikn",verb:"å ha"},file:{unit:"bytes",verb:"å ha"},array:{unit:"element",verb:"å innehalde"},set:{unit:"element",verb:"å innehalde"},map:{unit:"element",verb:"å innehalde"}};function r(t){return e[t]??null}let n={regex:"input",email:"e-postadresse",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO dato- og klokkeslett",date:"ISO-dato",time:"ISO-klokkeslett",duration:"ISO-varigheit",ipv4:"IPv4-adresse",ipv6:"IPv6-adresse",mac:"MAC-adresse",cidrv4:"IPv4-spekter",cidrv6:"IPv6-spekter",base64:"base64-enkoda streng",base64url:"base64url-enkoda streng",json_string:"JSON-streng",e164:"E.164-nummer",credit_card:"kredittkortnummer",currency_code:"valutakode",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN",number:"tal",array:"liste"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ugyldig input: forventa instanceof ${t.expected}, fekk ${s}`:`Ugyldig input: forventa ${o}, fekk ${s}`}case"invalid_value":return t.values.length===1?`Ugyldig verdi: forventa ${k(t.values[0])}`:`Ugyldig val: forventa eitt av ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`For stor(t): forventa ${t.origin??"value"} til å ha ${o}${t.maximum.toString()} ${a.unit??"element"}`:`For stor(t): forventa ${t.origin??"value"} til å ha ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`For lite(n): forventa ${t.origin} til å ha ${o}${t.minimum.toString()} ${a.unit}`:`For lite(n): forventa ${t.origin} til å ha ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ugyldig streng: må starte med "${o.prefix}"`:o.format==="ends_with"?`Ugyldig streng: må slutte med "${o.suffix}"`:o.format==="includes"?`Ugyldig streng: må innehalde "${o.includes}"`:o.format==="regex"?`Ugyldig streng: må matche mønsteret ${o.pattern}`:`Ugyldig ${n[o.format]??t.format}`}case"not_multiple_of":return`Ugyldig tal: må vere eit multiplum av ${t.divisor}`;case"unrecognized_keys":return`${t.keys.length>1?"Ukjende nøklar":"Ukjend nøkkel"}: ${w(t.keys,", ")}`;case"invalid_key":return`Ugyldig nøkkel i ${t.origin}`;case"invalid_union":return"Ugyldig input";case"invalid_element":return`Ugyldig verdi i ${t.origin}`;default:return"Ugyldig input"}}};function ob(){return{localeError:qR()}}var TR=()=>{let e={string:{unit:"tegn",verb:"å ha"},file:{unit:"bytes",verb:"å ha"},array:{unit:"elementer",verb:"å inneholde"},set:{unit:"elementer",verb:"å inneholde"},map:{unit:"elementer",verb:"å inneholde"}};function r(t){return e[t]??null}let n={regex:"input",email:"e-postadresse",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO dato- og klokkeslett",date:"ISO-dato",time:"ISO-klokkeslett",duration:"ISO-varighet",ipv4:"IPv4-adresse",ipv6:"IPv6-adresse",mac:"MAC-adresse",cidrv4:"IPv4-spekter",cidrv6:"IPv6-spekter",base64:"base64-enkodet streng",base64url:"base64url-enkodet streng",json_string:"JSON-streng",e164:"E.164-nummer",credit_card:"kredittkortnummer",currency_code:"valutakode",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN",number:"tall",array:"liste"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ugyldig input: forventet instanceof ${t.expected}, fikk ${s}`:`Ugyldig input: forventet ${o}, fikk ${s}`}case"invalid_value":return t.values.length===1?`Ugyldig verdi: forventet ${k(t.values[0])}`:`Ugyldig valg: forventet en av ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`For stor(t): forventet ${t.origin??"value"} til å ha ${o}${t.maximum.toString()} ${a.unit??"elementer"}`:`For stor(t): forventet ${t.origin??"value"} til å ha ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`For lite(n): forventet ${t.origin} til å ha ${o}${t.minimum.toString()} ${a.unit}`:`For lite(n): forventet ${t.origin} til å ha ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ugyldig streng: må starte med "${o.prefix}"`:o.format==="ends_with"?`Ugyldig streng: må ende med "${o.suffix}"`:o.format==="includes"?`Ugyldig streng: må inneholde "${o.includes}"`:o.format==="regex"?`Ugyldig streng: må matche mønsteret ${o.pattern}`:`Ugyldig ${n[o.format]??t.format}`}case"not_multiple_of":return`Ugyldig tall: må være et multiplum av ${t.divisor}`;case"unrecognized_keys":return`${t.keys.length>1?"Ukjente nøkler":"Ukjent nøkkel"}: ${w(t.keys,", ")}`;case"invalid_key":return`Ugyldig nøkkel i ${t.origin}`;case"invalid_union":return"Ugyldig input";case"invalid_element":return`Ugyldig verdi i ${t.origin}`;default:return"Ugyldig input"}}};function ab(){return{localeError:TR()}}var jR=()=>{let e={string:{unit:"harf",verb:"olmalıdır"},file:{unit:"bayt",verb:"olmalıdır"},array:{unit:"unsur",verb:"olmalıdır"},set:{unit:"unsur",verb:"olmalıdır"},map:{unit:"unsur",verb:"olmalıdır"}};function r(t){return e[t]??null}let n={regex:"giren",email:"epostagâh",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO hengâmı",date:"ISO tarihi",time:"ISO zamanı",duration:"ISO müddeti",ipv4:"IPv4 nişânı",ipv6:"IPv6 nişânı",mac:"MAC nişânı",cidrv4:"IPv4 menzili",cidrv6:"IPv6 menzili",base64:"base64-şifreli metin",base64url:"base64url-şifreli metin",json_string:"JSON metin",e164:"E.164 sayısı",credit_card:"i'tibâr kartı numarası",currency_code:"para birimi kodu",iban:"IBAN",jwt:"JWT",template_literal:"giren"},i={nan:"NaN",number:"numara",array:"saf",null:"gayb"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Fâsit giren: umulan instanceof ${t.expected}, alınan ${s}`:`Fâsit giren: umulan ${o}, alınan ${s}`}case"invalid_value":return t.values.length===1?`Fâsit giren: umulan ${k(t.values[0])}`:`Fâsit tercih: mûteberler ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Fazla büyük: ${t.origin??"value"}, ${o}${t.maximum.toString()} ${a.unit??"elements"} sahip olmalıydı.`:`Fazla büyük: ${t.origin??"value"}, ${o}${t.maximum.toString()} olmalıydı.`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Fazla küçük: ${t.origin}, ${o}${t.minimum.toString()} ${a.unit} sahip olmalıydı.`:`Fazla küçük: ${t.origin}, ${o}${t.minimum.toString()} olmalıydı.`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Fâsit metin: "${o.prefix}" ile başlamalı.`:o.format==="ends_with"?`Fâsit metin: "${o.suffix}" ile bitmeli.`:o.format==="includes"?`Fâsit metin: "${o.includes}" ihtivâ etmeli.`:o.format==="regex"?`Fâsit metin: ${o.pattern} nakşına uymalı.`:`Fâsit ${n[o.format]??t.format}`}case"not_multiple_of":return`Fâsit sayı: ${t.divisor} katı olmalıydı.`;case"unrecognized_keys":return`Tanınmayan anahtar ${t.keys.length>1?"s":""}: ${w(t.keys,", ")}`;case"invalid_key":return`${t.origin} için tanınmayan anahtar var.`;case"invalid_union":return"Giren tanınamadı.";case"invalid_element":return`${t.origin} için tanınmayan kıymet var.`;default:return"Kıymet tanınamadı."}}};function sb(){return{localeError:jR()}}var CR=()=>{let e={string:{unit:"توکي",verb:"ولري"},file:{unit:"بایټس",verb:"ولري"},array:{unit:"توکي",verb:"ولري"},set:{unit:"توکي",verb:"ولري"},map:{unit:"توکي",verb:"ولري"}};function r(t){return e[t]??null}let n={regex:"ورودي",email:"بریښنالیک",url:"یو آر ال",emoji:"ایموجي",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"نیټه او وخت",date:"نېټه",time:"وخت",duration:"موده",ipv4:"د IPv4 پته",ipv6:"د IPv6 پته",mac:"د MAC پته",cidrv4:"د IPv4 ساحه",cidrv6:"د IPv6 ساحه",base64:"base64-encoded متن",base64url:"base64url-encoded متن",json_string:"JSON متن",e164:"د E.164 شمېره",credit_card:"د کریډیټ کارت شمیره",currency_code:"د اسعارو کوډ",iban:"IBAN",jwt:"JWT",template_literal:"ورودي"},i={nan:"NaN",number:"عدد",array:"ارې"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`ناسم ورودي: باید instanceof ${t.expected} وای, مګر ${s} ترلاسه شو`:`ناسم ورودي: باید ${o} وای, مګر ${s} ترلاسه شو`}case"invalid_value":return t.values.length===1?`ناسم ورودي: باید ${k(t.values[0])} وای`:`ناسم انتخاب: باید یو له ${w(t.values,"|")} څخه وای`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`ډیر لوی: ${t.origin??"ارزښت"} باید ${o}${t.maximum.toString()} ${a.unit??"عنصرونه"} ولري`:`ډیر لوی: ${t.origin??"ارزښت"} باید ${o}${t.maximum.toString()} وي`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`ډیر کوچنی: ${t.origin} باید ${o}${t.minimum.toString()} ${a.unit} ولري`:`ډیر کوچنی: ${t.origin} باید ${o}${t.minimum.toString()} وي`}case"invalid_format":{let o=t;return o.format==="starts_with"?`ناسم متن: باید د "${o.prefix}" سره پیل شي`:o.format==="ends_with"?`ناسم متن: باید د "${o.suffix}" سره پای ته ورسيږي`:o.format==="includes"?`ناسم متن: باید "${o.includes}" ولري`:o.format==="regex"?`ناسم متن: باید د ${o.pattern} سره مطابقت ولري`:`${n[o.format]??t.format} ناسم دی`}case"not_multiple_of":return`ناسم عدد: باید د ${t.divisor} مضرب وي`;case"unrecognized_keys":return`ناسم ${t.keys.length>1?"کلیډونه":"کلیډ"}: ${w(t.keys,", ")}`;case"invalid_key":return`ناسم کلیډ په ${t.origin} کې`;case"invalid_union":return"ناسمه ورودي";case"invalid_element":return`ناسم عنصر په ${t.origin} کې`;default:return"ناسمه ورودي"}}};function ub(){return{localeError:CR()}}var RR=()=>{let e={string:{unit:"znaków",verb:"mieć"},file:{unit:"bajtów",verb:"mieć"},array:{unit:"elementów",verb:"mieć"},set:{unit:"elementów",verb:"mieć"},map:{unit:"elementów",verb:"mieć"}};function r(t){return e[t]??null}let n={regex:"wyrażenie",email:"adres email",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"data i godzina w formacie ISO",date:"data w formacie ISO",time:"godzina w formacie ISO",duration:"czas trwania ISO",ipv4:"adres IPv4",ipv6:"adres IPv6",mac:"adres MAC",cidrv4:"zakres IPv4",cidrv6:"zakres IPv6",base64:"ciąg znaków zakodowany w formacie base64",base64url:"ciąg znaków zakodowany w formacie base64url",json_string:"ciąg znaków w formacie JSON",e164:"liczba E.164",credit_card:"numer karty kredytowej",currency_code:"kod waluty",iban:"IBAN",jwt:"JWT",template_literal:"wejście"},i={nan:"NaN",number:"liczba",array:"tablica"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Nieprawidłowe dane wejściowe: oczekiwano instanceof ${t.expected}, otrzymano ${s}`:`Nieprawidłowe dane wejściowe: oczekiwano ${o}, otrzymano ${s}`}case"invalid_value":return t.values.length===1?`Nieprawidłowe dane wejściowe: oczekiwano ${k(t.values[0])}`:`Nieprawidłowa opcja: oczekiwano jednej z wartości ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Za duża wartość: oczekiwano, że ${t.origin??"wartość"} będzie mieć ${o}${t.maximum.toString()} ${a.unit??"elementów"}`:`Zbyt duż(y/a/e): oczekiwano, że ${t.origin??"wartość"} będzie wynosić ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Za mała wartość: oczekiwano, że ${t.origin??"wartość"} będzie mieć ${o}${t.minimum.toString()} ${a.unit??"elementów"}`:`Zbyt mał(y/a/e): oczekiwano, że ${t.origin??"wartość"} będzie wynosić ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Nieprawidłowy ciąg znaków: musi zaczynać się od "${o.prefix}"`:o.format==="ends_with"?`Nieprawidłowy ciąg znaków: musi kończyć się na "${o.suffix}"`:o.format==="includes"?`Nieprawidłowy ciąg znaków: musi zawierać "${o.includes}"`:o.format==="regex"?`Nieprawidłowy ciąg znaków: musi odpowiadać wzorcowi ${o.pattern}`:`Nieprawidłow(y/a/e) ${n[o.format]??t.format}`}case"not_multiple_of":return`Nieprawidłowa liczba: musi być wielokrotnością ${t.divisor}`;case"unrecognized_keys":return`Nierozpoznane klucze${t.keys.length>1?"s":""}: ${w(t.keys,", ")}`;case"invalid_key":return`Nieprawidłowy klucz w ${t.origin}`;case"invalid_union":return"Nieprawidłowe dane wejściowe";case"invalid_element":return`Nieprawidłowa wartość w ${t.origin}`;default:return"Nieprawidłowe dane wejściowe"}}};function cb(){return{localeError:RR()}}var UR=()=>{let e={string:{unit:"caracteres"},file:{unit:"bytes"},array:{unit:"elementos"},set:{unit:"elementos"},map:{unit:"entradas"}};function r(a){return e[a]??null}let n={regex:"a entrada",email:"o endereço de e-mail",url:"o URL",emoji:"o emoji",uuid:"o UUID",uuidv4:"o UUIDv4",uuidv6:"o UUIDv6",nanoid:"o nanoid",guid:"o GUID",cuid:"o cuid",cuid2:"o cuid2",ulid:"o ULID",xid:"o XID",ksuid:"o KSUID",datetime:"a data e hora ISO",date:"a data ISO",time:"a hora ISO",duration:"a duração ISO",ipv4:"o endereço IPv4",ipv6:"o endereço IPv6",mac:"o endereço MAC",cidrv4:"o intervalo de endereços IPv4",cidrv6:"o intervalo de endereços IPv6",base64:"o texto codificado em base64",base64url:"o texto codificado em base64url",json_string:"o texto JSON",e164:"o número E.164",credit_card:"o número de cartão de crédito",currency_code:"o código de moeda",iban:"o IBAN",jwt:"o JWT",template_literal:"a entrada"},i={masculine:{definite:"o",indefinite:"um"},feminine:{definite:"a",indefinite:"uma"}},t={string:{name:"texto",articles:i.masculine},number:{name:"número",articles:i.masculine},int:{name:"número inteiro",articles:i.masculine},boolean:{name:"valor booleano",articles:i.masculine},bigint:{name:"número bigint",articles:i.masculine},symbol:{name:"símbolo",articles:i.masculine},undefined:{name:'valor "undefined"',articles:i.masculine},null:{name:'valor "nulo"',articles:i.masculine},never:{name:'valor "never"',articles:i.masculine},void:{name:'valor "void"',articles:i.masculine},date:{name:"data",articles:i.feminine},array:{name:"vetor",articles:i.masculine},object:{name:"objeto",articles:i.masculine},tuple:{name:"tuplo",articles:i.masculine},record:{name:"registo",articles:i.masculine},map:{name:"mapa",articles:i.masculine},set:{name:"conjunto",articles:i.masculine},file:{name:"ficheiro",articles:i.masculine},nonoptional:{name:"valor não opcional",articles:i.masculine},nan:{name:'valor "NaN"',articles:i.masculine},function:{name:"função",articles:i.feminine}};function o(a,s){let u=t[a]??{name:`valor "${a}"`,articles:i.masculine};return`${u.articles[s]} ${u.name}`}return a=>{switch(a.code){case"invalid_type":{let s=o(a.expected,"indefinite"),u=O(a.input),c=o(u,"indefinite");return`Entrada inválida: esperava ${s}, recebeu ${c}`}case"invalid_value":return a.values.length===1?`Entrada inválida: esperava ${k(a.values[0])}`:`Opção inválida: esperava uma das seguintes opções: ${w(a.values,"|")}`;case"too_big":{let s=a.inclusive?"<=":"<",u=r(a.origin);return u?`Demasiado grande: esperava que ${o(a.origin,"definite")} tivesse ${s} ${a.maximum.toString()} ${u.unit??"elementos"}`:`Demasiado grande: esperava que ${o(a.origin,"definite")} fosse ${s} ${a.maximum.toString()}`}case"too_small":{let s=a.inclusive?">=":">",u=r(a.origin);return u?`Demasiado pequeno: esperava que ${o(a.origin,"definite")} tivesse ${s} ${a.minimum.toString()} ${u.unit??"elementos"}`:`Demasiado pequeno: esperava que ${o(a.origin,"definite")} fosse ${s} ${a.minimum.toString()}`}case"invalid_format":{let s=a;return s.format==="starts_with"?`Texto inválido: deve começar por "${s.prefix}"`:s.format==="ends_with"?`Texto inválido: deve terminar em "${s.suffix}"`:s.format==="includes"?`Texto inválido: deve incluir "${s.includes}"`:s.format==="regex"?`Texto inválido: deve corresponder ao padrão ${s.pattern}`:`Formato d${n[s.format]??a.format} inválido`}case"not_multiple_of":return`Número inválido: deve ser múltiplo de ${a.divisor}`;case"unrecognized_keys":{let s=a.keys.length>1?"s":"";return`Chave${s} inválida${s}: ${w(a.keys,", ")}`}case"invalid_key":return`Entrada inválida n${o(a.origin,"definite")}`;case"invalid_union":return a.options&&Array.isArray(a.options)&&a.options.length>0?`Valor de discriminação inválido. Esperava ${a.options.map(u=>`'${u}'`).join(" | ")}`:"Entrada inválida";case"invalid_element":return`Entrada inválida n${o(a.origin,"definite")}`;default:return"Entrada inválida"}}};function lb(){return{localeError:UR()}}var FR=()=>{let e={string:{unit:"caracteres"},file:{unit:"bytes"},array:{unit:"elementos"},set:{unit:"elementos"},map:{unit:"entradas"}};function r(a){return e[a]??null}let n={regex:"a entrada",email:"o endereço de e-mail",url:"o URL",emoji:"o emoji",uuid:"o UUID",uuidv4:"o UUIDv4",uuidv6:"o UUIDv6",nanoid:"o nanoid",guid:"o GUID",cuid:"o cuid",cuid2:"o cuid2",ulid:"o ULID",xid:"o XID",ksuid:"o KSUID",datetime:"a data e hora ISO",date:"a data ISO",time:"a hora ISO",duration:"a duração ISO",ipv4:"o endereço IPv4",ipv6:"o endereço IPv6",mac:"o endereço MAC",cidrv4:"a faixa de endereços IPv4",cidrv6:"a faixa de endereços IPv6",base64:"o texto codificado em base64",base64url:"o texto codificado em base64url",json_string:"o texto JSON",e164:"o número E.164",credit_card:"o número de cartão de crédito",currency_code:"o código de moeda",iban:"o IBAN",jwt:"o JWT",template_literal:"a entrada"},i={masculine:{definite:"o",indefinite:"um"},feminine:{definite:"a",indefinite:"uma"}},t={string:{name:"texto",articles:i.masculine},number:{name:"número",articles:i.masculine},int:{name:"número inteiro",articles:i.masculine},boolean:{name:"valor booleano",articles:i.masculine},bigint:{name:"número bigint",articles:i.masculine},symbol:{name:"símbolo",articles:i.masculine},undefined:{name:'valor "undefined"',articles:i.masculine},null:{name:'valor "nulo"',articles:i.masculine},never:{name:'valor "never"',articles:i.masculine},void:{name:'valor "void"',articles:i.masculine},date:{name:"data",articles:i.feminine},array:{name:"vetor",articles:i.masculine},object:{name:"objeto",articles:i.masculine},tuple:{name:"tupla",articles:i.feminine},record:{name:"registro",articles:i.masculine},map:{name:"mapa",articles:i.masculine},set:{name:"conjunto",articles:i.masculine},file:{name:"arquivo",articles:i.masculine},nonoptional:{name:"valor não opcional",articles:i.masculine},nan:{name:'valor "NaN"',articles:i.masculine},function:{name:"função",articles:i.feminine}};function o(a,s){let u=t[a]??{name:`valor "${a}"`,articles:i.masculine};return`${u.articles[s]} ${u.name}`}return a=>{switch(a.code){case"invalid_type":{let s=o(a.expected,"indefinite"),u=O(a.input),c=o(u,"indefinite");return`Entrada inválida: esperava ${s}, recebeu ${c}`}case"invalid_value":return a.values.length===1?`Entrada inválida: esperava ${k(a.values[0])}`:`Opção inválida: esperava uma das seguintes opções: ${w(a.values,"|")}`;case"too_big":{let s=a.inclusive?"<=":"<",u=r(a.origin);return u?`Grande demais: esperava que ${o(a.origin,"definite")} tivesse ${s} ${a.maximum.toString()} ${u.unit??"elementos"}`:`Grande demais: esperava que ${o(a.origin,"definite")} fosse ${s} ${a.maximum.toString()}`}case"too_small":{let s=a.inclusive?">=":">",u=r(a.origin);return u?`Pequeno demais: esperava que ${o(a.origin,"definite")} tivesse ${s} ${a.minimum.toString()} ${u.unit??"elementos"}`:`Pequeno demais: esperava que ${o(a.origin,"definite")} fosse ${s} ${a.minimum.toString()}`}case"invalid_format":{let s=a;return s.format==="starts_with"?`Texto inválido: deve começar com "${s.prefix}"`:s.format==="ends_with"?`Texto inválido: deve terminar com "${s.suffix}"`:s.format==="includes"?`Texto inválido: deve incluir "${s.includes}"`:s.format==="regex"?`Texto inválido: deve corresponder ao padrão ${s.pattern}`:`Formato d${n[s.format]??a.format} inválido`}case"not_multiple_of":return`Número inválido: deve ser múltiplo de ${a.divisor}`;case"unrecognized_keys":{let s=a.keys.length>1?"s":"";return`Chave${s} inválida${s}: ${w(a.keys,", ")}`}case"invalid_key":return`Entrada inválida n${o(a.origin,"definite")}`;case"invalid_union":return a.options&&Array.isArray(a.options)&&a.options.length>0?`Valor de discriminação inválido. Esperava ${a.options.map(u=>`'${u}'`).join(" | ")}`:"Entrada inválida";case"invalid_element":return`Entrada inválida n${o(a.origin,"definite")}`;default:return"Entrada inválida"}}};function db(){return{localeError:FR()}}var MR=()=>{let e={string:{unit:"caractere",verb:"să aibă"},file:{unit:"octeți",verb:"să aibă"},array:{unit:"elemente",verb:"să aibă"},set:{unit:"elemente",verb:"să aibă"},map:{unit:"intrări",verb:"să aibă"}};function r(t){return e[t]??null}let n={regex:"intrare",email:"adresă de email",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"dată și oră ISO",date:"dată ISO",time:"oră ISO",duration:"durată ISO",ipv4:"adresă IPv4",ipv6:"adresă IPv6",mac:"adresă MAC",cidrv4:"interval IPv4",cidrv6:"interval IPv6",base64:"șir codat base64",base64url:"șir codat base64url",json_string:"șir JSON",e164:"număr E.164",credit_card:"număr de card de credit",currency_code:"cod valutar",iban:"IBAN",jwt:"JWT",template_literal:"intrare"},i={nan:"NaN",string:"șir",number:"număr",boolean:"boolean",function:"funcție",array:"matrice",object:"obiect",undefined:"nedefinit",symbol:"simbol",bigint:"număr mare",void:"void",never:"never",map:"hartă",set:"set"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return`Intrare invalidă: așteptat ${o}, primit ${s}`}case"invalid_value":return t.values.length===1?`Intrare invalidă: așteptat ${k(t.values[0])}`:`Opțiune invalidă: așteptat una dintre ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Prea mare: așteptat ca ${t.origin??"valoarea"} ${a.verb} ${o}${t.maximum.toString()} ${a.unit??"elemente"}`:`Prea mare: așteptat ca ${t.origin??"valoarea"} să fie ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Prea mic: așteptat ca ${t.origin} ${a.verb} ${o}${t.minimum.toString()} ${a.unit}`:`Prea mic: așteptat ca ${t.origin} să fie ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Șir invalid: trebuie să înceapă cu "${o.prefix}"`:o.format==="ends_with"?`Șir invalid: trebuie să se termine cu "${o.suffix}"`:o.format==="includes"?`Șir invalid: trebuie să includă "${o.includes}"`:o.format==="regex"?`Șir invalid: trebuie să se potrivească cu modelul ${o.pattern}`:`Format invalid: ${n[o.format]??t.format}`}case"not_multiple_of":return`Număr invalid: trebuie să fie multiplu de ${t.divisor}`;case"unrecognized_keys":return`Chei nerecunoscute: ${w(t.keys,", ")}`;case"invalid_key":return`Cheie invalidă în ${t.origin}`;case"invalid_union":return"Intrare invalidă";case"invalid_element":return`Valoare invalidă în ${t.origin}`;default:return"Intrare invalidă"}}};function fb(){return{localeError:MR()}}function mb(e,r,n,i){let t=Math.abs(e),o=t%10,a=t%100;return a>=11&&a<=19?i:o===1?r:o>=2&&o<=4?n:i}var LR=()=>{let e={string:{unit:{one:"символ",few:"символа",many:"символов"},verb:"иметь"},file:{unit:{one:"байт",few:"байта",many:"байт"},verb:"иметь"},array:{unit:{one:"элемент",few:"элемента",many:"элементов"},verb:"иметь"},set:{unit:{one:"элемент",few:"элемента",many:"элементов"},verb:"иметь"},map:{unit:{one:"элемент",few:"элемента",many:"элементов"},verb:"иметь"}};function r(t){return e[t]??null}let n={regex:"ввод",email:"email адрес",url:"URL",emoji:"эмодзи",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO дата и время",date:"ISO дата",time:"ISO время",duration:"ISO длительность",ipv4:"IPv4 адрес",ipv6:"IPv6 адрес",mac:"MAC адрес",cidrv4:"IPv4 диапазон",cidrv6:"IPv6 диапазон",base64:"строка в формате base64",base64url:"строка в формате base64url",json_string:"JSON строка",e164:"номер E.164",credit_card:"номер кредитной карты",currency_code:"код валюты",iban:"IBAN",jwt:"JWT",template_literal:"ввод"},i={nan:"NaN",number:"число",array:"массив"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Неверный ввод: ожидалось instanceof ${t.expected}, получено ${s}`:`Неверный ввод: ожидалось ${o}, получено ${s}`}case"invalid_value":return t.values.length===1?`Неверный ввод: ожидалось ${k(t.values[0])}`:`Неверный вариант: ожидалось одно из ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);if(a){let s=Number(t.maximum),u=mb(s,a.unit.one,a.unit.few,a.unit.many);return`Слишком большое значение: ожидалось, что ${t.origin??"значение"} будет иметь ${o}${t.maximum.toString()} ${u}`}return`Слишком большое значение: ожидалось, что ${t.origin??"значение"} будет ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);if(a){let s=Number(t.minimum),u=mb(s,a.unit.one,a.unit.few,a.unit.many);return`Слишком маленькое значение: ожидалось, что ${t.origin} будет иметь ${o}${t.minimum.toString()} ${u}`}return`Слишком маленькое значение: ожидалось, что ${t.origin} будет ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Неверная строка: должна начинаться с "${o.prefix}"`:o.format==="ends_with"?`Неверная строка: должна заканчиваться на "${o.suffix}"`:o.format==="includes"?`Неверная строка: должна содержать "${o.includes}"`:o.format==="regex"?`Неверная строка: должна соответствовать шаблону ${o.pattern}`:`Неверный ${n[o.format]??t.format}`}case"not_multiple_of":return`Неверное число: должно быть кратным ${t.divisor}`;case"unrecognized_keys":return`Нераспознанн${t.keys.length>1?"ые":"ый"} ключ${t.keys.length>1?"и":""}: ${w(t.keys,", ")}`;case"invalid_key":return`Неверный ключ в ${t.origin}`;case"invalid_union":return"Неверные входные данные";case"invalid_element":return`Неверное значение в ${t.origin}`;default:return"Неверные входные данные"}}};function pb(){return{localeError:LR()}}var ZR=()=>{let e={string:{unit:"znakov",verb:"mať"},file:{unit:"bajtov",verb:"mať"},array:{unit:"prvkov",verb:"mať"},set:{unit:"prvkov",verb:"mať"},map:{unit:"položiek",verb:"mať"}};function r(t){return e[t]??null}let n={regex:"regulárny výraz",email:"e-mailová adresa",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"dátum a čas vo formáte ISO",date:"dátum vo formáte ISO",time:"čas vo formáte ISO",duration:"doba trvania ISO",ipv4:"IPv4 adresa",ipv6:"IPv6 adresa",mac:"MAC adresa",cidrv4:"rozsah IPv4",cidrv6:"rozsah IPv6",base64:"reťazec zakódovaný vo formáte base64",base64url:"reťazec zakódovaný vo formáte base64url",json_string:"reťazec vo formáte JSON",e164:"číslo E.164",credit_card:"číslo kreditnej karty",currency_code:"kód meny",iban:"IBAN",jwt:"JWT",template_literal:"vstup"},i={nan:"NaN",number:"číslo",string:"reťazec",function:"funkcia",array:"pole"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Neplatný vstup: očakávané instanceof ${t.expected}, obdržané ${s}`:`Neplatný vstup: očakávané ${o}, obdržané ${s}`}case"invalid_value":return t.values.length===1?`Neplatný vstup: očakávané ${k(t.values[0])}`:`Neplatný vstup: očakávaná jedna z hodnôt ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Hodnota je príliš veľká: ${t.origin??"hodnota"} musí mať ${o}${t.maximum.toString()} ${a.unit??"prvkov"}`:`Hodnota je príliš veľká: ${t.origin??"hodnota"} musí byť ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Hodnota je príliš malá: ${t.origin??"hodnota"} musí mať ${o}${t.minimum.toString()} ${a.unit??"prvkov"}`:`Hodnota je príliš malá: ${t.origin??"hodnota"} musí byť ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Neplatný reťazec: musí začínať na "${o.prefix}"`:o.format==="ends_with"?`Neplatný reťazec: musí končiť na "${o.suffix}"`:o.format==="includes"?`Neplatný reťazec: musí obsahovať "${o.includes}"`:o.format==="regex"?`Neplatný reťazec: musí zodpovedať vzoru ${o.pattern}`:`Neplatný formát ${n[o.format]??t.format}`}case"not_multiple_of":return`Neplatné číslo: musí byť násobkom ${t.divisor}`;case"unrecognized_keys":return`Neznáme klúče: ${w(t.keys,", ")}`;case"invalid_key":return`Neplatný klúč v ${t.origin}`;case"invalid_union":return"Neplatný vstup";case"invalid_element":return`Neplatná hodnota v ${t.origin}`;default:return"Neplatný vstup"}}};function vb(){return{localeError:ZR()}}var VR=()=>{let e={string:{unit:"znakov",verb:"imeti"},file:{unit:"bajtov",verb:"imeti"},array:{unit:"elementov",verb:"imeti"},set:{unit:"elementov",verb:"imeti"},map:{unit:"elementov",verb:"imeti"}};function r(t){return e[t]??null}let n={regex:"vnos",email:"e-poštni naslov",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO datum in čas",date:"ISO datum",time:"ISO čas",duration:"ISO trajanje",ipv4:"IPv4 naslov",ipv6:"IPv6 naslov",mac:"MAC naslov",cidrv4:"obseg IPv4",cidrv6:"obseg IPv6",base64:"base64 kodiran niz",base64url:"base64url kodiran niz",json_string:"JSON niz",e164:"E.164 številka",credit_card:"številka kreditne kartice",currency_code:"koda valute",iban:"IBAN",jwt:"JWT",template_literal:"vnos"},i={nan:"NaN",number:"število",array:"tabela"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Neveljaven vnos: pričakovano instanceof ${t.expected}, prejeto ${s}`:`Neveljaven vnos: pričakovano ${o}, prejeto ${s}`}case"invalid_value":return t.values.length===1?`Neveljaven vnos: pričakovano ${k(t.values[0])}`:`Neveljavna možnost: pričakovano eno izmed ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Preveliko: pričakovano, da bo ${t.origin??"vrednost"} imelo ${o}${t.maximum.toString()} ${a.unit??"elementov"}`:`Preveliko: pričakovano, da bo ${t.origin??"vrednost"} ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Premajhno: pričakovano, da bo ${t.origin} imelo ${o}${t.minimum.toString()} ${a.unit}`:`Premajhno: pričakovano, da bo ${t.origin} ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Neveljaven niz: mora se začeti z "${o.prefix}"`:o.format==="ends_with"?`Neveljaven niz: mora se končati z "${o.suffix}"`:o.format==="includes"?`Neveljaven niz: mora vsebovati "${o.includes}"`:o.format==="regex"?`Neveljaven niz: mora ustrezati vzorcu ${o.pattern}`:`Neveljaven ${n[o.format]??t.format}`}case"not_multiple_of":return`Neveljavno število: mora biti večkratnik ${t.divisor}`;case"unrecognized_keys":return`Neprepoznan${t.keys.length>1?"i ključi":" ključ"}: ${w(t.keys,", ")}`;case"invalid_key":return`Neveljaven ključ v ${t.origin}`;case"invalid_union":return"Neveljaven vnos";case"invalid_element":return`Neveljavna vrednost v ${t.origin}`;default:return"Neveljaven vnos"}}};function gb(){return{localeError:VR()}}var BR=()=>{let e={string:{unit:"tecken",verb:"att ha"},file:{unit:"bytes",verb:"att ha"},array:{unit:"objekt",verb:"att innehålla"},set:{unit:"objekt",verb:"att innehålla"},map:{unit:"objekt",verb:"att innehålla"}};function r(t){return e[t]??null}let n={regex:"reguljärt uttryck",email:"e-postadress",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO-datum och tid",date:"ISO-datum",time:"ISO-tid",duration:"ISO-varaktighet",ipv4:"IPv4-adress",ipv6:"IPv6-adress",mac:"MAC-adress",cidrv4:"IPv4-spektrum",cidrv6:"IPv6-spektrum",base64:"base64-kodad sträng",base64url:"base64url-kodad sträng",json_string:"JSON-sträng",e164:"E.164-nummer",credit_card:"kreditkortsnummer",currency_code:"valutakod",iban:"IBAN",jwt:"JWT",template_literal:"mall-literal"},i={nan:"NaN",number:"antal",array:"lista"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ogiltig inmatning: förväntat instanceof ${t.expected}, fick ${s}`:`Ogiltig inmatning: förväntat ${o}, fick ${s}`}case"invalid_value":return t.values.length===1?`Ogiltig inmatning: förväntat ${k(t.values[0])}`:`Ogiltigt val: förväntade en av ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`För stor(t): förväntade ${t.origin??"värdet"} att ha ${o}${t.maximum.toString()} ${a.unit??"element"}`:`För stor(t): förväntat ${t.origin??"värdet"} att ha ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`För lite(t): förväntade ${t.origin??"värdet"} att ha ${o}${t.minimum.toString()} ${a.unit}`:`För lite(t): förväntade ${t.origin??"värdet"} att ha ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ogiltig sträng: måste börja med "${o.prefix}"`:o.format==="ends_with"?`Ogiltig sträng: måste sluta med "${o.suffix}"`:o.format==="includes"?`Ogiltig sträng: måste innehålla "${o.includes}"`:o.format==="regex"?`Ogiltig sträng: måste matcha mönstret "${o.pattern}"`:`Ogiltig(t) ${n[o.format]??t.format}`}case"not_multiple_of":return`Ogiltigt tal: måste vara en multipel av ${t.divisor}`;case"unrecognized_keys":return`${t.keys.length>1?"Okända nycklar":"Okänd nyckel"}: ${w(t.keys,", ")}`;case"invalid_key":return`Ogiltig nyckel i ${t.origin??"värdet"}`;case"invalid_union":return"Ogiltig input";case"invalid_element":return`Ogiltigt värde i ${t.origin??"värdet"}`;default:return"Ogiltig input"}}};function hb(){return{localeError:BR()}}var WR=()=>{let e={string:{unit:"எழுத்துக்கள்",verb:"கொண்டிருக்க வேண்டும்"},file:{unit:"பைட்டுகள்",verb:"கொண்டிருக்க வேண்டும்"},array:{unit:"உறுப்புகள்",verb:"கொண்டிருக்க வேண்டும்"},set:{unit:"உறுப்புகள்",verb:"கொண்டிருக்க வேண்டும்"},map:{unit:"உறுப்புகள்",verb:"கொண்டிருக்க வேண்டும்"}};function r(t){return e[t]??null}let n={regex:"உள்ளீடு",email:"மின்னஞ்சல் முகவரி",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO தேதி நேரம்",date:"ISO தேதி",time:"ISO நேரம்",duration:"ISO கால அளவு",ipv4:"IPv4 முகவரி",ipv6:"IPv6 முகவரி",mac:"MAC முகவரி",cidrv4:"IPv4 வரம்பு",cidrv6:"IPv6 வரம்பு",base64:"base64-encoded சரம்",base64url:"base64url-encoded சரம்",json_string:"JSON சரம்",e164:"E.164 எண்",credit_card:"கடன் அட்டை எண்",currency_code:"நாணயக் குறியீடு",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN",number:"எண்",array:"அணி",null:"வெறுமை"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`தவறான உள்ளீடு: எதிர்பார்க்கப்பட்டது instanceof ${t.expected}, பெறப்பட்டது ${s}`:`தவறான உள்ளீடு: எதிர்பார்க்கப்பட்டது ${o}, பெறப்பட்டது ${s}`}case"invalid_value":return t.values.length===1?`தவறான உள்ளீடு: எதிர்பார்க்கப்பட்டது ${k(t.values[0])}`:`தவறான விருப்பம்: எதிர்பார்க்கப்பட்டது ${w(t.values,"|")} இல் ஒன்று`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`மிக பெரியது: எதிர்பார்க்கப்பட்டது ${t.origin??"மதிப்பு"} ${o}${t.maximum.toString()} ${a.unit??"உறுப்புகள்"} ஆக இருக்க வேண்டும்`:`மிக பெரியது: எதிர்பார்க்கப்பட்டது ${t.origin??"மதிப்பு"} ${o}${t.maximum.toString()} ஆக இருக்க வேண்டும்`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`மிகச் சிறியது: எதிர்பார்க்கப்பட்டது ${t.origin} ${o}${t.minimum.toString()} ${a.unit} ஆக இருக்க வேண்டும்`:`மிகச் சிறியது: எதிர்பார்க்கப்பட்டது ${t.origin} ${o}${t.minimum.toString()} ஆக இருக்க வேண்டும்`}case"invalid_format":{let o=t;return o.format==="starts_with"?`தவறான சரம்: "${o.prefix}" இல் தொடங்க வேண்டும்`:o.format==="ends_with"?`தவறான சரம்: "${o.suffix}" இல் முடிவடைய வேண்டும்`:o.format==="includes"?`தவறான சரம்: "${o.includes}" ஐ உள்ளடக்க வேண்டும்`:o.format==="regex"?`தவறான சரம்: ${o.pattern} முறைபாட்டுடன் பொருந்த வேண்டும்`:`தவறான ${n[o.format]??t.format}`}case"not_multiple_of":return`தவறான எண்: ${t.divisor} இன் பலமாக இருக்க வேண்டும்`;case"unrecognized_keys":return`அடையாளம் தெரியாத விசை${t.keys.length>1?"கள்":""}: ${w(t.keys,", ")}`;case"invalid_key":return`${t.origin} இல் தவறான விசை`;case"invalid_union":return"தவறான உள்ளீடு";case"invalid_element":return`${t.origin} இல் தவறான மதிப்பு`;default:return"தவறான உள்ளீடு"}}};function yb(){return{localeError:WR()}}var GR=()=>{let e={string:{unit:"аломат",verb:"дошта бошад"},file:{unit:"байт",verb:"дошта бошад"},array:{unit:"унсур",verb:"дошта бошад"},set:{unit:"унсур",verb:"дошта бошад"},map:{unit:"сабт",verb:"дошта бошад"}};function r(t){return e[t]??null}let n={regex:"вуруд",email:"суроғаи email",url:"URL",emoji:"эмоҷи",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"санаву вақти ISO",date:"санаи ISO",time:"вақти ISO",duration:"давомнокии ISO",ipv4:"суроғаи IPv4",ipv6:"суроғаи IPv6",mac:"суроғаи MAC",cidrv4:"маҳдудаи IPv4",cidrv6:"маҳдудаи IPv6",base64:"сатри дар формати base64",base64url:"сатри дар формати base64url",json_string:"сатри JSON",e164:"рақами E.164",credit_card:"рақами корти кредитӣ",currency_code:"рамзи асъор",iban:"IBAN",jwt:"JWT",template_literal:"вуруд"},i={nan:"NaN",number:"рақам",string:"сатр",array:"массив",object:"объект",date:"сана"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return`Вуруди нодуруст: ${o} интизор мерафт, ${s} гирифта шуд`}case"invalid_value":return t.values.length===1?`Вуруди нодуруст: ${k(t.values[0])} интизор мерафт`:`Интихоби нодуруст: яке аз ${w(t.values,"|")} интизор мерафт`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Хеле калон: ${t.origin??"қимат"} бояд ${o}${t.maximum.toString()} ${a.unit} ${a.verb}`:`Хеле калон: ${t.origin??"қимат"} бояд ${o}${t.maximum.toString()} бошад`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Хеле хурд: ${t.origin} бояд ${o}${t.minimum.toString()} ${a.unit} ${a.verb}`:`Хеле хурд: ${t.origin} бояд ${o}${t.minimum.toString()} бошад`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Сатри нодуруст: бояд бо "${o.prefix}" оғоз шавад`:o.format==="ends_with"?`Сатри нодуруст: бояд бо "${o.suffix}" анҷом ёбад`:o.format==="includes"?`Сатри нодуруст: бояд "${o.includes}"-ро дар бар гирад`:o.format==="regex"?`Сатри нодуруст: бояд ба намунаи ${o.pattern} мувофиқат кунад`:`${n[o.format]??t.format}-и нодуруст`}case"not_multiple_of":return`Рақами нодуруст: бояд ба ${t.divisor} бе бақия тақсим шавад`;case"unrecognized_keys":return`Калид${t.keys.length>1?"ҳои":"и"} номаълум: ${w(t.keys,", ")}`;case"invalid_key":return`Калиди нодуруст дар ${t.origin}`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`Қимати нодурусти дискриминатор: ${t.options.map(a=>`'${a}'`).join(" | ")} интизор мерафт`:"Вуруди нодуруст";case"invalid_element":return`Қимати нодуруст дар ${t.origin}`;default:return"Вуруди нодуруст"}}};function bb(){return{localeError:GR()}}var HR=()=>{let e={string:{unit:"ตัวอักษร",verb:"ควรมี"},file:{unit:"ไบต์",verb:"ควรมี"},array:{unit:"รายการ",verb:"ควรมี"},set:{unit:"รายการ",verb:"ควรมี"},map:{unit:"รายการ",verb:"ควรมี"}};function r(t){return e[t]??null}let n={regex:"ข้อมูลที่ป้อน",email:"ที่อยู่อีเมล",url:"URL",emoji:"อิโมจิ",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"วันที่เวลาแบบ ISO",date:"วันที่แบบ ISO",time:"เวลาแบบ ISO",duration:"ช่วงเวลาแบบ ISO",ipv4:"ที่อยู่ IPv4",ipv6:"ที่อยู่ IPv6",mac:"ที่อยู่ MAC",cidrv4:"ช่วง IP แบบ IPv4",cidrv6:"ช่วง IP แบบ IPv6",base64:"ข้อความแบบ Base64",base64url:"ข้อความแบบ Base64 สำหรับ URL",json_string:"ข้อความแบบ JSON",e164:"เบอร์โทรศัพท์ระหว่างประเทศ (E.164)",credit_card:"หมายเลขบัตรเครดิต",currency_code:"รหัสสกุลเงิน",iban:"IBAN",jwt:"โทเคน JWT",template_literal:"ข้อมูลที่ป้อน"},i={nan:"NaN",number:"ตัวเลข",array:"อาร์เรย์ (Array)",null:"ไม่มีค่า (null)"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`ประเภทข้อมูลไม่ถูกต้อง: ควรเป็น instanceof ${t.expected} แต่ได้รับ ${s}`:`ประเภทข้อมูลไม่ถูกต้อง: ควรเป็น ${o} แต่ได้รับ ${s}`}case"invalid_value":return t.values.length===1?`ค่าไม่ถูกต้อง: ควรเป็น ${k(t.values[0])}`:`ตัวเลือกไม่ถูกต้อง: ควรเป็นหนึ่งใน ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"ไม่เกิน":"น้อยกว่า",a=r(t.origin);return a?`เกินกำหนด: ${t.origin??"ค่า"} ควรมี${o} ${t.maximum.toString()} ${a.unit??"รายการ"}`:`เกินกำหนด: ${t.origin??"ค่า"} ควรมี${o} ${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?"อย่างน้อย":"มากกว่า",a=r(t.origin);return a?`น้อยกว่ากำหนด: ${t.origin} ควรมี${o} ${t.minimum.toString()} ${a.unit}`:`น้อยกว่ากำหนด: ${t.origin} ควรมี${o} ${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`รูปแบบไม่ถูกต้อง: ข้อความต้องขึ้นต้นด้วย "${o.prefix}"`:o.format==="ends_with"?`รูปแบบไม่ถูกต้อง: ข้อความต้องลงท้ายด้วย "${o.suffix}"`:o.format==="includes"?`รูปแบบไม่ถูกต้อง: ข้อความต้องมี "${o.includes}" อยู่ในข้อความ`:o.format==="regex"?`รูปแบบไม่ถูกต้อง: ต้องตรงกับรูปแบบที่กำหนด ${o.pattern}`:`รูปแบบไม่ถูกต้อง: ${n[o.format]??t.format}`}case"not_multiple_of":return`ตัวเลขไม่ถูกต้อง: ต้องเป็นจำนวนที่หารด้วย ${t.divisor} ได้ลงตัว`;case"unrecognized_keys":return`พบคีย์ที่ไม่รู้จัก: ${w(t.keys,", ")}`;case"invalid_key":return`คีย์ไม่ถูกต้องใน ${t.origin}`;case"invalid_union":return"ข้อมูลไม่ถูกต้อง: ไม่ตรงกับรูปแบบยูเนียนที่กำหนดไว้";case"invalid_element":return`ข้อมูลไม่ถูกต้องใน ${t.origin}`;default:return"ข้อมูลไม่ถูกต้อง"}}};function $b(){return{localeError:HR()}}var KR=()=>{let e={string:{unit:"simwol",verb:"bolmaly"},file:{unit:"baýt",verb:"bolmaly"},array:{unit:"elementler",verb:"bolmaly"},set:{unit:"elementler",verb:"bolmaly"},map:{unit:"elementler",verb:"bolmaly"}};function r(t){return e[t]??null}let n={regex:"giriş",email:"e-poçta salgysy",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO sene we wagt",date:"ISO sene",time:"ISO wagt",duration:"ISO wagt aralygy",ipv4:"IPv4 salgysy",ipv6:"IPv6 salgysy",mac:"MAC salgysy",cidrv4:"IPv4 aralygy",cidrv6:"IPv6 aralygy",base64:"base64 bilen şifrlenen setir",base64url:"base64url bilen şifrlenen setir",json_string:"JSON setiri",e164:"E.164 nomeri",credit_card:"kredit kartynyň nomeri",currency_code:"walýuta kody",iban:"IBAN",jwt:"JWT",template_literal:"şablon"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return`Nädogry baha: garaşylan ${o} ýerine ${s} alyndy`}case"invalid_value":return t.values.length===1?`Nädogry baha: ${k(t.values[0])} bolmaly`:`Nädogry saýlaw: aşakdakylardan biri bolmaly: ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Has uly: garaşylýan ${t.origin??"baha"} ${o} ${t.maximum.toString()} ${a.unit??"element"}`:`Has uly: garaşylýan ${t.origin??"baha"} ${o} ${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Has kiçi: garaşylýan ${t.origin} ${o} ${t.minimum.toString()} ${a.unit}`:`Has kiçi: garaşylýan ${t.origin} ${o} ${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Nädogry setir: "${o.prefix}" bilen başlamaly`:o.format==="ends_with"?`Nädogry setir: "${o.suffix}" bilen gutarmaly`:o.format==="includes"?`Nädogry setir: "${o.includes}" saklamaly`:o.format==="regex"?`Nädogry setir: ${o.pattern} nusga laýyk bolmaly`:`Nädogry ${n[o.format]??t.format}`}case"not_multiple_of":return`Nädogry san: ${t.divisor} bilen galyndysyz bölünmeli`;case"unrecognized_keys":return`Tanalmaýan açar${t.keys.length>1?"lar":""}: ${w(t.keys,", ")}`;case"invalid_key":return`${t.origin} içinde nädogry açar`;case"invalid_union":return"Nädogry baha";case"invalid_element":return`${t.origin} içinde nädogry baha`;default:return"Nädogry baha"}}};function _b(){return{localeError:KR()}}var JR=()=>{let e={string:{unit:"karakter",verb:"olmalı"},file:{unit:"bayt",verb:"olmalı"},array:{unit:"öğe",verb:"olmalı"},set:{unit:"öğe",verb:"olmalı"},map:{unit:"öğe",verb:"olmalı"}};function r(t){return e[t]??null}let n={regex:"girdi",email:"e-posta adresi",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO tarih ve saat",date:"ISO tarih",time:"ISO saat",duration:"ISO süre",ipv4:"IPv4 adresi",ipv6:"IPv6 adresi",mac:"MAC adresi",cidrv4:"IPv4 aralığı",cidrv6:"IPv6 aralığı",base64:"base64 ile şifrelenmiş metin",base64url:"base64url ile şifrelenmiş metin",json_string:"JSON dizesi",e164:"E.164 sayısı",credit_card:"kredi kartı numarası",currency_code:"para birimi kodu",iban:"IBAN",jwt:"JWT",template_literal:"Şablon dizesi"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Geçersiz değer: beklenen instanceof ${t.expected}, alınan ${s}`:`Geçersiz değer: beklenen ${o}, alınan ${s}`}case"invalid_value":return t.values.length===1?`Geçersiz değer: beklenen ${k(t.values[0])}`:`Geçersiz seçenek: aşağıdakilerden biri olmalı: ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Çok büyük: beklenen ${t.origin??"değer"} ${o}${t.maximum.toString()} ${a.unit??"öğe"}`:`Çok büyük: beklenen ${t.origin??"değer"} ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Çok küçük: beklenen ${t.origin} ${o}${t.minimum.toString()} ${a.unit}`:`Çok küçük: beklenen ${t.origin} ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Geçersiz metin: "${o.prefix}" ile başlamalı`:o.format==="ends_with"?`Geçersiz metin: "${o.suffix}" ile bitmeli`:o.format==="includes"?`Geçersiz metin: "${o.includes}" içermeli`:o.format==="regex"?`Geçersiz metin: ${o.pattern} desenine uymalı`:`Geçersiz ${n[o.format]??t.format}`}case"not_multiple_of":return`Geçersiz sayı: ${t.divisor} ile tam bölünebilmeli`;case"unrecognized_keys":return`Tanınmayan anahtar${t.keys.length>1?"lar":""}: ${w(t.keys,", ")}`;case"invalid_key":return`${t.origin} içinde geçersiz anahtar`;case"invalid_union":return"Geçersiz değer";case"invalid_element":return`${t.origin} içinde geçersiz değer`;default:return"Geçersiz değer"}}};function wb(){return{localeError:JR()}}var XR=()=>{let e={string:{unit:"символів",verb:"матиме"},file:{unit:"байтів",verb:"матиме"},array:{unit:"елементів",verb:"матиме"},set:{unit:"елементів",verb:"матиме"},map:{unit:"елементів",verb:"матиме"}};function r(t){return e[t]??null}let n={regex:"вхідні дані",email:"адреса електронної пошти",url:"URL",emoji:"емодзі",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"дата та час ISO",date:"дата ISO",time:"час ISO",duration:"тривалість ISO",ipv4:"адреса IPv4",ipv6:"адреса IPv6",mac:"адреса MAC",cidrv4:"діапазон IPv4",cidrv6:"діапазон IPv6",base64:"рядок у кодуванні base64",base64url:"рядок у кодуванні base64url",json_string:"рядок JSON",e164:"номер E.164",credit_card:"номер кредитної картки",currency_code:"код валюти",iban:"IBAN",jwt:"JWT",template_literal:"вхідні дані"},i={nan:"NaN",number:"число",array:"масив"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Неправильні вхідні дані: очікується instanceof ${t.expected}, отримано ${s}`:`Неправильні вхідні дані: очікується ${o}, отримано ${s}`}case"invalid_value":return t.values.length===1?`Неправильні вхідні дані: очікується ${k(t.values[0])}`:`Неправильна опція: очікується одне з ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Занадто велике: очікується, що ${t.origin??"значення"} ${a.verb} ${o}${t.maximum.toString()} ${a.unit??"елементів"}`:`Занадто велике: очікується, що ${t.origin??"значення"} буде ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Занадто мале: очікується, що ${t.origin} ${a.verb} ${o}${t.minimum.toString()} ${a.unit}`:`Занадто мале: очікується, що ${t.origin} буде ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Неправильний рядок: повинен починатися з "${o.prefix}"`:o.format==="ends_with"?`Неправильний рядок: повинен закінчуватися на "${o.suffix}"`:o.format==="includes"?`Неправильний рядок: повинен містити "${o.includes}"`:o.format==="regex"?`Неправильний рядок: повинен відповідати шаблону ${o.pattern}`:`Неправильний ${n[o.format]??t.format}`}case"not_multiple_of":return`Неправильне число: повинно бути кратним ${t.divisor}`;case"unrecognized_keys":return`Нерозпізнаний ключ${t.keys.length>1?"і":""}: ${w(t.keys,", ")}`;case"invalid_key":return`Неправильний ключ у ${t.origin}`;case"invalid_union":return"Неправильні вхідні дані";case"invalid_element":return`Неправильне значення у ${t.origin}`;default:return"Неправильні вхідні дані"}}};function Ks(){return{localeError:XR()}}function Sb(){return Ks()}var QR=()=>{let e={string:{unit:"حروف",verb:"ہونا"},file:{unit:"بائٹس",verb:"ہونا"},array:{unit:"آئٹمز",verb:"ہونا"},set:{unit:"آئٹمز",verb:"ہونا"},map:{unit:"آئٹمز",verb:"ہونا"}};function r(t){return e[t]??null}let n={regex:"ان پٹ",email:"ای میل ایڈریس",url:"یو آر ایل",emoji:"ایموجی",uuid:"یو یو آئی ڈی",uuidv4:"یو یو آئی ڈی وی 4",uuidv6:"یو یو آئی ڈی وی 6",nanoid:"نینو آئی ڈی",guid:"جی یو آئی ڈی",cuid:"سی یو آئی ڈی",cuid2:"سی یو آئی ڈی 2",ulid:"یو ایل آئی ڈی",xid:"ایکس آئی ڈی",ksuid:"کے ایس یو آئی ڈی",datetime:"آئی ایس او ڈیٹ ٹائم",date:"آئی ایس او تاریخ",time:"آئی ایس او وقت",duration:"آئی ایس او مدت",ipv4:"آئی پی وی 4 ایڈریس",ipv6:"آئی پی وی 6 ایڈریس",mac:"ایم اے سی ایڈریس",cidrv4:"آئی پی وی 4 رینج",cidrv6:"آئی پی وی 6 رینج",base64:"بیس 64 ان کوڈڈ سٹرنگ",base64url:"بیس 64 یو آر ایل ان کوڈڈ سٹرنگ",json_string:"جے ایس او این سٹرنگ",e164:"ای 164 نمبر",credit_card:"کریڈٹ کارڈ نمبر",currency_code:"کرنسی کوڈ",iban:"IBAN",jwt:"جے ڈبلیو ٹی",template_literal:"ان پٹ"},i={nan:"NaN",number:"نمبر",array:"آرے",null:"نل"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`غلط ان پٹ: instanceof ${t.expected} متوقع تھا، ${s} موصول ہوا`:`غلط ان پٹ: ${o} متوقع تھا، ${s} موصول ہوا`}case"invalid_value":return t.values.length===1?`غلط ان پٹ: ${k(t.values[0])} متوقع تھا`:`غلط آپشن: ${w(t.values,"|")} میں سے ایک متوقع تھا`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`بہت بڑا: ${t.origin??"ویلیو"} کے ${o}${t.maximum.toString()} ${a.unit??"عناصر"} ہونے متوقع تھے`:`بہت بڑا: ${t.origin??"ویلیو"} کا ${o}${t.maximum.toString()} ہونا متوقع تھا`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`بہت چھوٹا: ${t.origin} کے ${o}${t.minimum.toString()} ${a.unit} ہونے متوقع تھے`:`بہت چھوٹا: ${t.origin} کا ${o}${t.minimum.toString()} ہونا متوقع تھا`}case"invalid_format":{let o=t;return o.format==="starts_with"?`غلط سٹرنگ: "${o.prefix}" سے شروع ہونا چاہیے`:o.format==="ends_with"?`غلط سٹرنگ: "${o.suffix}" پر ختم ہونا چاہیے`:o.format==="includes"?`غلط سٹرنگ: "${o.includes}" شامل ہونا چاہیے`:o.format==="regex"?`غلط سٹرنگ: پیٹرن ${o.pattern} سے میچ ہونا چاہیے`:`غلط ${n[o.format]??t.format}`}case"not_multiple_of":return`غلط نمبر: ${t.divisor} کا مضاعف ہونا چاہیے`;case"unrecognized_keys":return`غیر تسلیم شدہ کی${t.keys.length>1?"ز":""}: ${w(t.keys,"، ")}`;case"invalid_key":return`${t.origin} میں غلط کی`;case"invalid_union":return"غلط ان پٹ";case"invalid_element":return`${t.origin} میں غلط ویلیو`;default:return"غلط ان پٹ"}}};function Ib(){return{localeError:QR()}}var YR=()=>{let e={string:{unit:"belgi",verb:"bo‘lishi kerak"},file:{unit:"bayt",verb:"bo‘lishi kerak"},array:{unit:"element",verb:"bo‘lishi kerak"},set:{unit:"element",verb:"bo‘lishi kerak"},map:{unit:"yozuv",verb:"bo‘lishi kerak"}};function r(t){return e[t]??null}let n={regex:"kirish",email:"elektron pochta manzili",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO sana va vaqti",date:"ISO sana",time:"ISO vaqt",duration:"ISO davomiylik",ipv4:"IPv4 manzil",ipv6:"IPv6 manzil",mac:"MAC manzil",cidrv4:"IPv4 diapazon",cidrv6:"IPv6 diapazon",base64:"base64 kodlangan satr",base64url:"base64url kodlangan satr",json_string:"JSON satr",e164:"E.164 raqam",credit_card:"kredit karta raqami",currency_code:"valyuta kodi",iban:"IBAN",jwt:"JWT",template_literal:"kirish"},i={nan:"NaN",number:"raqam",array:"massiv"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Noto‘g‘ri kirish: kutilgan instanceof ${t.expected}, qabul qilingan ${s}`:`Noto‘g‘ri kirish: kutilgan ${o}, qabul qilingan ${s}`}case"invalid_value":return t.values.length===1?`Noto‘g‘ri kirish: kutilgan ${k(t.values[0])}`:`Noto‘g‘ri variant: quyidagilardan biri kutilgan ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Juda katta: kutilgan ${t.origin??"qiymat"} ${o}${t.maximum.toString()} ${a.unit} ${a.verb}`:`Juda katta: kutilgan ${t.origin??"qiymat"} ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Juda kichik: kutilgan ${t.origin} ${o}${t.minimum.toString()} ${a.unit} ${a.verb}`:`Juda kichik: kutilgan ${t.origin} ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Noto‘g‘ri satr: "${o.prefix}" bilan boshlanishi kerak`:o.format==="ends_with"?`Noto‘g‘ri satr: "${o.suffix}" bilan tugashi kerak`:o.format==="includes"?`Noto‘g‘ri satr: "${o.includes}" ni o‘z ichiga olishi kerak`:o.format==="regex"?`Noto‘g‘ri satr: ${o.pattern} shabloniga mos kelishi kerak`:`Noto‘g‘ri ${n[o.format]??t.format}`}case"not_multiple_of":return`Noto‘g‘ri raqam: ${t.divisor} ning karralisi bo‘lishi kerak`;case"unrecognized_keys":return`Noma’lum kalit${t.keys.length>1?"lar":""}: ${w(t.keys,", ")}`;case"invalid_key":return`${t.origin} dagi kalit noto‘g‘ri`;case"invalid_union":return"Noto‘g‘ri kirish";case"invalid_element":return`${t.origin} da noto‘g‘ri qiymat`;default:return"Noto‘g‘ri kirish"}}};function kb(){return{localeError:YR()}}var eU=()=>{let e={string:{unit:"ký tự",verb:"có"},file:{unit:"byte",verb:"có"},array:{unit:"phần tử",verb:"có"},set:{unit:"phần tử",verb:"có"},map:{unit:"phần tử",verb:"có"}};function r(t){return e[t]??null}let n={regex:"đầu vào",email:"địa chỉ email",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ngày giờ ISO",date:"ngày ISO",time:"giờ ISO",duration:"khoảng thời gian ISO",ipv4:"địa chỉ IPv4",ipv6:"địa chỉ IPv6",mac:"địa chỉ MAC",cidrv4:"dải IPv4",cidrv6:"dải IPv6",base64:"chuỗi mã hóa base64",base64url:"chuỗi mã hóa base64url",json_string:"chuỗi JSON",e164:"số E.164",credit_card:"số thẻ tín dụng",currency_code:"mã tiền tệ",iban:"IBAN",jwt:"JWT",template_literal:"đầu vào"},i={nan:"NaN",number:"số",array:"mảng"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Đầu vào không hợp lệ: mong đợi instanceof ${t.expected}, nhận được ${s}`:`Đầu vào không hợp lệ: mong đợi ${o}, nhận được ${s}`}case"invalid_value":return t.values.length===1?`Đầu vào không hợp lệ: mong đợi ${k(t.values[0])}`:`Tùy chọn không hợp lệ: mong đợi một trong các giá trị ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Quá lớn: mong đợi ${t.origin??"giá trị"} ${a.verb} ${o}${t.maximum.toString()} ${a.unit??"phần tử"}`:`Quá lớn: mong đợi ${t.origin??"giá trị"} ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Quá nhỏ: mong đợi ${t.origin} ${a.verb} ${o}${t.minimum.toString()} ${a.unit}`:`Quá nhỏ: mong đợi ${t.origin} ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Chuỗi không hợp lệ: phải bắt đầu bằng "${o.prefix}"`:o.format==="ends_with"?`Chuỗi không hợp lệ: phải kết thúc bằng "${o.suffix}"`:o.format==="includes"?`Chuỗi không hợp lệ: phải bao gồm "${o.includes}"`:o.format==="regex"?`Chuỗi không hợp lệ: phải khớp với mẫu ${o.pattern}`:`${n[o.format]??t.format} không hợp lệ`}case"not_multiple_of":return`Số không hợp lệ: phải là bội số của ${t.divisor}`;case"unrecognized_keys":return`Khóa không được nhận dạng: ${w(t.keys,", ")}`;case"invalid_key":return`Khóa không hợp lệ trong ${t.origin}`;case"invalid_union":return"Đầu vào không hợp lệ";case"invalid_element":return`Giá trị không hợp lệ trong ${t.origin}`;default:return"Đầu vào không hợp lệ"}}};function Ob(){return{localeError:eU()}}var rU=()=>{let e={string:{unit:"字符",verb:"包含"},file:{unit:"字节",verb:"包含"},array:{unit:"项",verb:"包含"},set:{unit:"项",verb:"包含"},map:{unit:"项",verb:"包含"}};function r(t){return e[t]??null}let n={regex:"输入",email:"电子邮件",url:"URL",emoji:"表情符号",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO日期时间",date:"ISO日期",time:"ISO时间",duration:"ISO时长",ipv4:"IPv4地址",ipv6:"IPv6地址",mac:"MAC地址",cidrv4:"IPv4网段",cidrv6:"IPv6网段",base64:"base64编码字符串",base64url:"base64url编码字符串",json_string:"JSON字符串",e164:"E.164号码",credit_card:"信用卡号",currency_code:"货币代码",iban:"IBAN",jwt:"JWT",template_literal:"输入"},i={nan:"NaN",number:"数字",array:"数组",null:"空值(null)"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`无效输入：期望 instanceof ${t.expected}，实际接收 ${s}`:`无效输入：期望 ${o}，实际接收 ${s}`}case"invalid_value":return t.values.length===1?`无效输入：期望 ${k(t.values[0])}`:`无效选项：期望以下之一 ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`数值过大：期望 ${t.origin??"值"} ${o}${t.maximum.toString()} ${a.unit??"个元素"}`:`数值过大：期望 ${t.origin??"值"} ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`数值过小：期望 ${t.origin} ${o}${t.minimum.toString()} ${a.unit}`:`数值过小：期望 ${t.origin} ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`无效字符串：必须以 "${o.prefix}" 开头`:o.format==="ends_with"?`无效字符串：必须以 "${o.suffix}" 结尾`:o.format==="includes"?`无效字符串：必须包含 "${o.includes}"`:o.format==="regex"?`无效字符串：必须满足正则表达式 ${o.pattern}`:`无效${n[o.format]??t.format}`}case"not_multiple_of":return`无效数字：必须是 ${t.divisor} 的倍数`;case"unrecognized_keys":return`出现未知的键(key): ${w(t.keys,", ")}`;case"invalid_key":return`${t.origin} 中的键(key)无效`;case"invalid_union":return"无效输入";case"invalid_element":return`${t.origin} 中包含无效值(value)`;default:return"无效输入"}}};function Nb(){return{localeError:rU()}}var tU=()=>{let e={string:{unit:"字元",verb:"擁有"},file:{unit:"位元組",verb:"擁有"},array:{unit:"項目",verb:"擁有"},set:{unit:"項目",verb:"擁有"},map:{unit:"項目",verb:"擁有"}};function r(t){return e[t]??null}let n={regex:"輸入",email:"郵件地址",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO 日期時間",date:"ISO 日期",time:"ISO 時間",duration:"ISO 期間",ipv4:"IPv4 位址",ipv6:"IPv6 位址",mac:"MAC 位址",cidrv4:"IPv4 範圍",cidrv6:"IPv6 範圍",base64:"base64 編碼字串",base64url:"base64url 編碼字串",json_string:"JSON 字串",e164:"E.164 數值",credit_card:"信用卡號",currency_code:"貨幣代碼",iban:"IBAN",jwt:"JWT",template_literal:"輸入"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`無效的輸入值：預期為 instanceof ${t.expected}，但收到 ${s}`:`無效的輸入值：預期為 ${o}，但收到 ${s}`}case"invalid_value":return t.values.length===1?`無效的輸入值：預期為 ${k(t.values[0])}`:`無效的選項：預期為以下其中之一 ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`數值過大：預期 ${t.origin??"值"} 應為 ${o}${t.maximum.toString()} ${a.unit??"個元素"}`:`數值過大：預期 ${t.origin??"值"} 應為 ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`數值過小：預期 ${t.origin} 應為 ${o}${t.minimum.toString()} ${a.unit}`:`數值過小：預期 ${t.origin} 應為 ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`無效的字串：必須以 "${o.prefix}" 開頭`:o.format==="ends_with"?`無效的字串：必須以 "${o.suffix}" 結尾`:o.format==="includes"?`無效的字串：必須包含 "${o.includes}"`:o.format==="regex"?`無效的字串：必須符合格式 ${o.pattern}`:`無效的 ${n[o.format]??t.format}`}case"not_multiple_of":return`無效的數字：必須為 ${t.divisor} 的倍數`;case"unrecognized_keys":return`無法識別的鍵值${t.keys.length>1?"們":""}：${w(t.keys,"、")}`;case"invalid_key":return`${t.origin} 中有無效的鍵值`;case"invalid_union":return"無效的輸入值";case"invalid_element":return`${t.origin} 中有無效的值`;default:return"無效的輸入值"}}};function Pb(){return{localeError:tU()}}var nU=()=>{let e={string:{unit:"àmi",verb:"ní"},file:{unit:"bytes",verb:"ní"},array:{unit:"nkan",verb:"ní"},set:{unit:"nkan",verb:"ní"},map:{unit:"nkan",verb:"ní"}};function r(t){return e[t]??null}let n={regex:"ẹ̀rọ ìbáwọlé",email:"àdírẹ́sì ìmẹ́lì",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"àkókò ISO",date:"ọjọ́ ISO",time:"àkókò ISO",duration:"àkókò tó pé ISO",ipv4:"àdírẹ́sì IPv4",ipv6:"àdírẹ́sì IPv6",mac:"àdírẹ́sì MAC",cidrv4:"àgbègbè IPv4",cidrv6:"àgbègbè IPv6",base64:"ọ̀rọ̀ tí a kọ́ ní base64",base64url:"ọ̀rọ̀ base64url",json_string:"ọ̀rọ̀ JSON",e164:"nọ́mbà E.164",credit_card:"nọmba kaadi gbese",currency_code:"koodu owó",iban:"IBAN",jwt:"JWT",template_literal:"ẹ̀rọ ìbáwọlé"},i={nan:"NaN",number:"nọ́mbà",array:"akopọ"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=O(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ìbáwọlé aṣìṣe: a ní láti fi instanceof ${t.expected}, àmọ̀ a rí ${s}`:`Ìbáwọlé aṣìṣe: a ní láti fi ${o}, àmọ̀ a rí ${s}`}case"invalid_value":return t.values.length===1?`Ìbáwọlé aṣìṣe: a ní láti fi ${k(t.values[0])}`:`Àṣàyàn aṣìṣe: yan ọ̀kan lára ${w(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Tó pọ̀ jù: a ní láti jẹ́ pé ${t.origin??"iye"} ${a.verb} ${o}${t.maximum} ${a.unit}`:`Tó pọ̀ jù: a ní láti jẹ́ ${o}${t.maximum}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Kéré ju: a ní láti jẹ́ pé ${t.origin} ${a.verb} ${o}${t.minimum} ${a.unit}`:`Kéré ju: a ní láti jẹ́ ${o}${t.minimum}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ọ̀rọ̀ aṣìṣe: gbọ́dọ̀ bẹ̀rẹ̀ pẹ̀lú "${o.prefix}"`:o.format==="ends_with"?`Ọ̀rọ̀ aṣìṣe: gbọ́dọ̀ parí pẹ̀lú "${o.suffix}"`:o.format==="includes"?`Ọ̀rọ̀ aṣìṣe: gbọ́dọ̀ ní "${o.includes}"`:o.format==="regex"?`Ọ̀rọ̀ aṣìṣe: gbọ́dọ̀ bá àpẹẹrẹ mu ${o.pattern}`:`Aṣìṣe: ${n[o.format]??t.format}`}case"not_multiple_of":return`Nọ́mbà aṣìṣe: gbọ́dọ̀ jẹ́ èyà pípín ti ${t.divisor}`;case"unrecognized_keys":return`Bọtìnì àìmọ̀: ${w(t.keys,", ")}`;case"invalid_key":return`Bọtìnì aṣìṣe nínú ${t.origin}`;case"invalid_union":return"Ìbáwọlé aṣìṣe";case"invalid_element":return`Iye aṣìṣe nínú ${t.origin}`;default:return"Ìbáwọlé aṣìṣe"}}};function xb(){return{localeError:nU()}}var Ab,qm=Symbol("ZodOutput"),Tm=Symbol("ZodInput"),Js=class{constructor(){this._map=new WeakMap,this._idmap=new Map}add(r,...n){let i=n[0];return this._map.set(r,i),i&&typeof i=="object"&&"id"in i&&this._idmap.set(i.id,r),this}clear(){return this._map=new WeakMap,this._idmap=new Map,this}remove(r){let n=this._map.get(r);return n&&typeof n=="object"&&"id"in n&&this._idmap.delete(n.id),this._map.delete(r),this}get(r){let n=r._zod.parent;if(n){let i={...this.get(n)??{}};delete i.id;let t={...i,...this._map.get(r)};return Object.keys(t).length?t:void 0}return this._map.get(r)}has(r){return this._map.has(r)}};function Xs(){return new Js}(Ab=globalThis).__zod_globalRegistry??(Ab.__zod_globalRegistry=Xs());var Me=globalThis.__zod_globalRegistry;var er=Symbol.for("zod.compile.invalid"),Eb=Symbol.for("zod.compile.fallback"),Ir=class extends Error{constructor(r="z.compile does not support async refinements, transforms, or checks"){super(r),this.name="ZodCompileAsyncError"}},X=class extends Error{constructor(r,n=!0){super(`z.compile does not support ${r}; this schema must use the runtime parser`),this.name="ZodCompileUnsupportedError",this.islandable=n}};function oU(e,r){try{return Ys(e,{assertOnly:!0})}catch{return r}}function Um(e,r){try{let n=Ys(e),i=Qs(e,n);return i._zod.bag.validator=oU(e,n),i}catch(n){if(r?.strict)throw n;return e}}function Qs(e,r){if(Bs(e))throw new X("a schema whose subtree contains a reference cycle");let n=re(e),i=e._zod.run,t=i.__originalRun??i,o=(a,s)=>{if(s?.async||s?.direction==="backward"||s?.skipChecks||s?.[Eb]||s&&Ws(s,a.value))return t(a,s);let u=r(a.value);return u!==er?(a.value=u,a):(s&&(s[Eb]=!0),t(a,s))};return o.__originalRun=t,n._zod.bag.fallbackRun=t,n._zod.bag.validator=r,n._zod.run=o,i.__originalRun||aU(n,e,r),n}function aU(e,r,n){let i=e,t=r;if(typeof t.safeParse=="function"){let o=t.safeParse;i.safeParse=(a,s)=>{let u=n(a);return u!==er?{success:!0,data:u}:o(a,s)}}if(typeof t.parse=="function"){let o=t.parse;i.parse=(a,s)=>{let u=n(a);return u!==er?u:o(a,s)}}}function Ys(e,r){let n=!0;try{n=Bs(e)}catch{}if(n)throw new X("a schema whose subtree contains a reference cycle");let i={constants:new Map,constantCounter:0,varCounter:0,definite:!0},t=new dn(["input"]),o=he(t,i,e,"input",!r?.assertOnly);t.write(o===null?"return true;":`return ${o};`);let a=["INVALID",...i.constants.keys()],s=[er,...i.constants.values()],u=t.content.join(`
`),c=r?.debug?a.length>0?`// Constants: ${a.join(", ")}
${u}`:u:"",l=Function,d=`return (input) => {
${u}
}`,f;try{f=new l(...a,d)(...s)}catch(m){throw new X(`this schema (generated code failed to evaluate: ${m.message})`)}return r?.debug&&(f.code=c),f.definite=i.definite,f}function M(e,r){for(let[i,t]of e.constants)if(t===r)return i;let n=`c${e.constantCounter++}`;return e.constants.set(n,r),n}function pn(e,r){return e.definite=!1,M(e,r)}function R(e){return`v${e.varCounter++}`}function sU(e,r){let n=e._zod.run({value:r,issues:[]},{});if(n&&typeof n.then=="function")return er;let i=n;return i.issues.length===0?i.value:er}function We(e,r,n,i,t=!0){let o=e.content.length,a=r.constants.size,s=r.constantCounter,u=r.varCounter;try{return he(e,r,n,i,t)}catch(c){if(!(c instanceof X)||!c.islandable)throw c;if(e.content.length=o,r.constants.size>a){let l=Array.from(r.constants.keys()).slice(a);for(let d of l)r.constants.delete(d)}return r.constantCounter=s,r.varCounter=u,uU(e,r,n,i)}}function uU(e,r,n,i){r.definite=!1;let t=M(r,n),o=M(r,sU),a=R(r);return e.write(`const ${a} = ${o}(${t}, ${i});`),e.write(`if (${a} === INVALID) return INVALID;`),a}var cU=new Set(["max_size","min_size","size_equals","max_length","min_length","length_equals"]);function lU(e,r,n,i){let t=n._zod.def.checks;if(!t||t.length===0)return i;let o=i;for(let a of t){let s=a._zod.def;if(s.when&&!cU.has(s.check))throw new X('check with a custom "when" condition');switch(s.check){case"greater_than":dU(e,r,s,o);break;case"less_than":fU(e,r,s,o);break;case"multiple_of":mU(e,r,s,o);break;case"number_format":Cb(e,s,o);break;case"min_length":{let u=It(s.minimum,"min_length"),c=jm(e,r,o,`${o}.length >= ${u} && ${o}.length < ${s.minimum*2}`);e.write(`if (${c} < ${u}) return INVALID;`);break}case"max_length":{let u=It(s.maximum,"max_length"),c=jm(e,r,o,`${o}.length > ${u}`);e.write(`if (${c} > ${u}) return INVALID;`);break}case"length_equals":{let u=It(s.length,"length_equals"),c=jm(e,r,o,`${o}.length >= ${u} && ${o}.length <= ${s.length*2}`);e.write(`if (${c} !== ${u}) return INVALID;`);break}case"min_size":e.write(`if (${o}.size < ${It(s.minimum,"min_size")}) return INVALID;`);break;case"max_size":e.write(`if (${o}.size > ${It(s.maximum,"max_size")}) return INVALID;`);break;case"size_equals":e.write(`if (${o}.size !== ${It(s.size,"size_equals")}) return INVALID;`);break;case"string_format":o=Rb(e,r,s,o);break;case"custom":o=bU(e,r,a,o);break;case"bigint_format":pU(e,s,o);break;case"mime_type":vU(e,r,s,o);break;case"property":hU(e,r,s,o);break;case"properties":gU(e,r,s,o);break;case"overwrite":{let u=R(r);yU(e,r,a,o,u),o=u;break}default:throw new X(`check type ${s.check}`)}}return o}function jm(e,r,n,i){let t=M(r,cn),o=R(r);return e.write(`const ${o} = typeof ${n} === "string" && ${i} ? ${t}(${n}) : ${n}.length;`),o}function It(e,r){if(typeof e!="number"||!Number.isFinite(e))throw new X(`${r} bound of type ${typeof e}`);return`${e}`}function jb(e,r){if(typeof r=="bigint")return`${r}n`;if(typeof r=="number"){if(Number.isNaN(r))throw new X("comparison check with NaN bound");return`${r}`}if(r instanceof Date){if(Number.isNaN(r.getTime()))throw new X("comparison check with Invalid Date bound");return M(e,r)}throw new X(`comparison check bound of type ${typeof r}`)}function dU(e,r,n,i){let t=n.inclusive?"<":"<=";e.write(`if (${i} ${t} ${jb(r,n.value)}) return INVALID;`)}function fU(e,r,n,i){let t=n.inclusive?">":">=";e.write(`if (${i} ${t} ${jb(r,n.value)}) return INVALID;`)}function mU(e,r,n,i){if(typeof n.value=="bigint"){if(n.value===BigInt(0))throw new X("multiple_of check with a zero divisor");e.write(`if (${i} % ${n.value}n !== 0n) return INVALID;`)}else{let t=M(r,po);e.write(`if (${t}(${i}, ${It(n.value,"multiple_of")}) !== 0) return INVALID;`)}}function Cb(e,r,n){let i=r.format;switch(i){case"safeint":e.write(`if (!Number.isSafeInteger(${n})) return INVALID;`);break;case"int32":e.write(`if (!Number.isInteger(${n}) || ${n} < -2147483648 || ${n} > 2147483647) return INVALID;`);break;case"uint32":e.write(`if (!Number.isInteger(${n}) || ${n} < 0 || ${n} > 4294967295) return INVALID;`);break;case"float32":e.write(`if (!Number.isFinite(${n}) || ${n} < -3.4028234663852886e38 || ${n} > 3.4028234663852886e38) return INVALID;`);break;case"float64":e.write(`if (!Number.isFinite(${n})) return INVALID;`);break;default:throw new X(`number format ${i}`)}}function pU(e,r,n){let i=r.format;if(i)switch(i){case"int64":e.write(`if (${n} < -9223372036854775808n || ${n} > 9223372036854775807n) return INVALID;`);break;case"uint64":e.write(`if (${n} < 0n || ${n} > 18446744073709551615n) return INVALID;`);break;default:throw new X(`bigint format ${i}`)}}function vU(e,r,n,i){let t=n.mime;if(t&&t.length>0){let o=M(r,new Set(t));e.write(`if (!${o}.has(${i}.type)) return INVALID;`)}}function gU(e,r,n,i){if(n.when)throw new X('check with a custom "when" condition');e.write(`if (${i} == null) return INVALID;`);let t=n.shape;for(let o of Reflect.ownKeys(t)){let a=typeof o=="symbol"?M(r,o):Qe(o),s=R(r);e.write(`const ${s} = ${i}[${a}];`),We(e,r,t[o],s,!1)}}function hU(e,r,n,i){let t=`${i}[${JSON.stringify(n.property)}]`;he(e,r,n.schema,t)}function yU(e,r,n,i,t){let o=n._zod.def.tx;if(!o)throw new X("overwrite check without a transform function");if(vn(o))throw new Ir("z.compile: async overwrite transforms are not supported");let a=M(r,o);e.write(`const ${t} = ${a}(${i});`)}function Cm(){throw new ar}function Fm(e){this.issues.push(e)}function bU(e,r,n,i){let t=n._zod.def;if(t.fn){if(vn(t.fn))throw new Ir("z.compile: async .refine() predicates are not supported");let o=pn(r,t.fn),a=M(r,Cm),s=R(r);return e.write(`const ${s} = ${o}(${i});`),e.write(`if (${s} instanceof Promise) ${a}();`),e.write(`if (!${s}) return INVALID;`),i}if(n._zod.check){if(vn(n._zod.check))throw new Ir("z.compile: async .superRefine() / check functions are not supported");let o=n._zod.check,s=pn(r,c=>{let l={value:c,issues:[],addIssue:Fm};return o(l)instanceof Promise&&Cm(),l.issues.length===0?l.value:er}),u=R(r);return e.write(`const ${u} = ${s}(${i});`),e.write(`if (${u} === INVALID) return INVALID;`),u}throw new X("custom check without a predicate or check function")}var $U=new Set(["cidrv4","cuid","cuid2","date","datetime","duration","e164","email","emoji","ends_with","guid","includes","ipv4","ksuid","lowercase","mac","nanoid","regex","starts_with","time","ulid","uppercase","uuid","xid"]);function Rb(e,r,n,i,t=!0){let o=n.format;if(o==="base64"){let c=M(r,qo);return e.write(`if (!${c}(${i})) return INVALID;`),i}if(o==="base64url"){let c=M(r,Ds);return e.write(`if (!${c}(${i})) return INVALID;`),i}if(o==="jwt"){let c=M(r,Ts),l=M(r,n.alg??null);return e.write(`if (!${c}(${i}, ${l})) return INVALID;`),i}if(o==="ipv6"){let c=M(r,zo);return e.write(`if (!${c}(${i})) return INVALID;`),i}if(o==="cidrv6"){let c=M(r,As);return e.write(`if (!${c}(${i})) return INVALID;`),i}if(o==="credit_card"){let c=M(r,zs);return e.write(`if (!${c}(${i})) return INVALID;`),i}if(o==="iban"){let c=M(r,qs);return e.write(`if (!${c}(${i})) return INVALID;`),i}let a=n;if(o==="url"||o==="httpurl"||a.normalize||a.hostname!==void 0||a.protocol!==void 0){let c=M(r,Ns),l=M(r,n),d=R(r),f=R(r);if(e.write(`const ${d} = ${i}.trim();`),e.write(`const ${f} = ${c}(${d}, ${l});`),e.write(`if (typeof ${f} === "number") return INVALID;`),a.hostname!==void 0){let h=M(r,Ps);e.write(`if (!${h}(${f}, ${l}.hostname)) return INVALID;`)}if(a.protocol!==void 0){let h=M(r,xs);e.write(`if (!${h}(${f}, ${l}.protocol)) return INVALID;`)}if(!t)return null;let m=R(r),g=a.normalize?`${f}.href`:`${M(r,Do)}(${d})`;return e.write(`const ${m} = ${g};`),m}let s=n.fn;if(s){if(vn(s))throw new X(`async string format ${o}`);let c=M(r,s);return e.write(`if (!${c}(${i})) return INVALID;`),i}if($U.has(o)&&n.pattern){let c=M(r,n.pattern);return e.write(`${c}.lastIndex = 0;`),e.write(`if (!${c}.test(${i})) return INVALID;`),i}let u=n.format;switch(u){case"regex":throw new X("regex format without a pattern");case"lowercase":e.write(`if (${i} !== ${i}.toLowerCase()) return INVALID;`);break;case"uppercase":e.write(`if (${i} !== ${i}.toUpperCase()) return INVALID;`);break;case"includes":e.write(`if (!${i}.includes(${Qe(n.includes)})) return INVALID;`);break;case"starts_with":{let c=n.prefix;e.write(`if (${i}.slice(0, ${c.length}) !== ${Qe(c)}) return INVALID;`);break}case"ends_with":{let c=n.suffix;e.write(`if (${i}.slice(-${c.length}) !== ${Qe(c)}) return INVALID;`);break}default:throw new X(`string format ${u}`)}return i}function he(e,r,n,i,t=!0){let o=n._zod.def,a=o.type;if(o.coerce)throw new X(`coercion (z.coerce.${a}())`);let s=t||!!o.checks?.length,u;switch(a){case"string":u=_U(e,r,n,i,s);break;case"number":u=wU(e,n,i);break;case"boolean":u=SU(e,i);break;case"bigint":u=IU(e,n,i);break;case"symbol":u=kU(e,i);break;case"undefined":u=OU(e,i);break;case"null":u=NU(e,i);break;case"any":case"unknown":u=i;break;case"never":e.write("return INVALID;"),u=i;break;case"void":u=PU(e,i);break;case"nan":u=xU(e,i);break;case"date":u=AU(e,i);break;case"object":u=EU(e,r,n,i,s);break;case"optional":u=DU(e,r,n,i,s);break;case"nullable":u=TU(e,r,n,i,s);break;case"array":u=jU(e,r,n,i,s);break;case"literal":u=CU(e,r,n,i);break;case"enum":u=RU(e,r,n,i);break;case"readonly":{let c=zb(e,r,n,i),l=R(r);e.write(`const ${l} = Object.freeze(${c});`),u=l;break}case"success":zb(e,r,n,i),u="true";break;case"default":case"prefault":u=UU(e,r,n,i);break;case"nonoptional":u=FU(e,r,n,i);break;case"tuple":u=MU(e,r,n,i);break;case"union":u=LU(e,r,n,i);break;case"intersection":u=BU(e,r,n,i);break;case"record":u=WU(e,r,n,i);break;case"map":u=HU(e,r,n,i);break;case"set":u=KU(e,r,n,i);break;case"file":u=JU(e,i);break;case"template_literal":u=XU(e,r,n,i);break;case"lazy":u=QU(e,r,n,i);break;case"pipe":u=YU(e,r,n,i);break;case"custom":u=eF(e,r,n,i);break;case"transform":u=nF(e,r,n,i);break;case"catch":u=tF(e,r,n,i);break;default:throw new X(`schema type ${a}`)}return u===null?null:lU(e,r,n,u)}function _U(e,r,n,i,t=!0){e.write(`if (typeof ${i} !== "string") return INVALID;`);let o=n._zod.def;return o.format===void 0?i:Rb(e,r,o,i,t)}function wU(e,r,n){e.write(`if (typeof ${n} !== "number" || !Number.isFinite(${n})) return INVALID;`);let i=r._zod.def;return i.check==="number_format"&&i.format&&Cb(e,{format:i.format},n),n}function SU(e,r){return e.write(`if (typeof ${r} !== "boolean") return INVALID;`),r}function IU(e,r,n){e.write(`if (typeof ${n} !== "bigint") return INVALID;`);let i=r._zod.def;if(i.format)switch(i.format){case"int64":e.write(`if (${n} < -9223372036854775808n || ${n} > 9223372036854775807n) return INVALID;`);break;case"uint64":e.write(`if (${n} < 0n || ${n} > 18446744073709551615n) return INVALID;`);break}return n}function kU(e,r){return e.write(`if (typeof ${r} !== "symbol") return INVALID;`),r}function OU(e,r){return e.write(`if (${r} !== undefined) return INVALID;`),r}function NU(e,r){return e.write(`if (${r} !== null) return INVALID;`),r}function PU(e,r){return e.write(`if (${r} !== undefined) return INVALID;`),r}function xU(e,r){return e.write(`if (typeof ${r} !== "number" || !Number.isNaN(${r})) return INVALID;`),r}function AU(e,r){return e.write(`if (!(${r} instanceof Date) || Number.isNaN(${r}.getTime())) return INVALID;`),r}function EU(e,r,n,i,t=!0){let o=n._zod.def;e.write(`if (typeof ${i} !== "object" || ${i} === null || Array.isArray(${i})) return INVALID;`);let a=o.shape,s=Object.keys(a),u=Object.getOwnPropertySymbols(a),c=u.length?[...s,...u]:s,l=S=>typeof S=="symbol"?M(r,S):Qe(S),d=S=>typeof S=="symbol"?`[${l(S)}]`:Qe(S),f=a;if(s.includes("__proto__"))throw new X('object shape key "__proto__"');let m=new Map;for(let S of c){let $=f[S],N=l(S),P=R(r);if(e.write(`const ${P} = ${i}[${N}];`),$._zod.optin!==void 0){let A=R(r);e.write(`let ${A} = (() => {`),e.indented(E=>{let U=We(E,r,$,P);E.write(`return ${U};`)}),e.write("})();"),$._zod.optout==="optional"?(e.write(`if (${A} === INVALID) {`),e.indented(E=>{E.write(`if (${N} in ${i}) return INVALID;`),E.write(`${A} = undefined;`)}),e.write("}")):e.write(`if (${A} === INVALID) return INVALID;`),m.set(S,A)}else{qU($)&&e.write(`if (!(${N} in ${i})) return INVALID;`);let A=We(e,r,$,P,t);A!==null&&m.set(S,A)}}let g=o.catchall,h="none";if(g){let S=g._zod.def.type;if(S==="never"){let $=s.map(N=>`k !== ${Qe(N)}`).join(" && ")||"true";e.write(`for (const k in ${i}) {`),e.indented(N=>{N.write(`if (${$}) return INVALID;`)}),e.write("}")}else(S==="unknown"||S==="any")&&!g._zod.def.checks?.length?h="passthrough":h="schema"}let b=R(r),y=c.some(S=>Db(f[S])||Rm(f[S]));if(!t){if(h==="schema"){let S=s.length>0?M(r,new Set(s)):null;e.write(`for (const k in ${i}) {`),e.indented($=>{$.write('if (k === "__proto__") continue;'),S&&$.write(`if (${S}.has(k)) continue;`);let N=R(r);$.write(`const ${N} = ${i}[k];`),We($,r,g,N,!1)}),e.write("}")}return null}if(y){e.write(`const ${b} = {};`);for(let S of c){let $=l(S),N=m.get(S);Rm(f[S])?e.write(`if (${$} in ${i}) ${b}[${$}] = ${N};`):Db(f[S])?e.write(`if (${N} !== undefined || ${$} in ${i}) ${b}[${$}] = ${N};`):e.write(`${b}[${$}] = ${N};`)}}else{let S=c.map($=>`${d($)}: ${m.get($)}`).join(", ");e.write(`const ${b} = { ${S} };`)}if(h!=="none"){let S=s.length>0?M(r,new Set(s)):null;e.write(`for (const k in ${i}) {`),e.indented($=>{if($.write('if (k === "__proto__") continue;'),S&&$.write(`if (${S}.has(k)) continue;`),h==="passthrough")$.write(`${b}[k] = ${i}[k];`);else{let N=R(r);$.write(`const ${N} = ${i}[k];`);let P=We($,r,g,N);$.write(`${b}[k] = ${P};`)}}),e.write("}")}return b}function DU(e,r,n,i,t=!0){let o=n._zod.def;if(zU(n))return he(e,r,o.innerType,i,t);if(o.innerType._zod.optin==="defaulted"){let s=R(r),u=R(r);return e.write(`let ${s};`),e.write(`if (${i} === undefined) {`),e.indented(c=>{c.write(`const ${u} = (() => {`),c.indented(l=>{let d=he(l,r,o.innerType,i);l.write(`return ${d};`)}),c.write("})();"),c.write(`if (${u} !== INVALID) ${s} = ${u};`)}),e.write("} else {"),e.indented(c=>{let l=he(c,r,o.innerType,i);c.write(`${s} = ${l};`)}),e.write("}"),s}let a=t?R(r):null;return a&&e.write(`let ${a};`),e.write(`if (${i} !== undefined) {`),e.indented(s=>{let u=he(s,r,o.innerType,i,t);a&&u!==null&&s.write(`${a} = ${u};`)}),e.write("}"),a}function zU(e){return e._zod.traits?.has("$ZodExactOptional")===!0}function qU(e){return e._zod.optin===void 0&&mn(e)}function mn(e){if(e._zod.def.coerce)return!0;let r=e._zod.def;switch(r.type){case"any":case"unknown":case"undefined":case"void":case"default":case"prefault":case"transform":case"custom":case"lazy":return!0;case"string":case"number":case"boolean":case"bigint":case"symbol":case"null":case"never":case"nan":case"date":case"object":case"array":case"tuple":case"record":case"map":case"set":case"file":case"template_literal":return!1;case"nonoptional":return r.innerType?mn(r.innerType):!1;case"literal":return!!r.values?.includes(void 0);case"enum":return!!e._zod.values?.has(void 0);case"optional":case"nullable":case"readonly":case"success":return r.innerType?mn(r.innerType):!0;case"catch":return!0;case"union":return r.options?r.options.some(mn):!0;case"intersection":return!r.left||!r.right?!0:mn(r.left)&&mn(r.right);case"pipe":return r.in?mn(r.in):!0;default:return!0}}function Rm(e){return e._zod.optin==="optional"&&e._zod.optout==="optional"}function Db(e){return(e._zod.optin!=="defaulted"||e._zod.optout==="optional")&&ci(e)}function ci(e){let r=e._zod.def;switch(r.type){case"string":case"number":case"boolean":case"bigint":case"symbol":case"null":case"nan":case"date":case"object":case"array":case"tuple":case"record":case"map":case"set":case"file":case"template_literal":case"never":case"success":return!1;case"literal":return!!r.values?.includes(void 0);case"enum":return!!e._zod.values?.has(void 0);case"optional":return!0;case"nullable":case"readonly":case"nonoptional":return r.innerType?ci(r.innerType):!0;case"union":return r.options?r.options.some(ci):!0;case"intersection":return!r.left||!r.right||ci(r.left)||ci(r.right);case"pipe":return r.out?ci(r.out):!0;default:return!0}}function TU(e,r,n,i,t=!0){let o=n._zod.def,a=t?R(r):null;return a&&e.write(`let ${a} = null;`),e.write(`if (${i} !== null) {`),e.indented(s=>{let u=he(s,r,o.innerType,i,t);a&&u!==null&&s.write(`${a} = ${u};`)}),e.write("}"),a}function Mm(e,r,n){for(let[i,t]of Yn(r._zod.def.checks))e.write(`if (${n} > ${It(i,t._zod.def.check)}) return INVALID;`)}function jU(e,r,n,i,t=!0){let o=n._zod.def;e.write(`if (!Array.isArray(${i})) return INVALID;`),Mm(e,n,`${i}.length`);let a=t?R(r):null,s=R(r),u=R(r);return a&&e.write(`const ${a} = new Array(${i}.length);`),e.write(`for (let ${s} = 0; ${s} < ${i}.length; ${s}++) {`),e.indented(c=>{c.write(`const ${u} = ${i}[${s}];`);let l=We(c,r,o.element,u,t);a&&l!==null&&c.write(`${a}[${s}] = ${l};`)}),e.write("}"),a}function CU(e,r,n,i){let o=n._zod.def.values;if(o.length!==1){let s=M(r,new Set(o));return e.write(`if (!${s}.has(${i})) return INVALID;`),i}let a=o[0];if(typeof a=="number"&&Number.isNaN(a)){let s=M(r,new Set(o));return e.write(`if (!${s}.has(${i})) return INVALID;`),i}if(typeof a=="string")e.write(`if (${i} !== ${Qe(a)}) return INVALID;`);else if(typeof a=="number"||typeof a=="boolean")e.write(`if (${i} !== ${a}) return INVALID;`);else if(a===null)e.write(`if (${i} !== null) return INVALID;`);else if(a===void 0)e.write(`if (${i} !== undefined) return INVALID;`);else if(typeof a=="bigint")e.write(`if (${i} !== ${a}n) return INVALID;`);else throw new X(`literal type ${typeof a}`);return i}function RU(e,r,n,i){let t=n._zod.values;if(!t)throw new X("enum schema without enumerated values");let o=M(r,t);return e.write(`if (!${o}.has(${i})) return INVALID;`),i}function zb(e,r,n,i){let t=n._zod.def;return he(e,r,t.innerType,i)}function UU(e,r,n,i){let t=n._zod.def,a=Object.getOwnPropertyDescriptor(n._zod.def,"defaultValue")?()=>n._zod.def.defaultValue:void 0;if(n._zod.def.type==="prefault"){if(!a)return he(e,r,t.innerType,i);let u=M(r,a),c=R(r);return e.write(`let ${c} = ${i};`),e.write(`if (${i} === undefined) ${c} = ${u}();`),he(e,r,t.innerType,c)}let s=R(r);if(a){let u=M(r,a),c=M(r,vo);e.write(`let ${s};`),e.write(`if (${i} === undefined) {`),e.indented(l=>{l.write(`${s} = ${c}(${u}());`)}),e.write("} else {"),e.indented(l=>{let d=he(l,r,t.innerType,i);l.write(`${s} = ${d} === undefined ? ${c}(${u}()) : ${d};`)}),e.write("}")}else e.write(`let ${s};`),e.write(`if (${i} !== undefined) {`),e.indented(u=>{let c=he(u,r,t.innerType,i);u.write(`${s} = ${c};`)}),e.write("}");return s}function FU(e,r,n,i){let t=n._zod.def,o=he(e,r,t.innerType,i),a=R(r);return e.write(`const ${a} = ${o};`),e.write(`if (${a} === undefined) return INVALID;`),a}function MU(e,r,n,i){let t=n._zod.def,o=t.items,a=t.rest;e.write(`if (!Array.isArray(${i})) return INVALID;`);let s=qb(o,"optin"),u=qb(o,"optout");a?e.write(`if (${i}.length < ${s}) return INVALID;`):e.write(`if (${i}.length < ${s} || ${i}.length > ${o.length}) return INVALID;`);let c=R(r);e.write(`const ${c} = [];`);for(let l=0;l<o.length;l++){let d=o[l];if(l>=u)e.write(`if (${c}.length === ${l}) {`),e.indented(f=>{f.write(`if (${l} < ${i}.length) {`),f.indented(m=>{let g=R(r);m.write(`const ${g} = ${i}[${l}];`);let h=We(m,r,d,g);m.write(`${c}[${l}] = ${h};`)}),f.write("} else {"),f.indented(m=>{if(Rm(d)){m.write(`${c}.length = ${l};`);return}let g=R(r),h=R(r);m.write(`const ${g} = undefined;`),m.write(`const ${h} = (() => {`),m.indented(b=>{let y=We(b,r,d,g);b.write(`return ${y};`)}),m.write("})();"),m.write(`if (${h} === INVALID || ${h} === undefined) ${c}.length = ${l};`),m.write(`else ${c}[${l}] = ${h};`)}),f.write("}")}),e.write("}");else{let f=R(r);e.write(`const ${f} = ${i}[${l}];`);let m=We(e,r,d,f);e.write(`${c}[${l}] = ${m};`)}}if(a){let l=R(r),d=R(r);e.write(`for (let ${l} = ${o.length}; ${l} < ${i}.length; ${l}++) {`),e.indented(f=>{f.write(`const ${d} = ${i}[${l}];`);let m=We(f,r,a,d);f.write(`${c}[${l}] = ${m};`)}),e.write("}")}return c}function qb(e,r){for(let n=e.length-1;n>=0;n--)if(!(r==="optin"?e[n]._zod.optin!==void 0:e[n]._zod.optout==="optional"))return n+1;return 0}function LU(e,r,n,i){let t=n._zod.def,o=t.options;if(t.discriminator)return ZU(e,r,t,i);if(t.inclusive===!1)throw new X("exclusive unions (z.xor)");if(o.length===0)return e.write("return INVALID;"),i;if(o.length===1)return he(e,r,o[0],i);if(o.every(u=>u._zod.def.type==="literal"&&!u._zod.def.checks?.length)){let u=new Set(o.flatMap(l=>l._zod.def.values)),c=M(r,u);return e.write(`if (!${c}.has(${i})) return INVALID;`),i}let s=R(r);e.write(`let ${s};`);for(let u=0;u<o.length;u++){let c=o[u];u===0?e.write(`${s} = (() => {`):e.write(`if (${s} === INVALID) ${s} = (() => {`),e.indented(l=>{let d=he(l,r,c,i);l.write(`return ${d};`)}),e.write("})();")}return e.write(`if (${s} === INVALID) return INVALID;`),s}function ZU(e,r,n,i){if(n.unionFallback)throw new X("discriminated union with unionFallback");if(n.options.length===0)return e.write("return INVALID;"),i;let t=R(r),o=R(r);e.write(`const ${t} = ${i}?.[${Qe(n.discriminator)}];`),e.write(`let ${o};`);let a=!0,s=new Set;for(let u of n.options){let c=u._zod.propValues?.[n.discriminator];if(!c||c.size===0)throw new X("discriminated union option without static discriminator values");for(let f of c){if(s.has(f))throw new X(`duplicate discriminator value ${String(f)}`);s.add(f)}let l=Array.from(c,f=>VU(r,t,f)),d=a?"if":"else if";e.write(`${d} (${l.join(" || ")}) {`),e.indented(f=>{let m=he(f,r,u,i);f.write(`${o} = ${m};`)}),e.write("}"),a=!1}return e.write("else { return INVALID; }"),o}function VU(e,r,n){if(typeof n=="string")return`${r} === ${Qe(n)}`;if(typeof n=="number")return Number.isNaN(n)?`Number.isNaN(${r})`:`${r} === ${n}`;if(typeof n=="boolean")return`${r} === ${n}`;if(n===null)return`${r} === null`;if(n===void 0)return`${r} === undefined`;if(typeof n=="bigint")return`${r} === ${n}n`;if(typeof n=="symbol"){let i=M(e,n);return`${r} === ${i}`}throw new X(`literal discriminator value ${String(n)}`)}function BU(e,r,n,i){let t=n._zod.def;r.definite=!1;let o=We(e,r,t.left,i),a=We(e,r,t.right,i),s=M(r,ai),u=R(r);return e.write(`const ${u} = ${s}(${o}, ${a});`),e.write(`if (!${u}.valid) return INVALID;`),`${u}.data`}function WU(e,r,n,i){let t=n._zod.def,o=M(r,pr);e.write(`if (!${o}(${i})) return INVALID;`);let a=R(r),s=R(r),u=R(r);e.write(`const ${a} = {};`);let c=t,l=c.partial?void 0:t.keyType._zod.values;if(l){let m=[];for(let h of l){if(!(typeof h=="string"||typeof h=="number"||typeof h=="symbol"))throw new X(`record key value ${String(h)}`);let b=typeof h=="number"?h.toString():h;if(b==="__proto__")throw new X('record key "__proto__"');m.push(b);let y=M(r,h),S=he(e,r,t.keyType,y),$=R(r);e.write(`const ${$} = ${i}[${GU(r,b)}];`);let N=We(e,r,t.valueType,$);e.write(`${a}[${S}] = ${N};`)}let g=M(r,new Set(m));return e.write(`for (const ${s} in ${i}) {`),e.indented(h=>{h.write(`if (${g}.has(${s})) continue;`),c.mode==="loose"?h.write(`if (${s} !== "__proto__") ${a}[${s}] = ${i}[${s}];`):h.write("return INVALID;")}),e.write("}"),a}let d=t.keyType._zod.def;if(!(d.type==="string"&&d.format===void 0&&!d.coerce&&(d.checks?.length??0)===0)){let m=t.mode==="loose",g=Ys(t.keyType);g.definite===!1&&(r.definite=!1);let h=M(r,g),b=M(r,nt),y=R(r);return Tb(e,r,i,s,S=>{S.write(`let ${y} = ${h}(${s});`),S.write(`if (${y} === INVALID && typeof ${s} === "string" && ${b}.test(${s})) ${y} = ${h}(Number(${s}));`),m?S.write(`if (${y} === INVALID) { ${a}[${s}] = ${i}[${s}]; continue; }`):S.write(`if (${y} === INVALID) return INVALID;`),S.write(`if (${y} === "__proto__") continue;`);let $=R(r);S.write(`const ${$} = ${i}[${s}];`);let N=We(S,r,t.valueType,$);S.write(`${a}[${y}] = ${N};`)}),a}return Tb(e,r,i,s,m=>{m.write(`const ${u} = ${i}[${s}];`);let g=We(m,r,t.valueType,u);m.write(`${a}[${s}] = ${g};`)},"return INVALID;"),a}function Tb(e,r,n,i,t,o){let a=M(r,Object.prototype.propertyIsEnumerable),s=R(r),u=R(r),c=R(r);e.write(`const ${s} = Object.getOwnPropertySymbols(${n});`),e.write(`const ${u} = Object.getOwnPropertyNames(${n});`),e.write(`for (let ${c} = 0; ${c} < ${u}.length; ${c}++) {`),e.indented(l=>{l.write(`const ${i} = ${u}[${c}];`),l.write(`if (${i} === "__proto__" || !${a}.call(${n}, ${i})) continue;`),t(l)}),e.write("}"),e.write(`for (let ${c} = 0; ${c} < ${s}.length; ${c}++) {`),e.indented(l=>{l.write(`const ${i} = ${s}[${c}];`),l.write(`if (!${a}.call(${n}, ${i})) continue;`),o?l.write(o):t(l)}),e.write("}")}function GU(e,r){return typeof r=="string"?Qe(r):M(e,r)}function HU(e,r,n,i){let t=n._zod.def;e.write(`if (!(${i} instanceof Map)) return INVALID;`),Mm(e,n,`${i}.size`);let o=R(r),a=R(r),s=R(r);return e.write(`const ${o} = new Map();`),e.write(`for (const [${a}, ${s}] of ${i}) {`),e.indented(u=>{let c=he(u,r,t.keyType,a),l=he(u,r,t.valueType,s);u.write(`${o}.set(${c}, ${l});`)}),e.write("}"),o}function KU(e,r,n,i){let t=n._zod.def;e.write(`if (!(${i} instanceof Set)) return INVALID;`),Mm(e,n,`${i}.size`);let o=R(r),a=R(r);return e.write(`const ${o} = new Set();`),e.write(`for (const ${a} of ${i}) {`),e.indented(s=>{let u=he(s,r,t.valueType,a);s.write(`${o}.add(${u});`)}),e.write("}"),o}function JU(e,r){return e.write(`if (!(${r} instanceof File)) return INVALID;`),r}function XU(e,r,n,i){e.write(`if (typeof ${i} !== "string") return INVALID;`);let t=n._zod.pattern;if(t){let o=M(r,t);e.write(`${o}.lastIndex = 0;`),e.write(`if (!${o}.test(${i})) return INVALID;`)}return i}function QU(e,r,n,i){let t=n._zod.def,o=pn(r,t.getter),a=M(r,{parser:null});e.write(`if (!${a}.parser) {`),e.indented(u=>{u.write(`const inner = ${o}();`),u.write(`${a}.parser = function(input) {`),u.indented(c=>{c.write("const result = inner._zod.run({ value: input, issues: [] }, {});"),c.write("return result.issues.length === 0 ? result.value : INVALID;")}),u.write("};")}),e.write("}");let s=R(r);return e.write(`const ${s} = ${a}.parser(${i});`),e.write(`if (${s} === INVALID) return INVALID;`),s}function YU(e,r,n,i){let t=n._zod.def,o=he(e,r,t.in,i);if(t.transform){if(vn(t.transform))throw new Ir("z.compile: async transforms in pipes are not supported");let a=t.transform,u=pn(r,l=>{let d={value:l,issues:[],addIssue:Fm},f=a(l,d);return f instanceof Promise?er:d.issues.length===0?f:er}),c=R(r);return e.write(`const ${c} = ${u}(${o});`),e.write(`if (${c} === INVALID) return INVALID;`),he(e,r,t.out,c)}else return he(e,r,t.out,o)}function vn(e){return typeof e=="function"&&(e.constructor.name==="AsyncFunction"||e[Symbol.toStringTag]==="AsyncFunction")}function eF(e,r,n,i){let t=n._zod.def;if(t.fn){if(vn(t.fn))throw new Ir("z.compile: async custom predicates are not supported");let o=pn(r,t.fn),a=M(r,Cm),s=R(r);e.write(`const ${s} = ${o}(${i});`),e.write(`if (${s} instanceof Promise) ${a}();`),e.write(`if (!${s}) return INVALID;`)}else throw new X("custom schema without a predicate function");return i}function rF(e,r,n){let i=e._zod.run({value:n,issues:[]},{});if(i&&typeof i.then=="function")return er;let t=i;return t.issues.length===0?t.value:r()}function tF(e,r,n,i){let t=n._zod.def;if(!t.catchValue[is])throw new X("catch with a callback (only a constant catch value compiles)",!1);let o=R(r);e.write(`let ${o} = (() => {`),e.indented(c=>{let l=We(c,r,t.innerType,i);c.write(`return ${l};`)}),e.write("})();");let a=M(r,t.innerType),s=pn(r,t.catchValue),u=M(r,rF);return e.write(`if (${o} === INVALID) {`),e.indented(c=>{c.write(`${o} = ${u}(${a}, ${s}, ${i});`),c.write(`if (${o} === INVALID) return INVALID;`)}),e.write("}"),o}function nF(e,r,n,i){let t=n._zod.def;if(t.transform){if(vn(t.transform))throw new Ir("z.compile: async transforms are not supported");let o=t.transform,s=pn(r,c=>{let l={value:c,issues:[],addIssue:Fm},d=o(c,l);return d instanceof Promise?er:l.issues.length===0?d:er}),u=R(r);return e.write(`const ${u} = ${s}(${i});`),e.write(`if (${u} === INVALID) return INVALID;`),u}return i}function eu(e){return e.checks&&(e.checks=[...e.checks]),e}function Lm(e,r){return new e(eu({type:"string",...z(r)}))}function Zm(e,r){return new e(eu({type:"string",coerce:!0,...z(r)}))}function ru(e,r){return new e({type:"string",format:"email",check:"string_format",abort:!1,...z(r)})}function tu(e,r){return new e({type:"string",format:"guid",check:"string_format",abort:!1,...z(r)})}function nu(e,r){return new e({type:"string",format:"uuid",check:"string_format",abort:!1,...z(r)})}function iu(e,r){return new e({type:"string",format:"uuid",check:"string_format",abort:!1,version:"v4",...z(r)})}function ou(e,r){return new e({type:"string",format:"uuid",check:"string_format",abort:!1,version:"v6",...z(r)})}function au(e,r){return new e({type:"string",format:"uuid",check:"string_format",abort:!1,version:"v7",...z(r)})}function Bo(e,r){return new e({type:"string",format:"url",check:"string_format",abort:!1,...z(r)})}function su(e,r){return new e({type:"string",format:"emoji",check:"string_format",abort:!1,...z(r)})}function uu(e,r){return new e({type:"string",format:"nanoid",check:"string_format",abort:!1,...z(r)})}function cu(e,r){return new e({type:"string",format:"cuid",check:"string_format",abort:!1,...z(r)})}function lu(e,r){return new e({type:"string",format:"cuid2",check:"string_format",abort:!1,...z(r)})}function du(e,r){return new e({type:"string",format:"ulid",check:"string_format",abort:!1,...z(r)})}function fu(e,r){return new e({type:"string",format:"xid",check:"string_format",abort:!1,...z(r)})}function mu(e,r){return new e({type:"string",format:"ksuid",check:"string_format",abort:!1,...z(r)})}function pu(e,r){return new e({type:"string",format:"ipv4",check:"string_format",abort:!1,...z(r)})}function vu(e,r){return new e({type:"string",format:"ipv6",check:"string_format",abort:!1,...z(r)})}function Vm(e,r){return new e({type:"string",format:"mac",check:"string_format",abort:!1,...z(r)})}function gu(e,r){return new e({type:"string",format:"cidrv4",check:"string_format",abort:!1,...z(r)})}function hu(e,r){return new e({type:"string",format:"cidrv6",check:"string_format",abort:!1,...z(r)})}function yu(e,r){return new e({type:"string",format:"base64",check:"string_format",abort:!1,...z(r)})}function bu(e,r){return new e({type:"string",format:"base64url",check:"string_format",abort:!1,...z(r)})}function $u(e,r){return new e({type:"string",format:"e164",check:"string_format",abort:!1,...z(r)})}function Bm(e,r){return new e({type:"string",format:"credit_card",check:"string_format",abort:!1,...z(r)})}function Wm(e,r){return new e({type:"string",format:"iban",check:"string_format",abort:!1,...z(r)})}function _u(e,r){return new e({type:"string",format:"jwt",check:"string_format",abort:!1,...z(r)})}var Gm={Any:null,Minute:-1,Second:0,Millisecond:3,Microsecond:6};function Wo(e,r){return new e({type:"string",format:"datetime",check:"string_format",offset:!1,local:!1,precision:null,...z(r)})}function Go(e,r){return new e({type:"string",format:"date",check:"string_format",...z(r)})}function Ho(e,r){return new e({type:"string",format:"time",check:"string_format",precision:null,...z(r)})}function Ko(e,r){return new e({type:"string",format:"duration",check:"string_format",...z(r)})}function Hm(e,r){return new e(eu({type:"number",checks:[],...z(r)}))}function Km(e,r){return new e(eu({type:"number",coerce:!0,checks:[],...z(r)}))}function Jm(e,r){return new e({type:"number",check:"number_format",abort:!1,format:"safeint",...z(r)})}function Xm(e,r){return new e({type:"number",check:"number_format",abort:!1,format:"float32",...z(r)})}function Qm(e,r){return new e({type:"number",check:"number_format",abort:!1,format:"float64",...z(r)})}function Ym(e,r){return new e({type:"number",check:"number_format",abort:!1,format:"int32",...z(r)})}function e0(e,r){return new e({type:"number",check:"number_format",abort:!1,format:"uint32",...z(r)})}function r0(e,r){return new e({type:"boolean",...z(r)})}function t0(e,r){return new e({type:"boolean",coerce:!0,...z(r)})}function n0(e,r){return new e({type:"bigint",...z(r)})}function i0(e,r){return new e({type:"bigint",coerce:!0,...z(r)})}function o0(e,r){return new e({type:"bigint",check:"bigint_format",abort:!1,format:"int64",...z(r)})}function a0(e,r){return new e({type:"bigint",check:"bigint_format",abort:!1,format:"uint64",...z(r)})}function s0(e,r){return new e({type:"symbol",...z(r)})}function u0(e,r){return new e({type:"undefined",...z(r)})}function c0(e,r){return new e({type:"null",...z(r)})}function l0(e){return new e({type:"any"})}function d0(e){return new e({type:"unknown"})}function f0(e,r){return new e({type:"never",...z(r)})}function m0(e,r){return new e({type:"void",...z(r)})}function p0(e,r){return new e({type:"date",...z(r)})}function v0(e,r){return new e({type:"date",coerce:!0,...z(r)})}function g0(e,r){return new e({type:"nan",...z(r)})}function Tr(e,r){return new $s({check:"less_than",...z(r),value:e,inclusive:!1})}function lr(e,r){return new $s({check:"less_than",...z(r),value:e,inclusive:!0})}function jr(e,r){return new _s({check:"greater_than",...z(r),value:e,inclusive:!1})}function dr(e,r){return new _s({check:"greater_than",...z(r),value:e,inclusive:!0})}function wu(e){return jr(0,e)}function Su(e){return Tr(0,e)}function Iu(e){return lr(0,e)}function ku(e){return dr(0,e)}function kt(e,r){return new Xd({check:"multiple_of",...z(r),value:e})}function Ot(e,r){return new ef({check:"max_size",...z(r),maximum:e})}function Cr(e,r){return new rf({check:"min_size",...z(r),minimum:e})}function gn(e,r){return new tf({check:"size_equals",...z(r),size:e})}function hn(e,r){return new nf({check:"max_length",...z(r),maximum:e})}function it(e,r){return new of({check:"min_length",...z(r),minimum:e})}function yn(e,r){return new af({check:"length_equals",...z(r),length:e})}function li(e,r){return new sf({check:"string_format",format:"regex",...z(r),pattern:e})}function di(e){return new uf({check:"string_format",format:"lowercase",...z(e)})}function fi(e){return new cf({check:"string_format",format:"uppercase",...z(e)})}function mi(e,r){return new lf({check:"string_format",format:"includes",...z(r),includes:e})}function pi(e,r){return new df({check:"string_format",format:"starts_with",...z(r),prefix:e})}function vi(e,r){return new ff({check:"string_format",format:"ends_with",...z(r),suffix:e})}function Ou(e,r,n){return new mf({check:"property",property:e,schema:r,...z(n)})}function gi(e,r){return new pf({check:"properties",shape:e,...z(r)})}function hi(e,r){return new vf({check:"mime_type",mime:e,...z(r)})}function kr(e){return new gf({check:"overwrite",tx:e})}function yi(e){return kr(r=>r.normalize(e))}function bi(){return kr(e=>e.trim())}function $i(){return kr(e=>e.toLowerCase())}function _i(){return kr(e=>e.toUpperCase())}function wi(){return kr(e=>Yl(e))}function h0(e,r,n){return new e({type:"array",element:r,...z(n)})}function iF(e,r,n){return new e({type:"union",options:r,...z(n)})}function oF(e,r,n){return new e({type:"union",options:r,inclusive:!1,...z(n)})}function aF(e,r,n,i){return new e({type:"union",options:n,discriminator:r,...z(i)})}function sF(e,r,n){return new e({type:"intersection",left:r,right:n})}function uF(e,r,n,i){let t=n instanceof Z,o=t?i:n,a=t?n:null;return new e({type:"tuple",items:r,rest:a,...z(o)})}function cF(e,r,n,i){return new e({type:"record",keyType:r,valueType:n,...z(i)})}function lF(e,r,n,i){return new e({type:"map",keyType:r,valueType:n,...z(i)})}function dF(e,r,n){return new e({type:"set",valueType:r,...z(n)})}function fF(e,r,n){let i=Array.isArray(r)?Object.fromEntries(r.map(t=>[t,t])):r;return new e({type:"enum",entries:i,...z(n)})}function mF(e,r,n){return new e({type:"enum",entries:r,...z(n)})}function pF(e,r,n){return new e({type:"literal",values:Array.isArray(r)?r:[r],...z(n)})}function y0(e,r){return new e({type:"file",...z(r)})}function vF(e,r){return new e({type:"transform",transform:r})}function gF(e,r){return new e({type:"optional",innerType:r})}function hF(e,r){return new e({type:"nullable",innerType:r})}function yF(e,r,n){return new e({type:"default",innerType:r,get defaultValue(){return typeof n=="function"?n():vo(n)}})}function bF(e,r,n){return new e({type:"nonoptional",innerType:r,...z(n)})}function $F(e,r){return new e({type:"success",innerType:r})}function _F(e,r,n){return new e({type:"catch",innerType:r,catchValue:typeof n=="function"?n:od(n)})}function wF(e,r,n){return new e({type:"pipe",in:r,out:n})}function SF(e,r){return new e({type:"readonly",innerType:r})}function IF(e,r,n){return new e({type:"template_literal",parts:r,...z(n)})}function kF(e,r){return new e({type:"lazy",getter:r})}function OF(e,r){return new e({type:"promise",innerType:r})}function b0(e,r,n){let i=z(n);return i.abort??(i.abort=!0),new e({type:"custom",check:"custom",fn:r,...i})}function $0(e,r,n){return new e({type:"custom",check:"custom",fn:r,...z(n)})}function _0(e,r){let n=Ub(i=>(i.addIssue=t=>{if(typeof t=="string")i.issues.push(ei(t,i.value,n._zod.def));else{let o=t;o.fatal&&(o.continue=!1),o.code??(o.code="custom"),"input"in o||(o.input=i.value),o.inst??(o.inst=n),o.continue??(o.continue=!n._zod.def.abort),i.issues.push(ei(o))}},e(i.value,i)),r);return n}function Ub(e,r){let n=new ce({check:"custom",...z(r)});return n._zod.check=e,n}function w0(e){let r=new ce({check:"describe"});return r._zod.onattach=[n=>{let i=Me.get(n)??{};Me.add(n,{...i,description:e})}],r._zod.check=()=>{},r}function S0(e){let r=new ce({check:"meta"});return r._zod.onattach=[n=>{let i=Me.get(n)??{};Me.add(n,{...i,...e})}],r._zod.check=()=>{},r}function I0(e,r){let n=z(r),i=n.truthy??["true","1","yes","on","y","enabled"],t=n.falsy??["false","0","no","off","n","disabled"];n.case!=="sensitive"&&(i=i.map(m=>typeof m=="string"?m.toLowerCase():m),t=t.map(m=>typeof m=="string"?m.toLowerCase():m));let o=new Set(i),a=new Set(t),s=e.Codec??Ro,u=e.Boolean??jo,c=e.String??fn,l=new c({type:"string",error:n.error}),d=new u({type:"boolean",error:n.error}),f=new s({type:"pipe",in:l,out:d,transform:((m,g)=>{let h=m;return n.case!=="sensitive"&&(h=h.toLowerCase()),o.has(h)?!0:a.has(h)?!1:(g.issues.push({code:"invalid_value",expected:"stringbool",values:[...o,...a],input:g.value,inst:f,continue:!1}),{})}),reverseTransform:((m,g)=>m===!0?i[0]||"true":t[0]||"false"),error:n.error});return f._zod.bag.truthy=i,f._zod.bag.falsy=t,f._zod.bag.case=n.case??"insensitive",f}function bn(e,r,n,i={}){let t=z(i),o={check:"string_format",type:"string",format:r,fn:typeof n=="function"?n:s=>n.test(s),...t};return n instanceof RegExp&&(o.pattern=n),new e(o)}function Jo(e,...r){for(let n of r)for(let i of Reflect.ownKeys(n))Object.prototype.propertyIsEnumerable.call(n,i)&&Fe(e,i,n[i]);return e}function Nt(e){let r=e?.target??"draft-2020-12";return r==="draft-4"&&(r="draft-04"),r==="draft-7"&&(r="draft-07"),{processors:e.processors??{},metadataRegistry:e?.metadata??Me,target:r,unrepresentable:e?.unrepresentable??"throw",override:e?.override??(()=>{}),io:e?.io??"output",counter:0,seen:new Map,sharedDefsExtractedFor:void 0,sharedEmitDoneFor:void 0,cycles:e?.cycles??"ref",reused:e?.reused??"inline",intersections:[],deferred:[],external:e?.external??void 0}}function De(e,r,n,i,t){let o=typeof r.unrepresentable=="function"?r.unrepresentable({zodSchema:e,path:i.path,message:t}):r.unrepresentable;if(o==="any")return!1;if(o===void 0||o==="throw")throw new Error(t);return Object.assign(n,o),!0}function ne(e,r,n={path:[],schemaPath:[]}){var i;let t=e._zod.def,o=r.seen.get(e);if(o)return o.count++,n.schemaPath.includes(e)&&(o.cycle=n.path),o.schema;let a={schema:{},count:1,cycle:void 0,path:n.path};r.seen.set(e,a),r.sharedDefsExtractedFor=void 0,r.sharedEmitDoneFor=void 0;let s=e._zod.toJSONSchema?.();if(s)a.schema=s;else{let l={...n,schemaPath:[...n.schemaPath,e],path:n.path};if(e._zod.processJSONSchema)e._zod.processJSONSchema(r,a.schema,l);else{let f=a.schema,m=r.processors[t.type];if(!m)throw new Error(`[toJSONSchema]: Non-representable type encountered: ${t.type}`);m(e,r,f,l)}let d=e._zod.parent;d&&(a.ref||(a.ref=d),ne(d,r,l),r.seen.get(d).isParent=!0)}let u=r.metadataRegistry.get(e);return u&&Jo(a.schema,u),r.io==="input"&&rr(e)&&(delete a.schema.examples,delete a.schema.default),r.io==="input"&&"_prefault"in a.schema&&((i=a.schema).default??(i.default=a.schema._prefault)),delete a.schema._prefault,r.seen.get(e).schema}function Fb(e){return e.replace(/~/g,"~0").replace(/\//g,"~1")}function Pt(e,r){let n=e.seen.get(r);if(!n)throw new Error("Unprocessed schema. This is a bug in Zod.");if(e.external&&e.sharedDefsExtractedFor===e.external)return;let i=new Map;for(let a of e.seen.entries()){let s=e.metadataRegistry.get(a[0])?.id;if(s){let u=i.get(s);if(u&&u!==a[0])throw new Error(`Duplicate schema id "${s}" detected during JSON Schema conversion. Two different schemas cannot share the same id when converted together.`);i.set(s,a[0])}}let t=a=>{let s=e.target==="draft-2020-12"?"$defs":"definitions";if(e.external){let d=e.external.registry.get(a[0])?.id,f=e.external.uri??(g=>g);if(d)return{ref:f(d)};let m=a[1].defId??a[1].schema.id??`schema${e.counter++}`;return a[1].defId=m,{defId:m,ref:`${f("__shared")}#/${s}/${Fb(m)}`}}let u="#",c=`${u}/${s}/`;if(a[1]===n&&!a[1].schema.id)return{ref:u};let l=a[1].schema.id??`__schema${e.counter++}`;return{defId:l,ref:c+Fb(l)}},o=a=>{if(a[1].schema.$ref)return;let s=a[1],{ref:u,defId:c}=t(a);s.def={...s.schema},c&&(s.defId=c);let l=s.schema;for(let d in l)delete l[d];l.$ref=u};if(e.cycles==="throw")for(let a of e.seen.entries()){let s=a[1];if(s.cycle)throw new Error(`Cycle detected: #/${s.cycle?.join("/")}/<root>

Set the \`cycles\` parameter to \`"ref"\` to resolve cyclical schemas with defs.`)}for(let a of e.seen.entries()){let s=a[1];if(r===a[0]){o(a);continue}if(e.external){let c=e.external.registry.get(a[0])?.id;if(r!==a[0]&&c){o(a);continue}}if(e.metadataRegistry.get(a[0])?.id){o(a);continue}if(s.cycle){o(a);continue}s.count>1&&e.reused==="ref"&&o(a)}e.external&&(e.sharedDefsExtractedFor=e.external)}function Zb(e){let r=e.anyOf;if(!Array.isArray(r)||r.length===0||e.type!==void 0)return;let n=[];for(let i of r){if(!i||typeof i!="object")return;Zb(i);let t=Object.keys(i);if(t.length!==1||t[0]!=="type")return;let o=i.type;for(let a of Array.isArray(o)?o:[o]){if(typeof a!="string")return;n.includes(a)||n.push(a)}}delete e.anyOf,e.type=n.length===1?n[0]:n}var Vb=new Set(["type","properties","required","additionalProperties"]),Mb=["oneOf","anyOf"];function Lb(e){let r=e.additionalProperties;return r===void 0||r===!1||typeof r!="object"||r===null?null:Object.keys(r).length?r:null}function k0(e){let r=[];for(let o of e){if(typeof o!="object"||o.type!=="object")return null;for(let a in o)if(!Vb.has(a))return null;r.push(o)}let n={},i=new Set;for(let o of r){for(let a in o.properties){if(Object.prototype.hasOwnProperty.call(n,a))continue;let s=[];for(let c of r){let l=c.properties?.[a]??Lb(c);l!=null&&(s.some(d=>JSON.stringify(d)===JSON.stringify(l))||s.push(l))}let u=s.length===1?s[0]:k0(s)??{allOf:s};Fe(n,a,u)}for(let a of o.required??[])i.add(a)}let t={type:"object",properties:n};if(i.size&&(t.required=[...i]),r.every(o=>o.additionalProperties===!1))t.additionalProperties=!1;else{let o=[];for(let a of r){let s=Lb(a);s&&!o.some(u=>JSON.stringify(u)===JSON.stringify(s))&&o.push(s)}o.length===1?t.additionalProperties=o[0]:o.length>1&&(t.additionalProperties={allOf:o})}return t}function NF(e){let r=e.allOf;if(!Array.isArray(r)||r.length<2)return;for(let t of Vb)if(t in e)return;let n=r.filter(t=>Mb.some(o=>Array.isArray(t[o]))),i=null;if(!n.length)i=k0(r);else{let t=n[0],o=Mb.find(u=>Array.isArray(t[u]));if(Object.keys(t).length!==1)return;let a=r.filter(u=>u!==t),s=t[o].map(u=>k0([...a,u]));if(s.some(u=>!u))return;i={[o]:s}}i&&(delete e.allOf,Jo(e,i))}function xt(e,r){let n=e.seen.get(r);if(!n)throw new Error("Unprocessed schema. This is a bug in Zod.");let i=s=>{let u=e.seen.get(s);if(u.ref===null)return;let c=u.def??u.schema,l={...c},d=u.ref;if(u.ref=null,d){i(d);let m=e.seen.get(d),g=m.schema;if(g.$ref&&(e.target==="draft-07"||e.target==="draft-04"||e.target==="openapi-3.0")?(c.allOf=c.allOf??[],c.allOf.push(g)):Jo(c,g),Jo(c,l),s._zod.parent===d)for(let b in c)b==="$ref"||b==="allOf"||b in l||delete c[b];if(g.$ref&&m.def)for(let b in c)b==="$ref"||b==="allOf"||b in m.def&&JSON.stringify(c[b])===JSON.stringify(m.def[b])&&delete c[b]}let f=s._zod.parent;if(f&&f!==d){i(f);let m=e.seen.get(f);if(m?.schema.$ref&&(c.$ref=m.schema.$ref,m.def))for(let g in c)g==="$ref"||g==="allOf"||g in m.def&&JSON.stringify(c[g])===JSON.stringify(m.def[g])&&delete c[g]}e.override({zodSchema:s,jsonSchema:c,path:u.path??[]})};if(!e.external||e.sharedEmitDoneFor!==e.external){for(let s of[...e.seen.entries()].reverse())i(s[0]);if(e.target!=="openapi-3.0")for(let s of e.seen.entries())Zb(s[1].def??s[1].schema);for(let s of e.deferred)s();if(e.intersections.length){let s=new Map;for(let u of e.seen.values())for(let c of[u.schema,u.def]){let l=c?.allOf;if(!Array.isArray(l))continue;let d=s.get(l);d?d.push(c):s.set(l,[c])}for(let u of e.intersections)for(let c of s.get(u)??[])NF(c)}}let t={};if(e.target==="draft-2020-12"?t.$schema="https://json-schema.org/draft/2020-12/schema":e.target==="draft-07"?t.$schema="http://json-schema.org/draft-07/schema#":e.target==="draft-04"?t.$schema="http://json-schema.org/draft-04/schema#":e.target,e.external?.uri){let s=e.external.registry.get(r)?.id;if(!s)throw new Error("Schema is missing an `id` property");t.$id=e.external.uri(s)}Jo(t,n.defId?n.schema:n.def??n.schema);let o=e.metadataRegistry.get(r)?.id;o!==void 0&&t.id===o&&delete t.id;let a=e.external?.defs??{};if(!e.external||e.sharedEmitDoneFor!==e.external)for(let s of e.seen.entries()){let u=s[1];u.def&&u.defId&&(u.def.id===u.defId&&delete u.def.id,Fe(a,u.defId,u.def))}e.external&&(e.sharedEmitDoneFor=e.external),e.external||Object.keys(a).length>0&&(e.target==="draft-2020-12"?t.$defs=a:t.definitions=a);try{let s=JSON.parse(JSON.stringify(t));return Object.defineProperty(s,"~standard",{value:{...r["~standard"],jsonSchema:{input:Si(r,"input",e.processors),output:Si(r,"output",e.processors)}},enumerable:!1,writable:!1}),s}catch{throw new Error("Error converting schema to JSON.")}}function rr(e,r){let n=r??{seen:new Set};if(n.seen.has(e))return!1;n.seen.add(e);let i=e._zod.def;if(i.type==="transform")return!0;if(i.type==="array")return rr(i.element,n);if(i.type==="set")return rr(i.valueType,n);if(i.type==="lazy")return rr(i.getter(),n);if(i.type==="promise"||i.type==="optional"||i.type==="nonoptional"||i.type==="nullable"||i.type==="readonly"||i.type==="default"||i.type==="prefault"||i.type==="catch")return rr(i.innerType,n);if(i.type==="intersection")return rr(i.left,n)||rr(i.right,n);if(i.type==="record"||i.type==="map")return rr(i.keyType,n)||rr(i.valueType,n);if(i.type==="pipe")return e._zod.traits.has("$ZodCodec")?!0:rr(i.in,n)||rr(i.out,n);if(i.type==="object"){for(let t in i.shape)if(rr(i.shape[t],n))return!0;return!1}if(i.type==="union"){for(let t of i.options)if(rr(t,n))return!0;return!1}if(i.type==="tuple"){for(let t of i.items)if(rr(t,n))return!0;return!!(i.rest&&rr(i.rest,n))}return!1}var O0=(e,r={})=>n=>{let i=Nt({...n,processors:r});return ne(e,i),Pt(i,e),xt(i,e)},Si=(e,r,n={})=>i=>{let{libraryOptions:t,target:o}=i??{},a=Nt({...t??{},target:o,io:r,processors:n});return ne(e,a),Pt(a,e),xt(a,e)};var Ii=(e,r,n)=>{(e[r]===void 0||n>e[r])&&(e[r]=n)},ki=(e,r,n)=>{(e[r]===void 0||n<e[r])&&(e[r]=n)},Bb=(e,r)=>{Ii(e,"minimum",r),ki(e,"maximum",r)},Kb=(e,r)=>{e.multipleOf??(e.multipleOf=[]),e.multipleOf.includes(r)||e.multipleOf.push(r)},Jb=(e,r)=>{e.patterns??(e.patterns=new Set),e.patterns.add(r)},Xb=(e,r)=>{e.mime=e.mime?e.mime.filter(n=>r.includes(n)):[...r]},Qb=(e,r)=>{e.format=r,r.includes("int")&&(e.isInt=!0)},Wb=(e,r)=>Ii(e,"minimum",r.minimum),Gb=(e,r)=>ki(e,"maximum",r.maximum),Hb=e=>(r,n)=>{Qb(r,n.format);let[i,t]=e[n.format];Ii(r,"minimum",i),ki(r,"maximum",t)},PF={greater_than:(e,r)=>Ii(e,r.inclusive?"minimum":"exclusiveMinimum",r.value),less_than:(e,r)=>ki(e,r.inclusive?"maximum":"exclusiveMaximum",r.value),multiple_of:(e,r)=>Kb(e,r.value),number_format:Hb(ho),bigint_format:Hb(yo),min_length:Wb,max_length:Gb,length_equals:(e,r)=>Bb(e,r.length),min_size:Wb,max_size:Gb,size_equals:(e,r)=>Bb(e,r.size),string_format:(e,r)=>{Qb(e,r.format),r.pattern&&Jb(e,r.pattern),(r.format==="base64"||r.format==="base64url")&&(e.contentEncoding=r.format),(r.local||r.precision===-1)&&(e.laxFormat=!0)},mime_type:(e,r)=>Xb(e,r.mime)};function ze(e){let r={},n=e._zod.def,i=e._zod.traits.has("$ZodCheck")?[e,...n.checks??[]]:n.checks??[];for(let o of i)PF[o._zod.def.check]?.(r,o._zod.def);let t=e._zod.bag;t.minimum!==void 0&&Ii(r,"minimum",t.minimum),t.exclusiveMinimum!==void 0&&Ii(r,"exclusiveMinimum",t.exclusiveMinimum),t.maximum!==void 0&&ki(r,"maximum",t.maximum),t.exclusiveMaximum!==void 0&&ki(r,"exclusiveMaximum",t.exclusiveMaximum),t.multipleOf!==void 0&&Kb(r,t.multipleOf),t.format!==void 0&&(r.format??(r.format=t.format),t.format.includes("int")&&(r.isInt=!0)),t.mime&&Xb(r,t.mime);for(let o of t.patterns??[])Jb(r,o);return r}var xF={guid:"uuid",url:"uri",datetime:"date-time",json_string:"json-string",regex:""},AF=new Map([[Es,Ed],[To,Dd]]),Yb=e=>AF.get(e)??e,x0=(e,r,n,i)=>{let t=n;t.type="string";let{minimum:o,maximum:a,format:s,patterns:u,contentEncoding:c,laxFormat:l}=ze(e);if(typeof o=="number"&&(t.minLength=o),typeof a=="number"&&(t.maxLength=a),s&&(t.format=xF[s]??s,t.format===""&&delete t.format,(s==="time"||l)&&delete t.format),c&&(t.contentEncoding=c),u&&u.size>0){let d=[...u].map(Yb);d.length===1?t.pattern=d[0].source:d.length>1&&(t.allOf=[...d.map(f=>({...r.target==="draft-07"||r.target==="draft-04"||r.target==="openapi-3.0"?{type:"string"}:{},pattern:f.source}))])}},A0=(e,r,n,i)=>{let t=n,{minimum:o,maximum:a,multipleOf:s,exclusiveMaximum:u,exclusiveMinimum:c,isInt:l}=ze(e);t.type=l?"integer":"number";let d=typeof c=="number"&&c>=(o??Number.NEGATIVE_INFINITY),f=typeof u=="number"&&u<=(a??Number.POSITIVE_INFINITY),m=r.target==="draft-04"||r.target==="openapi-3.0";if(d?m?(t.minimum=c,t.exclusiveMinimum=!0):t.exclusiveMinimum=c:typeof o=="number"&&(t.minimum=o),f?m?(t.maximum=u,t.exclusiveMaximum=!0):t.exclusiveMaximum=u:typeof a=="number"&&(t.maximum=a),s){let g=new Set;for(let y of s)Number.isFinite(y)&&y!==0?g.add(Math.abs(y)):De(e,r,t,i,`A multipleOf divisor of ${y} cannot be represented in JSON Schema`);let[h,...b]=g;h!==void 0&&(t.multipleOf=h),b.length&&(t.allOf=[...t.allOf??[],...b.map(y=>({multipleOf:y}))])}},E0=(e,r,n,i)=>{n.type="boolean"},D0=(e,r,n,i)=>{De(e,r,n,i,"BigInt cannot be represented in JSON Schema")},z0=(e,r,n,i)=>{De(e,r,n,i,"Symbols cannot be represented in JSON Schema")},q0=(e,r,n,i)=>{r.target==="openapi-3.0"?(n.type="string",n.nullable=!0,n.enum=[null]):n.type="null"},T0=(e,r,n,i)=>{De(e,r,n,i,"Undefined cannot be represented in JSON Schema")},j0=(e,r,n,i)=>{De(e,r,n,i,"Void cannot be represented in JSON Schema")},C0=(e,r,n,i)=>{n.not={}},R0=(e,r,n,i)=>{},U0=(e,r,n,i)=>{},F0=(e,r,n,i)=>{De(e,r,n,i,"Date cannot be represented in JSON Schema")},M0=(e,r,n,i)=>{let t=e._zod.def,o=Kn(t.entries);if(o.length===0){n.not={};return}o.every(a=>typeof a=="number")&&(n.type="number"),o.every(a=>typeof a=="string")&&(n.type="string"),n.enum=o},L0=(e,r,n,i)=>{let t=e._zod.def;if(t.values.length===0){n.not={};return}let o=[];for(let a of t.values)if(a===void 0){if(De(e,r,n,i,"Literal `undefined` cannot be represented in JSON Schema"))return}else if(typeof a=="bigint"){if(De(e,r,n,i,"BigInt literals cannot be represented in JSON Schema"))return;o.push(Number(a))}else o.push(a);if(o.length!==0)if(o.length===1){let a=o[0];n.type=a===null?"null":typeof a,r.target==="draft-04"||r.target==="openapi-3.0"?n.enum=[a]:n.const=a}else o.every(a=>typeof a=="number")&&(n.type="number"),o.every(a=>typeof a=="string")&&(n.type="string"),o.every(a=>typeof a=="boolean")&&(n.type="boolean"),o.every(a=>a===null)&&(n.type="null"),n.enum=o},Z0=(e,r,n,i)=>{De(e,r,n,i,"NaN cannot be represented in JSON Schema")},V0=(e,r,n,i)=>{let t=n,o=e._zod.pattern;if(!o)throw new Error("Pattern not found in template literal");t.type="string",t.pattern=o.source},B0=(e,r,n,i)=>{let t=n;t.type="string",t.format="binary",t.contentEncoding="binary";let{minimum:o,maximum:a,mime:s}=ze(e);o!==void 0&&(t.minLength=o),a!==void 0&&(t.maxLength=a),s&&(s.length===0?t.not={}:s.length===1?t.contentMediaType=s[0]:t.anyOf=s.map(u=>({contentMediaType:u})))},W0=(e,r,n,i)=>{n.type="boolean"},G0=(e,r,n,i)=>{De(e,r,n,i,"Custom types cannot be represented in JSON Schema")},H0=(e,r,n,i)=>{De(e,r,n,i,"Function types cannot be represented in JSON Schema")},K0=(e,r,n,i)=>{De(e,r,n,i,"Transforms cannot be represented in JSON Schema")},J0=(e,r,n,i)=>{De(e,r,n,i,"Map cannot be represented in JSON Schema")},X0=(e,r,n,i)=>{De(e,r,n,i,"Set cannot be represented in JSON Schema")},Q0=(e,r,n,i)=>{let t=n,o=e._zod.def,{minimum:a,maximum:s}=ze(e);typeof a=="number"&&(t.minItems=a),typeof s=="number"&&(t.maxItems=s),t.type="array",t.items=ne(o.element,r,{...i,path:[...i.path,"items"]})};function Xo(e){let r=e._zod.def;return r.type==="pipe"&&r.in._zod.traits.has("$ZodTransform")?Xo(r.out):r.type==="catch"?Xo(r.innerType):e._zod.optin}var Y0=(e,r,n,i)=>{let t=n,o=e._zod.def,a=o.shape;if(Object.getOwnPropertySymbols(a).length&&De(e,r,t,i,"Symbol keys cannot be represented in JSON Schema"))return;t.type="object",t.properties={};for(let c in a)Fe(t.properties,c,ne(a[c],r,{...i,path:[...i.path,"properties",c]}));let u=[];for(let c of Object.keys(a)){let l=o.shape[c];(r.io==="input"?Xo(l)===void 0:l._zod.optout===void 0)&&u.push(c)}u.length>0&&(t.required=u),o.catchall?._zod.def.type==="never"?t.additionalProperties=!1:o.catchall?o.catchall&&(t.additionalProperties=ne(o.catchall,r,{...i,path:[...i.path,"additionalProperties"]})):r.io==="output"&&(t.additionalProperties=!1)},Pu=(e,r,n,i)=>{let t=e._zod.def,o=t.inclusive===!1,a=t.options.map((s,u)=>ne(s,r,{...i,path:[...i.path,o?"oneOf":"anyOf",u]}));o?n.oneOf=a:n.anyOf=a},ep=(e,r,n,i)=>{let t=e._zod.def,o=ne(t.left,r,{...i,path:[...i.path,"allOf",0]}),a=ne(t.right,r,{...i,path:[...i.path,"allOf",1]}),s=c=>"allOf"in c&&Object.keys(c).length===1,u=[...s(o)?o.allOf:[o],...s(a)?a.allOf:[a]];n.allOf=u,r.intersections.push(u)},rp=(e,r,n,i)=>{let t=n,o=e._zod.def;t.type="array";let a=r.target==="draft-2020-12"?"prefixItems":"items",s=r.target==="draft-2020-12"||r.target==="openapi-3.0"?"items":"additionalItems",u=o.items.map((h,b)=>ne(h,r,{...i,path:[...i.path,a,b]})),c=o.rest?ne(o.rest,r,{...i,path:[...i.path,s,...r.target==="openapi-3.0"?[o.items.length]:[]]}):null,l=o.items.length;for(;l>0;){let h=o.items[l-1];if(!(r.io==="input"?Xo(h)!==void 0:h._zod.optout==="optional"))break;l--}let d=o.items.length,f=!o.rest;r.target==="draft-2020-12"?(t.prefixItems=u,f?t.items=!1:c&&(t.items=c),l>0&&(t.minItems=l),f&&(t.maxItems=d)):r.target==="openapi-3.0"?(t.items={anyOf:u},c&&t.items.anyOf.push(c),l>0&&(t.minItems=l),f&&(t.maxItems=d)):(t.items=u,f?t.additionalItems=!1:c&&(t.additionalItems=c),l>0&&(t.minItems=l),f&&(t.maxItems=d));let{minimum:m,maximum:g}=ze(e);typeof m=="number"&&(t.minItems=m),typeof g=="number"&&(t.maxItems=g)};function N0(e,r,n){if(r.$ref){if(n.has(r))return r;n.add(r);let g=e.get(r)?.def;if(!g)return r;let h=N0(e,g,n);return h===g?r:h}for(let g of["anyOf","oneOf"]){let h=r[g];if(!Array.isArray(h))continue;let b=h.map(y=>N0(e,y,n));b.some((y,S)=>y!==h[S])&&(r={...r,[g]:b})}let i=Array.isArray(r.type)?r.type:[r.type],t=!i.includes("string")&&i.some(g=>g==="number"||g==="integer"),o=r.enum??(r.const!==void 0?[r.const]:void 0);if(!t&&!o?.some(g=>typeof g=="number"))return r;let{minimum:a,maximum:s,exclusiveMinimum:u,exclusiveMaximum:c,multipleOf:l,format:d,id:f,...m}=r;return m.enum?m.enum=m.enum.map(g=>typeof g=="number"?String(g):g):typeof m.const=="number"&&(m.const=String(m.const)),t&&(m.type="string",o||(m.pattern=(i.includes("number")?nt:Po).source)),m}var P0=new WeakMap;function EF(e){let r=new Map;for(let i of e.seen.values())i.def&&!r.has(i.schema)&&r.set(i.schema,i);let n=new Map;for(let i of P0.get(e)??[]){let t=e.seen.get(i),o=(t?.def??t?.schema)?.propertyNames;if(!o||o===!0||n.has(o))continue;let a=N0(r,o,new Set);a!==o&&n.set(o,a)}if(n.size)for(let i of e.seen.values())for(let t of[i.schema,i.def]){let o=t&&n.get(t.propertyNames);o&&(t.propertyNames=o)}}var tp=(e,r,n,i)=>{let t=n,o=e._zod.def;t.type="object";let a=o.keyType,s=ze(a).patterns;if(o.mode==="loose"&&s&&s.size>0){let l=ne(o.valueType,r,{...i,path:[...i.path,"patternProperties","*"]});t.patternProperties={};for(let d of s)Fe(t.patternProperties,Yb(d).source,l)}else{if(r.target==="draft-07"||r.target==="draft-2020-12"){t.propertyNames=ne(o.keyType,r,{...i,path:[...i.path,"propertyNames"]});let l=P0.get(r);l||(l=[],P0.set(r,l),r.deferred.push(()=>EF(r))),l.push(e)}t.additionalProperties=ne(o.valueType,r,{...i,path:[...i.path,"additionalProperties"]})}let u=a._zod.values,c=r.io==="input"&&Xo(o.valueType)!==void 0;if(u&&!o.partial&&!c){let l=[...u].filter(d=>typeof d=="string"||typeof d=="number");l.length>0&&(t.required=l.map(String))}},np=(e,r,n,i)=>{let t=e._zod.def,o=ne(t.innerType,r,i),a=r.seen.get(e);r.target==="openapi-3.0"?(a.ref=t.innerType,n.nullable=!0):n.anyOf=[o,{type:"null"}]},ip=(e,r,n,i)=>{let t=e._zod.def;ne(t.innerType,r,i);let o=r.seen.get(e);o.ref=t.innerType},op=Symbol();function e6(e,r,n,i,t){let o=!1,a=JSON.stringify(e,(s,u)=>typeof u!="bigint"?u:(o=!0,null));return o?(De(r,n,i,t,"BigInt defaults cannot be represented in JSON Schema"),op):JSON.parse(a)}var ap=(e,r,n,i)=>{let t=e._zod.def;ne(t.innerType,r,i);let o=r.seen.get(e);o.ref=t.innerType;let a=e6(t.defaultValue,e,r,n,i);a!==op&&(n.default=a)},sp=(e,r,n,i)=>{let t=e._zod.def;ne(t.innerType,r,i);let o=r.seen.get(e);if(o.ref=t.innerType,r.io!=="input")return;let a=e6(t.defaultValue,e,r,n,i);a!==op&&(n._prefault=a)},up=(e,r,n,i)=>{let t=e._zod.def;ne(t.innerType,r,i);let o=r.seen.get(e);o.ref=t.innerType;let a;try{a=t.catchValue(void 0)}catch{De(e,r,n,i,"Dynamic catch values are not supported in JSON Schema");return}n.default=a},cp=(e,r,n,i)=>{let t=e._zod.def,o=t.in._zod.traits.has("$ZodTransform"),a=r.io==="input"?o?t.out:t.in:t.out;ne(a,r,i);let s=r.seen.get(e);s.ref=a},lp=(e,r,n,i)=>{let t=e._zod.def;ne(t.innerType,r,i);let o=r.seen.get(e);o.ref=t.innerType,n.readOnly=!0},dp=(e,r,n,i)=>{let t=e._zod.def;ne(t.innerType,r,i);let o=r.seen.get(e);o.ref=t.innerType},xu=(e,r,n,i)=>{let t=e._zod.def;ne(t.innerType,r,i);let o=r.seen.get(e);o.ref=t.innerType},fp=(e,r,n,i)=>{let t=e._zod.innerType;ne(t,r,i);let o=r.seen.get(e);o.ref=t},Nu={string:x0,number:A0,boolean:E0,bigint:D0,symbol:z0,null:q0,undefined:T0,void:j0,never:C0,any:R0,unknown:U0,date:F0,enum:M0,literal:L0,nan:Z0,template_literal:V0,file:B0,success:W0,custom:G0,function:H0,transform:K0,map:J0,set:X0,array:Q0,object:Y0,union:Pu,intersection:ep,tuple:rp,record:tp,nullable:np,nonoptional:ip,default:ap,prefault:sp,catch:up,pipe:cp,readonly:lp,promise:dp,optional:xu,lazy:fp};function Au(e,r){if("_idmap"in e){let i=e,t=Nt({...r,processors:Nu}),o={};for(let u of i._idmap.entries()){let[c,l]=u;ne(l,t)}let a={},s={registry:i,uri:r?.uri,defs:o};t.external=s;for(let u of i._idmap.entries()){let[c,l]=u;Pt(t,l),Fe(a,c,xt(t,l))}if(Object.keys(o).length>0){let u=t.target==="draft-2020-12"?"$defs":"definitions";a.__shared={[u]:o}}return{schemas:a}}let n=Nt({...r,processors:Nu});return ne(e,n),Pt(n,e),xt(n,e)}var Eu=class{get metadataRegistry(){return this.ctx.metadataRegistry}get target(){return this.ctx.target}get unrepresentable(){return this.ctx.unrepresentable}get override(){return this.ctx.override}get io(){return this.ctx.io}get counter(){return this.ctx.counter}set counter(r){this.ctx.counter=r}get seen(){return this.ctx.seen}constructor(r){let n=r?.target??"draft-2020-12";n==="draft-4"&&(n="draft-04"),n==="draft-7"&&(n="draft-07"),this.ctx=Nt({processors:Nu,target:n,...r?.metadata&&{metadata:r.metadata},...r?.unrepresentable&&{unrepresentable:r.unrepresentable},...r?.override&&{override:r.override},...r?.io&&{io:r.io}})}process(r,n={path:[],schemaPath:[]}){return ne(r,this.ctx,n)}emit(r,n){n&&(n.cycles&&(this.ctx.cycles=n.cycles),n.reused&&(this.ctx.reused=n.reused),n.external&&(this.ctx.external=n.external)),this.ctx.sharedDefsExtractedFor=void 0,this.ctx.sharedEmitDoneFor=void 0,Pt(this.ctx,r);let i=xt(this.ctx,r),{"~standard":t,...o}=i;return o}};var r6={};var zi={};Yr(zi,{ZodAny:()=>qp,ZodArray:()=>Rp,ZodBase64:()=>Ju,ZodBase64URL:()=>Xu,ZodBigInt:()=>Ei,ZodBigIntFormat:()=>ec,ZodBoolean:()=>Ai,ZodCIDRv4:()=>Hu,ZodCIDRv6:()=>Ku,ZodCUID:()=>Mu,ZodCUID2:()=>Lu,ZodCatch:()=>ov,ZodCodec:()=>sa,ZodCreditCard:()=>Op,ZodCustom:()=>ua,ZodCustomStringFormat:()=>Sn,ZodDate:()=>ra,ZodDefault:()=>Yp,ZodDiscriminatedUnion:()=>Fp,ZodE164:()=>Qu,ZodEmail:()=>Cu,ZodEmoji:()=>Uu,ZodEnum:()=>Ni,ZodExactOptional:()=>ic,ZodFile:()=>Kp,ZodFunction:()=>vv,ZodGUID:()=>Ru,ZodIBAN:()=>Np,ZodIPv4:()=>Wu,ZodIPv6:()=>Gu,ZodISODate:()=>Et,ZodISODateTime:()=>At,ZodISODuration:()=>zt,ZodISOTime:()=>Dt,ZodInstanceOf:()=>yv,ZodIntersection:()=>Mp,ZodJWT:()=>Yu,ZodKSUID:()=>Bu,ZodLazy:()=>fv,ZodLiteral:()=>Hp,ZodMAC:()=>kp,ZodMap:()=>Wp,ZodNaN:()=>sv,ZodNanoID:()=>Fu,ZodNever:()=>jp,ZodNonOptional:()=>oc,ZodNull:()=>Dp,ZodNullable:()=>Qp,ZodNumber:()=>xi,ZodNumberFormat:()=>In,ZodObject:()=>na,ZodOptional:()=>oa,ZodPipe:()=>aa,ZodPrefault:()=>rv,ZodPreprocess:()=>uv,ZodPromise:()=>pv,ZodReadonly:()=>cv,ZodRecord:()=>Oi,ZodSet:()=>Gp,ZodString:()=>Pi,ZodStringFormat:()=>se,ZodSuccess:()=>iv,ZodSymbol:()=>Ap,ZodTemplateLiteral:()=>dv,ZodTransform:()=>Jp,ZodTuple:()=>Zp,ZodType:()=>G,ZodULID:()=>Zu,ZodURL:()=>ea,ZodUUID:()=>Rr,ZodUndefined:()=>Ep,ZodUnion:()=>ia,ZodUnknown:()=>Tp,ZodVoid:()=>Cp,ZodXID:()=>Vu,ZodXor:()=>Up,_ZodString:()=>ju,_default:()=>ev,_function:()=>m2,any:()=>V6,array:()=>ta,base64:()=>I6,base64url:()=>k6,bigint:()=>U6,boolean:()=>xp,catch:()=>av,check:()=>p2,cidrv4:()=>w6,cidrv6:()=>S6,codec:()=>c2,creditCard:()=>N6,cuid:()=>p6,cuid2:()=>v6,currencyCode:()=>z6,custom:()=>v2,date:()=>W6,describe:()=>g2,discriminatedUnion:()=>Q6,e164:()=>O6,email:()=>i6,emoji:()=>f6,enum:()=>tc,exactOptional:()=>Xp,file:()=>o2,float32:()=>T6,float64:()=>j6,function:()=>m2,guid:()=>o6,hash:()=>q6,hex:()=>D6,hostname:()=>E6,httpUrl:()=>d6,iban:()=>P6,instanceof:()=>y2,int:()=>qu,int32:()=>C6,int64:()=>F6,intersection:()=>Lp,invertCodec:()=>l2,ipv4:()=>b6,ipv6:()=>_6,json:()=>$2,jwt:()=>x6,keyof:()=>G6,ksuid:()=>y6,lazy:()=>mv,literal:()=>i2,looseObject:()=>J6,looseRecord:()=>e2,mac:()=>$6,map:()=>r2,meta:()=>h2,nan:()=>u2,nanoid:()=>m6,nativeEnum:()=>n2,never:()=>rc,nonoptional:()=>nv,null:()=>zp,nullable:()=>Yo,nullish:()=>a2,number:()=>Pp,object:()=>H6,optional:()=>_n,partialRecord:()=>Y6,pipe:()=>Tu,prefault:()=>tv,preprocess:()=>_2,promise:()=>f2,readonly:()=>lv,record:()=>Bp,refine:()=>gv,set:()=>t2,strictObject:()=>K6,string:()=>Qo,stringFormat:()=>A6,stringbool:()=>b2,success:()=>s2,superRefine:()=>hv,symbol:()=>L6,templateLiteral:()=>d2,transform:()=>nc,tuple:()=>Vp,uint32:()=>R6,uint64:()=>M6,ulid:()=>g6,undefined:()=>Z6,union:()=>Di,unknown:()=>$n,url:()=>l6,uuid:()=>a6,uuidv4:()=>s6,uuidv6:()=>u6,uuidv7:()=>c6,void:()=>B6,xid:()=>h6,xor:()=>X6});var Du={};Yr(Du,{endsWith:()=>vi,gt:()=>jr,gte:()=>dr,includes:()=>mi,length:()=>yn,lowercase:()=>di,lt:()=>Tr,lte:()=>lr,maxLength:()=>hn,maxSize:()=>Ot,mime:()=>hi,minLength:()=>it,minSize:()=>Cr,multipleOf:()=>kt,negative:()=>Su,nonnegative:()=>ku,nonpositive:()=>Iu,normalize:()=>yi,overwrite:()=>kr,positive:()=>wu,properties:()=>gi,property:()=>Ou,regex:()=>li,size:()=>gn,slugify:()=>wi,startsWith:()=>pi,toLowerCase:()=>$i,toUpperCase:()=>_i,trim:()=>bi,uppercase:()=>fi});var t6=new WeakSet([Object.prototype,Error.prototype]);function zu(e,r,n){Object.defineProperty(e,r,{configurable:!0,enumerable:!1,get(){let i=n(this);return Object.defineProperty(this,r,{value:i,configurable:!0,writable:!0}),i},set(i){Object.defineProperty(this,r,{value:i,configurable:!0,writable:!0})}})}var n6=(e,r)=>{dd.init(e,r),e.name="ZodError";let n=Object.getPrototypeOf(e);t6.has(n)||(t6.add(n),zu(n,"format",i=>t=>Io(i,t)),zu(n,"flatten",i=>t=>So(i,t)),zu(n,"addIssue",i=>t=>{i.issues.push(t),i.message=JSON.stringify(i.issues,Jn,2)}),zu(n,"addIssues",i=>t=>{i.issues.push(...t),i.message=JSON.stringify(i.issues,Jn,2)}),Object.defineProperty(n,"isEmpty",{configurable:!0,enumerable:!1,get(){return this.issues.length===0}}))},zF=_("ZodError",n6),ur=_("ZodError",n6,void 0,{Parent:Error});var mp=ri(ur),pp=ti(ur),vp=ni(ur),gp=ii(ur),hp=us(ur),yp=cs(ur),bp=ls(ur),$p=ds(ur),_p=fs(ur),wp=ms(ur),Sp=ps(ur),Ip=vs(ur);function TF(){je.localeError||Oe(Gs())}function wn(){je.memoizer||Oe({memoizer:Lo()})}var G=_("ZodType",(e,r)=>(TF(),Z.init(e,r),e.def=r,e.type=r.type,e),{check(...e){let r=this.def;return this.clone(I.mergeDefs(r,{checks:[...r.checks??[],...e.map(n=>typeof n=="function"?{_zod:{check:n,def:{check:"custom"},onattach:[]}}:n)]}),{parent:!0})},with(...e){return this.check(...e)},clone(e,r){return re(this,e,r)},brand(){return this},register(e,r){return e.add(this,r),this},refine(e,r){return this.check(gv(e,r))},superRefine(e,r){return this.check(hv(e,r))},overwrite(e){return this.check(kr(e))},optional(){return _n(this)},exactOptional(){return Xp(this)},nullable(){return Yo(this)},nullish(){return _n(Yo(this))},nonoptional(e){return nv(this,e)},array(){return ta(this)},or(e){return Di([this,e])},and(e){return Lp(this,e)},transform(e){return Tu(this,nc(e))},default(e){return ev(this,e)},prefault(e){return tv(this,e)},catch(e){return av(this,e)},pipe(e){return Tu(this,e)},readonly(){return lv(this)},describe(e){let r=this.clone();return Me.add(r,{description:e}),r},meta(...e){if(e.length===0)return Me.get(this);let r=this.clone();return Me.add(r,e[0]),r},isOptional(){return this.safeParse(void 0).success},isNullable(){return this.safeParse(null).success},apply(e,...r){return r.length===0?e(this):e(this,...r)},get"~standard"(){return I.hide(this,"~standard",{...Os(this),jsonSchema:{input:Si(this,"input"),output:Si(this,"output")}})},set"~standard"(e){I.own(this,"~standard",e)},parse:function e(r,n){return mp(this,r,n,{callee:e})},parseAsync:async function e(r,n){return await pp(this,r,n,{callee:e})},safeParse(e,r){return vp(this,e,r)},async safeParseAsync(e,r){return gp(this,e,r)},get spa(){return this?.safeParseAsync},set spa(e){I.own(this,"spa",e)},validate(e,r){return ko(this,e,r)},validateAsync(e,r){return Oo(this,e,r)},encode:function e(r,n){return hp(this,r,n,{callee:e})},decode:function e(r,n){return yp(this,r,n,{callee:e})},encodeAsync:async function e(r,n){return await bp(this,r,n,{callee:e})},decodeAsync:async function e(r,n){return await $p(this,r,n,{callee:e})},safeEncode(e,r){return _p(this,e,r)},safeDecode(e,r){return wp(this,e,r)},async safeEncodeAsync(e,r){return Sp(this,e,r)},async safeDecodeAsync(e,r){return Ip(this,e,r)},toJSONSchema(e){return O0(this,{})(e)},get description(){return Me.get(this)?.description},get _def(){return this._zod.def}}),ju=_("_ZodString",(e,r)=>{fn.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>x0(e,n,i,t)},I.derived({format:e=>ze(e).format??null,minLength:e=>ze(e).minimum??null,maxLength:e=>ze(e).maximum??null},{regex(...e){return this.check(li(...e))},includes(...e){return this.check(mi(...e))},startsWith(...e){return this.check(pi(...e))},endsWith(...e){return this.check(vi(...e))},min(...e){return this.check(it(...e))},max(...e){return this.check(hn(...e))},length(...e){return this.check(yn(...e))},nonempty(...e){return this.check(it(1,...e))},lowercase(e){return this.check(di(e))},uppercase(e){return this.check(fi(e))},trim(){return this.check(bi())},normalize(...e){return this.check(yi(...e))},toLowerCase(){return this.check($i())},toUpperCase(){return this.check(_i())},slugify(){return this.check(wi())}})),Pi=_("ZodString",(e,r)=>{fn.init(e,r),ju.init(e,r)},{email(e){return this.check(ru(Cu,e))},url(e){return this.check(Bo(ea,e))},jwt(e){return this.check(_u(Yu,e))},emoji(e){return this.check(su(Uu,e))},guid(e){return this.check(tu(Ru,e))},uuid(e){return this.check(nu(Rr,e))},uuidv4(e){return this.check(iu(Rr,e))},uuidv6(e){return this.check(ou(Rr,e))},uuidv7(e){return this.check(au(Rr,e))},nanoid(e){return this.check(uu(Fu,e))},cuid(e){return this.check(cu(Mu,e))},cuid2(e){return this.check(lu(Lu,e))},ulid(e){return this.check(du(Zu,e))},base64(e){return this.check(yu(Ju,e))},base64url(e){return this.check(bu(Xu,e))},xid(e){return this.check(fu(Vu,e))},ksuid(e){return this.check(mu(Bu,e))},ipv4(e){return this.check(pu(Wu,e))},ipv6(e){return this.check(vu(Gu,e))},cidrv4(e){return this.check(gu(Hu,e))},cidrv6(e){return this.check(hu(Ku,e))},e164(e){return this.check($u(Qu,e))},datetime(e){return this.check(Wo(At,e))},date(e){return this.check(Go(Et,e))},time(e){return this.check(Ho(Dt,e))},duration(e){return this.check(Ko(zt,e))}});function Qo(e){return Lm(Pi,e)}var se=_("ZodStringFormat",(e,r)=>{te.init(e,r),ju.init(e,r)}),At=_("ZodISODateTime",(e,r)=>{Df.init(e,r),se.init(e,r)}),Et=_("ZodISODate",(e,r)=>{zf.init(e,r),se.init(e,r)}),Dt=_("ZodISOTime",(e,r)=>{qf.init(e,r),se.init(e,r)}),zt=_("ZodISODuration",(e,r)=>{Tf.init(e,r),se.init(e,r)}),Cu=_("ZodEmail",(e,r)=>{_f.init(e,r),se.init(e,r)});function i6(e){return ru(Cu,e)}var Ru=_("ZodGUID",(e,r)=>{bf.init(e,r),se.init(e,r)});function o6(e){return tu(Ru,e)}var Rr=_("ZodUUID",(e,r)=>{$f.init(e,r),se.init(e,r)});function a6(e){return nu(Rr,e)}function s6(e){return iu(Rr,e)}function u6(e){return ou(Rr,e)}function c6(e){return au(Rr,e)}var ea=_("ZodURL",(e,r)=>{If.init(e,r),se.init(e,r)});function l6(e){return Bo(ea,e)}function d6(e){return Bo(ea,{protocol:No,hostname:qd,...I.normalizeParams(e)})}var Uu=_("ZodEmoji",(e,r)=>{kf.init(e,r),se.init(e,r)});function f6(e){return su(Uu,e)}var Fu=_("ZodNanoID",(e,r)=>{Of.init(e,r),se.init(e,r)});function m6(e){return uu(Fu,e)}var Mu=_("ZodCUID",(e,r)=>{Nf.init(e,r),se.init(e,r)});function p6(e){return cu(Mu,e)}var Lu=_("ZodCUID2",(e,r)=>{Pf.init(e,r),se.init(e,r)});function v6(e){return lu(Lu,e)}var Zu=_("ZodULID",(e,r)=>{xf.init(e,r),se.init(e,r)});function g6(e){return du(Zu,e)}var Vu=_("ZodXID",(e,r)=>{Af.init(e,r),se.init(e,r)});function h6(e){return fu(Vu,e)}var Bu=_("ZodKSUID",(e,r)=>{Ef.init(e,r),se.init(e,r)});function y6(e){return mu(Bu,e)}var Wu=_("ZodIPv4",(e,r)=>{jf.init(e,r),se.init(e,r)});function b6(e){return pu(Wu,e)}var kp=_("ZodMAC",(e,r)=>{Rf.init(e,r),se.init(e,r)});function $6(e){return Vm(kp,e)}var Gu=_("ZodIPv6",(e,r)=>{Cf.init(e,r),se.init(e,r)});function _6(e){return vu(Gu,e)}var Hu=_("ZodCIDRv4",(e,r)=>{Uf.init(e,r),se.init(e,r)});function w6(e){return gu(Hu,e)}var Ku=_("ZodCIDRv6",(e,r)=>{Ff.init(e,r),se.init(e,r)});function S6(e){return hu(Ku,e)}var Ju=_("ZodBase64",(e,r)=>{Mf.init(e,r),se.init(e,r)});function I6(e){return yu(Ju,e)}var Xu=_("ZodBase64URL",(e,r)=>{Lf.init(e,r),se.init(e,r)});function k6(e){return bu(Xu,e)}var Qu=_("ZodE164",(e,r)=>{Zf.init(e,r),se.init(e,r)});function O6(e){return $u(Qu,e)}var Op=_("ZodCreditCard",(e,r)=>{Vf.init(e,r),se.init(e,r)});function N6(e){return Bm(Op,e)}var Np=_("ZodIBAN",(e,r)=>{Bf.init(e,r),se.init(e,r)});function P6(e){return Wm(Np,e)}var Yu=_("ZodJWT",(e,r)=>{Wf.init(e,r),se.init(e,r)});function x6(e){return _u(Yu,e)}var Sn=_("ZodCustomStringFormat",(e,r)=>{Gf.init(e,r),se.init(e,r)});function A6(e,r,n={}){return bn(Sn,e,r,n)}function E6(e){return bn(Sn,"hostname",zd,e)}function D6(e){return bn(Sn,"hex",Hd,e)}function z6(e){return bn(Sn,"currency_code",jd,e)}function q6(e,r){let n=r?.enc??"hex",i=`${e}_${n}`,t=gr[i];if(!t)throw new Error(`Unrecognized hash format: ${i}`);return bn(Sn,i,t,r)}var xi=_("ZodNumber",(e,r)=>{js.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>A0(e,n,i,t),e.isFinite=!0},I.derived({minValue:e=>{let{minimum:r,exclusiveMinimum:n}=ze(e);return Math.max(r??Number.NEGATIVE_INFINITY,n??Number.NEGATIVE_INFINITY)},maxValue:e=>{let{maximum:r,exclusiveMaximum:n}=ze(e);return Math.min(r??Number.POSITIVE_INFINITY,n??Number.POSITIVE_INFINITY)},isInt:e=>{let{isInt:r,multipleOf:n}=ze(e);return!!r||!!n?.some(Number.isSafeInteger)},format:e=>ze(e).format??null},{gt(e,r){return this.check(jr(e,r))},gte(e,r){return this.check(dr(e,r))},min(e,r){return this.check(dr(e,r))},lt(e,r){return this.check(Tr(e,r))},lte(e,r){return this.check(lr(e,r))},max(e,r){return this.check(lr(e,r))},int(e){return this.check(qu(e))},safe(e){return this.check(qu(e))},positive(e){return this.check(jr(0,e))},nonnegative(e){return this.check(dr(0,e))},negative(e){return this.check(Tr(0,e))},nonpositive(e){return this.check(lr(0,e))},multipleOf(e,r){return this.check(kt(e,r))},step(e,r){return this.check(kt(e,r))},finite(){return this}}));function Pp(e){return Hm(xi,e)}var In=_("ZodNumberFormat",(e,r)=>{Hf.init(e,r),xi.init(e,r)});function qu(e){return Jm(In,e)}function T6(e){return Xm(In,e)}function j6(e){return Qm(In,e)}function C6(e){return Ym(In,e)}function R6(e){return e0(In,e)}var Ai=_("ZodBoolean",(e,r)=>{jo.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>E0(e,n,i,t)});function xp(e){return r0(Ai,e)}var Ei=_("ZodBigInt",(e,r)=>{Cs.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>D0(e,n,i,t)},I.derived({minValue:e=>ze(e).minimum??null,maxValue:e=>ze(e).maximum??null,format:e=>ze(e).format??null},{gte(e,r){return this.check(dr(e,r))},min(e,r){return this.check(dr(e,r))},gt(e,r){return this.check(jr(e,r))},lt(e,r){return this.check(Tr(e,r))},lte(e,r){return this.check(lr(e,r))},max(e,r){return this.check(lr(e,r))},positive(e){return this.check(jr(BigInt(0),e))},negative(e){return this.check(Tr(BigInt(0),e))},nonpositive(e){return this.check(lr(BigInt(0),e))},nonnegative(e){return this.check(dr(BigInt(0),e))},multipleOf(e,r){return this.check(kt(e,r))}}));function U6(e){return n0(Ei,e)}var ec=_("ZodBigIntFormat",(e,r)=>{Kf.init(e,r),Ei.init(e,r)});function F6(e){return o0(ec,e)}function M6(e){return a0(ec,e)}var Ap=_("ZodSymbol",(e,r)=>{Jf.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>z0(e,n,i,t)});function L6(e){return s0(Ap,e)}var Ep=_("ZodUndefined",(e,r)=>{Xf.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>T0(e,n,i,t)});function Z6(e){return u0(Ep,e)}var Dp=_("ZodNull",(e,r)=>{Qf.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>q0(e,n,i,t)});function zp(e){return c0(Dp,e)}var qp=_("ZodAny",(e,r)=>{Yf.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>R0(e,n,i,t)});function V6(){return l0(qp)}var Tp=_("ZodUnknown",(e,r)=>{em.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>U0(e,n,i,t)});function $n(){return d0(Tp)}var jp=_("ZodNever",(e,r)=>{rm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>C0(e,n,i,t)});function rc(e){return f0(jp,e)}var Cp=_("ZodVoid",(e,r)=>{tm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>j0(e,n,i,t)});function B6(e){return m0(Cp,e)}var ra=_("ZodDate",(e,r)=>{nm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>F0(e,n,i,t),e.min=(n,i)=>e.check(dr(n,i)),e.max=(n,i)=>e.check(lr(n,i))},I.derived({minDate:e=>{let{minimum:r}=ze(e);return r?new Date(r):null},maxDate:e=>{let{maximum:r}=ze(e);return r?new Date(r):null}},{}));function W6(e){return p0(ra,e)}var Rp=_("ZodArray",(e,r)=>{wn(),om.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>Q0(e,n,i,t),e.element=r.element},{min(e,r){return this.check(it(e,r))},nonempty(e){return this.check(it(1,e))},max(e,r){return this.check(hn(e,r))},length(e,r){return this.check(yn(e,r))},unwrap(){return this.element}});function ta(e,r){return h0(Rp,e,r)}function G6(e){let r=e._zod.def.shape;return tc(Object.keys(r))}var na=_("ZodObject",(e,r)=>{wn(),am.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>Y0(e,n,i,t),I.installLazyProp(e,"shape",n=>n._zod.def.shape,!1)},{keyof(){return tc(Object.keys(this._zod.def.shape))},catchall(e){return this.clone(I.mergeDefs(this._zod.def,{catchall:e}))},passthrough(){return this.clone(I.mergeDefs(this._zod.def,{catchall:$n()}))},loose(){return this.clone(I.mergeDefs(this._zod.def,{catchall:$n()}))},strict(){return this.clone(I.mergeDefs(this._zod.def,{catchall:rc()}))},strip(){return this.clone(I.mergeDefs(this._zod.def,{catchall:void 0}))},extend(e){return I.extend(this,e)},safeExtend(e){return I.safeExtend(this,e)},merge(e){return I.merge(this,e)},pick(e){return I.pick(this,e)},omit(e){return I.omit(this,e)},partial(...e){return I.partial(oa,this,e[0])},exactPartial(...e){return I.partial(ic,this,e[0],"exactPartial")},required(...e){return I.required(oc,this,e[0])}});function H6(e,r){let n={type:"object",shape:e??{},...I.normalizeParams(r)};return new na(n)}function K6(e,r){return new na({type:"object",shape:e,catchall:rc(),...I.normalizeParams(r)})}function J6(e,r){return new na({type:"object",shape:e,catchall:$n(),...I.normalizeParams(r)})}var ia=_("ZodUnion",(e,r)=>{Co.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>Pu(e,n,i,t),e.options=r.options});function Di(e,r){return new ia({type:"union",options:e,...I.normalizeParams(r)})}var Up=_("ZodXor",(e,r)=>{ia.init(e,r),sm.init(e,r),e._zod.processJSONSchema=(n,i,t)=>Pu(e,n,i,t),e.options=r.options});function X6(e,r){return new Up({type:"union",options:e,inclusive:!1,...I.normalizeParams(r)})}var Fp=_("ZodDiscriminatedUnion",(e,r)=>{ia.init(e,r),cm.init(e,r)});function Q6(e,r,n){return new Fp({type:"union",options:r,discriminator:e,...I.normalizeParams(n)})}var Mp=_("ZodIntersection",(e,r)=>{lm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>ep(e,n,i,t)});function Lp(e,r){return new Mp({type:"intersection",left:e,right:r})}var Zp=_("ZodTuple",(e,r)=>{wn(),Rs.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>rp(e,n,i,t)},{rest(e){return this.clone({...this._zod.def,rest:e})},partial(){let e=this._zod.def;if(e.checks?.length)throw new Error(".partial() cannot be used on tuple schemas containing refinements");return this.clone({...e,items:e.items.map(r=>new oa({type:"optional",innerType:r}))})}});function Vp(e,r,n){let i=r instanceof Z,t=i?n:r,o=i?r:null;return new Zp({type:"tuple",items:e,rest:o,...I.normalizeParams(t)})}var Oi=_("ZodRecord",(e,r)=>{wn(),dm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>tp(e,n,i,t),e.keyType=r.keyType,e.valueType=r.valueType});function Bp(e,r,n){return!r||!r._zod?new Oi({type:"record",keyType:Qo(),valueType:e,...I.normalizeParams(r)}):new Oi({type:"record",keyType:e,valueType:r,...I.normalizeParams(n)})}function Y6(e,r,n){return new Oi({type:"record",keyType:e,valueType:r,...I.normalizeParams(n),partial:!0})}function e2(e,r,n){return new Oi({type:"record",keyType:e,valueType:r,mode:"loose",...I.normalizeParams(n)})}var Wp=_("ZodMap",(e,r)=>{wn(),fm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>J0(e,n,i,t),e.keyType=r.keyType,e.valueType=r.valueType,e.min=(...n)=>e.check(Cr(...n)),e.nonempty=n=>e.check(Cr(1,n)),e.max=(...n)=>e.check(Ot(...n)),e.size=(...n)=>e.check(gn(...n))});function r2(e,r,n){return new Wp({type:"map",keyType:e,valueType:r,...I.normalizeParams(n)})}var Gp=_("ZodSet",(e,r)=>{wn(),mm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>X0(e,n,i,t),e.min=(...n)=>e.check(Cr(...n)),e.nonempty=n=>e.check(Cr(1,n)),e.max=(...n)=>e.check(Ot(...n)),e.size=(...n)=>e.check(gn(...n))});function t2(e,r){return new Gp({type:"set",valueType:e,...I.normalizeParams(r)})}var Ni=_("ZodEnum",(e,r)=>{pm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(i,t,o)=>M0(e,i,t,o),e.enum=r.entries,e.options=[...e._zod.values];let n=new Set(Object.keys(r.entries));e.extract=(i,t)=>{let o={};for(let a of i)if(n.has(a))o[a]=r.entries[a];else throw new Error(`Key ${a} not found in enum`);return new Ni({...r,checks:[],...I.normalizeParams(t),entries:o})},e.exclude=(i,t)=>{let o={...r.entries};for(let a of i)if(n.has(a))delete o[a];else throw new Error(`Key ${a} not found in enum`);return new Ni({...r,checks:[],...I.normalizeParams(t),entries:o})}});function tc(e,r){let n=Array.isArray(e)?Object.fromEntries(e.map(i=>[i,i])):e;return new Ni({type:"enum",entries:n,...I.normalizeParams(r)})}function n2(e,r){return new Ni({type:"enum",entries:e,...I.normalizeParams(r)})}var Hp=_("ZodLiteral",(e,r)=>{vm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>L0(e,n,i,t),e.values=new Set(r.values),Object.defineProperty(e,"value",{get(){if(r.values.length>1)throw new Error("This schema contains multiple valid literal values. Use `.values` instead.");return r.values[0]}})});function i2(e,r){return new Hp({type:"literal",values:Array.isArray(e)?e:[e],...I.normalizeParams(r)})}var Kp=_("ZodFile",(e,r)=>{gm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>B0(e,n,i,t),e.min=(n,i)=>e.check(Cr(n,i)),e.max=(n,i)=>e.check(Ot(n,i)),e.mime=(n,i)=>e.check(hi(Array.isArray(n)?n:[n],i))});function o2(e){return y0(Kp,e)}var Jp=_("ZodTransform",(e,r)=>{wn(),hm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>K0(e,n,i,t),e._zod.parse=(n,i)=>{if(i.direction==="backward")throw new St(e.constructor.name);n.addIssue=o=>{if(typeof o=="string")n.issues.push(I.issue(o,n.value,r));else{let a=o;a.fatal&&(a.continue=!1),a.code??(a.code="custom"),"input"in a||(a.input=n.value),a.inst??(a.inst=e),n.issues.push(I.issue(a))}};let t=r.transform(n.value,n);return t instanceof Promise?t.then(o=>(n.value=o,n)):(n.value=t,n)}});function nc(e){return new Jp({type:"transform",transform:e})}var oa=_("ZodOptional",(e,r)=>{Us.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>xu(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function _n(e){return new oa({type:"optional",innerType:e})}var ic=_("ZodExactOptional",(e,r)=>{ym.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>xu(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function Xp(e){return new ic({type:"optional",innerType:e})}var Qp=_("ZodNullable",(e,r)=>{bm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>np(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function Yo(e){return new Qp({type:"nullable",innerType:e})}function a2(e){return _n(Yo(e))}var Yp=_("ZodDefault",(e,r)=>{$m.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>ap(e,n,i,t),e.unwrap=()=>e._zod.def.innerType,e.removeDefault=e.unwrap});function ev(e,r){return new Yp({type:"default",innerType:e,get defaultValue(){return typeof r=="function"?r():I.shallowClone(r)}})}var rv=_("ZodPrefault",(e,r)=>{_m.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>sp(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function tv(e,r){return new rv({type:"prefault",innerType:e,get defaultValue(){return typeof r=="function"?r():I.shallowClone(r)}})}var oc=_("ZodNonOptional",(e,r)=>{wm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>ip(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function nv(e,r){return new oc({type:"nonoptional",innerType:e,...I.normalizeParams(r)})}var iv=_("ZodSuccess",(e,r)=>{Sm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>W0(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function s2(e){return new iv({type:"success",innerType:e})}var ov=_("ZodCatch",(e,r)=>{Im.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>up(e,n,i,t),e.unwrap=()=>e._zod.def.innerType,e.removeCatch=e.unwrap});function av(e,r){return new ov({type:"catch",innerType:e,catchValue:typeof r=="function"?r:I.constantCatch(r)})}var sv=_("ZodNaN",(e,r)=>{km.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>Z0(e,n,i,t)});function u2(e){return g0(sv,e)}var aa=_("ZodPipe",(e,r)=>{Fs.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>cp(e,n,i,t),e.in=r.in,e.out=r.out});function Tu(e,r){return new aa({type:"pipe",in:e,out:r})}var sa=_("ZodCodec",(e,r)=>{aa.init(e,r),Ro.init(e,r)});function c2(e,r,n){return new sa({type:"pipe",in:e,out:r,transform:n.decode,reverseTransform:n.encode})}function l2(e){let r=e._zod.def;return new sa({type:"pipe",in:r.out,out:r.in,transform:r.reverseTransform,reverseTransform:r.transform})}var uv=_("ZodPreprocess",(e,r)=>{aa.init(e,r),Om.init(e,r)}),cv=_("ZodReadonly",(e,r)=>{Nm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>lp(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function lv(e){return new cv({type:"readonly",innerType:e})}var dv=_("ZodTemplateLiteral",(e,r)=>{Pm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>V0(e,n,i,t)});function d2(e,r){return new dv({type:"template_literal",parts:e,...I.normalizeParams(r)})}var fv=_("ZodLazy",(e,r)=>{Uo.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>fp(e,n,i,t),e.unwrap=()=>e._zod.def.getter()});function mv(e){return new fv({type:"lazy",getter:e})}var pv=_("ZodPromise",(e,r)=>{Am.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>dp(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function f2(e){return new pv({type:"promise",innerType:e})}var vv=_("ZodFunction",(e,r)=>{xm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>H0(e,n,i,t)});function m2(e){return new vv({type:"function",input:Array.isArray(e?.input)?Vp(e?.input):e?.input??ta($n()),output:e?.output??$n()})}var ua=_("ZodCustom",(e,r)=>{Em.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>G0(e,n,i,t)});function p2(e){let r=new ce({check:"custom"});return r._zod.check=e,r}function v2(e,r){return b0(ua,e??(()=>!0),r)}function gv(e,r={}){return $0(ua,e,r)}function hv(e,r){return _0(e,r)}var g2=w0,h2=S0,yv=_("ZodInstanceOf",(e,r)=>{ua.init(e,r)},{properties(e,r){return this.check(gi(e,r))}});function y2(e,r={}){let n=new yv({type:"custom",check:"custom",fn:i=>i instanceof e,abort:!0,...I.normalizeParams(r)});return n._zod.bag.Class=e,n._zod.check=i=>{i.value instanceof e||i.issues.push({code:"invalid_type",expected:e.name,input:i.value,inst:n,path:[...n._zod.def.path??[]]})},n}var b2=(...e)=>I0({Codec:sa,Boolean:Ai,String:Pi},...e);function $2(e){let r=mv(()=>Di([Qo(e),Pp(),xp(),zp(),ta(r),Bp(Qo(),r)]));return r}function _2(e,r){return new uv({type:"pipe",in:nc(e),out:r})}var jF={invalid_type:"invalid_type",too_big:"too_big",too_small:"too_small",invalid_format:"invalid_format",not_multiple_of:"not_multiple_of",unrecognized_keys:"unrecognized_keys",invalid_union:"invalid_union",invalid_key:"invalid_key",invalid_element:"invalid_element",invalid_value:"invalid_value",custom:"custom"};function CF(e){Oe({customError:e})}function RF(){return Oe().customError}var bv;bv||(bv={});var ca={};Yr(ca,{ZodISODate:()=>Et,ZodISODateTime:()=>At,ZodISODuration:()=>zt,ZodISOTime:()=>Dt,date:()=>FF,datetime:()=>UF,duration:()=>LF,time:()=>MF});function UF(e){return Wo(At,e)}function FF(e){return Go(Et,e)}function MF(e){return Ho(Dt,e)}function LF(e){return Ko(zt,e)}var T={...zi,...Du,iso:ca},ZF=new Set(["$schema","$ref","$defs","definitions","$id","id","$comment","$anchor","$vocabulary","$dynamicRef","$dynamicAnchor","type","enum","const","anyOf","oneOf","allOf","not","properties","required","additionalProperties","patternProperties","propertyNames","minProperties","maxProperties","items","prefixItems","additionalItems","minItems","maxItems","uniqueItems","contains","minContains","maxContains","minLength","maxLength","pattern","format","minimum","maximum","exclusiveMinimum","exclusiveMaximum","multipleOf","description","default","contentEncoding","contentMediaType","contentSchema","unevaluatedItems","unevaluatedProperties","if","then","else","dependentSchemas","dependentRequired","nullable","readOnly"]);function VF(e,r){let n=e.$schema;return n==="https://json-schema.org/draft/2020-12/schema"?"draft-2020-12":n==="http://json-schema.org/draft-07/schema#"?"draft-7":n==="http://json-schema.org/draft-04/schema#"?"draft-4":r??"draft-2020-12"}function w2(e,r){return e.map((n,i)=>i<r?n:n.optional())}function BF(e){return e.replace(/~1/g,"/").replace(/~0/g,"~")}function WF(e,r){if(!e.startsWith("#"))throw new Error("External $ref is not supported, only local refs (#/...) are allowed");let n=e.slice(1).split("/").filter(Boolean);if(n.length===0)return r.rootSchema;let i=r.version==="draft-2020-12"?"$defs":"definitions";if(n[0]===i){let t=n[1]===void 0?void 0:BF(n[1]);if(!t||!r.defs[t])throw new Error(`Reference not found: ${e}`);return r.defs[t]}throw new Error(`Reference not found: ${e}`)}function GF(e,r){return T.transform(i=>i).check(i=>{let t=i.value;if(typeof t!="object"||t===null||Array.isArray(t))return;let o=Object.getOwnPropertyNames(t);if(r.minProperties!==void 0&&o.length<r.minProperties&&i.issues.push({origin:"object",code:"too_small",minimum:r.minProperties,inclusive:!0,message:`Too small: expected object to have >=${r.minProperties} properties`,input:t,inst:e,continue:!0}),r.maxProperties!==void 0&&o.length>r.maxProperties&&i.issues.push({origin:"object",code:"too_big",maximum:r.maxProperties,inclusive:!0,message:`Too big: expected object to have <=${r.maxProperties} properties`,input:t,inst:e,continue:!0}),r.keySchema)for(let a of o){let s=r.keySchema.safeParse(a);s.success||i.issues.push({code:"invalid_key",origin:"record",issues:s.error.issues,input:a,path:[a],continue:!0})}}).pipe(e)}function $v(e,r){if(e===null)return"z";let n=typeof e;if(n!=="object"){if(n==="number"&&Number.isNaN(e))return null;let i=String(e);return`${n[0]}${i.length}:${i}`}if(r.has(e))return null;r.add(e);try{if(Array.isArray(e)){let o=[];for(let a of e){let s=$v(a,r);if(s===null)return null;o.push(s)}return`a${o.length}:[${o.join(",")}]`}let i=Object.keys(e).sort(),t=[];for(let o of i){let a=$v(e[o],r);if(a===null)return null;t.push(`${o.length}:${o}=${a}`)}return`o${t.length}:{${t.join(",")}}`}finally{r.delete(e)}}var HF=new Set(["items","prefixItems","additionalItems","additionalProperties","contains","propertyNames","not","if","then","else","allOf","anyOf","oneOf","unevaluatedItems","unevaluatedProperties","contentSchema"]),KF=new Set(["properties","patternProperties","dependentSchemas","dependencies","$defs","definitions"]);function la(e){return typeof e!="object"||e===null?!1:Array.isArray(e)?e.some(la):typeof e.$ref=="string"?!0:Object.entries(e).some(([r,n])=>HF.has(r)?la(n):!KF.has(r)||typeof n!="object"||n===null?!1:Object.values(n).some(la))}function S2(e){return e===1?"element":"elements"}function JF(e,r){return T.transform(i=>i).check(i=>{let t=i.value;if(Array.isArray(t)){if(r.uniqueItems===!0){let o=new Map;for(let a=0;a<t.length;a++){let s=$v(t[a],new Set);if(s===null)continue;let u=o.get(s);if(u===void 0){o.set(s,a);continue}i.issues.push({code:"custom",message:`Array items must be unique: element at index ${a} duplicates the one at index ${u}`,input:t,path:[a],continue:!0})}}if(r.containsSchema){let o=r.minContains??1,a=r.maxContains!==void 0?r.maxContains+1:Number.POSITIVE_INFINITY,s=0;for(let u of t)if(r.containsSchema.safeParse(u).success&&++s>=a)break;s<o&&i.issues.push({code:"custom",message:`Array must contain at least ${o} matching ${S2(o)}; found ${s}`,input:t,continue:!0}),r.maxContains!==void 0&&s>r.maxContains&&i.issues.push({code:"custom",message:`Array must contain at most ${r.maxContains} matching ${S2(r.maxContains)}`,input:t,continue:!0})}}}).pipe(e)}function I2(e,r){if(e!==!1)return e===void 0||e===!0?T.any():tr(e,r)}var XF=/^(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:\.\d+)?(?:Z|[+-](?:[01]\d|2[0-3]):[0-5]\d)$/;function k2(e,r){if(e.not!==void 0){if(typeof e.not=="object"&&Object.keys(e.not).length===0)return T.never();throw new Error("not is not supported in Zod (except { not: {} } for never)")}if(e.unevaluatedItems!==void 0)throw new Error("unevaluatedItems is not supported");if(e.unevaluatedProperties!==void 0)throw new Error("unevaluatedProperties is not supported");if(e.if!==void 0||e.then!==void 0||e.else!==void 0)throw new Error("Conditional schemas (if/then/else) are not supported");if(e.dependentSchemas!==void 0||e.dependentRequired!==void 0)throw new Error("dependentSchemas and dependentRequired are not supported");if(e.$ref){let t=e.$ref;if(r.refs.has(t))return r.refs.get(t);if(r.processing.has(t))return T.lazy(()=>{if(!r.refs.has(t))throw new Error(`Circular reference not resolved: ${t}`);return r.refs.get(t)});r.processing.add(t);let o=WF(t,r),a=tr(o,r);return r.refs.set(t,a),r.processing.delete(t),a}if(e.enum!==void 0){let t=e.enum;if(r.version==="openapi-3.0"&&e.nullable===!0&&t.length===1&&t[0]===null)return T.null();if(t.length===0)return T.never();if(t.length===1)return T.literal(t[0]);if(t.every(a=>typeof a=="string"))return T.enum(t);let o=t.map(a=>T.literal(a));return o.length<2?o[0]:T.union([o[0],o[1],...o.slice(2)])}if(e.const!==void 0)return T.literal(e.const);let n=e.type;if(Array.isArray(n)){let t=n.map(o=>{let a={...e,type:o};return k2(a,r)});return t.length===0?T.never():t.length===1?t[0]:T.union(t)}if(!n)return T.any();let i;switch(n){case"string":{let t=T.string();if(e.format){let o=e.format;o==="email"?t=t.check(T.email()):o==="uri"||o==="uri-reference"?t=t.check(T.url()):o==="uuid"||o==="guid"?t=t.check(T.uuid()):o==="date-time"?t=t.check(T.iso.datetime({offset:!0})):o==="date"?t=t.check(T.iso.date()):o==="time"?t=t.check(T.regex(XF)):o==="duration"?t=t.check(T.iso.duration()):o==="hostname"?t=t.check(T.hostname()):o==="ipv4"?t=t.check(T.ipv4()):o==="ipv6"?t=t.check(T.ipv6()):o==="mac"?t=t.check(T.mac()):o==="cidr"?t=t.check(T.cidrv4()):o==="cidr-v6"?t=t.check(T.cidrv6()):o==="base64"?t=t.check(T.base64()):o==="base64url"?t=t.check(T.base64url()):o==="e164"?t=t.check(T.e164()):o==="credit_card"?t=t.check(T.creditCard()):o==="iban"?t=t.check(T.iban()):o==="jwt"?t=t.check(T.jwt()):o==="emoji"?t=t.check(T.emoji()):o==="nanoid"?t=t.check(T.nanoid()):o==="cuid"?t=t.check(T.cuid()):o==="cuid2"?t=t.check(T.cuid2()):o==="ulid"?t=t.check(T.ulid()):o==="xid"?t=t.check(T.xid()):o==="ksuid"&&(t=t.check(T.ksuid()))}typeof e.minLength=="number"&&(t=t.min(e.minLength)),typeof e.maxLength=="number"&&(t=t.max(e.maxLength)),e.pattern&&(t=t.regex(new RegExp(e.pattern))),i=t;break}case"number":case"integer":{let t=n==="integer"?T.number().int():T.number();typeof e.minimum=="number"&&e.exclusiveMinimum!==!0&&(t=t.min(e.minimum)),typeof e.maximum=="number"&&e.exclusiveMaximum!==!0&&(t=t.max(e.maximum)),typeof e.exclusiveMinimum=="number"?t=t.gt(e.exclusiveMinimum):e.exclusiveMinimum===!0&&typeof e.minimum=="number"&&(t=t.gt(e.minimum)),typeof e.exclusiveMaximum=="number"?t=t.lt(e.exclusiveMaximum):e.exclusiveMaximum===!0&&typeof e.maximum=="number"&&(t=t.lt(e.maximum)),typeof e.multipleOf=="number"&&(t=t.multipleOf(e.multipleOf)),i=t;break}case"boolean":{i=T.boolean();break}case"null":{i=T.null();break}case"object":{let t={},o=e.properties||{},a=new Set(e.required||[]),s=typeof e.additionalProperties=="object"?tr(e.additionalProperties,r):void 0;for(let[d,f]of Object.entries(o)){let m=tr(f,r);Fe(t,d,a.has(d)?m:m.optional())}if(e.patternProperties){let d=e.patternProperties,f=Object.keys(d),m=[];for(let h of f){let b=tr(d[h],r),y=T.string().regex(new RegExp(h));m.push(T.looseRecord(y,b))}let g=[];if(Object.keys(t).length>0&&g.push(T.object(t).passthrough()),g.push(...m),g.length===0)i=T.object({}).passthrough();else if(g.length===1)i=g[0];else{let h=T.intersection(g[0],g[1]);for(let b=2;b<g.length;b++)h=T.intersection(h,g[b]);i=h}if(e.additionalProperties===!1){let h=Object.keys(t),b=f.map(S=>new RegExp(S)),y=i;i=i.check(S=>{if(!pr(S.value))return;let $=[];for(let N of Object.keys(S.value))h.includes(N)||b.some(P=>P.test(N))||$.push(N);$.length&&S.issues.push({code:"unrecognized_keys",keys:$,input:S.value,inst:y})})}}else{let d=T.object(t);e.additionalProperties===!1?i=d.strict():s?i=d.catchall(s):i=d.passthrough()}let u=e.propertyNames!==void 0&&e.propertyNames!==!0,c=typeof e.minProperties=="number"?e.minProperties:void 0,l=typeof e.maxProperties=="number"?e.maxProperties:void 0;if(u||c!==void 0||l!==void 0){let d;if(u){let f=typeof e.propertyNames=="object"&&e.propertyNames.type===void 0?{type:"string",...e.propertyNames}:e.propertyNames;d=tr(f,r)}i=GF(i,{keySchema:d,minProperties:c,maxProperties:l})}break}case"array":{let t=e.prefixItems,o=e.items;if(t&&Array.isArray(t)){let a=typeof e.minItems=="number"?e.minItems:0,s=t.map(d=>tr(d,r)),u=w2(s,a),c=Array.isArray(o)?void 0:I2(o,r),l=T.tuple(u);i=c?l.rest(c):l,typeof e.minItems=="number"&&(i=i.check(T.minLength(e.minItems))),typeof e.maxItems=="number"&&(i=i.check(T.maxLength(e.maxItems)))}else if(Array.isArray(o)){let a=typeof e.minItems=="number"?e.minItems:0,s=o.map(d=>tr(d,r)),u=w2(s,a),c=I2(e.additionalItems,r),l=T.tuple(u);i=c?l.rest(c):l,typeof e.minItems=="number"&&(i=i.check(T.minLength(e.minItems))),typeof e.maxItems=="number"&&(i=i.check(T.maxLength(e.maxItems)))}else if(o!==void 0){let a=tr(o,r),s=T.array(a);typeof e.minItems=="number"&&(s=s.min(e.minItems)),typeof e.maxItems=="number"&&(s=s.max(e.maxItems)),i=s}else i=T.array(T.any());(e.uniqueItems===!0||e.contains!==void 0)&&(i=JF(i,{uniqueItems:e.uniqueItems===!0,containsSchema:e.contains!==void 0?tr(e.contains,r):void 0,minContains:typeof e.minContains=="number"?e.minContains:void 0,maxContains:typeof e.maxContains=="number"?e.maxContains:void 0}));break}default:throw new Error(`Unsupported type: ${n}`)}return i}function tr(e,r){if(typeof e=="boolean")return e?T.any():T.never();let n=k2(e,r),i=e.type||e.enum!==void 0||e.const!==void 0;if(e.anyOf&&Array.isArray(e.anyOf)){let s=e.anyOf.map(c=>tr(c,r)),u=T.union(s);n=i?T.intersection(n,u):u}if(e.oneOf&&Array.isArray(e.oneOf)){let s=e.oneOf.map(c=>tr(c,r)),u=T.xor(s);n=i?T.intersection(n,u):u}if(e.allOf&&Array.isArray(e.allOf))if(e.allOf.length===0)n=i?n:T.any();else{let s=i?n:tr(e.allOf[0],r),u=i?0:1;for(let c=u;c<e.allOf.length;c++)s=T.intersection(s,tr(e.allOf[c],r));n=s}e.nullable===!0&&r.version==="openapi-3.0"&&(n=T.nullable(n)),e.readOnly===!0&&(n=T.readonly(n)),e.default!==void 0&&(n=n.default(e.default));let t={},o=["$id","id","$comment","$anchor","$vocabulary","$dynamicRef","$dynamicAnchor"];for(let s of o)s in e&&(t[s]=e[s]);let a=["contentEncoding","contentMediaType","contentSchema"];for(let s of a)s in e&&(t[s]=e[s]);if(e.type==="object"&&e.$ref===void 0){e.propertyNames!==void 0&&!la(e.propertyNames)&&(t.propertyNames=e.propertyNames);for(let s of["minProperties","maxProperties"])e[s]!==void 0&&(t[s]=e[s])}if(e.type==="array"&&e.$ref===void 0){e.contains!==void 0&&!la(e.contains)&&(t.contains=e.contains);for(let s of["uniqueItems","minContains","maxContains"])e[s]!==void 0&&(t[s]=e[s])}for(let s of Object.keys(e))ZF.has(s)||Fe(t,s,e[s]);return Object.keys(t).length>0&&r.registry.add(n,t),e.description&&(n=n.describe(e.description)),n}function O2(e,r){if(typeof e=="boolean")return e?T.any():T.never();let n;try{n=JSON.parse(JSON.stringify(e))}catch{throw new Error("fromJSONSchema input is not valid JSON (possibly cyclic); use $defs/$ref for recursive schemas")}let i=VF(n,r?.defaultTarget),t=n.$defs||n.definitions||{},o={version:i,defs:t,refs:new Map,processing:new Set,rootSchema:n,registry:r?.registry??Me};return tr(n,o)}var N2=Symbol("z.visit/resolving");function da(e,r){let n=typeof r=="function"?r:(a,s)=>{let u=r[a._zod.def.type];return u?u(a,s):a},i=new Map;function t(a){let s=i.get(a);if(s===N2)return new Uo({type:"lazy",getter:()=>i.get(a)});if(s!==void 0)return s;i.set(a,N2);let u=o(a),c=n(u,u!==a);return i.set(a,c),c}function o(a){let s=a._zod.def,u=s.type;switch(u){case"object":{let c=s.shape,l=Object.keys(c),d=!1,f={};for(let g of l){let h=t(c[g]);h!==c[g]&&(d=!0),f[g]=h}let m=s.catchall;return s.catchall&&(m=t(s.catchall),m!==s.catchall&&(d=!0)),d?re(a,{...s,shape:f,catchall:m}):a}case"array":{let c=t(s.element);return c===s.element?a:re(a,{...s,element:c})}case"tuple":{let c=s.items,l=!1,d=[];for(let m of c){let g=t(m);g!==m&&(l=!0),d.push(g)}let f=s.rest;return s.rest&&(f=t(s.rest),f!==s.rest&&(l=!0)),l?re(a,{...s,items:d,rest:f}):a}case"record":case"map":{let c=t(s.keyType),l=t(s.valueType);return c===s.keyType&&l===s.valueType?a:re(a,{...s,keyType:c,valueType:l})}case"set":{let c=t(s.valueType);return c===s.valueType?a:re(a,{...s,valueType:c})}case"union":{let c=s.options,l=!1,d=[];for(let f of c){let m=t(f);m!==f&&(l=!0),d.push(m)}return l?re(a,{...s,options:d}):a}case"intersection":{let c=t(s.left),l=t(s.right);return c===s.left&&l===s.right?a:re(a,{...s,left:c,right:l})}case"optional":case"nullable":case"default":case"prefault":case"catch":case"readonly":case"nonoptional":case"promise":case"success":{let c=t(s.innerType);return c===s.innerType?a:re(a,{...s,innerType:c})}case"pipe":{let c=t(s.in),l=t(s.out);return c===s.in&&l===s.out?a:re(a,{...s,in:c,out:l})}case"function":{let c=t(s.input),l=t(s.output);return c===s.input&&l===s.output?a:re(a,{...s,input:c,output:l})}case"lazy":{let c=s.getter,{_cachedInner:l,...d}=s;return re(a,{...d,getter:()=>t(c())})}case"template_literal":case"string":case"number":case"int":case"boolean":case"bigint":case"symbol":case"undefined":case"null":case"void":case"never":case"any":case"unknown":case"date":case"nan":case"enum":case"literal":case"file":case"transform":case"custom":return a;default:return a}}return t(e)}function P2(e){return da(e,{object:r=>r.partial(),union:r=>{let n=r._zod.def;return n.discriminator===void 0?r:Di(n.options)}})}function QF(e,r){if(!r?.length)return e;let n=e._zod.def;return re(e,Sr(n,{checks:[...n.checks??[],...r]}),{parent:!0})}function x2(e){return QF(e.out,e.checks)}function YF(e){return e.in._zod.traits.has("$ZodTransform")?x2(e):e.in}function A2(e){return da(e,{pipe:r=>YF(r._zod.def),default:(r,n)=>n?_n(r._zod.def.innerType):r,catch:(r,n)=>n?r._zod.def.innerType:r})}function E2(e){return da(e,{pipe:r=>x2(r._zod.def),prefault:(r,n)=>n?r._zod.def.innerType:r})}var _v={};Yr(_v,{bigint:()=>nM,boolean:()=>tM,date:()=>iM,number:()=>rM,string:()=>eM});function eM(e){return Zm(Pi,e)}function rM(e){return Km(xi,e)}function tM(e){return t0(Ai,e)}function nM(e){return i0(Ei,e)}function iM(e){return v0(ra,e)}var at=p.string().regex(/^-?\d+(\.\d+)?$/),D2=p.strictObject({digest:p.string().regex(/^[0-9a-f]{64}$/).describe("SHA-256 of the file as handed in"),over:p.enum(["extension","time"]).describe("What the force was recorded over"),samples:p.int().describe("Samples in the file"),figures:p.strictObject({peakForceN:at.describe("Highest force [N]"),atPeak:at.describe("Extension [mm] or time [s] at the highest force"),elongationPercent:at.nullable().describe("Elongation at the highest force, without the toe [%]"),stiffnessNPerMm:at.nullable().describe("Slope between 10 and 50 % of the highest force [N/mm]"),initialModulusMPa:at.nullable().describe("Initial modulus [MPa]"),workToBreakJ:at.nullable().describe("Work up to the highest force [J]"),slips:p.array(p.strictObject({at,fromForceN:at,toForceN:at})).describe("Drops of more than 5 % before the highest force")}),points:p.array(p.tuple([p.number(),p.number()])).max(64).describe("Its course: extension [mm] or time [s], and force [N]; lowest and highest of each stretch")}).describe("Force over extension or time of one specimen");var qt=2,wv=p.literal([1,qt]).describe("Version of this document format; since 2 methods state their series and quantities are named by them"),ie=p.string().regex(/^-?\d+(\.\d+)?$/).describe("A decimal number as text, rounded half-even to the places its method or scheme states"),B=p.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/).describe("Readable identifier; never changes"),Sv=p.string().describe("What was measured, as a code: the quantity, its method and series, e.g. retention/fg-knot/knotted. A fixed name in format 1"),z2=p.string().optional().describe('The same in words, e.g. "Knot retention, FG"; not told by format 1'),st=p.iso.date().describe("Calendar date, ISO 8601"),q2=p.strictObject({unit:p.string().describe("Trade unit symbol"),value:ie,low:ie.nullable().describe("Lower end of the 95 % interval"),high:ie.nullable().describe("Upper end of the 95 % interval")}).describe("The same figure in the unit that the trade uses"),ac=p.strictObject({quantity:Sv,name:z2,unit:p.string().describe("SI unit symbol"),value:ie,low:ie.nullable().describe("Lower end of the 95 % interval; null when it cannot be stated"),high:ie.nullable().describe("Upper end of the 95 % interval; null when it cannot be stated"),trade:q2.nullable(),specimens:p.int().describe("Valid specimens behind the figure"),submissions:p.int().describe("Accepted submissions behind the figure"),testers:p.int().describe("Testers behind the figure"),rigs:p.int().describe("Rigs behind the figure"),note:p.string().nullable().describe("What a reader must know about this figure")}).describe("A published figure with its 95 % interval and the evidence behind it"),kn=p.strictObject({slug:B,maker:p.strictObject({slug:B,name:p.string().describe("Name of the maker")}).describe("Maker"),line:p.strictObject({slug:B,name:p.string().describe("Name of the line")}).describe("Line"),size:p.string().describe("Size as on the label"),colour:p.string().describe("Colour as on the label"),material:p.string().describe("Material, e.g. UHMWPE"),construction:p.enum(["braided","fused","hollowCore","twisted","monofilament"]).describe("How the line is made"),carriers:p.int().nullable().describe("Ends braided; null where the line is not braided"),peNumber:ie.nullable().describe("PE number on the label"),ratedStrength:p.strictObject({value:ie,unit:p.string().describe("Unit as printed")}).nullable().describe("Rated strength as printed")}).describe("What a variant is called"),oM=p.strictObject({kind:p.enum(["moved","unchanged","new","returned","notComparable"]).describe("Against the edition before"),places:p.int().nullable().describe("Places gained (positive) or lost (negative)"),runAtTop:p.int().describe("Editions in a row in first place, this one included")}).describe("Movement against the edition before"),aM=p.strictObject({low:p.int(),high:p.int()}).describe("Places that the evidence allows, simultaneous over the table at 95 %"),T2={variant:kn,place:p.int().nullable().describe("Competition place (1-2-2-4); null when not placed"),placeIfIncluded:p.int().nullable().describe("Place it would have had, shown in brackets, for a row shown unplaced"),isTied:p.boolean().describe("Shares its place with another"),group:p.int().nullable().describe("Too-close-to-call group, 1 is the top group"),placeInterval:aM.nullable(),movement:oM,chanceOfFirstPercent:ie.nullable().describe("Chance of being first under the model"),chanceOfFirstFivePercent:ie.nullable().describe("Chance of being among the first five under the model"),chanceAheadOfNextPercent:ie.nullable().describe("Chance that this row and the next placed one are in the right order")},j2=p.strictObject({...T2,score:ie.describe("Score under the scheme, e.g. the sum of places"),categoryPlaces:p.record(p.string(),p.int()).describe("Category code → place counted in the score")}).describe("A row of the overall standings"),C2=p.strictObject({...T2,figure:ac,change:p.strictObject({kind:p.enum(["changed","withinNoise","notComparable","first"]).describe("Whether the measured value changed beyond noise (Welch, 5 %)"),percent:ie.nullable().describe("Change of the measured value against the edition before")}).describe("Change of the measured value")}).describe("A row of a category"),Iv=p.strictObject({code:B,name:p.string().describe("Name on the page"),quantity:Sv,quantityName:z2,unit:p.string().describe("SI unit"),tradeUnit:p.string().nullable().describe("Trade unit"),direction:p.enum(["more","less"]).describe("Whether more or less is better"),weight:ie.describe("Weight in the scheme"),method:B.describe("Method"),methodVersion:p.int().describe("Version of the method"),series:B.optional().describe("Series of the method; not told by format 1"),section:p.strictObject({method:B,series:B}).nullable().optional().describe("Method and series of the diameters that a stress is taken over; null of other quantities, not told by format 1"),conditions:p.string().describe("Conditions that define the category"),comparability:p.enum(["same","changed","notComparable","first"]).describe("Against the edition before")}).describe("What is ranked"),R2=p.strictObject({variant:kn,reasonCode:p.enum(["notObtainable","labelInDoubt","duplicate","makersRequestRefused","interest"]).describe("Why"),words:p.string().describe("Why, in words"),effect:p.enum(["closedUp","shownUnplaced"]).describe("Whether the others move up"),placeIfIncluded:p.int().nullable().describe("Overall place it would have had")}).describe("A variant left out, with the reason"),U2=p.strictObject({reasonCode:p.enum(["withdrawal","reidentification","methodError","catalogueError"]).describe("Why"),words:p.string().describe("What changed and why"),expected:p.array(p.strictObject({where:p.string(),before:p.string()})).describe("What the correction took for published, and found"),changes:p.array(p.strictObject({where:p.string().describe("Document and row"),before:p.string().nullable(),after:p.string().nullable()})).describe("Changed cells"),consequences:p.string().describe('Computed consequences, e.g. "3 values changed, 2 places"')}).describe("What a later revision changed"),On={formatVersion:wv,house:p.string().describe("Who publishes"),isDemo:p.boolean().describe("Whether the figures are invented for demonstration"),edition:p.strictObject({slug:B,name:p.string().describe("Name"),openedOn:st,closedOn:st}).describe("The edition"),revision:p.int().describe("Revision of the release"),publishedAt:p.iso.datetime().describe("When it was published, UTC")},sM=p.strictObject({leftOut:p.array(p.strictObject({kind:p.enum(["category","tester","rig","entry"]).describe("What is left out"),name:p.string().describe("Code, display name or slug of what is left out"),first:p.array(B).describe("Variants in first place then"),swappedPairs:p.int().describe("Pairs of variants whose order turns round"),swaps:p.array(p.strictObject({ahead:B,behind:B})).describe("The first of these pairs: who is then ahead of whom"),dropped:p.array(B).describe("Variants that are then no longer placed")})).describe("The overall order without each category, tester and rig, and without each entry that turns a pair round"),weights:p.strictObject({firstPlaces:p.array(p.strictObject({variant:B,percent:ie})).describe("Share of all weights, drawn evenly, under which a variant is first"),smallestChange:p.strictObject({variant:B,weightMovedPercent:ie}).nullable().describe("Smallest part of the weight that, moved to other categories, brings another variant to the first score")}).nullable().describe("What first place owes to the weights; null where the scheme knows none")}).describe("What the overall order hangs on"),Xge=p.strictObject({...On,previousEdition:B.nullable(),scheme:p.strictObject({slug:B,name:p.string().describe("Name"),version:p.int().describe("Version"),words:p.string().describe("The scheme in words"),combine:p.enum(["sumOfPlaces","weightedSumOfPlaces","meanStandardScore","pairwiseWins"]).describe("How places are combined"),countPlaces:p.enum(["beforeExclusions","afterExclusions"]).describe("When category places are counted"),tieBreak:p.enum(["none","mostFirsts"]).describe("Tie-break"),categories:p.array(Iv).describe("Categories in order")}).describe("Scheme"),counts:p.strictObject({entries:p.int(),submissions:p.int(),specimens:p.int(),testers:p.int(),rigs:p.int(),setAside:p.int()}).describe("Evidence behind the edition"),overall:p.array(j2).describe("Overall standings, best first"),incomplete:p.array(p.strictObject({variant:kn,missing:p.array(B).describe("Categories without a result that counts"),needs:p.array(p.string()).describe("What it lacks, in words")})).describe("Entries not placed overall"),excluded:p.array(R2).describe("Entries left out"),categoryTops:p.array(p.strictObject({category:B,variants:p.array(kn)})).describe("Top group of each category"),sensitivity:sM.nullable().describe("Null where an uncertainty is not known"),erratum:U2.nullable()}).describe("An edition as published"),Qge=p.strictObject({...On,category:Iv,spread:p.strictObject({specimenPercent:ie.nullable().describe("What a specimen scatters by in general, coefficient of variation; null when too few tell"),betweenSubmissionsPercent:ie.describe("What submissions of one variant differ by beyond that, relative standard deviation"),degreesOfFreedom:p.int().describe("Degrees of freedom of the latter"),specimensToTell:p.int().nullable().describe("Specimens of each of two variants that tell 3 % apart with a power of 80 %")}).describe("How the readings of this category scatter"),rows:p.array(C2).describe("Standings, best first")}).describe("The standings of one category"),F2=p.strictObject({reference:p.string().describe("Reference of the submission"),variant:B,method:B,tester:p.string().describe("Display name of the tester"),benchDay:st,withdrawnOn:st.describe("When it left the results"),reason:p.string().describe("Why"),citation:p.string().describe("How to cite that it was withdrawn")}).describe("A result that was accepted and withdrawn: it counts for nothing, and is not forgotten"),Yge=p.strictObject({...On,items:p.array(F2).describe("By reference")}).describe("Results of the edition that were withdrawn"),e1e=p.strictObject({...On,records:p.array(p.strictObject({category:B,strengthFromN:p.int().describe("Class of measured breaking force, from this on [N]"),strengthBelowN:p.int().nullable().describe("And below this [N]; null without an end"),value:ie.describe("Best value ever published"),unit:p.string().describe("SI unit"),variant:B,edition:B,equalled:p.array(p.strictObject({variant:B,edition:B})).describe("Later results of the same printed value"),isNew:p.boolean().describe("Set in this edition"),since:B.describe("First edition that compares: the method last changed beyond comparison before it")})).describe("By category and class of strength"),runs:p.array(p.strictObject({table:B.describe('"overall" or a category'),variant:B,editions:p.array(B).describe("Editions in a row in first place, oldest first"),isGoingOn:p.boolean().describe("Still there in this edition")})).describe("Runs at the top, longest first in each table")}).describe("What stands over the years, as known when this edition was published"),r1e=p.strictObject({...On,variants:p.array(B).describe("Placed variants, best first; empty where no chances are stated"),aheadPercent:p.array(p.array(p.int().min(0).max(100))).describe("Chance that the variant of the row is ahead of that of the column overall, whole per cent; a shared place counts half")}).describe("Chances of every pair under the model"),uM=p.strictObject({role:p.string().describe("What was read"),station:p.int().nullable().describe("Station along the specimen"),entered:p.strictObject({text:p.string().describe("As typed"),unit:p.string().describe("Unit as entered")}).describe("As entered"),value:ie.describe("In SI, exact"),unit:p.string().describe("SI unit")}).describe("One reading"),cM=p.strictObject({number:p.int().describe("Number within the submission"),condition:p.enum(["untreated","treated"]).describe("Whether knotted or abraded"),state:p.enum(["valid","invalid","setAside"]).describe("Only valid specimens count"),reason:p.string().nullable().describe("Why it does not count"),readings:p.array(uM).describe("Readings"),trace:D2.optional()}).describe("One specimen"),lM=p.strictObject({reference:p.string().describe("Reference of the submission"),revision:p.int().describe("Revision that was accepted"),method:B,methodVersion:p.int().describe("Version"),tester:p.string().describe("Display name of the tester"),reviewer:p.string().describe("Display name of the second person"),rig:p.string().describe("Code of the force or diameter instrument"),instruments:p.array(p.strictObject({code:p.string(),calibration:p.string().nullable().describe("Certificate valid on the bench day")})).describe("Instruments used"),spool:p.string().describe("Blind code"),benchDay:st,figures:p.array(ac).describe("Figures of this submission"),findings:p.array(p.strictObject({code:p.string(),message:p.string(),resolution:p.string().nullable().describe("What the reviewer wrote")})).describe("What the checks found"),specimens:p.array(cM).describe("Every specimen, counted or not")}).describe("One accepted submission"),dM=p.strictObject({quantity:p.enum(["breakingForce","diameter","linearDensity","peNumber"]).describe("Claimed quantity"),basis:p.enum(["average","minimum","maximum","class","notStated"]).describe("Basis"),printed:p.strictObject({text:p.string(),unit:p.string()}).describe("As printed"),value:ie.describe("In SI"),unit:p.string().describe("SI unit"),seenOn:st,source:p.string().describe("Where it was seen"),measured:ac.nullable(),ratioPercent:ie.nullable().describe("100 × measured / claimed"),decision:p.enum(["meets","probablyMeets","cannotSay","probablyFallsShort","fallsShort"]).nullable().describe("Decision after JCGM 106")}).describe("What the label says, beside what was measured"),fM=p.strictObject({edition:B,revision:p.int(),overallPlace:p.int().nullable(),outcome:p.enum(["placed","incomplete","excluded"]).describe("How the variant fared"),categories:p.array(p.strictObject({code:B,place:p.int().nullable(),value:ie,low:ie.nullable(),high:ie.nullable(),unit:p.string(),trade:q2.nullable(),methodVersion:p.int(),isBreak:p.boolean().describe("A method change breaks comparison with the point before"),isCorrected:p.boolean().optional().describe("An erratum of the edition changed the value; not told by the first releases")})).describe("By category")}).describe("One edition in the history of a variant"),t1e=p.strictObject({...On,variant:kn,outcome:p.enum(["placed","incomplete","excluded"]).describe("How the variant fared in this edition"),exclusion:R2.omit({variant:!0}).nullable(),missing:p.array(B).describe("Categories without an accepted result"),overall:j2.omit({variant:!0}).nullable(),categories:p.array(p.strictObject({category:Iv,row:C2.omit({variant:!0})})).describe("By category"),figures:p.array(ac).describe("Every figure measured, ranked or not"),claims:p.array(dM).describe("Claims"),evidence:p.array(p.strictObject({quantity:Sv,submissions:p.array(p.string()).describe("References")})).optional().describe("Which submissions each figure was computed from"),submissions:p.array(lM).describe("Accepted submissions"),withdrawn:p.array(F2).describe("Results that were withdrawn"),spools:p.array(p.strictObject({code:p.string(),source:p.enum(["bought","makerSupplied","lent"]),obtainedOn:st,place:p.string(),lot:p.string().nullable(),reidentified:p.string().nullable()})).describe("Spools tested and how they were obtained"),budgets:p.array(p.strictObject({category:B,standardUncertaintyPercent:ie.describe("Combined standard uncertainty, relative to the value"),degreesOfFreedom:p.int().nullable().describe("Effective degrees of freedom; null for more than a thousand"),lines:p.array(p.strictObject({component:p.enum(["repeatability","tester","rig","certificate"]),of:p.string().nullable().describe("Whose or which; null for repeatability"),sharePercent:ie.describe("Share of the variance")})).describe("Largest first")})).describe("Uncertainty budget of each category (JCGM 100)"),history:p.array(fM).describe("Editions, oldest first, this one last"),siblings:p.array(kn).describe("Other variants of the line in this edition")}).describe("One variant in one edition"),mM=p.discriminatedUnion("kind",[p.strictObject({code:B,kind:p.literal("breakingForce"),treatment:p.strictObject({kind:p.enum(["knot","abrasion"]),name:p.string(),words:p.string()}).nullable().describe("What a specimen goes through before it is pulled; null for nothing")}),p.strictObject({code:B,kind:p.literal("diameterAlongStations"),stations:p.int().describe("Least number on each specimen")}),p.strictObject({code:B,kind:p.literal("linearDensity")})]).describe("One row of readings that a method yields"),n1e=p.strictObject({formatVersion:wv,slug:B,name:p.string(),number:p.int(),effectiveFrom:st,effectiveUntil:st.nullable(),purpose:p.string(),apparatus:p.array(p.string()),steps:p.array(p.string()),series:p.array(mM).optional().describe("What the method yields; not told by format 1"),parameters:p.array(p.strictObject({name:p.string(),value:p.string(),unit:p.string()})),formulae:p.array(p.strictObject({figure:p.string(),formula:p.string(),where:p.string()})),limits:p.array(p.strictObject({name:p.string(),value:p.string(),unit:p.string()})),checks:p.array(p.string()).describe("Codes of the checks applied"),checkSettings:p.array(p.strictObject({check:p.string(),severity:p.string().nullable(),limits:p.array(p.strictObject({name:p.string(),value:p.number()}))})).optional().describe("What this version sets of its checks"),cautions:p.array(p.string()),sources:p.array(p.string()),changes:p.string().describe("What changed against the version before"),isComparableWithPrevious:p.boolean()}).describe("One immutable version of a method"),pM=p.strictObject({code:p.string(),title:p.string(),severity:p.enum(["blocks","held","note"]),explains:p.string(),limit:p.string(),severities:p.array(p.enum(["blocks","held","note"])).optional().describe("Severities that a method version may give it"),limits:p.array(p.strictObject({name:p.string(),words:p.string(),value:ie,unit:p.string(),atLeast:ie.describe("A method version may set it from here"),atMost:ie.describe("to here")})).optional().describe("Numbers that a method version may set"),source:p.string().optional().describe("Where rule and limits come from"),example:p.string().optional().describe("A submission that triggers it")}).describe("One automatic check"),i1e=p.strictObject({...On,makers:p.array(p.strictObject({slug:B,name:p.string(),lines:p.array(p.strictObject({slug:B,name:p.string(),material:p.string(),construction:p.string(),carriers:p.int().nullable(),variants:p.array(kn)}))})).describe("Makers, their lines and variants in this edition"),methods:p.array(p.strictObject({slug:B,number:p.int()})).describe("Method versions in this release"),checks:p.array(pM).describe("Checks pinned by this edition")}).describe("Names in a release"),o1e=p.strictObject({formatVersion:wv,edition:B,revision:p.int(),publishedAt:p.iso.datetime(),softwareVersion:p.string(),previousDigest:p.string().nullable().describe("SHA-256 of the manifest of the release before, the chain"),files:p.array(p.strictObject({path:p.string(),mediaType:p.string(),sizeBytes:p.int(),sha256:p.string().regex(/^[0-9a-f]{64}$/)})).describe("Every file with its digest")}).describe("Manifest of a release; its SHA-256 is the digest of the release"),a1e=p.strictObject({formatVersion:p.literal(1),algorithm:p.literal("Ed25519").describe("RFC 8032"),signed:p.literal("manifest.json").describe("File whose bytes are signed"),publicKey:p.string().describe("SubjectPublicKeyInfo (RFC 8410), DER, base64"),signature:p.string().describe("base64")}).describe("Signature of a release"),s1e=p.strictObject({publicKey:p.string().describe("SubjectPublicKeyInfo (RFC 8410), DER, base64"),fingerprint:p.string().describe("SHA-256 of the key, hex"),firstUsedAt:p.iso.datetime().describe("Publication of the first release that it signed")}).describe("A key that releases are signed with"),u1e=p.strictObject({edition:B,editionName:p.string(),revision:p.int(),status:p.enum(["published","superseded"]),digest:p.string().describe("SHA-256 of the manifest"),publishedAt:p.iso.datetime(),erratum:U2.nullable()}).describe("A release in the list");function vM(e){for(let r=0;r<e.length;r++){let n=e.charCodeAt(r);if(n>=55296&&n<=56319){if(r===e.length-1)return!0;let i=e.charCodeAt(r+1);if(!(i>=56320&&i<=57343))return!0;r++}else if(n>=56320&&n<=57343)return!0}return!1}function Nn(e,r=new Set){if(typeof e=="number"&&isNaN(e))throw new Error("NaN is not allowed");if(typeof e=="number"&&!isFinite(e))throw new Error("Infinity is not allowed");if(typeof e=="string"&&vM(e))throw new Error("Lone surrogate is not allowed");if(e===null||typeof e!="object")return JSON.stringify(e);if(typeof e.toJSON=="function"){if(r.has(e))throw new Error("Circular reference detected");r.add(e);let i=Nn(e.toJSON(),r);return r.delete(e),i}if(r.has(e))throw new Error("Circular reference detected");r.add(e);let n;if(Array.isArray(e))n=`[${e.map(t=>Nn(t===void 0||typeof t=="symbol"?null:t,r)).join(",")}]`;else{let i=[];for(let t of Object.keys(e).sort())e[t]===void 0||typeof e[t]=="symbol"||i.push(`${Nn(t)}:${Nn(e[t],r)}`);n=`{${i.join(",")}}`}return r.delete(e),n}function ut(e){let r=Nn(e);if(r===void 0)throw new TypeError("A release holds JSON only; found undefined or a function.");return r}/*!
 *  decimal.js v10.6.0
 *  An arbitrary-precision Decimal type for JavaScript.
 *  https://github.com/MikeMcl/decimal.js
 *  Copyright (c) 2025 Michael Mclaughlin <M8ch88l@gmail.com>
 *  MIT Licence
 */var qi=9e15,Rt=1e9,kv="0123456789abcdef",cc="2.3025850929940456840179914546843642076011014886287729760333279009675726096773524802359972050895982983419677840422862486334095254650828067566662873690987816894829072083255546808437998948262331985283935053089653777326288461633662222876982198867465436674744042432743651550489343149393914796194044002221051017141748003688084012647080685567743216228355220114804663715659121373450747856947683463616792101806445070648000277502684916746550586856935673420670581136429224554405758925724208241314695689016758940256776311356919292033376587141660230105703089634572075440370847469940168269282808481184289314848524948644871927809676271275775397027668605952496716674183485704422507197965004714951050492214776567636938662976979522110718264549734772662425709429322582798502585509785265383207606726317164309505995087807523710333101197857547331541421808427543863591778117054309827482385045648019095610299291824318237525357709750539565187697510374970888692180205189339507238539205144634197265287286965110862571492198849978748873771345686209167058",lc="3.1415926535897932384626433832795028841971693993751058209749445923078164062862089986280348253421170679821480865132823066470938446095505822317253594081284811174502841027019385211055596446229489549303819644288109756659334461284756482337867831652712019091456485669234603486104543266482133936072602491412737245870066063155881748815209209628292540917153643678925903600113305305488204665213841469519415116094330572703657595919530921861173819326117931051185480744623799627495673518857527248912279381830119491298336733624406566430860213949463952247371907021798609437027705392171762931767523846748184676694051320005681271452635608277857713427577896091736371787214684409012249534301465495853710507922796892589235420199561121290219608640344181598136297747713099605187072113499999983729780499510597317328160963185950244594553469083026425223082533446850352619311881710100031378387528865875332083814206171776691473035982534904287554687311595628638823537875937519577818577805321712268066130019278766111959092164201989380952572010654858632789",Ov={precision:20,rounding:4,modulo:1,toExpNeg:-7,toExpPos:21,minE:-qi,maxE:qi,crypto:!1},V2,ct,V=!0,fc="[DecimalError] ",Ct=fc+"Invalid argument: ",B2=fc+"Precision limit exceeded",W2=fc+"crypto unavailable",G2="[object Decimal]",Ge=Math.floor,qe=Math.pow,gM=/^0b([01]+(\.[01]*)?|\.[01]+)(p[+-]?\d+)?$/i,hM=/^0x([0-9a-f]+(\.[0-9a-f]*)?|\.[0-9a-f]+)(p[+-]?\d+)?$/i,yM=/^0o([0-7]+(\.[0-7]*)?|\.[0-7]+)(p[+-]?\d+)?$/i,H2=/^(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i,Or=1e7,F=7,bM=9007199254740991,$M=cc.length-1,Nv=lc.length-1,x={toStringTag:G2};x.absoluteValue=x.abs=function(){var e=new this.constructor(this);return e.s<0&&(e.s=1),C(e)};x.ceil=function(){return C(new this.constructor(this),this.e+1,2)};x.clampedTo=x.clamp=function(e,r){var n,i=this,t=i.constructor;if(e=new t(e),r=new t(r),!e.s||!r.s)return new t(NaN);if(e.gt(r))throw Error(Ct+r);return n=i.cmp(e),n<0?e:i.cmp(r)>0?r:new t(i)};x.comparedTo=x.cmp=function(e){var r,n,i,t,o=this,a=o.d,s=(e=new o.constructor(e)).d,u=o.s,c=e.s;if(!a||!s)return!u||!c?NaN:u!==c?u:a===s?0:!a^u<0?1:-1;if(!a[0]||!s[0])return a[0]?u:s[0]?-c:0;if(u!==c)return u;if(o.e!==e.e)return o.e>e.e^u<0?1:-1;for(i=a.length,t=s.length,r=0,n=i<t?i:t;r<n;++r)if(a[r]!==s[r])return a[r]>s[r]^u<0?1:-1;return i===t?0:i>t^u<0?1:-1};x.cosine=x.cos=function(){var e,r,n=this,i=n.constructor;return n.d?n.d[0]?(e=i.precision,r=i.rounding,i.precision=e+Math.max(n.e,n.sd())+F,i.rounding=1,n=_M(i,Y2(i,n)),i.precision=e,i.rounding=r,C(ct==2||ct==3?n.neg():n,e,r,!0)):new i(1):new i(NaN)};x.cubeRoot=x.cbrt=function(){var e,r,n,i,t,o,a,s,u,c,l=this,d=l.constructor;if(!l.isFinite()||l.isZero())return new d(l);for(V=!1,o=l.s*qe(l.s*l,1/3),!o||Math.abs(o)==1/0?(n=Le(l.d),e=l.e,(o=(e-n.length+1)%3)&&(n+=o==1||o==-2?"0":"00"),o=qe(n,1/3),e=Ge((e+1)/3)-(e%3==(e<0?-1:2)),o==1/0?n="5e"+e:(n=o.toExponential(),n=n.slice(0,n.indexOf("e")+1)+e),i=new d(n),i.s=l.s):i=new d(o.toString()),a=(e=d.precision)+3;;)if(s=i,u=s.times(s).times(s),c=u.plus(l),i=fe(c.plus(l).times(s),c.plus(u),a+2,1),Le(s.d).slice(0,a)===(n=Le(i.d)).slice(0,a))if(n=n.slice(a-3,a+1),n=="9999"||!t&&n=="4999"){if(!t&&(C(s,e+1,0),s.times(s).times(s).eq(l))){i=s;break}a+=4,t=1}else{(!+n||!+n.slice(1)&&n.charAt(0)=="5")&&(C(i,e+1,1),r=!i.times(i).times(i).eq(l));break}return V=!0,C(i,e,d.rounding,r)};x.decimalPlaces=x.dp=function(){var e,r=this.d,n=NaN;if(r){if(e=r.length-1,n=(e-Ge(this.e/F))*F,e=r[e],e)for(;e%10==0;e/=10)n--;n<0&&(n=0)}return n};x.dividedBy=x.div=function(e){return fe(this,new this.constructor(e))};x.dividedToIntegerBy=x.divToInt=function(e){var r=this,n=r.constructor;return C(fe(r,new n(e),0,1,1),n.precision,n.rounding)};x.equals=x.eq=function(e){return this.cmp(e)===0};x.floor=function(){return C(new this.constructor(this),this.e+1,3)};x.greaterThan=x.gt=function(e){return this.cmp(e)>0};x.greaterThanOrEqualTo=x.gte=function(e){var r=this.cmp(e);return r==1||r===0};x.hyperbolicCosine=x.cosh=function(){var e,r,n,i,t,o=this,a=o.constructor,s=new a(1);if(!o.isFinite())return new a(o.s?1/0:NaN);if(o.isZero())return s;n=a.precision,i=a.rounding,a.precision=n+Math.max(o.e,o.sd())+4,a.rounding=1,t=o.d.length,t<32?(e=Math.ceil(t/3),r=(1/pc(4,e)).toString()):(e=16,r="2.3283064365386962890625e-10"),o=Ti(a,1,o.times(r),new a(1),!0);for(var u,c=e,l=new a(8);c--;)u=o.times(o),o=s.minus(u.times(l.minus(u.times(l))));return C(o,a.precision=n,a.rounding=i,!0)};x.hyperbolicSine=x.sinh=function(){var e,r,n,i,t=this,o=t.constructor;if(!t.isFinite()||t.isZero())return new o(t);if(r=o.precision,n=o.rounding,o.precision=r+Math.max(t.e,t.sd())+4,o.rounding=1,i=t.d.length,i<3)t=Ti(o,2,t,t,!0);else{e=1.4*Math.sqrt(i),e=e>16?16:e|0,t=t.times(1/pc(5,e)),t=Ti(o,2,t,t,!0);for(var a,s=new o(5),u=new o(16),c=new o(20);e--;)a=t.times(t),t=t.times(s.plus(a.times(u.times(a).plus(c))))}return o.precision=r,o.rounding=n,C(t,r,n,!0)};x.hyperbolicTangent=x.tanh=function(){var e,r,n=this,i=n.constructor;return n.isFinite()?n.isZero()?new i(n):(e=i.precision,r=i.rounding,i.precision=e+7,i.rounding=1,fe(n.sinh(),n.cosh(),i.precision=e,i.rounding=r)):new i(n.s)};x.inverseCosine=x.acos=function(){var e=this,r=e.constructor,n=e.abs().cmp(1),i=r.precision,t=r.rounding;return n!==-1?n===0?e.isNeg()?Ur(r,i,t):new r(0):new r(NaN):e.isZero()?Ur(r,i+4,t).times(.5):(r.precision=i+6,r.rounding=1,e=new r(1).minus(e).div(e.plus(1)).sqrt().atan(),r.precision=i,r.rounding=t,e.times(2))};x.inverseHyperbolicCosine=x.acosh=function(){var e,r,n=this,i=n.constructor;return n.lte(1)?new i(n.eq(1)?0:NaN):n.isFinite()?(e=i.precision,r=i.rounding,i.precision=e+Math.max(Math.abs(n.e),n.sd())+4,i.rounding=1,V=!1,n=n.times(n).minus(1).sqrt().plus(n),V=!0,i.precision=e,i.rounding=r,n.ln()):new i(n)};x.inverseHyperbolicSine=x.asinh=function(){var e,r,n=this,i=n.constructor;return!n.isFinite()||n.isZero()?new i(n):(e=i.precision,r=i.rounding,i.precision=e+2*Math.max(Math.abs(n.e),n.sd())+6,i.rounding=1,V=!1,n=n.times(n).plus(1).sqrt().plus(n),V=!0,i.precision=e,i.rounding=r,n.ln())};x.inverseHyperbolicTangent=x.atanh=function(){var e,r,n,i,t=this,o=t.constructor;return t.isFinite()?t.e>=0?new o(t.abs().eq(1)?t.s/0:t.isZero()?t:NaN):(e=o.precision,r=o.rounding,i=t.sd(),Math.max(i,e)<2*-t.e-1?C(new o(t),e,r,!0):(o.precision=n=i-t.e,t=fe(t.plus(1),new o(1).minus(t),n+e,1),o.precision=e+4,o.rounding=1,t=t.ln(),o.precision=e,o.rounding=r,t.times(.5))):new o(NaN)};x.inverseSine=x.asin=function(){var e,r,n,i,t=this,o=t.constructor;return t.isZero()?new o(t):(r=t.abs().cmp(1),n=o.precision,i=o.rounding,r!==-1?r===0?(e=Ur(o,n+4,i).times(.5),e.s=t.s,e):new o(NaN):(o.precision=n+6,o.rounding=1,t=t.div(new o(1).minus(t.times(t)).sqrt().plus(1)).atan(),o.precision=n,o.rounding=i,t.times(2)))};x.inverseTangent=x.atan=function(){var e,r,n,i,t,o,a,s,u,c=this,l=c.constructor,d=l.precision,f=l.rounding;if(c.isFinite()){if(c.isZero())return new l(c);if(c.abs().eq(1)&&d+4<=Nv)return a=Ur(l,d+4,f).times(.25),a.s=c.s,a}else{if(!c.s)return new l(NaN);if(d+4<=Nv)return a=Ur(l,d+4,f).times(.5),a.s=c.s,a}for(l.precision=s=d+10,l.rounding=1,n=Math.min(28,s/F+2|0),e=n;e;--e)c=c.div(c.times(c).plus(1).sqrt().plus(1));for(V=!1,r=Math.ceil(s/F),i=1,u=c.times(c),a=new l(c),t=c;e!==-1;)if(t=t.times(u),o=a.minus(t.div(i+=2)),t=t.times(u),a=o.plus(t.div(i+=2)),a.d[r]!==void 0)for(e=r;a.d[e]===o.d[e]&&e--;);return n&&(a=a.times(2<<n-1)),V=!0,C(a,l.precision=d,l.rounding=f,!0)};x.isFinite=function(){return!!this.d};x.isInteger=x.isInt=function(){return!!this.d&&Ge(this.e/F)>this.d.length-2};x.isNaN=function(){return!this.s};x.isNegative=x.isNeg=function(){return this.s<0};x.isPositive=x.isPos=function(){return this.s>0};x.isZero=function(){return!!this.d&&this.d[0]===0};x.lessThan=x.lt=function(e){return this.cmp(e)<0};x.lessThanOrEqualTo=x.lte=function(e){return this.cmp(e)<1};x.logarithm=x.log=function(e){var r,n,i,t,o,a,s,u,c=this,l=c.constructor,d=l.precision,f=l.rounding,m=5;if(e==null)e=new l(10),r=!0;else{if(e=new l(e),n=e.d,e.s<0||!n||!n[0]||e.eq(1))return new l(NaN);r=e.eq(10)}if(n=c.d,c.s<0||!n||!n[0]||c.eq(1))return new l(n&&!n[0]?-1/0:c.s!=1?NaN:n?0:1/0);if(r)if(n.length>1)o=!0;else{for(t=n[0];t%10===0;)t/=10;o=t!==1}if(V=!1,s=d+m,a=jt(c,s),i=r?dc(l,s+10):jt(e,s),u=fe(a,i,s,1),fa(u.d,t=d,f))do if(s+=10,a=jt(c,s),i=r?dc(l,s+10):jt(e,s),u=fe(a,i,s,1),!o){+Le(u.d).slice(t+1,t+15)+1==1e14&&(u=C(u,d+1,0));break}while(fa(u.d,t+=10,f));return V=!0,C(u,d,f)};x.minus=x.sub=function(e){var r,n,i,t,o,a,s,u,c,l,d,f,m=this,g=m.constructor;if(e=new g(e),!m.d||!e.d)return!m.s||!e.s?e=new g(NaN):m.d?e.s=-e.s:e=new g(e.d||m.s!==e.s?m:NaN),e;if(m.s!=e.s)return e.s=-e.s,m.plus(e);if(c=m.d,f=e.d,s=g.precision,u=g.rounding,!c[0]||!f[0]){if(f[0])e.s=-e.s;else if(c[0])e=new g(m);else return new g(u===3?-0:0);return V?C(e,s,u):e}if(n=Ge(e.e/F),l=Ge(m.e/F),c=c.slice(),o=l-n,o){for(d=o<0,d?(r=c,o=-o,a=f.length):(r=f,n=l,a=c.length),i=Math.max(Math.ceil(s/F),a)+2,o>i&&(o=i,r.length=1),r.reverse(),i=o;i--;)r.push(0);r.reverse()}else{for(i=c.length,a=f.length,d=i<a,d&&(a=i),i=0;i<a;i++)if(c[i]!=f[i]){d=c[i]<f[i];break}o=0}for(d&&(r=c,c=f,f=r,e.s=-e.s),a=c.length,i=f.length-a;i>0;--i)c[a++]=0;for(i=f.length;i>o;){if(c[--i]<f[i]){for(t=i;t&&c[--t]===0;)c[t]=Or-1;--c[t],c[i]+=Or}c[i]-=f[i]}for(;c[--a]===0;)c.pop();for(;c[0]===0;c.shift())--n;return c[0]?(e.d=c,e.e=mc(c,n),V?C(e,s,u):e):new g(u===3?-0:0)};x.modulo=x.mod=function(e){var r,n=this,i=n.constructor;return e=new i(e),!n.d||!e.s||e.d&&!e.d[0]?new i(NaN):!e.d||n.d&&!n.d[0]?C(new i(n),i.precision,i.rounding):(V=!1,i.modulo==9?(r=fe(n,e.abs(),0,3,1),r.s*=e.s):r=fe(n,e,0,i.modulo,1),r=r.times(e),V=!0,n.minus(r))};x.naturalExponential=x.exp=function(){return Pv(this)};x.naturalLogarithm=x.ln=function(){return jt(this)};x.negated=x.neg=function(){var e=new this.constructor(this);return e.s=-e.s,C(e)};x.plus=x.add=function(e){var r,n,i,t,o,a,s,u,c,l,d=this,f=d.constructor;if(e=new f(e),!d.d||!e.d)return!d.s||!e.s?e=new f(NaN):d.d||(e=new f(e.d||d.s===e.s?d:NaN)),e;if(d.s!=e.s)return e.s=-e.s,d.minus(e);if(c=d.d,l=e.d,s=f.precision,u=f.rounding,!c[0]||!l[0])return l[0]||(e=new f(d)),V?C(e,s,u):e;if(o=Ge(d.e/F),i=Ge(e.e/F),c=c.slice(),t=o-i,t){for(t<0?(n=c,t=-t,a=l.length):(n=l,i=o,a=c.length),o=Math.ceil(s/F),a=o>a?o+1:a+1,t>a&&(t=a,n.length=1),n.reverse();t--;)n.push(0);n.reverse()}for(a=c.length,t=l.length,a-t<0&&(t=a,n=l,l=c,c=n),r=0;t;)r=(c[--t]=c[t]+l[t]+r)/Or|0,c[t]%=Or;for(r&&(c.unshift(r),++i),a=c.length;c[--a]==0;)c.pop();return e.d=c,e.e=mc(c,i),V?C(e,s,u):e};x.precision=x.sd=function(e){var r,n=this;if(e!==void 0&&e!==!!e&&e!==1&&e!==0)throw Error(Ct+e);return n.d?(r=K2(n.d),e&&n.e+1>r&&(r=n.e+1)):r=NaN,r};x.round=function(){var e=this,r=e.constructor;return C(new r(e),e.e+1,r.rounding)};x.sine=x.sin=function(){var e,r,n=this,i=n.constructor;return n.isFinite()?n.isZero()?new i(n):(e=i.precision,r=i.rounding,i.precision=e+Math.max(n.e,n.sd())+F,i.rounding=1,n=SM(i,Y2(i,n)),i.precision=e,i.rounding=r,C(ct>2?n.neg():n,e,r,!0)):new i(NaN)};x.squareRoot=x.sqrt=function(){var e,r,n,i,t,o,a=this,s=a.d,u=a.e,c=a.s,l=a.constructor;if(c!==1||!s||!s[0])return new l(!c||c<0&&(!s||s[0])?NaN:s?a:1/0);for(V=!1,c=Math.sqrt(+a),c==0||c==1/0?(r=Le(s),(r.length+u)%2==0&&(r+="0"),c=Math.sqrt(r),u=Ge((u+1)/2)-(u<0||u%2),c==1/0?r="5e"+u:(r=c.toExponential(),r=r.slice(0,r.indexOf("e")+1)+u),i=new l(r)):i=new l(c.toString()),n=(u=l.precision)+3;;)if(o=i,i=o.plus(fe(a,o,n+2,1)).times(.5),Le(o.d).slice(0,n)===(r=Le(i.d)).slice(0,n))if(r=r.slice(n-3,n+1),r=="9999"||!t&&r=="4999"){if(!t&&(C(o,u+1,0),o.times(o).eq(a))){i=o;break}n+=4,t=1}else{(!+r||!+r.slice(1)&&r.charAt(0)=="5")&&(C(i,u+1,1),e=!i.times(i).eq(a));break}return V=!0,C(i,u,l.rounding,e)};x.tangent=x.tan=function(){var e,r,n=this,i=n.constructor;return n.isFinite()?n.isZero()?new i(n):(e=i.precision,r=i.rounding,i.precision=e+10,i.rounding=1,n=n.sin(),n.s=1,n=fe(n,new i(1).minus(n.times(n)).sqrt(),e+10,0),i.precision=e,i.rounding=r,C(ct==2||ct==4?n.neg():n,e,r,!0)):new i(NaN)};x.times=x.mul=function(e){var r,n,i,t,o,a,s,u,c,l=this,d=l.constructor,f=l.d,m=(e=new d(e)).d;if(e.s*=l.s,!f||!f[0]||!m||!m[0])return new d(!e.s||f&&!f[0]&&!m||m&&!m[0]&&!f?NaN:!f||!m?e.s/0:e.s*0);for(n=Ge(l.e/F)+Ge(e.e/F),u=f.length,c=m.length,u<c&&(o=f,f=m,m=o,a=u,u=c,c=a),o=[],a=u+c,i=a;i--;)o.push(0);for(i=c;--i>=0;){for(r=0,t=u+i;t>i;)s=o[t]+m[i]*f[t-i-1]+r,o[t--]=s%Or|0,r=s/Or|0;o[t]=(o[t]+r)%Or|0}for(;!o[--a];)o.pop();return r?++n:o.shift(),e.d=o,e.e=mc(o,n),V?C(e,d.precision,d.rounding):e};x.toBinary=function(e,r){return xv(this,2,e,r)};x.toDecimalPlaces=x.toDP=function(e,r){var n=this,i=n.constructor;return n=new i(n),e===void 0?n:(cr(e,0,Rt),r===void 0?r=i.rounding:cr(r,0,8),C(n,e+n.e+1,r))};x.toExponential=function(e,r){var n,i=this,t=i.constructor;return e===void 0?n=Fr(i,!0):(cr(e,0,Rt),r===void 0?r=t.rounding:cr(r,0,8),i=C(new t(i),e+1,r),n=Fr(i,!0,e+1)),i.isNeg()&&!i.isZero()?"-"+n:n};x.toFixed=function(e,r){var n,i,t=this,o=t.constructor;return e===void 0?n=Fr(t):(cr(e,0,Rt),r===void 0?r=o.rounding:cr(r,0,8),i=C(new o(t),e+t.e+1,r),n=Fr(i,!1,e+i.e+1)),t.isNeg()&&!t.isZero()?"-"+n:n};x.toFraction=function(e){var r,n,i,t,o,a,s,u,c,l,d,f,m=this,g=m.d,h=m.constructor;if(!g)return new h(m);if(c=n=new h(1),i=u=new h(0),r=new h(i),o=r.e=K2(g)-m.e-1,a=o%F,r.d[0]=qe(10,a<0?F+a:a),e==null)e=o>0?r:c;else{if(s=new h(e),!s.isInt()||s.lt(c))throw Error(Ct+s);e=s.gt(r)?o>0?r:c:s}for(V=!1,s=new h(Le(g)),l=h.precision,h.precision=o=g.length*F*2;d=fe(s,r,0,1,1),t=n.plus(d.times(i)),t.cmp(e)!=1;)n=i,i=t,t=c,c=u.plus(d.times(t)),u=t,t=r,r=s.minus(d.times(t)),s=t;return t=fe(e.minus(n),i,0,1,1),u=u.plus(t.times(c)),n=n.plus(t.times(i)),u.s=c.s=m.s,f=fe(c,i,o,1).minus(m).abs().cmp(fe(u,n,o,1).minus(m).abs())<1?[c,i]:[u,n],h.precision=l,V=!0,f};x.toHexadecimal=x.toHex=function(e,r){return xv(this,16,e,r)};x.toNearest=function(e,r){var n=this,i=n.constructor;if(n=new i(n),e==null){if(!n.d)return n;e=new i(1),r=i.rounding}else{if(e=new i(e),r===void 0?r=i.rounding:cr(r,0,8),!n.d)return e.s?n:e;if(!e.d)return e.s&&(e.s=n.s),e}return e.d[0]?(V=!1,n=fe(n,e,0,r,1).times(e),V=!0,C(n)):(e.s=n.s,n=e),n};x.toNumber=function(){return+this};x.toOctal=function(e,r){return xv(this,8,e,r)};x.toPower=x.pow=function(e){var r,n,i,t,o,a,s=this,u=s.constructor,c=+(e=new u(e));if(!s.d||!e.d||!s.d[0]||!e.d[0])return new u(qe(+s,c));if(s=new u(s),s.eq(1))return s;if(i=u.precision,o=u.rounding,e.eq(1))return C(s,i,o);if(r=Ge(e.e/F),r>=e.d.length-1&&(n=c<0?-c:c)<=bM)return t=J2(u,s,n,i),e.s<0?new u(1).div(t):C(t,i,o);if(a=s.s,a<0){if(r<e.d.length-1)return new u(NaN);if((e.d[r]&1)==0&&(a=1),s.e==0&&s.d[0]==1&&s.d.length==1)return s.s=a,s}return n=qe(+s,c),r=n==0||!isFinite(n)?Ge(c*(Math.log("0."+Le(s.d))/Math.LN10+s.e+1)):new u(n+"").e,r>u.maxE+1||r<u.minE-1?new u(r>0?a/0:0):(V=!1,u.rounding=s.s=1,n=Math.min(12,(r+"").length),t=Pv(e.times(jt(s,i+n)),i),t.d&&(t=C(t,i+5,1),fa(t.d,i,o)&&(r=i+10,t=C(Pv(e.times(jt(s,r+n)),r),r+5,1),+Le(t.d).slice(i+1,i+15)+1==1e14&&(t=C(t,i+1,0)))),t.s=a,V=!0,u.rounding=o,C(t,i,o))};x.toPrecision=function(e,r){var n,i=this,t=i.constructor;return e===void 0?n=Fr(i,i.e<=t.toExpNeg||i.e>=t.toExpPos):(cr(e,1,Rt),r===void 0?r=t.rounding:cr(r,0,8),i=C(new t(i),e,r),n=Fr(i,e<=i.e||i.e<=t.toExpNeg,e)),i.isNeg()&&!i.isZero()?"-"+n:n};x.toSignificantDigits=x.toSD=function(e,r){var n=this,i=n.constructor;return e===void 0?(e=i.precision,r=i.rounding):(cr(e,1,Rt),r===void 0?r=i.rounding:cr(r,0,8)),C(new i(n),e,r)};x.toString=function(){var e=this,r=e.constructor,n=Fr(e,e.e<=r.toExpNeg||e.e>=r.toExpPos);return e.isNeg()&&!e.isZero()?"-"+n:n};x.truncated=x.trunc=function(){return C(new this.constructor(this),this.e+1,1)};x.valueOf=x.toJSON=function(){var e=this,r=e.constructor,n=Fr(e,e.e<=r.toExpNeg||e.e>=r.toExpPos);return e.isNeg()?"-"+n:n};function Le(e){var r,n,i,t=e.length-1,o="",a=e[0];if(t>0){for(o+=a,r=1;r<t;r++)i=e[r]+"",n=F-i.length,n&&(o+=Tt(n)),o+=i;a=e[r],i=a+"",n=F-i.length,n&&(o+=Tt(n))}else if(a===0)return"0";for(;a%10===0;)a/=10;return o+a}function cr(e,r,n){if(e!==~~e||e<r||e>n)throw Error(Ct+e)}function fa(e,r,n,i){var t,o,a,s;for(o=e[0];o>=10;o/=10)--r;return--r<0?(r+=F,t=0):(t=Math.ceil((r+1)/F),r%=F),o=qe(10,F-r),s=e[t]%o|0,i==null?r<3?(r==0?s=s/100|0:r==1&&(s=s/10|0),a=n<4&&s==99999||n>3&&s==49999||s==5e4||s==0):a=(n<4&&s+1==o||n>3&&s+1==o/2)&&(e[t+1]/o/100|0)==qe(10,r-2)-1||(s==o/2||s==0)&&(e[t+1]/o/100|0)==0:r<4?(r==0?s=s/1e3|0:r==1?s=s/100|0:r==2&&(s=s/10|0),a=(i||n<4)&&s==9999||!i&&n>3&&s==4999):a=((i||n<4)&&s+1==o||!i&&n>3&&s+1==o/2)&&(e[t+1]/o/1e3|0)==qe(10,r-3)-1,a}function sc(e,r,n){for(var i,t=[0],o,a=0,s=e.length;a<s;){for(o=t.length;o--;)t[o]*=r;for(t[0]+=kv.indexOf(e.charAt(a++)),i=0;i<t.length;i++)t[i]>n-1&&(t[i+1]===void 0&&(t[i+1]=0),t[i+1]+=t[i]/n|0,t[i]%=n)}return t.reverse()}function _M(e,r){var n,i,t;if(r.isZero())return r;i=r.d.length,i<32?(n=Math.ceil(i/3),t=(1/pc(4,n)).toString()):(n=16,t="2.3283064365386962890625e-10"),e.precision+=n,r=Ti(e,1,r.times(t),new e(1));for(var o=n;o--;){var a=r.times(r);r=a.times(a).minus(a).times(8).plus(1)}return e.precision-=n,r}var fe=(function(){function e(i,t,o){var a,s=0,u=i.length;for(i=i.slice();u--;)a=i[u]*t+s,i[u]=a%o|0,s=a/o|0;return s&&i.unshift(s),i}function r(i,t,o,a){var s,u;if(o!=a)u=o>a?1:-1;else for(s=u=0;s<o;s++)if(i[s]!=t[s]){u=i[s]>t[s]?1:-1;break}return u}function n(i,t,o,a){for(var s=0;o--;)i[o]-=s,s=i[o]<t[o]?1:0,i[o]=s*a+i[o]-t[o];for(;!i[0]&&i.length>1;)i.shift()}return function(i,t,o,a,s,u){var c,l,d,f,m,g,h,b,y,S,$,N,P,A,E,U,K,de,ae,me,Ie=i.constructor,Te=i.s==t.s?1:-1,D=i.d,j=t.d;if(!D||!D[0]||!j||!j[0])return new Ie(!i.s||!t.s||(D?j&&D[0]==j[0]:!j)?NaN:D&&D[0]==0||!j?Te*0:Te/0);for(u?(m=1,l=i.e-t.e):(u=Or,m=F,l=Ge(i.e/m)-Ge(t.e/m)),ae=j.length,K=D.length,y=new Ie(Te),S=y.d=[],d=0;j[d]==(D[d]||0);d++);if(j[d]>(D[d]||0)&&l--,o==null?(A=o=Ie.precision,a=Ie.rounding):s?A=o+(i.e-t.e)+1:A=o,A<0)S.push(1),g=!0;else{if(A=A/m+2|0,d=0,ae==1){for(f=0,j=j[0],A++;(d<K||f)&&A--;d++)E=f*u+(D[d]||0),S[d]=E/j|0,f=E%j|0;g=f||d<K}else{for(f=u/(j[0]+1)|0,f>1&&(j=e(j,f,u),D=e(D,f,u),ae=j.length,K=D.length),U=ae,$=D.slice(0,ae),N=$.length;N<ae;)$[N++]=0;me=j.slice(),me.unshift(0),de=j[0],j[1]>=u/2&&++de;do f=0,c=r(j,$,ae,N),c<0?(P=$[0],ae!=N&&(P=P*u+($[1]||0)),f=P/de|0,f>1?(f>=u&&(f=u-1),h=e(j,f,u),b=h.length,N=$.length,c=r(h,$,b,N),c==1&&(f--,n(h,ae<b?me:j,b,u))):(f==0&&(c=f=1),h=j.slice()),b=h.length,b<N&&h.unshift(0),n($,h,N,u),c==-1&&(N=$.length,c=r(j,$,ae,N),c<1&&(f++,n($,ae<N?me:j,N,u))),N=$.length):c===0&&(f++,$=[0]),S[d++]=f,c&&$[0]?$[N++]=D[U]||0:($=[D[U]],N=1);while((U++<K||$[0]!==void 0)&&A--);g=$[0]!==void 0}S[0]||S.shift()}if(m==1)y.e=l,V2=g;else{for(d=1,f=S[0];f>=10;f/=10)d++;y.e=d+l*m-1,C(y,s?o+y.e+1:o,a,g)}return y}})();function C(e,r,n,i){var t,o,a,s,u,c,l,d,f,m=e.constructor;e:if(r!=null){if(d=e.d,!d)return e;for(t=1,s=d[0];s>=10;s/=10)t++;if(o=r-t,o<0)o+=F,a=r,l=d[f=0],u=l/qe(10,t-a-1)%10|0;else if(f=Math.ceil((o+1)/F),s=d.length,f>=s)if(i){for(;s++<=f;)d.push(0);l=u=0,t=1,o%=F,a=o-F+1}else break e;else{for(l=s=d[f],t=1;s>=10;s/=10)t++;o%=F,a=o-F+t,u=a<0?0:l/qe(10,t-a-1)%10|0}if(i=i||r<0||d[f+1]!==void 0||(a<0?l:l%qe(10,t-a-1)),c=n<4?(u||i)&&(n==0||n==(e.s<0?3:2)):u>5||u==5&&(n==4||i||n==6&&(o>0?a>0?l/qe(10,t-a):0:d[f-1])%10&1||n==(e.s<0?8:7)),r<1||!d[0])return d.length=0,c?(r-=e.e+1,d[0]=qe(10,(F-r%F)%F),e.e=-r||0):d[0]=e.e=0,e;if(o==0?(d.length=f,s=1,f--):(d.length=f+1,s=qe(10,F-o),d[f]=a>0?(l/qe(10,t-a)%qe(10,a)|0)*s:0),c)for(;;)if(f==0){for(o=1,a=d[0];a>=10;a/=10)o++;for(a=d[0]+=s,s=1;a>=10;a/=10)s++;o!=s&&(e.e++,d[0]==Or&&(d[0]=1));break}else{if(d[f]+=s,d[f]!=Or)break;d[f--]=0,s=1}for(o=d.length;d[--o]===0;)d.pop()}return V&&(e.e>m.maxE?(e.d=null,e.e=NaN):e.e<m.minE&&(e.e=0,e.d=[0])),e}function Fr(e,r,n){if(!e.isFinite())return Q2(e);var i,t=e.e,o=Le(e.d),a=o.length;return r?(n&&(i=n-a)>0?o=o.charAt(0)+"."+o.slice(1)+Tt(i):a>1&&(o=o.charAt(0)+"."+o.slice(1)),o=o+(e.e<0?"e":"e+")+e.e):t<0?(o="0."+Tt(-t-1)+o,n&&(i=n-a)>0&&(o+=Tt(i))):t>=a?(o+=Tt(t+1-a),n&&(i=n-t-1)>0&&(o=o+"."+Tt(i))):((i=t+1)<a&&(o=o.slice(0,i)+"."+o.slice(i)),n&&(i=n-a)>0&&(t+1===a&&(o+="."),o+=Tt(i))),o}function mc(e,r){var n=e[0];for(r*=F;n>=10;n/=10)r++;return r}function dc(e,r,n){if(r>$M)throw V=!0,n&&(e.precision=n),Error(B2);return C(new e(cc),r,1,!0)}function Ur(e,r,n){if(r>Nv)throw Error(B2);return C(new e(lc),r,n,!0)}function K2(e){var r=e.length-1,n=r*F+1;if(r=e[r],r){for(;r%10==0;r/=10)n--;for(r=e[0];r>=10;r/=10)n++}return n}function Tt(e){for(var r="";e--;)r+="0";return r}function J2(e,r,n,i){var t,o=new e(1),a=Math.ceil(i/F+4);for(V=!1;;){if(n%2&&(o=o.times(r),L2(o.d,a)&&(t=!0)),n=Ge(n/2),n===0){n=o.d.length-1,t&&o.d[n]===0&&++o.d[n];break}r=r.times(r),L2(r.d,a)}return V=!0,o}function M2(e){return e.d[e.d.length-1]&1}function X2(e,r,n){for(var i,t,o=new e(r[0]),a=0;++a<r.length;){if(t=new e(r[a]),!t.s){o=t;break}i=o.cmp(t),(i===n||i===0&&o.s===n)&&(o=t)}return o}function Pv(e,r){var n,i,t,o,a,s,u,c=0,l=0,d=0,f=e.constructor,m=f.rounding,g=f.precision;if(!e.d||!e.d[0]||e.e>17)return new f(e.d?e.d[0]?e.s<0?0:1/0:1:e.s?e.s<0?0:e:NaN);for(r==null?(V=!1,u=g):u=r,s=new f(.03125);e.e>-2;)e=e.times(s),d+=5;for(i=Math.log(qe(2,d))/Math.LN10*2+5|0,u+=i,n=o=a=new f(1),f.precision=u;;){if(o=C(o.times(e),u,1),n=n.times(++l),s=a.plus(fe(o,n,u,1)),Le(s.d).slice(0,u)===Le(a.d).slice(0,u)){for(t=d;t--;)a=C(a.times(a),u,1);if(r==null)if(c<3&&fa(a.d,u-i,m,c))f.precision=u+=10,n=o=s=new f(1),l=0,c++;else return C(a,f.precision=g,m,V=!0);else return f.precision=g,a}a=s}}function jt(e,r){var n,i,t,o,a,s,u,c,l,d,f,m=1,g=10,h=e,b=h.d,y=h.constructor,S=y.rounding,$=y.precision;if(h.s<0||!b||!b[0]||!h.e&&b[0]==1&&b.length==1)return new y(b&&!b[0]?-1/0:h.s!=1?NaN:b?0:h);if(r==null?(V=!1,l=$):l=r,y.precision=l+=g,n=Le(b),i=n.charAt(0),Math.abs(o=h.e)<15e14){for(;i<7&&i!=1||i==1&&n.charAt(1)>3;)h=h.times(e),n=Le(h.d),i=n.charAt(0),m++;o=h.e,i>1?(h=new y("0."+n),o++):h=new y(i+"."+n.slice(1))}else return c=dc(y,l+2,$).times(o+""),h=jt(new y(i+"."+n.slice(1)),l-g).plus(c),y.precision=$,r==null?C(h,$,S,V=!0):h;for(d=h,u=a=h=fe(h.minus(1),h.plus(1),l,1),f=C(h.times(h),l,1),t=3;;){if(a=C(a.times(f),l,1),c=u.plus(fe(a,new y(t),l,1)),Le(c.d).slice(0,l)===Le(u.d).slice(0,l))if(u=u.times(2),o!==0&&(u=u.plus(dc(y,l+2,$).times(o+""))),u=fe(u,new y(m),l,1),r==null)if(fa(u.d,l-g,S,s))y.precision=l+=g,c=a=h=fe(d.minus(1),d.plus(1),l,1),f=C(h.times(h),l,1),t=s=1;else return C(u,y.precision=$,S,V=!0);else return y.precision=$,u;u=c,t+=2}}function Q2(e){return String(e.s*e.s/0)}function uc(e,r){var n,i,t;for((n=r.indexOf("."))>-1&&(r=r.replace(".","")),(i=r.search(/e/i))>0?(n<0&&(n=i),n+=+r.slice(i+1),r=r.substring(0,i)):n<0&&(n=r.length),i=0;r.charCodeAt(i)===48;i++);for(t=r.length;r.charCodeAt(t-1)===48;--t);if(r=r.slice(i,t),r){if(t-=i,e.e=n=n-i-1,e.d=[],i=(n+1)%F,n<0&&(i+=F),i<t){for(i&&e.d.push(+r.slice(0,i)),t-=F;i<t;)e.d.push(+r.slice(i,i+=F));r=r.slice(i),i=F-r.length}else i-=t;for(;i--;)r+="0";e.d.push(+r),V&&(e.e>e.constructor.maxE?(e.d=null,e.e=NaN):e.e<e.constructor.minE&&(e.e=0,e.d=[0]))}else e.e=0,e.d=[0];return e}function wM(e,r){var n,i,t,o,a,s,u,c,l;if(r.indexOf("_")>-1){if(r=r.replace(/(\d)_(?=\d)/g,"$1"),H2.test(r))return uc(e,r)}else if(r==="Infinity"||r==="NaN")return+r||(e.s=NaN),e.e=NaN,e.d=null,e;if(hM.test(r))n=16,r=r.toLowerCase();else if(gM.test(r))n=2;else if(yM.test(r))n=8;else throw Error(Ct+r);for(o=r.search(/p/i),o>0?(u=+r.slice(o+1),r=r.substring(2,o)):r=r.slice(2),o=r.indexOf("."),a=o>=0,i=e.constructor,a&&(r=r.replace(".",""),s=r.length,o=s-o,t=J2(i,new i(n),o,o*2)),c=sc(r,n,Or),l=c.length-1,o=l;c[o]===0;--o)c.pop();return o<0?new i(e.s*0):(e.e=mc(c,l),e.d=c,V=!1,a&&(e=fe(e,t,s*4)),u&&(e=e.times(Math.abs(u)<54?qe(2,u):Pe.pow(2,u))),V=!0,e)}function SM(e,r){var n,i=r.d.length;if(i<3)return r.isZero()?r:Ti(e,2,r,r);n=1.4*Math.sqrt(i),n=n>16?16:n|0,r=r.times(1/pc(5,n)),r=Ti(e,2,r,r);for(var t,o=new e(5),a=new e(16),s=new e(20);n--;)t=r.times(r),r=r.times(o.plus(t.times(a.times(t).minus(s))));return r}function Ti(e,r,n,i,t){var o,a,s,u,c=1,l=e.precision,d=Math.ceil(l/F);for(V=!1,u=n.times(n),s=new e(i);;){if(a=fe(s.times(u),new e(r++*r++),l,1),s=t?i.plus(a):i.minus(a),i=fe(a.times(u),new e(r++*r++),l,1),a=s.plus(i),a.d[d]!==void 0){for(o=d;a.d[o]===s.d[o]&&o--;);if(o==-1)break}o=s,s=i,i=a,a=o,c++}return V=!0,a.d.length=d+1,a}function pc(e,r){for(var n=e;--r;)n*=e;return n}function Y2(e,r){var n,i=r.s<0,t=Ur(e,e.precision,1),o=t.times(.5);if(r=r.abs(),r.lte(o))return ct=i?4:1,r;if(n=r.divToInt(t),n.isZero())ct=i?3:2;else{if(r=r.minus(n.times(t)),r.lte(o))return ct=M2(n)?i?2:3:i?4:1,r;ct=M2(n)?i?1:4:i?3:2}return r.minus(t).abs()}function xv(e,r,n,i){var t,o,a,s,u,c,l,d,f,m=e.constructor,g=n!==void 0;if(g?(cr(n,1,Rt),i===void 0?i=m.rounding:cr(i,0,8)):(n=m.precision,i=m.rounding),!e.isFinite())l=Q2(e);else{for(l=Fr(e),a=l.indexOf("."),g?(t=2,r==16?n=n*4-3:r==8&&(n=n*3-2)):t=r,a>=0&&(l=l.replace(".",""),f=new m(1),f.e=l.length-a,f.d=sc(Fr(f),10,t),f.e=f.d.length),d=sc(l,10,t),o=u=d.length;d[--u]==0;)d.pop();if(!d[0])l=g?"0p+0":"0";else{if(a<0?o--:(e=new m(e),e.d=d,e.e=o,e=fe(e,f,n,i,0,t),d=e.d,o=e.e,c=V2),a=d[n],s=t/2,c=c||d[n+1]!==void 0,c=i<4?(a!==void 0||c)&&(i===0||i===(e.s<0?3:2)):a>s||a===s&&(i===4||c||i===6&&d[n-1]&1||i===(e.s<0?8:7)),d.length=n,c)for(;++d[--n]>t-1;)d[n]=0,n||(++o,d.unshift(1));for(u=d.length;!d[u-1];--u);for(a=0,l="";a<u;a++)l+=kv.charAt(d[a]);if(g){if(u>1)if(r==16||r==8){for(a=r==16?4:3,--u;u%a;u++)l+="0";for(d=sc(l,t,r),u=d.length;!d[u-1];--u);for(a=1,l="1.";a<u;a++)l+=kv.charAt(d[a])}else l=l.charAt(0)+"."+l.slice(1);l=l+(o<0?"p":"p+")+o}else if(o<0){for(;++o;)l="0"+l;l="0."+l}else if(++o>u)for(o-=u;o--;)l+="0";else o<u&&(l=l.slice(0,o)+"."+l.slice(o))}l=(r==16?"0x":r==2?"0b":r==8?"0o":"")+l}return e.s<0?"-"+l:l}function L2(e,r){if(e.length>r)return e.length=r,!0}function IM(e){return new this(e).abs()}function kM(e){return new this(e).acos()}function OM(e){return new this(e).acosh()}function NM(e,r){return new this(e).plus(r)}function PM(e){return new this(e).asin()}function xM(e){return new this(e).asinh()}function AM(e){return new this(e).atan()}function EM(e){return new this(e).atanh()}function DM(e,r){e=new this(e),r=new this(r);var n,i=this.precision,t=this.rounding,o=i+4;return!e.s||!r.s?n=new this(NaN):!e.d&&!r.d?(n=Ur(this,o,1).times(r.s>0?.25:.75),n.s=e.s):!r.d||e.isZero()?(n=r.s<0?Ur(this,i,t):new this(0),n.s=e.s):!e.d||r.isZero()?(n=Ur(this,o,1).times(.5),n.s=e.s):r.s<0?(this.precision=o,this.rounding=1,n=this.atan(fe(e,r,o,1)),r=Ur(this,o,1),this.precision=i,this.rounding=t,n=e.s<0?n.minus(r):n.plus(r)):n=this.atan(fe(e,r,o,1)),n}function zM(e){return new this(e).cbrt()}function qM(e){return C(e=new this(e),e.e+1,2)}function TM(e,r,n){return new this(e).clamp(r,n)}function jM(e){if(!e||typeof e!="object")throw Error(fc+"Object expected");var r,n,i,t=e.defaults===!0,o=["precision",1,Rt,"rounding",0,8,"toExpNeg",-qi,0,"toExpPos",0,qi,"maxE",0,qi,"minE",-qi,0,"modulo",0,9];for(r=0;r<o.length;r+=3)if(n=o[r],t&&(this[n]=Ov[n]),(i=e[n])!==void 0)if(Ge(i)===i&&i>=o[r+1]&&i<=o[r+2])this[n]=i;else throw Error(Ct+n+": "+i);if(n="crypto",t&&(this[n]=Ov[n]),(i=e[n])!==void 0)if(i===!0||i===!1||i===0||i===1)if(i)if(typeof crypto<"u"&&crypto&&(crypto.getRandomValues||crypto.randomBytes))this[n]=!0;else throw Error(W2);else this[n]=!1;else throw Error(Ct+n+": "+i);return this}function CM(e){return new this(e).cos()}function RM(e){return new this(e).cosh()}function e4(e){var r,n,i;function t(o){var a,s,u,c=this;if(!(c instanceof t))return new t(o);if(c.constructor=t,Z2(o)){c.s=o.s,V?!o.d||o.e>t.maxE?(c.e=NaN,c.d=null):o.e<t.minE?(c.e=0,c.d=[0]):(c.e=o.e,c.d=o.d.slice()):(c.e=o.e,c.d=o.d?o.d.slice():o.d);return}if(u=typeof o,u==="number"){if(o===0){c.s=1/o<0?-1:1,c.e=0,c.d=[0];return}if(o<0?(o=-o,c.s=-1):c.s=1,o===~~o&&o<1e7){for(a=0,s=o;s>=10;s/=10)a++;V?a>t.maxE?(c.e=NaN,c.d=null):a<t.minE?(c.e=0,c.d=[0]):(c.e=a,c.d=[o]):(c.e=a,c.d=[o]);return}if(o*0!==0){o||(c.s=NaN),c.e=NaN,c.d=null;return}return uc(c,o.toString())}if(u==="string")return(s=o.charCodeAt(0))===45?(o=o.slice(1),c.s=-1):(s===43&&(o=o.slice(1)),c.s=1),H2.test(o)?uc(c,o):wM(c,o);if(u==="bigint")return o<0?(o=-o,c.s=-1):c.s=1,uc(c,o.toString());throw Error(Ct+o)}if(t.prototype=x,t.ROUND_UP=0,t.ROUND_DOWN=1,t.ROUND_CEIL=2,t.ROUND_FLOOR=3,t.ROUND_HALF_UP=4,t.ROUND_HALF_DOWN=5,t.ROUND_HALF_EVEN=6,t.ROUND_HALF_CEIL=7,t.ROUND_HALF_FLOOR=8,t.EUCLID=9,t.config=t.set=jM,t.clone=e4,t.isDecimal=Z2,t.abs=IM,t.acos=kM,t.acosh=OM,t.add=NM,t.asin=PM,t.asinh=xM,t.atan=AM,t.atanh=EM,t.atan2=DM,t.cbrt=zM,t.ceil=qM,t.clamp=TM,t.cos=CM,t.cosh=RM,t.div=UM,t.exp=FM,t.floor=MM,t.hypot=LM,t.ln=ZM,t.log=VM,t.log10=WM,t.log2=BM,t.max=GM,t.min=HM,t.mod=KM,t.mul=JM,t.pow=XM,t.random=QM,t.round=YM,t.sign=eL,t.sin=rL,t.sinh=tL,t.sqrt=nL,t.sub=iL,t.sum=oL,t.tan=aL,t.tanh=sL,t.trunc=uL,e===void 0&&(e={}),e&&e.defaults!==!0)for(i=["precision","rounding","toExpNeg","toExpPos","maxE","minE","modulo","crypto"],r=0;r<i.length;)e.hasOwnProperty(n=i[r++])||(e[n]=this[n]);return t.config(e),t}function UM(e,r){return new this(e).div(r)}function FM(e){return new this(e).exp()}function MM(e){return C(e=new this(e),e.e+1,3)}function LM(){var e,r,n=new this(0);for(V=!1,e=0;e<arguments.length;)if(r=new this(arguments[e++]),r.d)n.d&&(n=n.plus(r.times(r)));else{if(r.s)return V=!0,new this(1/0);n=r}return V=!0,n.sqrt()}function Z2(e){return e instanceof Pe||e&&e.toStringTag===G2||!1}function ZM(e){return new this(e).ln()}function VM(e,r){return new this(e).log(r)}function BM(e){return new this(e).log(2)}function WM(e){return new this(e).log(10)}function GM(){return X2(this,arguments,-1)}function HM(){return X2(this,arguments,1)}function KM(e,r){return new this(e).mod(r)}function JM(e,r){return new this(e).mul(r)}function XM(e,r){return new this(e).pow(r)}function QM(e){var r,n,i,t,o=0,a=new this(1),s=[];if(e===void 0?e=this.precision:cr(e,1,Rt),i=Math.ceil(e/F),this.crypto)if(crypto.getRandomValues)for(r=crypto.getRandomValues(new Uint32Array(i));o<i;)t=r[o],t>=429e7?r[o]=crypto.getRandomValues(new Uint32Array(1))[0]:s[o++]=t%1e7;else if(crypto.randomBytes){for(r=crypto.randomBytes(i*=4);o<i;)t=r[o]+(r[o+1]<<8)+(r[o+2]<<16)+((r[o+3]&127)<<24),t>=214e7?crypto.randomBytes(4).copy(r,o):(s.push(t%1e7),o+=4);o=i/4}else throw Error(W2);else for(;o<i;)s[o++]=Math.random()*1e7|0;for(i=s[--o],e%=F,i&&e&&(t=qe(10,F-e),s[o]=(i/t|0)*t);s[o]===0;o--)s.pop();if(o<0)n=0,s=[0];else{for(n=-1;s[0]===0;n-=F)s.shift();for(i=1,t=s[0];t>=10;t/=10)i++;i<F&&(n-=F-i)}return a.e=n,a.d=s,a}function YM(e){return C(e=new this(e),e.e+1,this.rounding)}function eL(e){return e=new this(e),e.d?e.d[0]?e.s:0*e.s:e.s||NaN}function rL(e){return new this(e).sin()}function tL(e){return new this(e).sinh()}function nL(e){return new this(e).sqrt()}function iL(e,r){return new this(e).sub(r)}function oL(){var e=0,r=arguments,n=new this(r[e]);for(V=!1;n.s&&++e<r.length;)n=n.plus(r[e]);return V=!0,C(n,this.precision,this.rounding)}function aL(e){return new this(e).tan()}function sL(e){return new this(e).tanh()}function uL(e){return C(e=new this(e),e.e+1,1)}x[Symbol.for("nodejs.util.inspect.custom")]=x.toString;x[Symbol.toStringTag]="Decimal";var Pe=x.constructor=e4(Ov);cc=new Pe(cc);lc=new Pe(lc);var cL=12,vc=e=>new Pe(e).toSignificantDigits(cL).toFixed();function r4(e){return new Av(e)}var Av=class{s0;s1;s2;s3;constructor([r,n,i,t]){[this.s0,this.s1,this.s2,this.s3]=[r|0,n|0,i|0,t|0]}nextUint32(){let r=Math.imul(this.s1,5),n=this.s1<<9;return this.s2^=this.s0,this.s3^=this.s1,this.s1^=this.s2,this.s0^=this.s3,this.s2^=n,this.s3=this.s3<<11|this.s3>>>21,Math.imul(r<<7|r>>>25,9)>>>0}nextUniform(){let r=this.nextUint32()>>>5,n=this.nextUint32()>>>6;return(r*67108864+n+.5)/9007199254740992}};var q=class extends Error{code;constructor(r,n){super(n),this.name="MeasurementError",this.code=r}};function t4(e){let r=/^[0-9a-f]{64}$/i.test(e)?(e.match(/.{8}/g)??[]).map(i=>Number.parseInt(i,16)):[],n=[0,1,2,3].map(i=>((r[i]??0)^(r[i+4]??0))>>>0);if(n.every(i=>i===0))throw new q("random/not-a-digest",`seedFromDigest: found "${e}", expected 64 hexadecimal digits whose halves differ. Give the SHA-256 digest of the inputs.`);return n}var n4=4656612873077393e-25;function Ev(e,r){let n,i;do{n=(e.nextUint32()+.5)*n4-1;let o=(e.nextUint32()+.5)*n4-1;i=n*n+o*o}while(i>1);let t=r===1/0?-2*Math.log(i):r*Math.expm1(-2*Math.log(i)/r);return n*Math.sqrt(t/i)}function ji(e,r){if(e.length<2)throw new q("measurement/too-few-readings",`${r}: found ${e.length} means, expected at least 2. Use the one mean itself.`);e.forEach(({mean:n,standardUncertainty:i},t)=>{if(!Number.isFinite(n)||!Number.isFinite(i))throw new q("measurement/not-a-number",`${r}: mean ${t+1} is ${n} with standard uncertainty ${i}, expected finite numbers. Correct that submission.`);if(!(i>0))throw new q("consensus/no-uncertainty",`${r}: standard uncertainty ${t+1} is ${i}, expected above 0. Test more specimens.`)})}function ye(e){let r=0,n=0;for(let i of e){let t=r+i;n+=Math.abs(r)>=Math.abs(i)?r-t+i:i-t+r,r=t}return r+n}function Ut(e,r){let n=e.map(({standardUncertainty:a})=>1/(a**2+r)),i=ye(n),t=ye(e.map((a,s)=>n[s]*a.mean))/i,o=ye(e.map((a,s)=>n[s]*(a.mean-t)**2));return{mean:t,weights:n,totalWeight:i,spread:o}}var lL=200;function i4(e){ji(e,"mandelPaule");let r=Math.max(...e.map(({mean:s})=>s))-Math.min(...e.map(({mean:s})=>s)),n=Ut(e,0).spread<=e.length-1,[i,t]=[0,n?0:r*r*e.length];for(let s=0;s<lL&&t-i>0;s++){let u=(i+t)/2;Ut(e,u).spread>e.length-1?i=u:t=u}let{mean:o,totalWeight:a}=Ut(e,t);return{mean:o,betweenVariance:t,standardError:1/Math.sqrt(a)}}var $ie=$t(Dk(),1),TN=$t(qN(),1);function xe(e,r){if(!(e>0&&e<1))throw new q("distributions/out-of-domain",`${r}: p is ${e}, expected 0 < p < 1. Give a probability, not a percentage.`)}function Jt(e,r){if(!(e>0))throw new q("distributions/out-of-domain",`${r}: degrees of freedom are ${e}, expected a number above 0 or Infinity. Check the number of readings.`)}function Gc(e,r){if(Jt(e,r),e===1/0)throw new q("distributions/out-of-domain",`${r}: degrees of freedom are infinite, expected a finite number. Give the number of readings less one.`)}function Xi(e,r){if(Number.isNaN(e))throw new q("distributions/out-of-domain",`${r}: x is NaN, expected a number. Check the step before this one.`)}function Br(e,r){return xe(e,"chiSquareQuantile"),Gc(r,"chiSquareQuantile"),(0,TN.default)(e,r)}function be(e,r,n){if(e.length<r)throw new q("measurement/too-few-readings",`${n}: found ${e.length} readings, expected at least ${r}. Add readings or leave this figure out.`);let i=e.findIndex(t=>!Number.isFinite(t));if(i>=0)throw new q("measurement/not-a-number",`${n}: reading ${i+1} is ${String(e[i])}, expected a finite number. Correct or invalidate that reading.`)}function J(e){be(e,1,"mean");let r=ye(e)/e.length,n=r+ye(e.map(i=>i-r))/e.length;if(!Number.isFinite(n))throw new q("measurement/not-a-number","mean: the sum leaves the number range. Check the unit of the readings.");return n}var _ie=.99;function RN(e,r){let i=[...new Set(e.flatMap(t=>t.parties))].sort().map(t=>{let o=e.filter(a=>!a.parties.includes(t));return[t,o.length===0?null:jN(o,r).value]});return{...jN(e,r),without:Object.fromEntries(i)}}function jN(e,r){let[n]=e;if(!n)throw new q("measurement/too-few-readings","evidenceOfSubmissions: found no submissions, expected at least 1. Leave the entry out of the category.");if(e.length===1){let{value:b,standardUncertainty:y,degreesOfFreedom:S,shared:$}=n;return{value:b,standardUncertainty:y,degreesOfFreedom:S,shared:$}}let i=e.map(({value:b,standardUncertainty:y})=>({mean:b,standardUncertainty:y}));ji(i,"evidenceOfSubmissions");let t=J(e.map(b=>b.value)),o=e.map(({standardUncertainty:b,shared:y})=>1/(b**2+CN(t,y,r))),a=o.reduce((b,y)=>b+y,0),s=o.map(b=>b/a),u=e.reduce((b,y,S)=>b+s[S]*y.value,0),c=e.reduce((b,y,S)=>b+o[S]*(y.value-u)**2,0),l=wie(e,s),d=e.map(({standardUncertainty:b},y)=>(s[y]*b)**2),f=d.reduce((b,y)=>b+y,0),g=c<=Br(_ie,e.length-1)?f:Math.max(f,i4(i).standardError**2-CN(u,l,r)),h=d.reduce((b,y,S)=>b+y**2/e[S].degreesOfFreedom,0)+(g-f)**2/(e.length-1);return{value:u,standardUncertainty:Math.sqrt(g),degreesOfFreedom:h===0?1/0:g**2/h,shared:l}}var CN=(e,r,n)=>r.reduce((i,{source:t,sensitivity:o})=>i+(e*o*Xt(t,n).relativeStandardUncertainty)**2,0);function wie(e,r){let n=new Map;return e.forEach(({shared:i},t)=>{for(let{source:o,sensitivity:a}of i)n.set(o,(n.get(o)??0)+r[t]*a)}),[...n].map(([i,t])=>({source:i,sensitivity:t}))}function Xt(e,r){let n=Object.hasOwn(r,e)?r[e]:void 0;if(!n)throw new q("ranking/unknown-source",`sourceNamed: found "${e}", expected one of: ${Object.keys(r).join(", ")||"none"}. State what that source may be off by.`);return n}function UN(e,r,n){return new Map(Object.keys(e).sort().map(i=>{let{relativeStandardUncertainty:t,degreesOfFreedom:o}=Xt(i,e),a=new Float64Array(r);for(let s=0;s<r;s++)a[s]=t*Ev(n,o);return[i,a]}))}function FN(e,r,n,i){let t=e.length,o=new Float64Array(n*t);return e.forEach(({value:a,standardUncertainty:s,degreesOfFreedom:u,shared:c},l)=>{if(s>0)for(let d=l;d<o.length;d+=t)o[d]=s*Ev(i,u);for(let{source:d,sensitivity:f}of c){let m=r.get(d),g=a*f;for(let h=0;h<n;h++)o[h*t+l]=o[h*t+l]+g*m[h]}}),o}function c1(e,r){let n=e.length,i=[...new Set(e.flatMap(({shared:a})=>a.map(({source:s})=>s)))],t=new Float64Array(n*i.length);e.forEach(({value:a,shared:s},u)=>{for(let{source:c,sensitivity:l}of s){let d=u*i.length+i.indexOf(c);t[d]=t[d]+a*l*Xt(c,r).relativeStandardUncertainty}});let o=new Float64Array(n*n);for(let a=0;a<n;a++)for(let s=0;s<a;s++){let u=e[a].standardUncertainty**2+e[s].standardUncertainty**2;for(let c=0;c<i.length;c++)u+=(t[a*i.length+c]-t[s*i.length+c])**2;o[a*n+s]=o[s*n+a]=Math.sqrt(u)}return o}var Ca=30,MN=40,Hc=Pe.clone({precision:60,rounding:Pe.ROUND_HALF_EVEN,toExpNeg:-60,toExpPos:80,minE:-9e15,maxE:9e15,defaults:!0});function Kc(e,r){if(!(typeof e=="number"?Number.isFinite(e):/^[+-]?\d+(\.\d+)?([eE][+-]?\d+)?$/.test(e.trim())))throw new q("units/not-a-number",`${r}: found "${String(e).slice(0,40)}", expected a finite number. Check the step before this one.`);return new Hc(typeof e=="number"?e:e.trim())}var LN=40;function W(e,r){if(!Number.isInteger(r)||r<0||r>LN)throw new q("units/bad-places",`roundHalfEven: found ${r} places, expected a whole number from 0 to ${LN}.`);let n=Kc(e,"roundHalfEven").toDecimalPlaces(r);return(n.isZero()?n.abs():n).toFixed(r)}function Jc(e){let r=new Float64Array(e),n=new Uint32Array(r.buffer),i=4095;return{keys:r,writePlaces(t,o){for(let s=0;s<e;s++)r[s]=r[s]+0,n[2*s]=n[2*s]&~i|s;r.sort();let a=0;for(let s=0;s<e;s++)s>0&&n[2*s+1]===n[2*s-1]&&((n[2*s]^n[2*s-2])&~i)===0||(a=s+1),t[o+(n[2*s]&i)]=a}}}function Qt(e,r){let n=e.length,i=new Uint16Array(r.length),t=Jc(n);for(let o=0;o<r.length;o+=n){for(let a=0;a<n;a++)t.keys[a]=-(e[a]+r[o+a]);t.writePlaces(i,o)}return i}function ZN(e,r){let n=e.length/r;return Array.from({length:r},(i,t)=>{let[o,a]=[0,0];for(let s=t;s<e.length;s+=r)e[s]===1&&(o+=1),e[s]<=5&&(a+=1);return{ofFirst:o/n,ofFirstFive:a/n}})}function VN(e,r,n,i){let t=0;for(let o=0;o<e.length;o+=r){let[a,s]=[e[o+n],e[o+i]];t+=a<s?2:a===s?1:0}return t/2/(e.length/r)}function BN(e,r,n){let i=new Float64Array(r*r);for(let o=0;o<e.length;o+=r)for(let a=0;a<r;a++){let s=e[o+n[a]];for(let u=a+1;u<r;u++){let c=e[o+n[u]];i[a*r+u]=i[a*r+u]+(s<c?1:s===c?.5:0)}}let t=e.length/r;for(let o=0;o<r;o++){i[o*r+o]=.5;for(let a=o+1;a<r;a++)i[o*r+a]=i[o*r+a]/t,i[a*r+o]=1-i[o*r+a]}return i}function Xc(e,r,n,i){let t=new Uint16Array(e.length),o=Jc(n);for(let a=0;a<e.length;a+=n){for(let s=0;s<n;s++)o.keys[s]=e[a+s];o.writePlaces(t,a),i==="mostFirsts"&&Sie(t,r,n,a)}return t}function Sie(e,r,n,i){let t=new Map;for(let o=0;o<n;o++)t.set(e[i+o],[...t.get(e[i+o])??[],o]);for(let[o,a]of t){if(a.length<2)continue;let s=a.map(u=>r.map(c=>c.places[i+u]).sort((c,l)=>c-l));a.forEach((u,c)=>{e[i+u]=o+s.filter(l=>Iie(l,s[c])).length})}}function Iie(e,r){let n=e.findIndex((i,t)=>i!==r[t]);return n!==-1&&e[n]<r[n]}function Fn(e,r,n){let i=new Float64Array(e[0]?.places.length??0);if(n==="pairwiseWins"){for(let t=0;t<i.length;t+=r)Oie(i,e,r,t);return i}for(let{weight:t,places:o,goodness:a}of e)if(n==="meanStandardScore")for(let s=0;s<i.length;s+=r)kie(i,a,t,r,s);else{let s=n==="sumOfPlaces"?1:t;for(let u=0;u<i.length;u++)i[u]=i[u]+s*o[u]}return i}function kie(e,r,n,i,t){let o=0;for(let l=0;l<i;l++)o+=r[t+l];let a=o/i,s=0,u=!0;for(let l=0;l<i;l++)s+=(r[t+l]-a)**2,u&&=r[t+l]===r[t];if(u)return;let c=n/Math.sqrt(s/(i-1));for(let l=0;l<i;l++)e[t+l]=e[t+l]-c*(r[t+l]-a)}function Oie(e,r,n,i){for(let t=1;t<n;t++)for(let o=0;o<t;o++){let a=0;for(let{places:u}of r)a+=Math.sign(u[i+o]-u[i+t]);let s=(1+Math.sign(a))/2;e[i+t]=e[i+t]-s,e[i+o]=e[i+o]-(1-s)}}var Nie=3,l1=1e6;function Ra(e){let{entries:r,combine:n,countPlaces:i,tieBreak:t}=e,o=(c,l)=>!Number.isNaN(l[c]),a=r.flatMap(({isExcluded:c},l)=>!c&&e.categories.every(({goodness:d})=>o(l,d))?[l]:[]),s=e.categories.map(({weight:c,goodness:l})=>{let d=r.flatMap(({isExcluded:h},b)=>(!h||i==="beforeExclusions")&&o(b,l)?[b]:[]),f=Float64Array.from(d,h=>l[h]),m=Qt(f,new Float64Array(f.length)),g=new Map(d.map((h,b)=>[h,m[b]]));return{weight:c,places:Uint16Array.from(a,h=>g.get(h)),goodness:Float64Array.from(a,h=>l[h])}}),u=Fn(s,a.length,n);return{ranked:a,categories:s,scores:u,places:Xc(Pie(u,e),s,a.length,t)}}function Pie(e,{combine:r,categories:n}){if(r==="sumOfPlaces"||r==="pairwiseWins")return e;let i=n.reduce((o,{weight:a})=>o+a,0),t=r==="weightedSumOfPlaces"?l1:Math.max(1,i);return e.map(o=>Number(W(String(o/t),Nie)))}var WN=1e4;function GN(e,r,n,i){let t=e.categories.map(u=>Fn([{...u,weight:1}],r.length,n==="meanStandardScore"?n:"sumOfPlaces")),o=e.categories.map(({weight:u})=>n==="sumOfPlaces"?1:u),a=o.reduce((u,c)=>u+c,0),s=o.map(u=>a===0?1/o.length:u/a);return{firstPlaces:[...xie(t,r.length,i)].map((u,c)=>({id:r[c],share:u})).filter(({share:u})=>u>0).sort((u,c)=>c.share-u.share||(u.id<c.id?-1:1)),smallestChange:Aie(t,s,r,e.places)}}function xie(e,r,n){let i=new Float64Array(r),t=new Float64Array(e.length),o=new Float64Array(r);for(let a=0;a<WN;a++){for(let c=0;c<t.length;c++)t[c]=-Math.log(n.nextUniform());o.fill(0),e.forEach((c,l)=>{for(let d=0;d<r;d++)o[d]=o[d]+t[l]*c[d]});let s=1/0;for(let c=0;c<r;c++)o[c]<s&&(s=o[c]);let u=0;for(let c=0;c<r;c++)o[c]===s&&(u+=1);for(let c=0;c<r;c++)o[c]===s&&(i[c]=i[c]+1/u)}return i.map(a=>a/WN)}function Aie(e,r,n,i){let t=i.indexOf(1),o=null;return n.forEach((a,s)=>{if(s===t)return;let u=i[s]===1?0:Eie(e.map(c=>c[s]-c[t]),r);u!==null&&(o===null||u<o.weightMoved)&&(o={weightMoved:u,id:a})}),o}function Eie(e,r){let n=e.reduce((o,a,s)=>o+r[s]*a,0);if(n<=0)return 0;let i=Math.min(...e);if(i>0)return null;let t=0;for(let o of e.map((a,s)=>s).sort((a,s)=>e[s]-e[a])){let a=e[o]-i;if(a<=0)break;if(r[o]*a>=n)return t+n/a;t+=r[o],n-=r[o]*a}return t}var Die=50;function HN(e,r,n){let i=Ra(e),t=(u,c,l)=>({kind:u,name:c,...qie(e,i,l,Ra(l),u==="entry"?c:null)}),a=[...(e.categories.length<2?[]:e.categories).map(({code:u})=>t("category",u,{...e,categories:e.categories.filter(c=>c.code!==u)})),...r.map(u=>t("party",u.name,u.table)),...e.entries.flatMap(({id:u,isExcluded:c},l)=>c?[]:[t("entry",u,zie(e,l))]).filter(({swappedPairs:u})=>u>0)],s=e.combine!=="pairwiseWins"&&i.ranked.length>0&&e.categories.length>0;return{leftOut:a,weights:s?GN(i,i.ranked.map(u=>e.entries[u].id),e.combine,n):null}}function zie(e,r){return{...e,entries:e.entries.filter((n,i)=>i!==r),categories:e.categories.map(n=>({...n,goodness:n.goodness.filter((i,t)=>t!==r)}))}}function qie(e,r,n,i,t){let o=new Map(i.ranked.map((c,l)=>[n.entries[c].id,i.places[l]])),a=r.ranked.flatMap((c,l)=>{let d=e.entries[c].id,f=o.get(d);return f===void 0?[]:[{id:d,before:r.places[l],now:f}]}),s=0,u=[];for(let c of a)for(let l of a)c.before>l.before&&c.now<l.now&&(s+=1,u.length<Die&&u.push([c.id,l.id]));return{first:[...o].flatMap(([c,l])=>l===1?[c]:[]),swappedPairs:s,swaps:u,dropped:r.ranked.map(c=>e.entries[c].id).filter(c=>!o.has(c)&&c!==t)}}function Mn(e,r,n){if(n.length===r&&n.every((a,s)=>a===s))return e;let i=r===0?0:e.length/r,t=e instanceof Float64Array?new Float64Array(i*n.length):new Uint16Array(i*n.length),o=0;for(let a=0;a<i;a++)for(let s of n)t[o++]=e[a*r+s];return t}function ve(e,r,n){if(!(e>0&&e<1/0))throw new q("figures/not-positive",`${n}: ${r} is ${e}, expected a finite number above 0. Correct the reading.`)}function Dr(e,r,n){if(!(e>=0&&e<1/0))throw new q("figures/negative",`${n}: ${r} is ${e}, expected a finite number of 0 or more. Correct the reading.`)}function zr(e,r,n){if(!Number.isFinite(e))throw new q("measurement/not-a-number",`${n}: ${r} is ${e}, expected a finite number. Check the step before this one.`)}var Tie=.99;function KN(e,r){let n=e.length;if(n<2)return e;let i=0;for(let u of r)i+=u*u;if(i===0)return e;zr(i,"uncertainty of the differences","settledValues");let t=J([...e]),o=0;for(let u of e)o+=(u-t)**2;let a=Br(Tie,n-1)/(n-1)*(i/(2*n)),s=o===0?0:Math.max(0,1-a/o);return e.map(u=>t+Math.sqrt(s)*(u-t))}function JN(e,r,n,i){let t=e.length/n,o=new d1(Math.max(1,t-Math.ceil(i*(t+1))+1)),a=jie(r,n),s=new Uint16Array(n),u=new Uint16Array(n);for(let c=0;c<t;c++){let l=e.subarray(c*n,(c+1)*n);o.add(Cie(o.smallest,l,r,a,s,u))}return o.smallest}function jie(e,r){let n=new Float64Array(r),i=new Float64Array(r);for(let t=0;t<r;t++)for(let o=0;o<r;o++){let a=e[t*r+o];a>n[t]&&(n[t]=a),a>i[o]&&(i[o]=a)}return{asFirst:n,asSecond:i}}function Cie(e,r,n,{asFirst:i,asSecond:t},o,a){let s=r.length,[u,c]=[1/0,-1/0];for(let m=0;m<s;m++){let g=r[m];g<u&&(u=g),g>c&&(c=g)}let[l,d]=[0,0];for(let m=0;m<s;m++)(r[m]-u)*i[m]>e&&(o[l++]=m),(c-r[m])*t[m]>e&&(a[d++]=m);let f=e;for(let m=0;m<l;m++){let g=o[m],h=r[g];if(!((h-u)*i[g]<=f))for(let b=0;b<d;b++){let y=a[b],S=(h-r[y])*n[g*s+y];S>f&&(f=S)}}return f}var d1=class{heap;constructor(r){this.heap=new Float64Array(r)}get smallest(){return this.heap[0]}add(r){let{heap:n}=this;if(r<=n[0])return;let i=0;for(;;){let t=2*i+1;if(t>=n.length||(t+1<n.length&&n[t+1]<n[t]&&(t+=1),n[t]>=r))break;n[i]=n[t],i=t}n[i]=r}};function XN(e,r,n,i){let t=e.length,o=new Uint8Array(t*t),a=new Float64Array(t*t),s=0;for(let u=0;u<t;u++)for(let c=0;c<t;c++){let l=n[u*t+c];u!==c&&(l>0?(a[u*t+c]=1/l,s+=1):e[u]>e[c]&&(o[u*t+c]=1))}if(s===0)return{isAhead:o,criticalValue:null};for(;;){let u=JN(r,a,t,i);if(Rie(e,a,o,u)===0)return{isAhead:o,criticalValue:u}}}function Rie(e,r,n,i){let t=e.length,o=0;for(let a=0;a<t;a++)for(let s=0;s<t;s++){let u=r[a*t+s];u===0||(e[a]-e[s])*u<=i||(n[a*t+s]=1,r[a*t+s]=0,o+=1)}return o}function QN(e,r){let n=r.length,i=new Uint16Array(n),t=Uie(e,n),o=r.map((a,s)=>s).sort((a,s)=>t[a]-t[s]);for(let a of o){let s=1;for(let u=0;u<n;u++)e[u*n+a]===1&&i[u]>=s&&(s=i[u]+1);i[a]=s}return r.map((a,s)=>{let u=0;for(let c=0;c<n;c++)u+=e[s*n+c];return{low:Math.min(a,1+t[s]),high:n-u,group:i[s]}})}function Uie(e,r){let n=new Uint16Array(r);for(let i=0;i<r;i++)for(let t=0;t<r;t++)n[t]=n[t]+e[i*r+t];return n}var Fie=150;function Qc(e){let{ids:r,published:n,goodness:i,errors:t,places:o,differenceUncertainty:a,level:s,hasPairs:u=!1}=e,c=r.length,l=[...e.brokenPlaces??Qt(n,new Float64Array(c))],{isAhead:d,criticalValue:f}=XN(i,t,a,s),m=QN(d,l),g=ZN(o,c),h=r.map((y,S)=>S).sort((y,S)=>l[y]-l[S]||(r[y]<r[S]?-1:1)),b=h.map((y,S)=>{let $=h[S+1];return{id:r[y],place:l[y],...m[y],chanceOfFirst:g[y].ofFirst,chanceOfFirstFive:g[y].ofFirstFive,chanceAheadOfNext:$===void 0?null:VN(o,c,y,$)}});return{criticalValue:f,rows:b,pairChances:u&&c<=Fie?BN(o,c,h):null}}function YN(e,r,{sources:n,draws:i,level:t,random:o,rankedIds:a}){let s=r.entries.filter(({isExcluded:$})=>!$||r.countPlaces==="beforeExclusions").flatMap(({id:$,isExcluded:N,results:P})=>P[e.code]?[{id:$,isExcluded:N,evidence:P[e.code]}]:[]),u=s.map($=>$.evidence),c=s.length,l=e.direction==="more"?1:-1,d=FN(u,n,i,o).map($=>l*$),f=Float64Array.from(u,({value:$})=>l*$),m=Qt(f,d),g=s.flatMap(({isExcluded:$},N)=>$?[]:[N]),h=Qc({ids:g.map($=>s[$].id),published:Float64Array.from(g,$=>l*m1(e,u[$].value)),goodness:Mn(f,c,g),errors:Mn(d,c,g),places:g.length===c?m:Qt(Mn(f,c,g),Mn(d,c,g)),differenceUncertainty:c1(g.map($=>u[$]),r.sources),level:t}),b=a.map($=>s.findIndex(N=>N.id===$)),y=KN(f,c1(u,r.sources)),S=($,N)=>({weight:f1(e),places:Mn(N,c,b),goodness:r.combine==="meanStandardScore"?Mn(Mie($,d),c,b):new Float64Array(0)});return{certainty:h,forOverall:{found:S(f,m),settled:S(y,Qt(y,d))}}}function f1(e){return Math.round(Number(e.weight)*l1)}function m1(e,r){return Number(W(String(r),e.places))}var Mie=(e,r)=>r.map((n,i)=>n+e[i%e.length]);var Lie=2e3;function eP(e,r,n,i,t){let o=e.length;if(o===0||n.length===0)return{criticalValue:null,rows:[],pairChances:null};let a=n.map(d=>d.found),s=Xc(Fn(a,o,i.combine),a,o,i.tieBreak),u=n.map(d=>d.settled),c=Zie(Fn(u,o,i.combine),o),l=r.scores.map(d=>-d);return Qc({hasPairs:!0,ids:e,published:l,goodness:l,errors:c,places:s,differenceUncertainty:Vie(c,o),level:t,brokenPlaces:r.places})}function Zie(e,r){let n=e.length/r,i=new Float64Array(e.length);for(let t=0;t<r;t++){let o=0;for(let s=t;s<e.length;s+=r)o+=e[s];let a=o/n;for(let s=t;s<e.length;s+=r)i[s]=a-e[s]}return i}function Vie(e,r){let n=Math.min(Lie,e.length/r),i=Array.from({length:r},(o,a)=>Float64Array.from({length:n},(s,u)=>e[u*r+a])),t=new Float64Array(r*r);for(let o=0;o<r;o++)for(let a=0;a<o;a++){let[s,u]=[i[o],i[a]],c=0;for(let l=0;l<n;l++)c+=(s[l]-u[l])**2;t[o*r+a]=t[a*r+o]=Math.sqrt(c/n)}return t}var Ua=1e4;function nP(e){let{entries:r,categories:n,sources:i,draws:t=Ua,level:o=.95}=e;xe(o,"rankWithUncertainty"),Number.isInteger(t)&&t>=Ua||Qi("ranking/too-few-draws",`found ${t} draws, expected a whole number of at least ${Ua}. Draw more.`),r.length>4096&&Qi("ranking/too-many-entries",`found ${r.length} entries, expected at most ${4096}. Split the edition.`),tP(r.map(({id:s})=>s)),tP(n.map(({code:s})=>s));let a=n.find(({weight:s})=>!/^\d+(\.\d{1,6})?$/.test(s));a&&Qi("ranking/bad-weight",`category ${a.code} has weight "${a.weight}", expected a decimal of 0 or more with at most 6 places.`),Object.entries(i).forEach(([s,u])=>Bie(s,u));for(let{id:s,results:u}of r)for(let{code:c}of n){let l=u[c];l&&Wie(`entry ${s} in category ${c}`,l,i)}}function tP(e){let r=e.find((n,i)=>e.indexOf(n)!==i);r!==void 0&&Qi("ranking/not-unique",`"${r}" is there twice, expected once. Merge its results.`)}function Bie(e,{relativeStandardUncertainty:r,degreesOfFreedom:n}){r>=0&&r<1/0&&n>0||Qi("ranking/bad-evidence",`source ${e} has relative standard uncertainty ${r} with ${n} degrees of freedom, expected 0 or more with more than 0.`)}function Wie(e,{value:r,standardUncertainty:n,degreesOfFreedom:i,shared:t,without:o},a){let s=n>=0&&n<1/0&&i>0,u=Number.isFinite(r)&&t.every(({sensitivity:l})=>Number.isFinite(l)),c=Object.values(o).every(l=>l===null||Number.isFinite(l));(!s||!u||!c)&&Qi("ranking/bad-evidence",`${e}: found ${r} ± ${n} with ${i} degrees of freedom, expected finite numbers. Moderate the variances or leave the entry out.`);for(let{source:l}of t)Xt(l,a)}function Qi(e,r){throw new q(e,`rankWithUncertainty: ${r}`)}function iP(e){nP(e);let{draws:r=Ua,level:n=.95}=e,i=r4(t4(e.digest)),t=UN(e.sources,r,i),o={...e,entries:[...e.entries].sort((l,d)=>l.id<d.id?-1:1),categories:[...e.categories].sort((l,d)=>l.code<d.code?-1:1)},a=oP(o),s=Ra(a),u=s.ranked.map(l=>a.entries[l].id),c=o.categories.map(l=>({code:l.code,...YN(l,o,{sources:t,draws:r,level:n,random:i,rankedIds:u})}));return{draws:r,level:n,categories:Object.fromEntries(c.map(({code:l,certainty:d})=>[l,d])),overall:eP(u,s,c.map(({forOverall:l})=>l),e,n),sensitivity:HN(a,Gie(o),i)}}function oP({entries:e,categories:r,combine:n,countPlaces:i,tieBreak:t},o=({value:a})=>a){let a=s=>Float64Array.from(e,({results:u})=>{let c=u[s.code],l=c?o(c):null;return l===null?NaN:(s.direction==="more"?1:-1)*m1(s,l)});return{combine:n,countPlaces:i,tieBreak:t,entries:e.map(({id:s,isExcluded:u})=>({id:s,isExcluded:u})),categories:r.map(s=>({code:s.code,weight:f1(s),goodness:a(s)}))}}function Gie(e){return[...new Set(e.entries.flatMap(({results:n})=>Object.values(n).flatMap(i=>Object.keys(i?.without??{}))))].sort().map(n=>({name:n,table:oP(e,({value:i,without:t})=>{let o=t[n];return o===void 0?i:o})}))}var Hie={breakingForce:["breakingForce"],diameterAlongStations:["wideDiameter","narrowDiameter"],linearDensity:["mass","length"]},Kie=e=>({condition:e.kind==="breakingForce"&&e.treatment?"treated":"untreated",roles:Hie[e.kind],stations:e.kind==="diameterAlongStations"?e.stations:1}),Yt=e=>Kie(e).condition==="treated",Yc=e=>e.find(r=>r.kind==="breakingForce"&&!Yt(r));var $e=p.string().max(60).regex(/^[a-z0-9]+(-[a-z0-9]+)*$/,"Use lower-case letters, digits and single hyphens").describe("Readable identifier; never changes"),Yi=p.string().trim().min(1).max(2e3),Jie=p.int().describe("Number in the ETag"),eo=["breakingForce","diameter","outOfRoundness","linearDensity","apparentStress","retention","strengthHonesty"],aP={breakingForce:"N",diameter:"mm",outOfRoundness:"%",linearDensity:"tex",apparentStress:"MPa",retention:"%",strengthHonesty:"%"},Xie=p.strictObject({code:$e,name:Yi.describe("Name on the page"),quantity:p.enum(eo).describe("Quantity that is ranked"),method:$e.describe("Method whose readings are ranked"),series:$e.describe("Code of its series: the treated one of a retention, the force of a stress or an honesty"),section:p.strictObject({method:$e.describe("Method that measures the diameter"),series:$e.describe("Code of its series")}).nullable().default(null).describe("Diameters that a stress is taken over; null of every other quantity"),unit:p.string().describe("SI unit"),places:p.int().min(0).max(6).describe("Decimal places of the published value"),tradeUnit:p.string().nullable().describe("Trade unit"),tradePlaces:p.int().min(0).max(6).nullable().describe("Decimal places in the trade unit"),direction:p.enum(["more","less"]).describe("Whether more or less is better"),weight:p.string().regex(/^\d+(\.\d+)?$/).describe("Weight, a decimal"),conditions:Yi.describe("Conditions that define the category"),minimum:p.strictObject({specimens:p.int().min(1).max(1e3).describe("Valid specimens"),testers:p.int().min(1).max(100).describe("Testers"),rigs:p.int().min(1).max(100).describe("Rigs")}).default({specimens:1,testers:1,rigs:1}).describe("Least evidence of a result that counts")}),sP=p.strictObject({combine:p.enum(["sumOfPlaces","weightedSumOfPlaces","meanStandardScore","pairwiseWins"]).describe("How category results become a score"),countPlaces:p.enum(["beforeExclusions","afterExclusions"]).describe("When category places are counted"),tieBreak:p.enum(["none","mostFirsts"]).describe("Tie-break"),categories:p.array(Xie).min(1).describe("Categories in order")}).describe("Rules of the scheme"),Qie=sP.superRefine(({categories:e},r)=>{e.forEach(({code:n,quantity:i,section:t,unit:o},a)=>{let s=(u,c)=>{r.addIssue({code:"custom",path:["categories",a,u],message:c})};e.findIndex(u=>u.code===n)<a&&s("code",`Category "${n}" is there twice; give each its own code.`),i==="apparentStress"!=(t!==null)&&s("section","A stress names the method and series of the diameters that it is taken over; no other quantity does."),o!==aP[i]&&s("unit",`Found "${o}", expected ${aP[i]}: ${i} is computed in it.`)})}),I$e=p.strictObject({slug:$e,number:p.int().min(1),name:Yi,words:Yi,rules:Qie}),Yie=p.strictObject({slug:$e,number:p.int(),name:p.string(),words:p.string(),rules:sP}),k$e=p.strictObject({items:p.array(Yie),nextCursor:p.string().nullable()}),O$e=p.strictObject({slug:$e,name:Yi,scheme:p.strictObject({slug:$e,number:p.int().min(1)}),opensOn:p.iso.date(),closesOn:p.iso.date(),previous:$e.nullable().describe("Edition that movement is told against"),methods:p.array(p.strictObject({slug:$e,number:p.int().min(1)})).min(1).describe("Method versions to pin")}).refine(e=>e.closesOn>=e.opensOn,{message:"The edition closes before it opens",path:["closesOn"]}),N$e=p.strictObject({variants:p.array($e).min(1).max(2e3)}),eoe=p.strictObject({variant:$e,reasonCode:p.enum(["notObtainable","labelInDoubt","duplicate","makersRequestRefused","interest"]).describe("Why"),words:Yi.describe("Why, in words that readers see"),effect:p.enum(["closedUp","shownUnplaced"]).describe("Whether the others move up")}),roe=p.strictObject({slug:$e,name:p.string(),state:p.enum(["planned","open","closed","published"]),scheme:p.strictObject({slug:$e,number:p.int()}),opensOn:p.iso.date(),closesOn:p.iso.date(),previous:$e.nullable(),blindKeyDigest:p.string().nullable().describe("SHA-256 of the key of blind codes, fixed at opening"),entries:p.int().describe("Number of entries"),version:Jie}),P$e=p.strictObject({items:p.array(roe),nextCursor:p.string().nullable()}),x$e=p.strictObject({edition:$e,state:p.string(),submissions:p.record(p.string(),p.int()).describe("State → count"),inDoubt:p.int().describe("Accepted submissions with a held finding that nobody has answered"),entries:p.array(p.strictObject({variant:$e,missing:p.array(p.string()).describe("Categories without a result that counts"),needs:p.array(p.string()).describe('What it lacks, in words: "one more rig in knot-retention"'),evidence:p.array(p.strictObject({category:$e,specimens:p.int(),submissions:p.int(),testers:p.int(),rigs:p.int()})).describe("What is there in each category"),exclusion:eoe.omit({variant:!0}).nullable()}))}),toe=p.strictObject({variant:$e,place:p.int().nullable(),score:p.string()}),noe=p.strictObject({where:p.string().describe('Cell: "overall, <variant>, place"'),before:p.string().nullable(),after:p.string().nullable()}),A$e=p.strictObject({edition:$e,overall:p.array(toe),categories:p.record(p.string(),p.array(p.strictObject({variant:$e,place:p.int().nullable(),value:p.string()}))),incomplete:p.array(p.strictObject({variant:$e,missing:p.array(p.string())})),excluded:p.array($e),since:p.strictObject({at:p.iso.datetime().describe("The look before"),changes:p.array(noe).describe("Cells that changed since")}).nullable().describe("Against the look before; null for the first")}),E$e=p.strictObject({items:p.array(p.strictObject({openedOn:p.iso.date().describe("Day from which it holds"),blindKeyDigest:p.string().describe("SHA-256 of the key of blind codes; the key comes with the release")})),nextCursor:p.string().nullable()});var _e=({quantity:e,method:r,series:n,section:i})=>[e,r,n,...i?[i.method,i.series]:[]].join("/"),Fa=({method:e,series:r})=>({quantity:"breakingForce",method:e,series:r,section:null}),p1=({section:e})=>e&&{quantity:"diameter",...e,section:null},uP=["apparentStress","strengthHonesty"];function cP(e,r){let n=e.flatMap(o=>{let{quantity:a,method:s,series:u,section:c}=o,l=uP.includes(a)?[Fa(o),p1(o)??[]].flat():[];return[{quantity:a,method:s,series:u,section:c},...l]});return[...Map.groupBy([...n,...r.flatMap(ioe)],_e).values()].flatMap(o=>o.slice(0,1)).flatMap(o=>mP(o,r)).sort((o,a)=>eo.indexOf(o.quantity)-eo.indexOf(a.quantity))}var lP=e=>e.series.flatMap(r=>fP(r,e).flatMap(n=>mP(dP(n,e,r),[e])));function ioe(e){let r=e.series.some(Yt);return e.series.filter(i=>!(r&&i===Yc(e.series))).flatMap(i=>fP(i,e).map(t=>dP(t,e,i)))}var dP=(e,{slug:r},{code:n})=>({quantity:e,method:r,series:n,section:null});function fP(e,r){return e.kind==="diameterAlongStations"?["diameter","outOfRoundness"]:e.kind==="linearDensity"?["linearDensity"]:Yt(e)&&Yc(r.series)?["retention"]:["breakingForce"]}function mP(e,r){let n=r.find(({slug:o})=>o===e.method)?.series??[],i=n.find(({code:o})=>o===e.series),t=i&&ooe(e,i,n);return t?[{...e,key:_e(e),name:uoe(e.quantity,i),parts:t}]:[]}function ooe({quantity:e,method:r},n,i){if(uP.includes(e))return[];let t={method:r,series:n,figure:e==="outOfRoundness"?"outOfRoundness":"mean"};if(e!=="retention")return[t];let o=Yc(i);return o&&Yt(n)?[{...t,series:o},t]:null}var aoe={breakingForce:"Breaking force",diameter:"Diameter",outOfRoundness:"Out-of-roundness",linearDensity:"Linear density",apparentStress:"Apparent breaking stress",retention:"Retention",strengthHonesty:"Measured of claimed strength"},soe={knot:"Knot retention",abrasion:"Abrasion retention"};function uoe(e,r){let n=r.kind==="breakingForce"?r.treatment:null,i=e==="retention"&&n?soe[n.kind]:aoe[e];return n?`${i}, ${n.name}`:i}var el=(e,r)=>e.find(({quantity:n,parts:i})=>n===r&&!i.some(({series:t})=>Yt(t)));var coe=["specimens","testers","rigs"];function ro(e,r,n){let{code:i,minimum:t}=e,o=n.get(r)?.get(_e(e));return coe.map(a=>({category:i,what:a,has:o?.[a]??0,needs:t[a]})).filter(({has:a,needs:s})=>a<s)}var loe={specimens:["specimen","specimens"],testers:["tester","testers"],rigs:["rig","rigs"]},doe=["no","one","two","three","four","five","six","seven","eight","nine","ten"];function pP({category:e,what:r,has:n,needs:i}){let t=i-n,[o,a]=loe[r];return`${doe[t]??String(t)} ${n===0?"":"more "}${t===1?o:a} in ${e}`}var foe={categories:new Map,overall:new Map,sensitivity:null,pairs:null};function vP({edition:e,results:r,sources:n},i){let{categories:t,combine:o,countPlaces:a,tieBreak:s}=e.scheme.rules,u=e.entries.map(({variant:m,exclusion:g})=>({id:m,isExcluded:g!==null,found:t.map(h=>{let b=ro(h,m,r).length===0;return[h.code,b?r.get(m)?.get(_e(h))??null:null]})}));if(u.some(({found:m})=>m.some(([,g])=>g&&!g.evidence)))return foe;let{categories:c,overall:l,sensitivity:d}=iP({digest:i,categories:t,combine:o,countPlaces:a,tieBreak:s,sources:n,entries:u.map(({found:m,...g})=>({...g,results:Object.fromEntries(m.map(([h,b])=>[h,b?.evidence??null]))}))}),f=({rows:m})=>new Map(m.map(g=>[g.id,g]));return{categories:new Map(Object.entries(c).map(([m,g])=>[m,f(g)])),overall:f(l),sensitivity:d,pairs:l.pairChances&&{variants:l.rows.map(({id:m})=>m),chances:l.pairChances}}}function v1(e,r){let i=e.map(moe).map((o,a)=>({value:o,i:a})).sort((o,a)=>r==="more"?a.value.cmp(o.value):o.value.cmp(a.value)),t=new Array(e.length).fill(0);return i.forEach(({value:o,i:a},s)=>{let u=i[s-1];t[a]=u?.value.eq(o)?t[u.i]??s:s+1}),t}function moe(e){if(!/^-?\d+(\.\d+)?$/.test(e))throw new q("ranking/not-a-number",`competitionPlaces: found "${e}", expected a decimal such as 820.3. Rank published values only.`);return new Pe(e)}var poe={sumOfPlaces:0,weightedSumOfPlaces:3,meanStandardScore:3,pairwiseWins:1},gP=e=>e==="meanStandardScore"||e==="pairwiseWins"?"more":"less";function hP(e,r){let n=e[0]?.places.length??0;return{sumOfPlaces:voe,weightedSumOfPlaces:goe,meanStandardScore:hoe,pairwiseWins:yoe}[r](e,n).map(t=>W(t,poe[r]))}var voe=(e,r)=>Array.from({length:r},(n,i)=>String(e.reduce((t,{places:o})=>t+(o[i]??0),0))),goe=(e,r)=>Array.from({length:r},(n,i)=>e.reduce((t,{places:o,weight:a})=>t.plus(new Pe(a).times(o[i]??0)),new Pe(0)).toFixed());function hoe(e,r){let n=e.reduce((t,{weight:o})=>t.plus(o),new Pe(0)),i=e.map(({values:t,direction:o,weight:a})=>{let s=t.map(d=>new Pe(d)),u=s.reduce((d,f)=>d.plus(f),new Pe(0)).div(Math.max(1,r)),c=s.reduce((d,f)=>d.plus(f.minus(u).pow(2)),new Pe(0)).div(Math.max(1,r-1)),l=c.isZero()?new Pe(0):new Pe(a).div(c.sqrt()).times(o==="more"?1:-1);return s.map(d=>d.minus(u).times(l))});return Array.from({length:r},(t,o)=>i.reduce((a,s)=>a.plus(s[o]??0),new Pe(0)).div(n.isZero()?1:n).toFixed())}function yoe(e,r){let n=(i,t)=>e.reduce((o,{places:a})=>o+Math.sign((a[t]??0)-(a[i]??0)),0);return Array.from({length:r},(i,t)=>{let o=0;for(let a=0;a<r;a++)a!==t&&(o+=(1+Math.sign(n(t,a)))/2);return String(o)})}function bP(e){let r=e.categories.map(({code:a})=>a),n=a=>r.filter(s=>(a.values[s]??null)===null),i=e.entries.filter(({exclusion:a})=>a===null),t=i.filter(a=>n(a).length===0),o=e.entries.filter(a=>a.exclusion?.effect==="shownUnplaced");return{categories:Object.fromEntries(e.categories.map(a=>[a.code,boe(a,i,o)])),overall:$P([...yP(e,t).map(a=>({...a,placeIfIncluded:null})),...o.filter(a=>n(a).length===0).flatMap(a=>{let s=yP(e,[...t,a]).find(({id:u})=>u===a.id);return s?[{...s,place:null,placeIfIncluded:s.place}]:[]})]),incomplete:i.filter(a=>n(a).length>0).map(a=>({id:a.id,missing:n(a)})),excluded:e.entries.filter(({exclusion:a})=>a!==null).map(({id:a})=>a)}}var g1=(e,r)=>r.flatMap(({id:n,values:i})=>{let t=i[e]??null;return t===null?[]:[{id:n,value:t}]});function h1({code:e,direction:r},n){let i=g1(e,n),t=v1(i.map(({value:o})=>o),r);return new Map(i.map(({id:o},a)=>[o,t[a]??0]))}function boe(e,r,n){let i=h1(e,r),t=g1(e.code,r).map(({id:a,value:s})=>({id:a,value:s,place:i.get(a)??null,placeIfIncluded:null})),o=n.flatMap(a=>g1(e.code,[a]).map(({id:s,value:u})=>({id:s,value:u,place:null,placeIfIncluded:h1(e,[...r,a]).get(s)??null})));return $P([...t,...o])}function yP(e,r){let n=e.countPlaces==="beforeExclusions"?e.entries:[...e.entries.filter(({exclusion:s})=>s===null),...r.filter(({exclusion:s})=>s!==null)],i=e.categories.map(s=>{let u=h1(s,n);return{...s,places:r.map(({id:c})=>u.get(c)??0),values:r.map(({values:c})=>c[s.code]??"0")}}),t=hP(i,e.combine),o=v1(t,gP(e.combine)),a=e.tieBreak==="none"?o:$oe(o,i.map(s=>s.places));return r.map(({id:s},u)=>({id:s,score:t[u]??"0",place:a[u]??0,categoryPlaces:Object.fromEntries(i.map(c=>[c.code,c.places[u]??0]))}))}function $oe(e,r){let n=Math.max(0,...r.flat()),i=e.map((o,a)=>Array.from({length:n},(s,u)=>r.filter(c=>c[a]===u+1).length)),t=(o,a)=>{let s=o.findIndex((u,c)=>u!==a[c]);return s!==-1&&(o[s]??0)>(a[s]??0)};return e.map((o,a)=>o+e.filter((s,u)=>s===o&&t(i[u]??[],i[a]??[])).length)}function $P(e){let r=n=>n.place??n.placeIfIncluded??1/0;return e.sort((n,i)=>r(n)-r(i)||(n.id<i.id?-1:1))}var ge=(e,r,n="1",i="0")=>({dimension:e,factor:r,divisor:n,offset:i}),gt={N:ge("force","1"),kN:ge("force","1000"),lbf:ge("force","4.4482216152605"),kgf:ge("force","9.80665"),gf:ge("force","0.00980665"),ozf:ge("force","4.4482216152605","16"),mm:ge("length","0.001"),µm:ge("length","0.000001"),in:ge("length","0.0254"),m:ge("length","1"),yd:ge("length","0.9144"),g:ge("mass","0.001"),mg:ge("mass","0.000001"),gr:ge("mass","0.00006479891"),tex:ge("linearDensity","0.000001"),dtex:ge("linearDensity","0.0000001"),den:ge("linearDensity","0.000001","9"),MPa:ge("stress","1000000"),GPa:ge("stress","1000000000"),psi:ge("stress","4.4482216152605","0.00064516"),ksi:ge("stress","4448.2216152605","0.00064516"),"%":ge("ratio","0.01"),s:ge("time","1"),"°C":ge("temperature","1"),"°F":ge("temperature","5","9","-32")},_P={force:"N",length:"m",mass:"kg",linearDensity:"kg/m",stress:"Pa",ratio:"1",time:"s",temperature:"degC"};var _oe={μm:"µm","℃":"°C","℉":"°F"};function rl(e){let r=e.trim(),n=_oe[r]??r;if(Object.hasOwn(gt,n))return n;throw new q("units/unknown-symbol",`findUnit: found the unit "${r.slice(0,40)}", expected one of ${Object.keys(gt).join(", ")}. Write the unit as one of these.`)}var woe=/^[+-]?\d+(\.\d+)?([eE][+-]?\d{1,2})?$/;function wP(e,r){let n=rl(r),i=e.trim();if(!woe.test(i))throw new q("units/not-a-number",`parseQuantity: found "${i.slice(0,40)}", expected a number such as 20 or 19.85. Use a point and no thousands separator.`);let t=i.replace(/[eE].*$/,"").replace(/[^\d]/g,"").length;if(t>Ca)throw new q("units/too-many-digits",`parseQuantity: found ${t} digits, expected at most ${Ca}. Enter the digits that the instrument shows.`);let{dimension:o,factor:a,divisor:s,offset:u}=gt[n],c=new Hc(i).plus(u).times(a),l=s==="1"?c:c.div(s).toSignificantDigits(MN);return{text:i,unit:n,si:l.isZero()?"0":l.toString(),siUnit:_P[o],dimension:o}}function y1(e){return tl(e,"diameterMm"),J(e.map(({wideMm:r,narrowMm:n})=>(r+n)/2))}function SP(e){return tl(e,"outOfRoundnessPercent"),J(e.map(({wideMm:r,narrowMm:n})=>100*(r-n)/((r+n)/2)))}function tl(e,r){e.forEach(({wideMm:n,narrowMm:i},t)=>{if(ve(n,`wideMm of station ${t+1}`,r),ve(i,`narrowMm of station ${t+1}`,r),n<i)throw new q("figures/wide-below-narrow",`${r}: station ${t+1} has a widest reading of ${n} mm below its narrowest of ${i} mm. Swap or repeat the readings.`)})}function IP(e){return ve(e,"diameterMm","circleAreaMm2"),Math.PI*e*e/4}function kP(e){return tl(e,"ellipseAreaMm2"),Math.PI/4*J(e.map(({wideMm:r,narrowMm:n})=>r*n))}function OP(e,r){return ve(e,"linearDensityTex","solidAreaMm2"),ve(r,"densityGPerCm3","solidAreaMm2"),e/(1e3*r)}var zz=$t(WA(),1),qz=$t(ez(),1);var Az=$t(sz(),1),Ez=$t(xz(),1);function Dz(e){return Xi(e,"normalCdf"),(0,Az.default)(e,0,1)}function rh(e){return xe(e,"normalQuantile"),(0,Ez.default)(e,0,1)}function $l(e,r){return Xi(e,"tCdf"),Jt(r,"tCdf"),r===1/0?Dz(e):(0,zz.default)(e,r)}function mr(e,r){return xe(e,"tQuantile"),Jt(r,"tQuantile"),r===1/0?rh(e):(0,qz.default)(e,r)}function Be(e){be(e,2,"standardDeviation");let r=J(e),n=e.map(o=>o-r),i=ye(n),t=ye(n.map(o=>o*o));return Math.sqrt(Math.max(0,t-i*i/e.length)/(e.length-1))}function th(e,r){if(Jle(e))return{mean:J(e),sd:Be(e),n:e.length};if(!(e.n>=2&&Number.isInteger(e.n)))throw new q("measurement/too-few-readings",`${r}: n is ${e.n}, expected a whole number of at least 2. Add readings.`);if(!Number.isFinite(e.mean)||!(e.sd>=0&&e.sd<1/0))throw new q("measurement/not-a-number",`${r}: mean ${e.mean}, sd ${e.sd}, expected finite numbers. Check the readings.`);return e}function Jle(e){return Array.isArray(e)}function Tz(e,r,n,i){let[t,o]=[th(e,"numerator"),th(r,"denominator")],a=t.mean/o.mean;if(!Number.isFinite(a))throw new q("figures/zero-denominator",`ratioInputs: the mean of the denominator is ${o.mean}, expected a value that can be divided by. Leave the ratio out.`);let s=t.n+o.n-2,u=((t.n-1)*t.sd**2+(o.n-1)*o.sd**2)/s,c=(n==="pooled"?u:t.sd**2)/t.n,l=(n==="pooled"?u:o.sd**2)/o.n,d=(i??a)**2*l,m=n==="pooled"||c+d===0?s:(c+d)**2/(c**2/(t.n-1)+d**2/(o.n-1));return{a:t.mean,b:o.mean,varianceA:c,varianceB:l,ratio:a,degreesOfFreedom:m}}function jz(e,r,n={}){let{a:i,b:t,varianceA:o,varianceB:a,degreesOfFreedom:s,ratio:u}=Tz(e,r,n.variance??"separate"),c=mr((1+(n.level??.95))/2,s),[l,d]=[c*c*o,c*c*a],f={ratio:u,degreesOfFreedom:s,g:d/(t*t)},m=t*t-d,g=l*m+d*i*i;if(m===0||g<0)return{...f,kind:"whole-line"};let h=Math.sqrt(g),b=[(i*t-h)/m,(i*t+h)/m],[y,S]=[Math.min(...b),Math.max(...b)];if(!Number.isFinite(y)||!Number.isFinite(S))throw new q("measurement/not-a-number","fiellerInterval: the squares of the readings leave the number range. Give the readings in a larger unit.");return m>0?{...f,kind:"bounded",low:y,high:S}:{...f,kind:"exclusive",upTo:y,from:S}}function Xle(e){return e.kind!=="bounded"?"not-bounded":e.high<1?"below":e.low>1?"above":"holds-100"}function Cz(e,r,n=.95){let i=jz(e,r,{level:n});return e.forEach(t=>Dr(t,"treatedN","retentionFigures")),r.forEach(t=>ve(t,"straightN","retentionFigures")),{retentionPercent:100*i.ratio,interval:i,againstWhole:Xle(i)}}function Rz(e,r){return ve(e,"massG","linearDensityTex"),ve(r,"lengthM","linearDensityTex"),1e3*e/r}function Uz(e,r=.95){let n=Be(e)/Math.sqrt(e.length),i=mr((1+r)/2,e.length-1)*n,t=J(e);return{low:t-i,high:t+i,halfWidth:i}}function Vn(e){be(e,1,"median");let r=[...e].sort((t,o)=>t-o),n=r[Math.floor(r.length/2)],i=r[Math.floor((r.length-1)/2)];return i+(n-i)/2}function Fz(e){let r=J(e),n=e.length>1?Be(e):null,i=e.reduce((a,s)=>Math.min(a,s)),t=e.reduce((a,s)=>Math.max(a,s)),o=n!==null&&r>0?100*n/r:null;return{n:e.length,mean:r,sd:n,cvPercent:o,min:i,max:t,range:t-i,median:Vn(e)}}function Mz(e,r,n="untreated"){return e.filter(i=>i.state==="valid"&&i.condition===n).flatMap(i=>i.readings.filter(t=>t.role===r).map(t=>Number(t.valueSi)))}function Lz(e,r,n){let i=Mz(e,"breakingForce"),t=Mz(e,"breakingForce","treated"),o=e.filter(({state:c})=>c==="valid"),a=o.map(Qle).filter(c=>c.length>0),s=Xa(o.flatMap(Yle)),u=e.filter(({reason:c})=>c==="brokeAtGrip").length;return{validSpecimens:o.length,invalidSpecimens:e.filter(({state:c})=>c==="invalid").length,gripBreakSharePercent:100*u/Math.max(1,e.length),breakingForceN:Xa(i),treatedForceN:Xa(t),retentionPercent:ede(t,i),diameterMm:Xa(a.map(y1)),outOfRoundnessPercent:Xa(a.map(SP)),areaMm2:rde(r,a.flat(),s?.mean??null,n),linearDensityTex:s}}function Xa(e){if(e.length===0)return null;let{n:r,mean:n,sd:i,cvPercent:t,min:o,max:a,median:s}=Fz(e),u=r>1?Uz(e):null;return{n:r,mean:n,sd:i,cvPercent:t,min:o,max:a,median:s,low95:u?.low??null,high95:u?.high??null}}function Qle({readings:e}){let r=t=>new Map(e.filter(o=>o.role===t).map(o=>[o.station,1e3*Number(o.valueSi)])),[n,i]=[r("wideDiameter"),r("narrowDiameter")];return[...n].flatMap(([t,o])=>{let a=i.get(t);return a===void 0?[]:[{wideMm:o,narrowMm:a}]})}function Yle({readings:e}){let r=t=>e.find(o=>o.role===t)?.valueSi,[n,i]=[r("mass"),r("length")];return n===void 0||i===void 0?[]:[Rz(1e3*Number(n),Number(i))]}function ede(e,r){if(e.length<2||r.length<2)return null;let{retentionPercent:n,interval:i}=Cz(e,r),t=i.kind==="bounded";return{value:n,low95:t?100*i.low:null,high95:t?100*i.high:null}}function rde(e,r,n,i){return e==="solid"?n===null?null:OP(n,i):e===null||r.length===0?null:e==="circle"?IP(y1(r)):kP(r)}var so=({specimens:e,areaFrom:r,densityGPerCm3:n})=>Lz(e,r,Number(n));function Zz(e,r,n=.2,i=3){if(be(e,1,"ewmaChart"),zr(r.centre,"centre","ewmaChart"),ve(r.sigma,"sigma","ewmaChart"),!(n>0&&n<=1))throw new q("drift/bad-weight",`ewmaChart: lambda is ${n}, expected above 0 and at most 1. Common values are 0.2 and 0.3.`);let t=[r.centre];for(let s of e)t.push(n*s+(1-n)*t.at(-1));let o=i*r.sigma*Math.sqrt(n/(2-n)),a=t.findIndex(s=>Math.abs(s-r.centre)>o);return{ewma:t,low:r.centre-o,high:r.centre+o,firstSignal:a===-1?null:a-1}}var _l=2/Math.sqrt(Math.PI),tde=1+3*Math.sqrt(2-4/Math.PI)/_l;function wl(e){return zr(e,"sigma","movingRangeLimit"),tde*_l*e}function Vz(e){be(e,2,"individualsChart");let r=J(e),n=J(e.slice(1).map((t,o)=>Math.abs(t-e[o]))),i=n/_l;return{centre:r,sigma:i,meanMovingRange:n,low:r-3*i,high:r+3*i,movingRangeHigh:wl(i)}}var nde=["oneBeyond3Sigma","twoOfThreeBeyond2Sigma","fourOfFiveBeyond1Sigma","eightOnOneSide"];function Bz(e,r,n=nde){let i=e.map(t=>(t-r.centre)/r.sigma);return n.filter(t=>ide[t](i))}var ide={oneBeyond3Sigma:e=>Qa(e,1,1,3),twoOfThreeBeyond2Sigma:e=>Qa(e,2,3,2),fourOfFiveBeyond1Sigma:e=>Qa(e,4,5,1),eightOnOneSide:e=>Qa(e,8,8,0),nineOnOneSide:e=>Qa(e,9,9,0),sixTrending:e=>ode(e.slice(-6),6),fourteenAlternating:e=>ade(e.slice(-14))};function Qa(e,r,n,i){let t=e.at(-1)??0,o=Math.sign(t);return t*o>i&&e.slice(-n).filter(a=>a*o>i).length>=r}function ode(e,r){let n=e.slice(1).map((i,t)=>Math.sign(i-e[t]));return n.length===r-1&&n[0]!==0&&n.every(i=>i===n[0])}function ade(e){let r=e.slice(1).map((n,i)=>Math.sign(n-e[i]));return r.length===13&&r[0]!==0&&r.every((n,i)=>i===0||n===-r[i-1])}var Wz=10,sde=[Wz,15,20];function ude(e){if(be(e,0,"rigLimits"),e.length<Wz)return null;let{centre:r,sigma:n}=Vz(e);return n>0?{centre:r,sigma:n}:null}function Gz(e){be(e,0,"judgePulls");let r=[],n=[];return e.map((i,t)=>{let o=ude(r.slice(0,sde.findLast(f=>f<=r.length)??0)),a=t===0?null:Math.abs(i-e[t-1]);if(!o)return r.push(i),{value:i,movingRange:a,limits:o,ewma:null,ewmaLimits:null,signals:[],state:"noEvidence"};n.push(i);let s=Bz(n,o),{ewma:u,low:c,high:l}=Zz(n,o);s.length>0?n=[]:r.push(i);let d=s.length>0?"outOfControl":"inControl";return{value:i,movingRange:a,limits:o,ewma:u.at(-1),ewmaLimits:{low:c,high:l},signals:s,state:d}})}function Sl(e){return[...Map.groupBy(e,({instrument:n,method:i,controlLine:t})=>[n,i,t.code].join(`
`)).values()].flatMap(n=>{let[i]=n;if(!i)return[];let{instrument:t,method:o,controlLine:a}=i,s=n.filter(({strike:l})=>l===null),u=Gz(s.map(Hz)),c=n.map(l=>({pull:l,meanN:Hz(l),judged:u[s.indexOf(l)]??null}));return[{instrument:t,method:o,controlLine:a,pulls:c}]})}var Hz=({readings:e})=>J(e.map(({valueN:r})=>Number(r)));var cde=.999,lde=.25;function Il(e){let r=e.map(dde),n=r;for(;;){let i=fde(n);if(!i||r.length-n.length+1>lde*r.length)break;n=n.filter(t=>t!==i)}return{relativeVariance:Kz(n),degreesOfFreedom:n.reduce((i,{relative:t})=>i+t.length-1,0),leftOut:r.filter(i=>!n.includes(i)).map(({position:i})=>i)}}function dde(e,r){ji(e,"pooledBetweenVariance");let{mean:n}=Ut(e,0);if(!(n>0))throw new q("consensus/not-positive",`pooledBetweenVariance: a consensus is ${n}, expected above 0. Relative effects need quantities above 0.`);let i=e.map(({mean:u,standardUncertainty:c})=>({mean:u/n,standardUncertainty:c/n})),{weights:t,totalWeight:o,spread:a}=Ut(i,0),s=ye(t.map(u=>u*u));return{position:r,relative:i,excess:a-(e.length-1),scale:o-s/o}}function Kz(e){return e.length===0?0:Math.max(0,ye(e.map(({excess:r})=>r))/ye(e.map(({scale:r})=>r)))}function fde(e){if(e.length<2)return null;let r=e.map(i=>{let t=Kz(e.filter(o=>o!==i));return Ut(i.relative,t).spread/Br(cde,i.relative.length-1)}),n=Math.max(...r);return n>1?e[r.indexOf(n)]??null:null}function Xz(e,r){let n=e.filter(s=>s.method===r),i=[...Map.groupBy(n,({controlLine:s})=>s.code)].map(([s,u])=>({controlLine:s,rigs:u.flatMap(mde)})),[t]=i.toSorted((s,u)=>u.rigs.length-s.rigs.length||(Jz(s)<Jz(u)?1:-1));if(!t||t.rigs.length<2)return null;let{relativeVariance:o,degreesOfFreedom:a}=Il([t.rigs]);return{relativeSd:Math.sqrt(o),degreesOfFreedom:a,controlLine:t.controlLine,rigs:t.rigs.map(({rig:s})=>s).sort(),pulls:t.rigs.reduce((s,{pulls:u})=>s+u,0)}}var Jz=({rigs:e})=>e.map(({lastDay:r})=>r).sort().at(-1)??"";function mde({instrument:e,pulls:r}){let n=r.filter(({judged:a})=>a!==null),i=n.at(-1);if(!i?.judged?.limits)return[];let t=n.filter(({judged:a})=>a?.state!=="outOfControl").map(({meanN:a})=>a),o=Be(t)/Math.sqrt(t.length);return[{rig:e,pulls:t.length,lastDay:i.pull.benchDay,mean:J(t),standardUncertainty:o}]}function kl(e){if(e.length<2)throw new q("agreement/too-few-testers",`roundRobin: found ${e.length} testers, expected at least 2. Invite another tester.`);e.forEach((c,l)=>be(c,2,`roundRobin, tester ${l+1}`));let r=e.map(c=>c.length),n=e.map(c=>J(c)),i=e.map(c=>Be(c)),t=J(e.flat()),o=pde(r,i),a=vde(r,n,t,o),s=Be(n),u=Math.sqrt(o);return{cellSizes:r,cellMeans:n,cellSds:i,mean:t,sdOfMeans:s,repeatabilitySd:u,betweenSd:Math.sqrt(a),reproducibilitySd:Math.sqrt(a+o),h:n.map(c=>s===0?null:(c-t)/s),k:i.map(c=>u===0?null:c/u)}}function pde(e,r){let n=e.reduce((i,t)=>i+t-1,0);return ye(r.map((i,t)=>(e[t]-1)*i*i))/n}function vde(e,r,n,i){let t=e.length-1,o=e.reduce((u,c)=>u+c,0),a=ye(r.map((u,c)=>e[c]*(u-n)**2))/t,s=(o-e.reduce((u,c)=>u+c*c,0)/o)/t;return Math.max(0,(a-i)/s)}function Qz(e,r){let n=e.filter(o=>o.method===r&&o.state==="closed").flatMap(({levels:o,cells:a})=>o.map(s=>a.filter(u=>u.level===s))).filter(o=>new Set(o.map(({instrument:a})=>a)).size===1).map(o=>{let{betweenSd:a,mean:s}=kl(o.map(({readings:u})=>u.map(({valueN:c})=>Number(c))));return{relativeSd:a/s,degreesOfFreedom:o.length-1}}),i=n.reduce((o,a)=>o+a.degreesOfFreedom,0);if(i===0)return null;let t=n.reduce((o,a)=>o+a.degreesOfFreedom*a.relativeSd**2,0)/i;return{relativeSd:Math.sqrt(t),degreesOfFreedom:i}}var gde=6;function Ol({controlPulls:e=[],roundRobins:r=[],effects:n={}},i){let t=Sl(e),o=i.flatMap(({slug:a,series:s})=>{let[u,...c]=s.filter(({kind:m})=>m==="breakingForce");if(!u||c.length>0)return[];let l=_e({quantity:"breakingForce",method:a,series:u.code,section:null}),d=Yz(Xz(t,a),"controlPulls"),f=Yz(Qz(r,a),"roundRobin");return d||f?[[l,{...d?{rig:d}:{},...f?{tester:f}:{},...n[l]}]]:[]});return{...n,...Object.fromEntries(o)}}var Yz=(e,r)=>e&&{relativeSd:e.relativeSd.toFixed(gde),degreesOfFreedom:e.degreesOfFreedom,source:r};function nh(e,r=1){let n=[r,...e.map(({evidence:l})=>l.value)].find(l=>!(l>0&&l<1/0));if(n!==void 0)throw new q("ranking/bad-evidence",`productOfEvidence: found ${n}, expected factors and constant above 0. Leave the entry out of the category.`);e.forEach(({power:l})=>zr(l,"power","productOfEvidence"));let i=l=>e.reduce((d,{evidence:f,power:m})=>d*l(f)**m,r),t=i(l=>l.value),o=e.map(({evidence:l,power:d})=>(d*l.standardUncertainty/l.value)**2),a=o.reduce((l,d)=>l+d,0),s=o.reduce((l,d,f)=>l+d**2/e[f].evidence.degreesOfFreedom,0),u=[...new Set(e.flatMap(({evidence:l})=>Object.keys(l.without)))].sort(),c=(l,d)=>{let f=l.without[d];return f===void 0?l.value:f};return{value:t,standardUncertainty:t*Math.sqrt(a),degreesOfFreedom:s===0?1/0:a**2/s,shared:e.flatMap(({evidence:l,power:d})=>l.shared.map(({source:f,sensitivity:m})=>({source:f,sensitivity:d*m}))),without:Object.fromEntries(u.map(l=>[l,e.some(({evidence:d})=>c(d,l)===null)?null:i(d=>c(d,l))]))}}function eq(e){hde(e);let r=e.map(({sensitivity:a,standardUncertainty:s})=>Math.abs(a)*s),n=ye(r.map(a=>a**2)),i=Math.sqrt(n),t=a=>n>0?r[a]**2/n:0,o=ye(e.map(({degreesOfFreedom:a},s)=>t(s)**2/a));return{combined:i,effectiveDegreesOfFreedom:o>0?1/o:1/0,expanded:a=>a*i,shares:e.map(({name:a,kind:s},u)=>({name:a,kind:s,contribution:r[u],sharePercent:100*t(u)}))}}function hde(e){if(e.length===0)throw new q("uncertainty/no-components","combineBudget: found no component, expected at least 1. List what the result depends on.");for(let{name:r,standardUncertainty:n,sensitivity:i,degreesOfFreedom:t}of e)if(Dr(n,`standardUncertainty of ${r}`,"combineBudget"),Jt(t,`combineBudget, ${r}`),!Number.isFinite(i))throw new q("measurement/not-a-number",`combineBudget: the sensitivity of ${r} is ${i}, expected a finite number.`)}var rq=e=>({value:e,standardUncertainty:null,degreesOfFreedom:0,budget:[]});function tq(e,r){let{value:n,standardUncertainty:i,degreesOfFreedom:t,shared:o}=e,{combined:a,effectiveDegreesOfFreedom:s,shares:u}=eq([{name:"repeatability",kind:"A",standardUncertainty:i,sensitivity:1,degreesOfFreedom:t},...o.map(({source:c,sensitivity:l})=>{let{relativeStandardUncertainty:d,degreesOfFreedom:f}=Xt(c,r),m=c.startsWith("certificate:")?"B":"A";return{name:c,kind:m,standardUncertainty:d,sensitivity:n*l,degreesOfFreedom:f}})]);return{value:n,standardUncertainty:a,degreesOfFreedom:s,budget:u}}function nq({value:e,standardUncertainty:r,degreesOfFreedom:n}){if(r===null)return null;let i=r*mr(.975,Math.min(1e6,Math.max(1,n)));return{low:e-i,high:e+i}}function iq(e,{rig:r,tester:n},i){let t=e.relativeVariance,o=s=>Math.max(0,t-Number(s.relativeSd)**2),a=s=>({relativeStandardUncertainty:Math.sqrt(s),degreesOfFreedom:e.degreesOfFreedom||1/0});return i?{rig:a(0),tester:n?ih(n):a(t)}:{rig:r?ih(r):a(n?o(n):t/2),tester:n?ih(n):a(r?o(r):t/2)}}var ih=({relativeSd:e,degreesOfFreedom:r})=>({relativeStandardUncertainty:Number(e),degreesOfFreedom:r});var oh=({parts:e})=>e.length===2,yde=["breakingForce","diameter"];function aq(e,r,n={}){let i=bde(r),t=Map.groupBy(i,({submission:d})=>d.variant),o=[...t.values()].filter(d=>d.length>1).map(d=>d.flatMap(oq)),{relativeVariance:a,degreesOfFreedom:s}=Il(o.filter(d=>d.length>1).map(d=>d.map(({value:f,standardUncertainty:m})=>({mean:f,standardUncertainty:m})))),u=iq({relativeVariance:a,degreesOfFreedom:s},n,oh(e)),c=_de(e,i,u),l=d=>{let f=d.flatMap(oq);return f.length<d.length?null:RN(f.map(m=>wde(e,m)),c)};return{between:{relativePercent:100*Math.sqrt(a),degreesOfFreedom:s},sources:c,variants:new Map([...t].map(([d,f])=>[d,{points:f,evidence:l(f)}]))}}var oq=e=>e.standardUncertainty===null?[]:[{...e,standardUncertainty:e.standardUncertainty}];function bde([e,r]){return[...e?.means.values()??[]].flatMap(({submission:n,mean:i,relative:t})=>{if(r===void 0)return{submission:n,value:i,standardUncertainty:t&&i*Math.sqrt(t.variance),degreesOfFreedom:t?.degreesOfFreedom??0};let o=r.means.get(n.reference);return o?$de(n,[i,t],[o.mean,o.relative]):[]})}function $de(e,[r,n],[i,t]){let o=100*i/r;if(!n||!t)return{submission:e,value:o,standardUncertainty:null,degreesOfFreedom:0};let a=n.variance+t.variance,s=n.variance**2/n.degreesOfFreedom+t.variance**2/t.degreesOfFreedom;return{submission:e,value:o,standardUncertainty:o*Math.sqrt(a),degreesOfFreedom:s===0?1/0:a**2/s}}var sq=({key:e},{rig:r})=>`rig:${r}/${e}`,uq=({key:e},{tester:r})=>`tester:${r}/${e}`;function _de(e,r,n){return Object.fromEntries(r.flatMap(({submission:i})=>[[uq(e,i),n.tester],...oh(e)?[]:[[sq(e,i),n.rig]],...cq(e,i).map(({certificate:t,relative:o})=>[`certificate:${t}`,{relativeStandardUncertainty:o,degreesOfFreedom:1/0}])]))}var cq=({quantity:e},{calibration:r})=>r&&yde.includes(e)?[r]:[];function wde(e,{submission:r,value:n,standardUncertainty:i,degreesOfFreedom:t}){let o=[uq(e,r),...oh(e)?[]:[sq(e,r)],...cq(e,r).map(({certificate:a})=>`certificate:${a}`)];return{value:n,standardUncertainty:i,degreesOfFreedom:t,shared:o.map(a=>({source:a,sensitivity:1})),parties:[`tester:${r.tester}`,`rig:${r.rig}`]}}var lq=10;function Nl(e){if(ah(e,"digamma"),e<lq)return Nl(e+1)-1/e;let r=1/(e*e);return Math.log(e)-.5/e-r*(1/12-r*(1/120-r*(1/252-r*(1/240-r*(1/132-r*691/32760)))))}function uo(e){if(ah(e,"trigamma"),e<lq)return uo(e+1)+1/(e*e);let r=1/(e*e);return 1/e+r/2+r/e*(1/6-r*(1/30-r*(1/42-r*(1/30-r*(5/66-r*691/2730)))))}function dq(e){if(ah(e,"inverseTrigamma"),e>1e7)return 1/Math.sqrt(e);if(e<1e-6)return 1/e;let r=.5+1/e;for(let n=0;n<50;n++){let i=uo(r),t=(uo(r*1.0001)-uo(r*.9999))/(2e-4*r),o=i*(1-i/e)/t;if(r+=o,Math.abs(o)<=1e-14*r)break}return r}function ah(e,r){if(!(e>0&&e<1/0))throw new q("distributions/out-of-domain",`${r}: the argument is ${e}, expected a finite number above 0. Check the step before this one.`)}var Sde=3,Ide=1e-5;function fq(e){e.forEach(Nde);let r=e.filter(({degreesOfFreedom:i})=>i>0),n=r.length<Sde?null:Ode(r);return n?{priorVariance:n.variance,priorDegreesOfFreedom:n.degreesOfFreedom,moderated:e.map(i=>kde(i,n))}:{priorVariance:null,priorDegreesOfFreedom:0,moderated:e.map(i=>i.degreesOfFreedom>0?{...i}:null)}}function kde({variance:e,degreesOfFreedom:r},n){if(n.degreesOfFreedom===1/0)return{variance:n.variance,degreesOfFreedom:1/0};let i=n.degreesOfFreedom+r;return{variance:(n.degreesOfFreedom*n.variance+r*e)/i,degreesOfFreedom:i}}function Ode(e){let r=Vn(e.map(({variance:s})=>s)),n=Ide*(r>0?r:Math.max(...e.map(({variance:s})=>s)));if(n===0)return{variance:0,degreesOfFreedom:1/0};let i=e.map(({degreesOfFreedom:s})=>s/2),t=e.map(({variance:s},u)=>Math.log(Math.max(s,n))-Nl(i[u])+Math.log(i[u])),o=Be(t)**2-J(i.map(uo));if(o<=0)return{variance:Math.exp(J(t)),degreesOfFreedom:1/0};let a=dq(o);return{variance:Math.exp(J(t)+Nl(a)-Math.log(a)),degreesOfFreedom:2*a}}function Nde({variance:e,degreesOfFreedom:r},n){if(!(e>=0&&e<1/0&&r>=0&&r<1/0))throw new q("consensus/bad-variance",`moderatedVariances: variance ${n+1} is ${e} with ${r} degrees of freedom, expected both finite and 0 or more. Correct that entry.`)}var Pde={breakingForce:(e,r)=>r?e.treatedForceN:e.breakingForceN,diameterAlongStations:({diameterMm:e})=>e,linearDensity:({linearDensityTex:e})=>e},xde=["breakingForce","diameterAlongStations"];function sh({method:e,series:r,figure:n},i){return i.method!==e?null:n==="outOfRoundness"?i.figures.outOfRoundnessPercent:Pde[r.kind](i.figures,Yt(r))}function mq(e,r){let n=r.flatMap(s=>{let u=sh(e,s);return u&&u.mean>0?[{submission:s,spread:u}]:[]}),{priorVariance:i,moderated:t}=fq(n.map(({spread:{n:s,mean:u,sd:c}})=>({variance:c===null?0:(c/u)**2,degreesOfFreedom:s-1}))),o=e.figure==="mean"&&xde.includes(e.series.kind),a=n.map(({submission:s,spread:{n:u,mean:c,cvPercent:l}},d)=>{let f=o&&s.resolution!==null?s.resolution/c:0;return[s.reference,{submission:s,n:u,mean:c,ownCvPercent:l,relative:Ade(t[d]??null,u,f)}]});return{typicalCvPercent:i===null?null:100*Math.sqrt(i),means:new Map(a)}}function Ade(e,r,n){let i=Math.max(e?.variance??0,n**2/12)/r;return e&&i>0?{variance:i,degreesOfFreedom:e.degreesOfFreedom}:null}var Ede="Above 100 %: reported as found; straight and treated pulls scatter.";function pq(e,r,n,i,t={}){let o=new Map(r.filter(({parts:u})=>u.length>0).map(u=>[u.key,Dde(u,n,t)])),a=Object.assign({},...[...o.values()].map(({measured:u})=>u.sources)),s=u=>{let c=l=>zde(o.get(l)?.measured,u);return new Map(r.flatMap(l=>{let d=qde(l,c,i.get(u));return d?[[l.key,Cde(l,d,o.get(uh(l))?.series??[],a)]]:[]}))};return{quantities:r,results:new Map(e.map(u=>[u,s(u)])),sources:a,spreads:new Map([...o].map(([u,{series:c,measured:{between:l}}])=>[u,{typicalCvPercent:c.at(-1)?.typicalCvPercent??null,between:l}]))}}function Dde(e,r,n){let i=e.parts.map(t=>mq(t,r));return{series:i,measured:aq(e,i,n[e.key])}}var uh=e=>e.parts.length>0?e.key:_e(Fa(e));function zde(e,r){let n=e?.variants.get(r);return n?{value:n.evidence?.value??J(n.points.map(t=>t.value)),evidence:n.evidence,from:n.points.map(({submission:t})=>t)}:null}function qde(e,r,n){if(e.quantity==="strengthHonesty")return jde(r(_e(Fa(e))),n);let i=p1(e);return i?Tde(r(_e(Fa(e))),r(_e(i))):r(e.key)}function Tde(e,r){let n=(r?.from??[]).flatMap(({figures:s})=>s.areaMm2??[]);if(!e||!r||n.length===0)return null;let i=J(n)/r.value**2,t=e.value/(i*r.value**2),o={from:e.from,also:r.from};if(!e.evidence||!r.evidence)return{value:t,evidence:null,...o};let a=[{evidence:e.evidence,power:1},{evidence:r.evidence,power:-2}];return{value:t,evidence:nh(a,1/i),...o}}function jde(e,r){if(!e||r===void 0)return null;let n=e.evidence&&nh([{evidence:e.evidence,power:1}],100/r);return{value:100*e.value/r,evidence:n,from:e.from}}function Cde(e,{value:r,evidence:n,from:i,also:t=[]},o,a){let s=n?tq(n,a):rq(r),u=o.map(c=>c.means);return{of:e,estimate:s,evidence:n,ownCvPercents:i.map(({reference:c})=>u.at(-1)?.get(c)?.ownCvPercent??null),specimens:i.reduce((c,{reference:l})=>c+u.reduce((d,f)=>d+(f.get(l)?.n??0),0),0),submissions:i.length,testers:new Set(i.map(({tester:c})=>c)).size,rigs:new Set(i.map(({rig:c})=>c)).size,note:e.quantity==="retention"&&r>100?Ede:null,references:[...i,...t].map(({reference:c})=>c)}}var Rde=["loadFrame","forceGauge","opticalGauge","micrometer","balance"];function ch({instruments:e}){return(Rde.flatMap(n=>e.filter(i=>i.kind===n))[0]??e[0])?.code??"none"}function vq(e){let{edition:r,submissions:n,claims:i,instruments:t}=e,o=new Map(i.filter(({quantity:s})=>s==="breakingForce").map(({variant:s,valueSi:u})=>[s,Number(u)])),a=pq(r.entries.map(({variant:s})=>s),cP(r.scheme.rules.categories,r.methods),n.map(s=>Ude(s,t)),o,Ol(e,r.methods));return{...e,...a,standings:Lde(r,a.results)}}function Ude(e,r){let{reference:n,variant:i,method:t,tester:o}=e,a=ch(e),s=r.find(({code:u})=>u===a);return{reference:n,variant:i,method:t.slug,tester:o,rig:a,figures:so(e),calibration:Fde(e,s),resolution:s?Mde(s):null}}function Fde(e,r){let n=e.instruments.find(({code:s})=>s===r?.code)?.certificate,i=r?.calibrations.find(({certificate:s})=>s===n);if(!i)return null;let{certificate:t,expandedUncertaintyPercent:o,coverageFactor:a}=i;return{certificate:t,relative:Number(o)/Number(a)/100}}function Mde({resolution:e}){let{si:r,siUnit:n}=wP(e.text,e.unit);return n==="N"?Number(r):n==="m"?1e3*Number(r):null}function Lde({scheme:e,entries:r},n){let{categories:i,combine:t,countPlaces:o,tieBreak:a}=e.rules,s=r.map(({variant:u,exclusion:c})=>({id:u,exclusion:c&&{effect:c.effect},values:Object.fromEntries(i.map(l=>{let d=n.get(u)?.get(_e(l))?.estimate,f=d&&ro(l,u,n).length===0;return[l.code,f?W(d.value,l.places):null]}))}));return bP({categories:i,combine:t,countPlaces:o,tieBreak:a,entries:s})}function gq(e){let r=vq(e.evidence);return{...e,computed:r,certainty:vP(r,et(ut(Zde(e))))}}var Zde=({evidence:{edition:e,submissions:r}})=>({edition:e.slug,scheme:e.scheme.rules,submissions:r.map(({reference:n,specimens:i})=>({reference:n,specimens:i.map(({trace:t,...o})=>o)}))}),Se=({house:e,isDemo:r,revision:n,publishedAt:i,evidence:{edition:t}})=>({formatVersion:qt,house:e,isDemo:r,edition:{slug:t.slug,name:t.name,openedOn:t.opensOn,closedOn:t.closesOn},revision:n,publishedAt:i});function Bn({variants:e},r){let n=e.find(i=>i.slug===r);if(!n)throw new Error(`A release names a variant that is not among its inputs: ${r}`);return n}function hq(e,r,n,i){return{...Se(e),inputs:e,outputs:{results:Vde(r),edition:n,categories:i}}}function Vde({computed:{edition:e,results:r}}){return e.entries.flatMap(({variant:n})=>[...r.get(n)??[]].map(([i,{estimate:t}])=>({variant:n,quantity:i,value:vc(t.value),standardUncertainty:t.standardUncertainty===null?null:vc(t.standardUncertainty),degreesOfFreedom:t.standardUncertainty===null?null:vc(Math.min(1e6,t.degreesOfFreedom))})))}function bq(e){return{...Se(e),makers:yq(e.variants,({maker:r})=>r.slug).map(r=>({slug:r[0].maker.slug,name:r[0].maker.name,lines:yq(r,({line:n})=>n.slug).map(n=>{let{line:i,material:t,construction:o,carriers:a}=n[0];return{slug:i.slug,name:i.name,material:t,construction:o,carriers:a,variants:n}})})),methods:_q(e).map(([{slug:r,number:n}])=>({slug:r,number:n})),checks:[...e.checks]}}function $q(e){return _q(e).map(([r,n])=>{let{slug:i,name:t,number:o,effectiveFrom:a,effectiveUntil:s,wording:u,isComparableWithPrevious:c}=r;return{formatVersion:qt,slug:i,name:t,number:o,effectiveFrom:a,effectiveUntil:s,...u,series:n.map(l=>({...l})),parameters:Bde(r),limits:Wde(r),checks:e.checks.map(({code:l})=>l),checkSettings:Object.entries(r.checks??{}).map(([l,{severity:d=null,limits:f={}}])=>({check:l,severity:d,limits:Object.entries(f).map(([m,g])=>({name:m,value:g}))})),isComparableWithPrevious:c}})}var _q=({evidence:{edition:e},methods:r})=>e.methods.flatMap(({slug:n,number:i,series:t})=>r.filter(o=>o.slug===n&&o.number===i).map(o=>[o,t])),Bde=({parameters:{areaFrom:e,settings:r}})=>[...e===null?[]:[{name:"Cross-section from",value:e,unit:""}],...r];function Wde({limits:e}){let r=({low:n,high:i})=>`${n} to ${i}`;return[{name:"Least number of valid specimens",value:String(e.minimumSpecimens),unit:""},{name:"Largest coefficient of variation",value:String(e.maximumCvPercent),unit:"%"},{name:"Largest share of breaks at the grip",value:String(e.gripBreakSharePercent),unit:"%"},...e.timeToBreakS?[{name:"Time to break",value:r(e.timeToBreakS),unit:"s"}]:[],{name:"Ambient temperature",value:r(e.ambientTemperatureC),unit:"°C"},{name:"Relative humidity",value:r(e.ambientHumidityPercent),unit:"%"}]}function yq(e,r){let n=new Map;for(let i of[...e].sort((t,o)=>t.slug<o.slug?-1:1)){let t=n.get(r(i));t?t.push(i):n.set(r(i),[i])}return[...n].sort(([i],[t])=>i<t?-1:1).map(([,i])=>i)}function Pl(e,r){let n=r.map(i=>new Map(i.map(({id:t,place:o})=>[t,o])));return new Map(e.map(({id:i,place:t})=>[i,{...Gde(i,t,n),runAtTop:Hde(i,t,n)}]))}function Gde(e,r,n){let i=n[0]?.get(e)??null;return i===null?{kind:n.some(t=>(t.get(e)??null)!==null)?"returned":"new",places:null}:r===null?{kind:"unchanged",places:null}:{kind:i===r?"unchanged":"moved",places:i-r}}function Hde(e,r,n){if(r!==1)return 0;let i=n.findIndex(t=>t.get(e)!==1);return 1+(i===-1?n.length:i)}var lh=e=>e==null?null:W(100*e,1),xl=e=>({chanceOfFirstPercent:lh(e?.chanceOfFirst),chanceOfFirstFivePercent:lh(e?.chanceOfFirstFive),chanceAheadOfNextPercent:lh(e?.chanceAheadOfNext)});function Al(e){return e.map((r,n)=>r!==null&&e.some((i,t)=>t!==n&&i===r))}function wq(e,r){let{edition:n}=e.evidence,{code:i,method:t}=r,o=n.methods.find(({slug:c})=>c===t)?.number??0,a=e.earlier[0]?.categories.find(c=>c.code===i);if(!a)return"first";if(a.quantity!==_e(r))return"notComparable";if(a.methodVersion===o)return"same";let s=e.methods.filter(({slug:c,number:l})=>c===t&&l>a.methodVersion&&l<=o);return s.length>0&&s.every(c=>c.isComparableWithPrevious)?"changed":"notComparable"}function El(e,r){return r===null?{kind:"notComparable",places:null,runAtTop:0}:e??{kind:"new",places:null,runAtTop:0}}var Sq=e=>W(100*e,1);function Iq({sensitivity:e}){if(!e)return null;let{leftOut:r,weights:n}=e;return{leftOut:r.map(Kde),weights:n&&{firstPlaces:n.firstPlaces.map(({id:i,share:t})=>({variant:i,percent:Sq(t)})),smallestChange:n.smallestChange&&{variant:n.smallestChange.id,weightMovedPercent:Sq(n.smallestChange.weightMoved)}}}}function Kde({kind:e,name:r,first:n,swappedPairs:i,swaps:t,dropped:o}){let[a,...s]=r.split(":");return{kind:e==="party"?a:e,name:e==="party"?s.join(":"):r,first:[...n],swappedPairs:i,swaps:t.map(([u,c])=>({ahead:u,behind:c})),dropped:[...o]}}function dh(e){let{edition:r,quantities:n}=e.computed;return r.scheme.rules.categories.map(i=>{let{code:t,name:o,unit:a,tradeUnit:s,direction:u,weight:c,method:l,series:d,section:f,conditions:m}=i;return{code:t,name:o,quantity:_e(i),quantityName:n.find(({key:g})=>g===_e(i))?.name??o,unit:a,tradeUnit:s,direction:u,weight:c,method:l,series:d,section:f,methodVersion:r.methods.find(({slug:g})=>g===l)?.number??0,conditions:m,comparability:wq(e,i)}})}function kq(e,r){let{edition:n,submissions:i}=e.computed,{slug:t,name:o,words:a,number:s,rules:u}=n.scheme,c=i.flatMap(l=>l.specimens);return{...Se(e),previousEdition:n.previous,scheme:{slug:t,name:o,words:a,version:s,combine:u.combine,countPlaces:u.countPlaces,tieBreak:u.tieBreak,categories:dh(e)},counts:{entries:n.entries.length,submissions:i.length,specimens:c.length,testers:new Set(i.map(({tester:l})=>l)).size,rigs:new Set(i.flatMap(({instruments:l})=>l.filter(({kind:d})=>d==="loadFrame"||d==="forceGauge").map(({code:d})=>d))).size,setAside:c.filter(({state:l})=>l==="setAside").length},overall:Qde(e),incomplete:Jde(e),excluded:efe(e),categoryTops:u.categories.map(({code:l})=>({category:l,variants:Xde(e,l)})),sensitivity:Iq(e.certainty),erratum:r}}function Jde(e){let{edition:r,standings:n,results:i}=e.computed;return n.incomplete.map(({id:t,missing:o})=>({variant:Bn(e,t),missing:[...o],needs:r.scheme.rules.categories.flatMap(a=>ro(a,t,i).map(pP))}))}function Xde(e,r){let n=e.computed.standings.categories[r]??[],i=e.certainty.categories.get(r),t=({id:o,place:a})=>i?.size?i.get(o)?.group===1:a===1;return n.filter(t).map(({id:o})=>Bn(e,o))}function Qde(e){let{standings:r}=e.computed,n=Yde(e),i=Al(r.overall.map(({place:t})=>t));return r.overall.map(({id:t,place:o,placeIfIncluded:a,score:s,categoryPlaces:u},c)=>{let l=Bn(e,t),d=e.certainty.overall.get(t);return{variant:l,place:o,placeIfIncluded:a,isTied:i[c]??!1,group:d?.group??null,placeInterval:d?{low:d.low,high:d.high}:null,movement:El(n.get(l.slug),o),...xl(d),score:s,categoryPlaces:{...u}}})}function Yde(e){let r=e.computed.standings.overall.map(({id:n,place:i})=>({id:n,place:i}));return Pl(r,e.earlier.map(({overall:n})=>n.map(({variant:i,place:t})=>({id:i,place:t}))))}function efe(e){let{edition:r,standings:n}=e.computed;return r.entries.flatMap(({variant:i,exclusion:t})=>{if(!t)return[];let o=n.overall.find(({id:s})=>s===i),a=t.reasonCode;return[{variant:Bn(e,i),reasonCode:a,words:t.words,effect:t.effect,placeIfIncluded:o?.placeIfIncluded??null}]})}function Oq(e,r){let{factor:n,divisor:i,offset:t}=gt[rl(r)],o=Kc(e,"convert").times(i).div(n).minus(t).toSignificantDigits(Ca);return o.isZero()?"0":o.toString()}var co={breakingForce:{unit:"N",places:1,tradeUnit:"lbf",tradePlaces:2},apparentStress:{unit:"MPa",places:1,tradeUnit:"psi",tradePlaces:0},diameter:{unit:"mm",places:3,tradeUnit:"in",tradePlaces:4},outOfRoundness:{unit:"%",places:1,tradeUnit:null,tradePlaces:null},linearDensity:{unit:"tex",places:2,tradeUnit:"den",tradePlaces:0},retention:{unit:"%",places:1,tradeUnit:null,tradePlaces:null},strengthHonesty:{unit:"%",places:1,tradeUnit:null,tradePlaces:null}};function rfe(e,r,n,i){let{factor:t,divisor:o}=gt[r];return W(Oq(e*Number(t)/Number(o),n),i)}var lo=(e,r)=>fh(e.of,e.estimate.value,nq(e.estimate),e,r);function fh({key:e,name:r},n,i,{specimens:t,submissions:o,testers:a,rigs:s,note:u},{unit:c,places:l,tradeUnit:d,tradePlaces:f}){let m=h=>W(h,l),g=h=>rfe(h,c,d??c,f??l);return{quantity:e,name:r,unit:c,value:m(n),low:i&&m(i.low),high:i&&m(i.high),trade:d===null?null:{unit:d,value:g(n),low:i&&g(i.low),high:i&&g(i.high)},specimens:t,submissions:o,testers:a,rigs:s,note:u}}var Nq=1e6;function Pq(e,r=3,n=.8,i=.05){ve(e,"cvPercent","specimensToTell"),ve(r,"differencePercent","specimensToTell"),xe(n,"specimensToTell"),xe(i,"specimensToTell");let t=o=>{let a=o===1/0?1/0:2*o-2;return 2*((mr(1-i/2,a)+mr(n,a))*e/r)**2};for(let o=Math.max(2,Math.floor(t(1/0)));o<=Nq;o++)if(o>=t(o))return o;throw new q("uncertainty/too-many-specimens",`specimensToTell: more than ${Nq} specimens would be needed for CV ${e} % and ${r} %. Ask for a larger difference.`)}function xq({computed:{quantities:e,spreads:r}},n){let i=e.find(s=>s.key===n),t=i&&r.get(uh(i));if(!t)throw new Error(`A category ranks what no pinned method yields: ${n}`);let{typicalCvPercent:o,between:a}=t;return{specimenPercent:o===null?null:W(o,1),betweenSubmissionsPercent:W(a.relativePercent,1),degreesOfFreedom:a.degreesOfFreedom,specimensToTell:o===null||o===0?null:Pq(o)}}var tfe=.05;function Aq(e){return dh(e).map(r=>({...Se(e),category:r,spread:xq(e,r.quantity),rows:nfe(e,r)}))}function nfe(e,r){let{standings:n,results:i,edition:t}=e.computed,o=t.scheme.rules.categories.find(({code:c})=>c===r.code),a=n.categories[r.code]??[],s=Al(a.map(({place:c})=>c)),u=ife(e,r,a);return a.flatMap(({id:c,place:l,placeIfIncluded:d},f)=>{let m=i.get(c)?.get(r.quantity);if(!m||!o)return[];let g=Bn(e,c),h=e.certainty.categories.get(r.code)?.get(c);return[{variant:g,place:l,placeIfIncluded:d,isTied:s[f]??!1,group:h?.group??null,placeInterval:h?{low:h.low,high:h.high}:null,movement:El(u(g.slug),l),...xl(h),figure:lo(m,o),change:ofe(e,r,g.slug,m.estimate)}]})}function ife(e,r,n){let i=n.map(({id:a,place:s})=>({id:a,place:s})),t=e.earlier.map(({categories:a})=>(a.find(({code:s})=>s===r.code)?.rows??[]).map(({variant:s,place:u})=>({id:s,place:u}))),o=Pl(i,t);return a=>{let s=o.get(a)??{kind:"new",places:null,runAtTop:0};return r.comparability==="notComparable"&&s.kind!=="new"?{...s,kind:"notComparable",places:null}:s}}function ofe(e,r,n,i){let t=e.earlier[0]?.results.find(({variant:f,quantity:m})=>f===n&&m===r.quantity);if(!t)return{kind:"first",percent:null};if(r.comparability==="notComparable")return{kind:"notComparable",percent:null};let o=Number(t.value),a=W(100*(i.value-o)/o,1);if(i.standardUncertainty===null||t.standardUncertainty===null)return{kind:"withinNoise",percent:a};let[s,u]=[i.standardUncertainty**2,Number(t.standardUncertainty)**2],c=(s+u)**2/(s**2/i.degreesOfFreedom+u**2/Number(t.degreesOfFreedom)),l=Math.abs(i.value-o)/Math.sqrt(s+u);return{kind:2*(1-$l(l,Math.min(1e6,c)))<tfe?"changed":"withinNoise",percent:a}}function Eq(e,r){if(Dr(e,"measured","claimRatioPercent"),!(r>0&&r<1/0))throw new q("claims/zero-claim",`claimRatioPercent: the claim is ${r}, expected a finite number above 0. Leave the ratio out.`);return 100*e/r}function Dq(e,r,n){ve(e,"claimed","claimLimits"),Dr(r,"tolerancePercent","claimLimits");let i=e*r/100;return{...n!=="at-most"&&{low:e-i},...n!=="at-least"&&{high:e+i}}}function afe(e,r,n,i=1/0){ufe(e,n),Dr(r,"standardUncertainty","conformityProbability");let{low:t=-1/0,high:o=1/0}=n;if(r===0)return e>=t&&e<=o?1:0;let[a,s]=[(t-e)/r,(o-e)/r],u=c=>$l(c,i);return a>0?u(-a)-u(-s):u(s)-u(a)}function zq(e,r,n,i,t=1/0){Dr(r,"expandedUncertainty","decideClaim"),ve(n,"coverageFactor","decideClaim");let o=afe(e,r/n,i,t);return{conformityProbability:o,verdict:sfe(o)}}function sfe(e){if(!(e>=0&&e<=1))throw new q("distributions/out-of-domain",`claimVerdict: p is ${e}, expected 0 ≤ p ≤ 1. Give a probability.`);return e>=.95?"meets":e>=.8?"probably meets":e<=.05?"falls short":e<=.2?"probably falls short":"cannot say"}function ufe(e,{low:r,high:n}){if(r===void 0&&n===void 0)throw new q("claims/no-limit","conformityProbability: found no limit, expected low, high or both. State what the claim bounds.");let i=[e,r,n].find(t=>t!==void 0&&!Number.isFinite(t));if(i!==void 0)throw new q("measurement/not-a-number",`conformityProbability: found ${i}, expected finite numbers. Leave out a limit that is not there.`);if(r!==void 0&&n!==void 0&&r>n)throw new q("claims/bad-limits",`conformityProbability: low is ${r} and high is ${n}, expected low ≤ high. Swap the limits.`)}var cfe={meets:"meets","probably meets":"probablyMeets","cannot say":"cannotSay","probably falls short":"probablyFallsShort","falls short":"fallsShort"},qq={breakingForce:{factor:1,unit:"N",sense:"at-least"},diameter:{factor:1e3,unit:"mm",sense:"at-most"},linearDensity:{factor:1e6,unit:"tex",sense:"within"},peNumber:{factor:1,unit:"PE",sense:"within"}},lfe={"at-least":0,"at-most":0,within:5};function Dl(e,r){let n=e.computed.results.get(r);return e.evidence.claims.filter(i=>i.variant===r).map(({quantity:i,basis:t,printed:o,valueSi:a,seenOn:s,source:u})=>{let{factor:c,unit:l}=qq[i],d=Number(a)*c,f=n?.get(el(e.computed.quantities,i)?.key??"");return{quantity:i,basis:t,printed:o,value:W(d,4),unit:l,seenOn:s,source:u,measured:f?lo(f,co[f.of.quantity]):null,ratioPercent:f?W(Eq(f.estimate.value,d),1):null,decision:f?dfe(f,d,i):null}})}function dfe({estimate:e},r,n){if(e.standardUncertainty===null)return null;let{sense:i}=qq[n],t=Dq(r,lfe[i],i);return cfe[zq(e.value,e.standardUncertainty,1,t,e.degreesOfFreedom).verdict]}var Tq=e=>({...Se(e),items:e.variants.map(r=>({variant:r,claims:Dl(e,r.slug)})).filter(({claims:r})=>r.length>0)});function jq(e){let{pairs:r}=e.certainty,n=r?.variants??[],i=n.length;return{...Se(e),variants:[...n],aheadPercent:n.map((t,o)=>n.map((a,s)=>Math.round(100*(r?.chances[o*i+s]??.5))))}}function Cq(e){if(e.length===0)throw new q("measurement/too-few-readings","pairedReproducibility: found no pair, expected at least 1. Test something again.");let r=e.map(([o,a])=>(ve(o,"first","pairedReproducibility"),ve(a,"again","pairedReproducibility"),Math.log(a/o)**2)),n=e.length,i=Math.sqrt(r.reduce((o,a)=>o+a,0)/(2*n)),t=o=>i*Math.sqrt(n/Br(o,n));return{relativeSd:i,low95:t(.975),high95:t(.025),pairs:n}}function Uq(e){let{retests:r,submissions:n}=e.evidence,i=(r?.drawn??[]).map(({original:t,again:o})=>ffe(t,o,n));return{...Se(e),draw:r?{seed:r.seed,percent:r.percent,from:[...r.from],drawnOn:r.drawnOn}:null,pairs:i.map(({original:t,again:o,found:a})=>({original:t,again:o?.reference??null,variant:a?.submission.variant??null,method:a?.submission.method.slug??null,first:a?W(a.first.value,1):null,second:a?W(a.second.value,1):null,unit:a?.first.unit??null,differencePercent:a?W(100*(a.second.value/a.first.value-1),1):null})),reproducibility:[...Map.groupBy(i.flatMap(({found:t})=>t??[]),({submission:t})=>t.method.slug)].map(([t,o])=>{let{relativeSd:a,low95:s,high95:u,pairs:c}=Cq(o.map(({first:m,second:g})=>[m.value,g.value])),[l,d,f]=[a,s,u].map(m=>W(100*m,1));return{method:t,pairs:c,relativePercent:l,low:d,high:f}})}}function ffe(e,r,n){let i=n.find(({reference:a})=>a===e),[t,o]=[i&&Rq(i),r&&Rq(r)];return{original:e,again:r,found:i&&t&&o?{submission:i,first:t,second:o}:null}}function Rq(e){let{retentionPercent:r,breakingForceN:n}=so(e);return r?{value:r.value,unit:"%"}:n?{value:n.mean,unit:"N"}:null}var Fq=3,yt=e=>e==null?null:W(e,Fq);function mfe({pull:e,meanN:r,judged:n}){let i=n?.limits;return{benchDay:e.benchDay,tester:e.tester,readings:e.readings.map(({text:t,unit:o,valueN:a})=>({text:t,unit:o,valueN:a})),meanN:W(r,Fq),movingRangeN:yt(n?.movingRange),centreN:yt(i?.centre),sigmaN:yt(i?.sigma),lowN:i?yt(i.centre-3*i.sigma):null,highN:i?yt(i.centre+3*i.sigma):null,ewmaN:yt(n?.ewma),...pfe(n),signals:[...n?.signals??[]],state:n?.state??null,ambient:e.ambient??null,note:e.note,strike:e.strike}}function pfe(e){let{limits:r,ewmaLimits:n,ewma:i,movingRange:t}=e??{};if(!r||!n)return{movingRangeHighN:null,ewmaLowN:null,ewmaHighN:null,warnings:[]};let o=wl(r.sigma),a=(t??0)>o,s=i!=null&&(i<n.low||i>n.high);return{movingRangeHighN:yt(o),ewmaLowN:yt(n.low),ewmaHighN:yt(n.high),warnings:[...a?["movingRange"]:[],...s?["movingAverage"]:[]]}}var Mq=({instrument:e,method:r,controlLine:n,pulls:i})=>({instrument:e,method:r,controlLine:n,points:i.map(mfe)});function Lq(e){let{instruments:r,submissions:n}=e.evidence,i=Sl(e.evidence.controlPulls??[]).map(Mq);return{...Se(e),testers:vfe(n),agreement:gfe(e),effects:hfe(e),instruments:r.map(({code:t,kind:o,name:a,capacity:s,resolution:u,calibrations:c})=>({code:t,kind:o,name:a,capacity:s,resolution:u,calibrations:c.map(l=>({...l})),submissions:n.filter(l=>l.instruments.some(d=>d.code===t)).length,charts:i.filter(({instrument:l})=>l===t)}))}}function vfe(e){return[...Map.groupBy(e,({tester:n})=>n)].map(([n,i])=>({name:n,submissions:i.length,specimens:i.reduce((t,{specimens:o})=>t+o.length,0),benchDays:new Set(i.map(({benchDay:t})=>t)).size})).sort((n,i)=>n.name<i.name?-1:1)}var gfe=({computed:{quantities:e,spreads:r}})=>[...r].filter(([,{between:n}])=>n.degreesOfFreedom>0).map(([n,{typicalCvPercent:i,between:t}])=>({quantity:n,name:Zq(e,n),specimenPercent:i===null?null:W(i,1),betweenSubmissionsPercent:W(t.relativePercent,1),degreesOfFreedom:t.degreesOfFreedom})),Zq=(e,r)=>e.find(n=>n.key===r)?.name??r,hfe=({evidence:e,computed:{quantities:r}})=>Object.entries(Ol(e,e.edition.methods)).flatMap(([n,i])=>["rig","tester"].flatMap(t=>{let o=i[t];if(!o)return[];let{relativeSd:a,degreesOfFreedom:s,source:u}=o;return[{quantity:n,name:Zq(r,n),cause:t,relativePercent:W(100*Number(a),2),degreesOfFreedom:s,source:u}]}));var yfe=1.483,bfe=1.134,Vq=1.5,$fe=1e3;function Bq(e){be(e,2,"algorithmA");let r=Vn(e),n=yfe*Vn(e.map(t=>Math.abs(t-r))),i=[[r,n]];for(let t=0;t<$fe;t++){let[o,a]=[r-Vq*n,r+Vq*n],s=e.map(l=>Math.min(a,Math.max(o,l))),[u,c]=[r,n];if(r=J(s),n=bfe*Be(s),i.push([r,n]),Math.abs(r-u)<=1e-12*n&&Math.abs(n-c)<=1e-12*n)break}return{mean:r,sd:n,rounds:i}}var Tfe=$t(eT(),1),uT=$t(sT(),1);function zl(e,r,n){return xe(e,"fQuantile"),Gc(r,"fQuantile"),Jt(n,"fQuantile"),n===1/0?Br(e,r)/r:(0,uT.default)(e,r,n)}function ql(e,r){xe(r,"mandelHCritical"),Number.isInteger(e)&&e>=3||cT("mandelHCritical",e,3);let n=mr(1-r/2,e-2);return(e-1)*n/Math.sqrt(e*(n*n+e-2))}function Tl(e,r,n){if(xe(n,"mandelKCritical"),Number.isInteger(e)&&e>=2||cT("mandelKCritical",e,2),!(r>=2))throw new q("measurement/too-few-readings",`mandelKCritical: found ${r} readings per tester, expected at least 2. Repeat the pulls.`);let i=zl(1-n,r-1,(e-1)*(r-1));return Math.sqrt(e/(1+(e-1)/i))}function cT(e,r,n){throw new q("agreement/too-few-testers",`${e}: found ${r} testers, expected a whole number of at least ${n}. Invite another tester.`)}function lT(e,r,n){return zr(e-r,"distance from the assigned value","zScore"),ve(n,"proficiencySd","zScore"),(e-r)/n}function jfe(e,r,n){if(xe(n,"cochranCritical"),!(e>=2&&r>=2))throw new q("measurement/too-few-readings",`cochranCritical: found ${e} groups of ${r}, expected at least 2 groups of 2. Collect more readings.`);let i=e-1,t=zl(1-n/e,r-1,i*(r-1));return 1/(1+i/t)}function dT(e,r,n=.05){be(e,2,"cochranTest");let i=e.findIndex(s=>s<0);if(i>=0)throw new q("outliers/negative-deviation",`cochranTest: standard deviation ${i+1} is ${String(e[i])}, expected 0 or more. Give standard deviations, not differences.`);let t=jfe(e.length,r,n),o=e.reduce((s,u)=>Math.max(s,u));if(o===0)return{statistic:0,critical:t,suspectIndex:null,isOutlier:!1};let a=1/ye(e.map(s=>(s/o)**2));return{statistic:a,critical:t,suspectIndex:e.indexOf(o),isOutlier:a>t}}var Cfe=[2e-4,.009,.0349,.0708,.1101,.1492,.1864,.2213,.2537,.2836,.3112,.3367,.3603,.3822,.4025,.4214,.4391],Rfe=[0,.0018,.0116,.0308,.0563,.0851,.115,.1448,.1738,.2016,.228,.253,.2767,.299,.32,.3398,.3585];function Ufe(e,r){let n=(r===.05?Cfe:Rfe)[e-4];if(n===void 0)throw new q("outliers/no-critical-value",`doubleGrubbsCritical: n is ${e}, expected 4 to 20. Use the generalised ESD test.`);return n}function mT(e,r=.05){be(e,4,"doubleGrubbsTest");let n=Ufe(e.length,r),i=[...e].sort((c,l)=>c-l),t=fT(i),o=i[0]===i[i.length-1],a=c=>o?1:fT(c)/t,s=a(i.slice(2)),u=a(i.slice(0,-2));return{ratioWithoutTwoSmallest:s,ratioWithoutTwoLargest:u,critical:n,areTwoSmallestOutliers:s<n,areTwoLargestOutliers:u<n}}function fT(e){let r=J(e);return ye(e.map(n=>(n-r)**2))}function Ffe(e,r,n="both"){if(xe(r,"grubbsCritical"),!(e>=3))throw new q("measurement/too-few-readings",`grubbsCritical: n is ${e}, expected at least 3. Test a larger set.`);let i=mr(r/((n==="both"?2:1)*e),e-2);return(e-1)/Math.sqrt(e)*Math.sqrt(i*i/(e-2+i*i))}function pT(e,r=.05,n="both"){be(e,3,"grubbsTest");let i=Ffe(e.length,r,n),{statistic:t,suspectIndex:o}=Mfe(e,n);return{statistic:t,critical:i,suspectIndex:o,isOutlier:t>i}}function Mfe(e,r){if(be(e,2,"mostExtreme"),e.every(a=>a===e[0]))return{statistic:0,suspectIndex:null};let n=J(e),i=Be(e),t=a=>r==="high"?a-n:r==="low"?n-a:Math.abs(a-n),o=e.reduce((a,s,u)=>t(s)>t(e[a])?u:a,0);return{statistic:t(e[o])/i,suspectIndex:o}}function vT(e,r=.005){let n=e.cellMeans.length,i=Lfe(e.cellSizes),t=(o,a)=>o.flatMap((s,u)=>s!==null&&Math.abs(s)>a?[u]:[]);return{farMeans:n<3?null:t(e.h,ql(n,r)),wideSpreads:t(e.k,Tl(n,i,r)),cochran:dT(e.cellSds,i),grubbs:n<3?null:pT(e.cellMeans),doubleGrubbs:n<4||n>20?null:mT(e.cellMeans)}}function Lfe(e){let r=n=>e.filter(i=>i===n).length;return e.reduce((n,i)=>r(i)>r(n)||r(i)===r(n)&&i<n?i:n)}var hh=.005,fo=e=>W(e,3),Ya=e=>W(e,2),yT=({slug:e,name:r,words:n,method:i,specimens:t,closedOn:o,testers:a,levels:s,cells:u})=>({slug:e,name:r,words:n,method:i,specimens:t,testers:a,closedOn:o,levels:s.map(c=>Bfe(c,u.filter(l=>l.level===c).toSorted((l,d)=>l.tester-d.tester)))}),Zfe={meanN:null,repeatabilitySdN:null,betweenSdN:null,reproducibilitySdN:null,hCritical:null,kCritical:null,cochran:null},Vfe={meanN:null,sdN:null,h:null,k:null,z:null,isFar:!1,isWide:!1};function Bfe(e,r){let n=r.map(({readings:c})=>c.map(({valueN:l})=>Number(l)));if(n.length<2)return{...Zfe,level:e,cells:r.map(c=>({...Vfe,...hT(c)}))};let i=kl(n),{farMeans:t,wideSpreads:o,cochran:a}=vT(i,hh),s=Bq(i.cellMeans),u=c=>s.sd>0?Ya(lT(c,s.mean,s.sd)):null;return{level:e,meanN:fo(i.mean),repeatabilitySdN:fo(i.repeatabilitySd),betweenSdN:fo(i.betweenSd),reproducibilitySdN:fo(i.reproducibilitySd),hCritical:r.length<3?null:Ya(ql(r.length,hh)),kCritical:Ya(Tl(r.length,i.cellSizes[0]??2,hh)),cochran:{statistic:Ya(a.statistic),isOutlier:a.isOutlier},cells:r.map((c,l)=>({...hT(c),meanN:fo(i.cellMeans[l]??0),sdN:fo(i.cellSds[l]??0),h:gT(i.h[l]),k:gT(i.k[l]),z:u(i.cellMeans[l]??0),isFar:t?.includes(l)??!1,isWide:o.includes(l)}))}}var gT=e=>e==null?null:Ya(e),hT=({tester:e,instrument:r,readings:n})=>({tester:e,instrument:r,readings:n.map(({text:i,unit:t,valueN:o})=>({text:i,unit:t,valueN:o}))});var bT=e=>({...Se(e),items:(e.evidence.roundRobins??[]).map(yT)});var yh=(e,r)=>`${e}, ${r}, value`;function Wfe({edition:e,categories:r}){let n=e.overall.flatMap(({variant:a,place:s,placeIfIncluded:u,score:c})=>[[`overall, ${a.slug}, place`,s===null?`(${u??"unplaced"})`:String(s)],[`overall, ${a.slug}, score`,c]]),i=r.flatMap(({category:a,rows:s})=>s.flatMap(({variant:u,place:c,figure:l})=>[[`${a.code}, ${u.slug}, place`,String(c??"unplaced")],[yh(a.code,u.slug),`${l.value} ${l.unit}`]])),t=e.overall.some(({group:a})=>a!==null),o=e.overall.filter(({place:a,group:s})=>t?s===1:a===1).map(({variant:a})=>a.slug);return{cells:Object.fromEntries([...n,...i]),top:o}}function $T({reasonCode:e,words:r,expects:n,before:i},t){let o=Wfe(t),a=[...new Set([...Object.keys(i.cells),...Object.keys(o.cells)])].filter(l=>i.cells[l]!==o.cells[l]).sort().map(l=>({where:l,before:i.cells[l]??null,after:o.cells[l]??null})),s=l=>a.filter(({where:d})=>d.endsWith(l)).length,u=i.top.join()===o.top.join()?"top group unchanged":"top group changed",c=(l,d)=>`${l} ${d}${l===1?"":"s"} changed`;return{reasonCode:e,words:r,expected:[...n],changes:a,consequences:`${c(s(", value"),"value")}, ${c(s(", place"),"place")}, ${u}`}}var Gfe=1e3;function _T(e,{value:r,standardUncertainty:n,degreesOfFreedom:i,budget:t}){if(n===null)return[];let o=t.map(({name:s,sharePercent:u})=>({...Kfe(s),sharePercent:u})),a=Map.groupBy(o,({component:s,of:u})=>`${s} ${u??""}`);return[{category:e,standardUncertaintyPercent:W(100*n/r,2),degreesOfFreedom:i>Gfe?null:Math.floor(i),lines:[...a.values()].map(s=>({first:s[0],share:s.reduce((u,{sharePercent:c})=>u+c,0)})).sort((s,u)=>u.share-s.share).flatMap(({first:s,share:u})=>s?[{component:s.component,of:s.of,sharePercent:W(u,1)}]:[])}]}var Hfe=new RegExp(`^(tester|rig|certificate):(.+?)(?:/(?:${eo.join("|")})/[a-z0-9/-]+)?$`);function Kfe(e){let[,r,n]=Hfe.exec(e)??[];return r===void 0?{component:"repeatability",of:null}:{component:r,of:n??null}}var bh=({house:e,revision:r,evidence:{edition:n,withdrawn:i}})=>i.map(({reference:t,variant:o,method:a,tester:s,benchDay:u,withdrawnOn:c,reason:l})=>({reference:t,variant:o,method:a,tester:s,benchDay:u,withdrawnOn:c,reason:l,citation:`${e}: submission ${t}, withdrawn on ${c}. ${n.name}, edition ${n.slug}, revision ${r}.`})),wT=e=>({...Se(e),items:bh(e)});function ST(e,r){let{reference:n,revision:i,method:t,tester:o,reviewer:a,spool:s,benchDay:u,specimens:c,findings:l}=e;return{reference:n,revision:i,method:t.slug,methodVersion:t.number,tester:o,reviewer:a,rig:ch(e),instruments:e.instruments.map(({code:d,certificate:f})=>({code:d,calibration:f})),spool:s,benchDay:u,figures:Xfe(e,r),findings:l.map(({code:d,message:f,resolution:m})=>({code:d,message:f,resolution:m})),specimens:c.map(({number:d,condition:f,state:m,reason:g,readings:h,trace:b})=>({number:d,condition:f,state:m,reason:g,readings:h.map(({role:y,station:S,enteredText:$,enteredUnit:N,valueSi:P,siUnit:A})=>({role:y,station:S,entered:{text:$,unit:N},value:P,unit:A})),...b?{trace:Jfe(b)}:{}}))}}var Jfe=({figures:e,points:r,...n})=>({...n,figures:{...e,slips:e.slips.map(i=>({...i}))},points:r.map(([i,t])=>[i,t])});function Xfe(e,r){let n=so(e),i={method:e.method.slug,figures:n},t=r.find(({slug:o})=>o===i.method);return(t?lP(t):[]).flatMap(o=>{let a=o.parts.map(l=>sh(l,i)),[s]=a,u=o.quantity==="retention"?n.retentionPercent:s&&{...s,value:s.mean},c=a.reduce((l,d)=>l+(d?.n??0),0);return u?[Qfe(o,c,u)]:[]})}function Qfe(e,r,{value:n,low95:i,high95:t}){return fh(e,n,i===null||t===null?null:{low:i,high:t},{specimens:r,submissions:1,testers:1,rigs:1,note:null},co[e.quantity])}function IT(e,r,n,i){return e.variants.map(t=>Yfe(e,t,r,n,i))}function Yfe(e,r,n,i,t){let o=n.excluded.find(d=>d.variant.slug===r.slug),a=n.incomplete.find(d=>d.variant.slug===r.slug),s=n.overall.find(d=>d.variant.slug===r.slug),u=i.flatMap(({category:d,rows:f})=>f.filter(m=>m.variant.slug===r.slug).map(({variant:m,...g})=>({category:d,row:g}))),c=o?"excluded":a?"incomplete":"placed",l=[...e.computed.results.get(r.slug)??[]];return{...Se(e),variant:r,outcome:c,exclusion:o?{reasonCode:o.reasonCode,words:o.words,effect:o.effect,placeIfIncluded:o.placeIfIncluded}:null,missing:a?.missing??[],overall:s?rme(s):null,categories:u,figures:l.map(([,d])=>lo(d,co[d.of.quantity])),evidence:l.map(([d,{references:f}])=>({quantity:d,submissions:[...f].sort()})),claims:Dl(e,r.slug),submissions:e.evidence.submissions.filter(d=>d.variant===r.slug).map(d=>ST(d,e.evidence.edition.methods)),withdrawn:bh(e).filter(d=>d.variant===r.slug),spools:tme(e,r.slug),budgets:eme(e,r.slug),history:[...nme(e,r.slug),ime(e,r.slug,t,{outcome:c,overallPlace:s?.place??null,rows:u})],siblings:e.variants.filter(({line:d,slug:f})=>d.slug===r.line.slug&&f!==r.slug)}}var eme=({computed:e,evidence:r},n)=>r.edition.scheme.rules.categories.flatMap(i=>{let t=e.results.get(n)?.get(_e(i));return t?_T(i.code,t.estimate):[]}),rme=({variant:e,...r})=>r;function tme(e,r){let n=new Set(e.evidence.submissions.map(({spool:i})=>i));return e.spools.filter(({variant:i,code:t})=>i===r&&n.has(t)).map(({code:i,source:t,obtainedOn:o,place:a,lot:s,reidentifications:u})=>({code:i,source:t,obtainedOn:o,place:a,lot:s,reidentified:u.at(-1)?.reason??null}))}function nme(e,r){return e.earlier.flatMap(({history:n})=>n.find(({variant:i})=>i===r)?.point??[]).reverse()}function ime(e,r,n,{outcome:i,overallPlace:t,rows:o}){return{edition:e.evidence.edition.slug,revision:e.revision,overallPlace:t,outcome:i,categories:o.map(({category:a,row:s})=>({code:a.code,place:s.place,value:s.figure.value,low:s.figure.low,high:s.figure.high,unit:s.figure.unit,trade:s.figure.trade,methodVersion:a.methodVersion,isBreak:a.comparability==="notComparable",isCorrected:n.has(yh(a.code,r))}))}}function kT(e){return[...e.earlier.map(n=>{let i=new Map(n.results.map(({variant:t,quantity:o,value:a})=>[`${t} ${o}`,Number(a)]));return{edition:n.edition,places:new Map([["overall",n.overall],...n.categories.map(({code:t,rows:o})=>[t,o])]),methodVersions:new Map(n.categories.map(({code:t,methodVersion:o})=>[t,o])),valueOf:(t,o)=>i.get(`${t} ${o}`)}}).reverse(),ome(e)]}function ome({computed:{edition:e,standings:r,results:n}}){let i=t=>t.map(({id:o,place:a})=>({variant:o,place:a}));return{edition:e.slug,places:new Map([["overall",i(r.overall)],...Object.entries(r.categories).map(([t,o])=>[t,i(o)])]),methodVersions:new Map(e.scheme.rules.categories.map(({code:t,method:o})=>[t,e.methods.find(({slug:a})=>a===o)?.number??0])),valueOf:(t,o)=>n.get(t)?.get(o)?.estimate.value}}var OT=(e,r)=>W(e,r);var $h=[0,50,100,200,400],ame=e=>$h.filter(r=>e>=r).at(-1)??0;function NT(e,r){let n=el(e.computed.quantities,"breakingForce")?.key??"";return e.evidence.edition.scheme.rules.categories.flatMap(i=>{let t=sme(e,i,r),o=t.flatMap(a=>ume(a,i,n));return[...Map.groupBy(o,({from:a})=>a)].sort(([a],[s])=>a-s).map(([a,s])=>cme(i,a,s,t[0]?.edition??"",e.evidence.edition.slug))})}function sme({methods:e},{code:r,method:n},i){let t=i.filter(({methodVersions:s})=>s.has(r)),o=(s,u)=>{let[c,l]=[u.methodVersions.get(r)??0,s.methodVersions.get(r)??0];return e.some(d=>d.slug===n&&d.number>c&&d.number<=l&&!d.isComparableWithPrevious)},a=t.findLastIndex((s,u)=>u>0&&o(s,t[u-1]??s));return t.slice(Math.max(0,a))}function ume(e,r,n){let{code:i,places:t}=r;return(e.places.get(i)??[]).flatMap(({variant:o,place:a})=>{let[s,u]=[e.valueOf(o,_e(r)),e.valueOf(o,n)];return a===null||s===void 0||u===void 0?[]:[{edition:e.edition,variant:o,from:ame(u),value:OT(s,t)}]})}function cme({code:e,unit:r,direction:n},i,t,o,a){let s=(f,m)=>n==="more"?Number(f)>Number(m):Number(f)<Number(m),u=t.reduce((f,m)=>s(m.value,f.value)?m:f),c=t.filter(({value:f})=>f===u.value),[l=u,...d]=c;return{category:e,strengthFromN:i,strengthBelowN:$h[$h.indexOf(i)+1]??null,value:l.value,unit:r,variant:l.variant,edition:l.edition,equalled:d.map(({variant:f,edition:m})=>({variant:f,edition:m})),isNew:l.edition===a,since:o}}function PT(e){return[...new Set(e.flatMap(({places:n})=>[...n.keys()]))].flatMap(n=>lme(n,e).sort((i,t)=>t.editions.length-i.editions.length))}function lme(e,r){let n=[],i=new Map;for(let{edition:t,places:o}of r){let a=(o.get(e)??[]).filter(({place:s})=>s===1).map(({variant:s})=>s);for(let[s,u]of i)a.includes(s)||n.push({table:e,variant:s,editions:u,isGoingOn:!1});i=new Map(a.map(s=>[s,[...i.get(s)??[],t]]))}return[...n,...[...i].map(([t,o])=>({table:e,variant:t,editions:o,isGoingOn:!0}))]}function xT(e){let r=kT(e);return{...Se(e),records:NT(e,r),runs:PT(r)}}var Ke=(e,r)=>({path:e,mediaType:"application/json",content:ut(r)});function AT({house:e,isDemo:r,revision:n,publishedAt:i,licence:t,softwareVersion:o,evidence:a}){let{slug:s,name:u}=a.edition,c=i.slice(0,10);return{path:"README.md",mediaType:"text/markdown; charset=utf-8",content:`# ${e}: ${u}, revision ${n}

Published on ${c}.${r?" **Invented for demonstration: no maker, line, person or number in it is real.**":""}

## What is in this folder

- \`bundle.json\`: every input (readings as entered, methods, calibrations, scheme, names) and every output. Canonical JSON (RFC 8785); numbers that matter are decimal text.
- \`documents/\`: the same outputs, one page a file.
- \`csv/\` and \`datapackage.json\`: tables for spreadsheets and programs, with units and keys (Data Package 2.0).
- \`blind-key.txt\`: which blind code stood for which variant; its SHA-256 was published when the edition opened.
- \`manifest.json\`: SHA-256 of each file, and of the manifest of the release before. Its own SHA-256 is the digest of this release.
- \`signature.json\`: Ed25519 signature (RFC 8032) of the manifest, with the public key.
- \`verify.mjs\`: recomputes everything. Needs Node 20 or newer and nothing else.

## How to verify

    node verify.mjs

says how many figures were recomputed and whether all are equal. Compare the digest and the key that it prints with those that the publisher shows.

## How to cite

${e} (${c.slice(0,4)}). ${u}, edition ${s}, revision ${n} [data set]. Published ${c}. Cite the digest too.

## Licence and allowed use

${t.title} (${t.name}), ${t.path}. Copy, combine and build on it if you name the publisher and say what you changed.
A published figure describes the spools that were tested. It is no warranty, and no basis for lifting, climbing, towing or rescue: for those take rated equipment and qualified people.

## Format

Version 1, written by Fairpull ${o}. A later version only adds, or gets a new number.

- 1 (2026-11): first version.
`}}var ee=(e,r)=>({name:e,type:"string",description:r}),Re=(e,r)=>({name:e,type:"integer",description:r}),_r=(e,r)=>({name:e,type:"number",description:r}),Ue=e=>({...e,isOptional:!0});var an=ee("variant","Variant, by its slug"),Wn={columns:["variant"],table:"variants",references:["variant"]},jl=ee("submission","Reference of the submission"),_h={columns:["submission"],table:"submissions",references:["submission"]};var ET=e=>[dme(e),fme(e)],dme=e=>({name:"variants",title:"Variants of the edition",columns:[an,ee("maker","Maker"),ee("line","Line"),ee("size","Size as on the label"),ee("colour","Colour as on the label"),ee("material","Material"),ee("construction","How the line is made"),Ue(Re("carriers","Ends braided")),Ue(_r("pe number","PE number on the label")),ee("outcome","Placed, incomplete or excluded in this edition")],primaryKey:["variant"],foreignKeys:[],rows:e.map(({variant:{slug:r,maker:n,line:i,size:t,colour:o,material:a,construction:s,carriers:u,peNumber:c},outcome:l})=>({variant:r,maker:n.name,line:i.name,size:t,colour:o,material:a,construction:s,carriers:u,"pe number":c,outcome:l}))}),fme=e=>({name:"claims",title:"What labels claim, beside what was measured",columns:[an,ee("quantity","What is claimed"),ee("basis","What the label says that the number is: average, minimum, maximum, class, or not stated"),ee("printed","Number as printed"),ee("printed unit","Unit as printed"),_r("claimed","The claim in the unit of the column after it"),ee("unit","Unit of claimed and measured"),Ue(_r("measured","Measured value")),Ue({..._r("measured to claimed","Measured over claimed"),unit:"%"}),Ue(ee("decision","Decision after JCGM 106"))],primaryKey:["variant","quantity"],foreignKeys:[Wn],rows:e.flatMap(({variant:r,claims:n})=>n.map(({quantity:i,basis:t,printed:o,value:a,unit:s,measured:u,ratioPercent:c,decision:l})=>({variant:r.slug,quantity:i,basis:t,printed:o.text,"printed unit":o.unit,claimed:a,unit:s,measured:u?.value??null,"measured to claimed":c,decision:l})))});var mme=/\\(\\)?/g,pme=RegExp(`[^.[\\]]+|\\[(?:([^"'][^[]*)|(["'])((?:(?!\\2)[^\\\\]|\\\\.)*?)\\2)\\]|(?=(?:\\.|\\[\\])(?:\\.|\\[\\]|$))`,"g"),vme=/\.|\[(?:[^[\]]*|(["'])(?:(?!\1)[^\\]|\\.)*?\1)\]/,gme=/^\w*$/,hme=function(e){return Object.prototype.toString.call(e)},DT=function(e){let r=typeof e;return r==="symbol"||r==="object"&&e&&hme(e)==="[object Symbol]"},yme=function(e,r){if(Array.isArray(e))return!1;let n=typeof e;return n==="number"||n==="symbol"||n==="boolean"||!e||DT(e)?!0:gme.test(e)||!vme.test(e)||r!=null&&e in Object(r)},bme=function(e){let r=[];return e.charCodeAt(0)===46&&r.push(""),e.replace(pme,function(n,i,t,o){let a=n;t?a=o.replace(mme,"$1"):i&&(a=i.trim()),r.push(a)}),r},$me=function(e,r){return Array.isArray(e)?e:yme(e,r)?[e]:bme(e)},_me=function(e){if(typeof e=="string"||DT(e))return e;let r=`${e}`;return r=="0"&&1/e==-1/0?"-0":r},zT=function(e,r){r=$me(r,e);let n=0,i=r.length;for(;e!=null&&n<i;)e=e[_me(r[n++])];return n&&n===i?e:void 0};var qT=function(e){return typeof e=="object"&&e!==null&&!Array.isArray(e)};var Cl=function(e){if(e==null)return[void 0,void 0];if(typeof e!="object")return[Error('Invalid option "columns": expect an array or an object')];if(Array.isArray(e)){let r=[];for(let n of e)if(typeof n=="string")r.push({key:n,header:n});else if(typeof n=="object"&&n!==null&&!Array.isArray(n)){if(!n.key)return[Error('Invalid column definition: property "key" is required')];n.header===void 0&&(n.header=n.key),r.push(n)}else return[Error("Invalid column definition: expect a string or an object")];e=r}else{let r=[];for(let n in e)r.push({key:n,header:e[n]});e=r}return[void 0,e]};var qr=class e extends Error{constructor(r,n,...i){Array.isArray(n)&&(n=n.join(" ")),super(n),Error.captureStackTrace!==void 0&&Error.captureStackTrace(this,e),this.code=r;for(let t of i)for(let o in t){let a=t[o];this[o]=Buffer.isBuffer(a)?a.toString():a==null?a:JSON.parse(JSON.stringify(a))}}};var TT=function(e){return e.replace(/([A-Z])/g,function(r,n){return"_"+n.toLowerCase()})};var Rl=function(e){let r={};for(let t in e)r[TT(t)]=e[t];if(r.bom===void 0||r.bom===null||r.bom===!1)r.bom=!1;else if(r.bom!==!0)return[new qr("CSV_OPTION_BOOLEAN_INVALID_TYPE",["option `bom` is optional and must be a boolean value,",`got ${JSON.stringify(r.bom)}`])];if(r.delimiter===void 0||r.delimiter===null)r.delimiter=",";else if(Buffer.isBuffer(r.delimiter))r.delimiter=r.delimiter.toString();else if(typeof r.delimiter!="string")return[new qr("CSV_OPTION_DELIMITER_INVALID_TYPE",["option `delimiter` must be a buffer or a string,",`got ${JSON.stringify(r.delimiter)}`])];if(r.quote===void 0||r.quote===null)r.quote='"';else if(r.quote===!0)r.quote='"';else if(r.quote===!1)r.quote="";else if(Buffer.isBuffer(r.quote))r.quote=r.quote.toString();else if(typeof r.quote!="string")return[new qr("CSV_OPTION_QUOTE_INVALID_TYPE",["option `quote` must be a boolean, a buffer or a string,",`got ${JSON.stringify(r.quote)}`])];if((r.quoted===void 0||r.quoted===null)&&(r.quoted=!1),r.escape_formulas===void 0||r.escape_formulas===null)r.escape_formulas=!1;else if(typeof r.escape_formulas!="boolean")return[new qr("CSV_OPTION_ESCAPE_FORMULAS_INVALID_TYPE",["option `escape_formulas` must be a boolean,",`got ${JSON.stringify(r.escape_formulas)}`])];if((r.quoted_empty===void 0||r.quoted_empty===null)&&(r.quoted_empty=void 0),r.quoted_match===void 0||r.quoted_match===null||r.quoted_match===!1?r.quoted_match=null:Array.isArray(r.quoted_match)||(r.quoted_match=[r.quoted_match]),r.quoted_match)for(let t of r.quoted_match){let o=typeof t=="string",a=t instanceof RegExp;if(!o&&!a)return[new qr("CSV_OPTION_QUOTED_MATCH",["option `quoted_match` must be a string or a regex,",`got ${JSON.stringify(r.quoted_match)}`])]}if((r.quoted_string===void 0||r.quoted_string===null)&&(r.quoted_string=!1),(r.eof===void 0||r.eof===null)&&(r.eof=!0),r.escape===void 0||r.escape===null)r.escape='"';else if(Buffer.isBuffer(r.escape))r.escape=r.escape.toString();else if(typeof r.escape!="string")return[Error(`Invalid Option: escape must be a buffer or a string, got ${JSON.stringify(r.escape)}`)];if(r.escape.length>1)return[Error(`Invalid Option: escape must be one character, got ${r.escape.length} characters`)];if(r.header===void 0||r.header===null||r.header===!1)r.header=!1;else if(r.header!==!0)throw new qr("CSV_INVALID_OPTION_HEADER",["option `header` is expected to be a boolean,",`got ${JSON.stringify(r.header)}`],r);if(r.header_as_comment===void 0||r.header_as_comment===null||r.header_as_comment===!1)r.header_as_comment=!1;else if(r.header_as_comment===!0)r.header_as_comment="#";else if(Buffer.isBuffer(r.header_as_comment))r.header_as_comment=r.header_as_comment.toString();else if(typeof r.header_as_comment!="string")throw new qr("CSV_INVALID_OPTION_HEADER_AS_COMMENT",["option `header_as_comment` must be a boolean, a string or a buffer,",`got ${JSON.stringify(r.header_as_comment)}`],r);let[n,i]=Cl(r.columns);if(n!==void 0)return[n];if(r.columns=i,(r.quoted===void 0||r.quoted===null)&&(r.quoted=!1),(r.cast===void 0||r.cast===null)&&(r.cast={}),(r.cast.bigint===void 0||r.cast.bigint===null)&&(r.cast.bigint=t=>""+t),(r.cast.boolean===void 0||r.cast.boolean===null)&&(r.cast.boolean=t=>t?"1":""),(r.cast.date===void 0||r.cast.date===null)&&(r.cast.date=t=>""+t.getTime()),(r.cast.number===void 0||r.cast.number===null)&&(r.cast.number=t=>""+t),(r.cast.object===void 0||r.cast.object===null)&&(r.cast.object=t=>JSON.stringify(t)),(r.cast.string===void 0||r.cast.string===null)&&(r.cast.string=function(t){return t}),r.on_record!==void 0&&typeof r.on_record!="function")return[Error('Invalid Option: "on_record" must be a function.')];if(r.quote_record_delimiter===void 0||r.quote_record_delimiter===null)r.quote_record_delimiter=!r.record_delimiter;else if(typeof r.quote_record_delimiter!="boolean")return[new qr("CSV_OPTION_QUOTE_RECORD_DELIMITER_INVALID_TYPE",["option `quote_record_delimiter` must be a boolean,",`got ${JSON.stringify(r.quote_record_delimiter)}`])];if(r.record_delimiter===void 0||r.record_delimiter===null)r.record_delimiter=`
`;else if(Buffer.isBuffer(r.record_delimiter))r.record_delimiter=r.record_delimiter.toString();else if(typeof r.record_delimiter!="string")return[Error(`Invalid Option: record_delimiter must be a buffer or a string, got ${JSON.stringify(r.record_delimiter)}`)];switch(r.record_delimiter){case"unix":r.record_delimiter=`
`;break;case"mac":r.record_delimiter="\r";break;case"windows":r.record_delimiter=`\r
`;break;case"ascii":r.record_delimiter="";break;case"unicode":r.record_delimiter="\u2028";break}return[void 0,r]};var wme=Buffer.from([239,187,191]),jT=function(e,r){return r.some(n=>n.length!==0&&(e.indexOf(n)!==-1||n.length>1&&(e+n).indexOf(n)<e.length))},CT=function(e,r){return r?r.some(n=>typeof n=="string"?e.indexOf(n)!==-1:e.search(n)!==-1):!1},RT=function(e,r,n){return{options:e,state:r,info:n,__transform:function(i,t){if(!Array.isArray(i)&&typeof i!="object")return Error(`Invalid Record: expect an array or an object, got ${JSON.stringify(i)}`);if(this.info.records===0){if(Array.isArray(i)){if(this.options.header===!0&&this.options.columns===void 0)return Error("Undiscoverable Columns: header option requires column option or object records")}else if(this.options.columns===void 0){let[s,u]=Cl(Object.keys(i));if(s)return;this.options.columns=u}}if(this.info.records===0){this.bom(t);let s=this.headers(t);if(s)return s}try{this.options.on_record&&this.options.on_record(i,this.info.records)}catch(s){return s}let o,a;if(this.options.eof){if([o,a]=this.stringify(i),o)return o;if(a===void 0)return;a=a+this.options.record_delimiter}else{if([o,a]=this.stringify(i),o)return o;if(a===void 0)return;(this.options.header||this.info.records)&&(a=this.options.record_delimiter+a)}this.info.records++,t(a)},stringify:function(i,t=!1){if(typeof i!="object")return[void 0,i];let{columns:o}=this.options,a=[];if(Array.isArray(i)){let u=o?Math.min(i.length,o.length):i.length;for(let c=0;c<u;c++){let l=i[c],[d,f]=this.__cast(l,{index:c,column:c,records:this.info.records,header:t});if(d)return[d];a[c]=[f,l]}}else for(let u=0;u<o.length;u++){let c=zT(i,o[u].key),[l,d]=this.__cast(c,{index:u,column:o[u].key,records:this.info.records,header:t});if(l)return[l];a[u]=[d,c]}let s="";for(let u=0;u<a.length;u++){let c,l,[d,f]=a[u];if(typeof d=="string")c=this.options;else if(qT(d)){if(c={...d},d=c.value,delete c.value,typeof d!="string"&&d!==void 0&&d!==null&&l)return[Error(`Invalid Casting Value: returned value must return a string, null or undefined, got ${JSON.stringify(d)}`)];if(c={...this.options,...c},[l,c]=Rl(c),l!==void 0)return[l]}else if(d==null)c=this.options;else return[Error(`Invalid Casting Value: returned value must return a string, an object, null or undefined, got ${JSON.stringify(d)}`)];let{delimiter:m,escape:g,quote:h,quoted:b,quoted_empty:y,quoted_string:S,quoted_match:$,record_delimiter:N,quote_record_delimiter:P,escape_formulas:A}=c;if(d===""&&f==="")(CT(d,$)||y===!0||S===!0&&y!==!1)===!0&&(d=h+d+h),s+=d;else if(d){if(typeof d!="string")return[Error(`Formatter must return a string, null or undefined, got ${JSON.stringify(d)}`)];let E=jT(d,[m]),U=h!==""&&d.indexOf(h)>=0,K=d.indexOf(g)>=0&&g!==h,de=jT(d,[N,...P===!1?[]:[`
`,"\r"]]),ae=S&&typeof f=="string",me=CT(d,$);if(A)switch(d[0]){case"-":if(typeof f=="number"||typeof f=="bigint")break;d=`'${d}`;break;case"=":case"+":case"@":case"	":case"\r":case"＝":case"＋":case"－":case"＠":d=`'${d}`;break}let Ie=U===!0||E||de||b||ae||me;Ie===!0&&K===!0&&(d=d.replaceAll(g,()=>g+g)),U===!0&&(d=d.replaceAll(h,()=>g+h)),Ie===!0&&(d=h+d+h),s+=d}else(y===!0||f===""&&S===!0&&y!==!1)&&(s+=h+h);u!==a.length-1&&(s+=m)}return[void 0,s]},bom:function(i){this.options.bom===!0&&i(wme)},headers:function(i){if(this.options.header===!1||this.options.columns===void 0)return;let t,o=this.options.columns.map(a=>a.header);if(this.options.eof?([t,o]=this.stringify(o,!0),o+=this.options.record_delimiter):[t,o]=this.stringify(o,!0),t)return t;this.options.header_as_comment&&(o=this.options.header_as_comment+" "+o),i(o)},__cast:function(i,t){let o=typeof i;try{return o==="string"?[void 0,this.options.cast.string(i,t)]:o==="bigint"?[void 0,this.options.cast.bigint(i,t)]:o==="number"?[void 0,this.options.cast.number(i,t)]:o==="boolean"?[void 0,this.options.cast.boolean(i,t)]:i instanceof Date?[void 0,this.options.cast.date(i,t)]:o==="object"&&i!==null?[void 0,this.options.cast.object(i,t)]:i===null&&this.options.cast.null!==void 0?[void 0,this.options.cast.null(i,t)]:i===void 0&&this.options.cast.undefined!==void 0?[void 0,this.options.cast.undefined(i,t)]:[void 0,i]}catch(a){return[a]}}}};var UT=function(e,r={}){let n=[],[i,t]=Rl(r);if(i!==void 0)throw i;let s=RT(t,{stop:!1},{records:0});for(let u of e){let c=s.__transform(u,function(l){n.push(l)});if(c!==void 0)throw c}if(n.length===0){s.bom(c=>{n.push(c)});let u=s.headers(c=>{n.push(c)});if(u!==void 0)throw u}return n.join("")};var wh=({name:e})=>`csv/${e}.csv`,Ul=e=>({path:wh(e),mediaType:"text/csv; charset=utf-8",content:UT([...e.rows],{header:!0,columns:e.columns.map(({name:r})=>r),escape_formulas:!0,record_delimiter:"windows"})});function FT({house:e,isDemo:r,revision:n,publishedAt:i,licence:t,evidence:o},a){let{slug:s,name:u}=o.edition;return Ke("datapackage.json",{$schema:"https://datapackage.org/profiles/2.0/datapackage.json",name:`edition-${s}-revision-${n}`,title:`${e}: ${u}`,description:`Independent bench tests of fishing line, every reading and what follows from it.${r?" Invented for demonstration.":""}`,version:`${n}.0.0`,created:i,licenses:[t],contributors:[{title:e,roles:["author"]}],resources:a.map(Sme)})}function Sme(e){let{content:r}=Ul(e);return{name:e.name,type:"table",title:e.title,path:wh(e),scheme:"file",format:"csv",mediatype:"text/csv",encoding:"utf-8",bytes:Buffer.byteLength(r),hash:`sha256:${et(r)}`,dialect:{delimiter:",",lineTerminator:`\r
`,quoteChar:'"',doubleQuote:!0,header:!0},schema:{fields:e.columns.map(Ime),missingValues:[""],primaryKey:e.primaryKey,foreignKeys:e.foreignKeys.map(({columns:n,table:i,references:t})=>({fields:n,reference:{resource:i,fields:t}}))}}}var Ime=({name:e,type:r,description:n,unit:i,isOptional:t})=>({name:e,type:r,description:n,...i===void 0?{}:{unit:i},...t?{}:{constraints:{required:!0}}});var MT=Re("specimen","Number of the specimen in its submission");function LT(e){let r=e.flatMap(({submissions:n})=>n);return[kme(e),Ome(r),Nme(r)]}var kme=e=>({name:"submissions",title:"Accepted submissions",columns:[jl,an,ee("method","Method"),Re("version","Version of the method"),ee("tester","Display name of the tester"),ee("reviewer","Display name of the second person"),ee("rig","Instrument that took the readings"),{name:"bench day",type:"date",description:"Local date at the bench"},ee("spool","Blind code of the spool")],primaryKey:["submission"],foreignKeys:[Wn],rows:e.flatMap(({variant:r,submissions:n})=>n.map(({reference:i,method:t,methodVersion:o,tester:a,reviewer:s,rig:u,benchDay:c,spool:l})=>({submission:i,variant:r.slug,method:t,version:o,tester:a,reviewer:s,rig:u,"bench day":c,spool:l})))}),Ome=e=>({name:"specimens",title:"Specimens, counted or not",columns:[jl,MT,ee("condition","Untreated, or treated: knotted or abraded"),ee("state","Valid, invalid or set aside; only valid ones count"),Ue(ee("reason","Why it does not count"))],primaryKey:["submission","specimen"],foreignKeys:[_h],rows:e.flatMap(({reference:r,specimens:n})=>n.map(({number:i,condition:t,state:o,reason:a})=>({submission:r,specimen:i,condition:t,state:o,reason:a})))}),Nme=e=>({name:"readings",title:"Every reading, as entered and in SI",columns:[jl,MT,Re("reading","Running number of the reading in its specimen"),ee("role","What was read"),Ue(Re("station","Place along the specimen")),ee("entered","Number as entered"),ee("entered unit","Unit as entered"),_r("value","The same in SI"),ee("unit","SI unit")],primaryKey:["submission","specimen","reading"],foreignKeys:[_h,{columns:["submission","specimen"],table:"specimens",references:["submission","specimen"]}],rows:e.flatMap(({reference:r,specimens:n})=>n.flatMap(i=>i.readings.map(({role:t,station:o,entered:a,value:s,unit:u},c)=>({submission:r,specimen:i.number,reading:c+1,role:t,station:o,entered:a.text,"entered unit":a.unit,value:s,unit:u}))))});var ZT=Ue(Re("place","Standard competition place; empty for a row that is not placed")),VT=Ue(Re("place if included","Place that an excluded row would have had")),BT=Ue(Re("group","Too-close-to-call group, 1 is the top group")),WT=Ue(Re("place low","Simultaneous 95 % place interval, best end")),GT=Ue(Re("place high","Simultaneous 95 % place interval, worst end")),HT=(e,r)=>[Pme(e),Ame(r)],Pme=e=>{let r=e.scheme.categories.map(({code:n})=>n);return{name:"standings",title:"Overall standings",columns:[ZT,VT,BT,WT,GT,an,_r("score","Score under the scheme"),...r.map(n=>Ue(Re(`place in ${n}`,"Place counted in the score")))],primaryKey:["variant"],foreignKeys:[Wn],rows:e.overall.map(({place:n,placeIfIncluded:i,group:t,placeInterval:o,variant:a,score:s,categoryPlaces:u})=>({place:n,"place if included":i,group:t,"place low":o?.low??null,"place high":o?.high??null,variant:a.slug,score:s,...Object.fromEntries(r.map(c=>[`place in ${c}`,u[c]??null]))}))}},xme=[ee("category","Category of the scheme"),an,ZT,VT,BT,WT,GT,_r("value","Measured value"),Ue(_r("low 95 %","Lower end of the 95 % interval")),Ue(_r("high 95 %","Upper end of the 95 % interval")),ee("unit","Unit of the value and its interval"),Re("specimens","Specimens that count"),Re("submissions","Submissions"),Re("testers","Testers"),Re("rigs","Rigs")],Ame=e=>({name:"results",title:"Results and places by category",columns:xme,primaryKey:["category","variant"],foreignKeys:[Wn],rows:e.flatMap(({category:r,rows:n})=>n.map(({variant:i,place:t,placeIfIncluded:o,group:a,placeInterval:s,figure:u})=>({category:r.code,variant:i.slug,place:t,"place if included":o,group:a,"place low":s?.low??null,"place high":s?.high??null,value:u.value,"low 95 %":u.low,"high 95 %":u.high,unit:u.unit,specimens:u.specimens,submissions:u.submissions,testers:u.testers,rigs:u.rigs})))});function KT(e){let r=gq(e),n=Aq(r),i=kq(r,null),t=e.correction&&$T(e.correction,{edition:i,categories:n}),o={...i,erratum:t},a=new Set([...e.correction?.corrected??[],...(t?.changes??[]).map(({where:c})=>c)]),s=IT(r,o,n,a),u=[...ET(s),...HT(o,n),...LT(s)];return[AT(e),Ke("bundle.json",hq(e,r,o,n)),Ke("documents/edition.json",o),...n.map(c=>Ke(`documents/standings/${c.category.code}.json`,c)),...s.map(c=>Ke(`documents/variants/${c.variant.slug}.json`,c)),Ke("documents/records.json",xT(r)),Ke("documents/pairs.json",jq(r)),Ke("documents/claims.json",Tq(r)),Ke("documents/round-robins.json",bT(e)),Ke("documents/retests.json",Uq(e)),Ke("documents/withdrawn.json",wT(e)),Ke("documents/rigs.json",Lq(r)),Ke("documents/catalogue.json",bq(r)),...$q(r).map(c=>Ke(`documents/methods/${c.slug}-${c.number}.json`,c)),...u.map(Ul),...e.blindKey===null?[]:[{path:"blind-key.txt",mediaType:"text/plain; charset=utf-8",content:e.blindKey}],FT(e,u)]}var Eme=/^-?\d+(\.\d+)?$/;function Sh(e){return typeof e=="number"?1:typeof e=="string"?Eme.test(e)?1:0:e===null||typeof e!="object"?0:Object.values(e).reduce((r,n)=>r+Sh(n),0)}function Ih(e,r,n){if(r===n)return[];let[i,t]=[JT(r),JT(n)],o=e.endsWith(".json")&&i!==void 0&&t!==void 0?QT(e,"",i,t):zme(e,r.split(`
`),n.split(`
`));return o.length>0?o:[{file:e,where:"",found:"the same values in other bytes",expected:"the canonical form (RFC 8785)"}]}function JT(e){try{return JSON.parse(e)}catch{return}}function QT(e,r,n,i){return XT(n)&&XT(i)&&Array.isArray(n)===Array.isArray(i)?[...new Set([...Object.keys(n),...Object.keys(i)])].flatMap(o=>QT(e,`${r}/${Dme(o)}`,n[o],i[o])):Object.is(n,i)?[]:[{file:e,where:r,found:Fl(n),expected:Fl(i)}]}var XT=e=>typeof e=="object"&&e!==null,Dme=e=>e.replaceAll("~","~0").replaceAll("/","~1");function Fl(e){let r=e===void 0?"nothing":JSON.stringify(e);return r.length>120?`${r.slice(0,120)}…`:r}var zme=(e,r,n)=>Array.from({length:Math.max(r.length,n.length)},(i,t)=>t).filter(i=>r[i]!==n[i]).map(i=>({file:e,where:`line ${i+1}`,found:Fl(r[i]),expected:Fl(n[i])}));var jme=["verify.mjs"],Cme=["manifest.json","signature.json"];async function YT(e){let r=await Rme(e,"manifest.json"),n=ej(e,"manifest.json",r),i=new Map,t=(await Promise.all(n.files.map(s=>Fme(e,s,i)))).flat(),o=await e.read("signature.json"),a=Vme(e,n,i);return{name:e.name,edition:n.edition,revision:n.revision,digest:et(r),previousDigest:n.previousDigest,keyFingerprint:o&&Zme(o),files:n.files.length,figures:a.figures,differences:[...Ume("manifest.json",r),...t,...Lme(o,r),...await Mme(e,n),...a.differences]}}async function Rme(e,r){let n=await e.read(r);if(!n)throw new Error(`${e.name} has no ${r}; expected the folder or address of a release.`);return new TextDecoder().decode(n)}function ej(e,r,n){try{return JSON.parse(n)}catch{throw new Error(`${r} of ${e.name} is not JSON; it is damaged. Fetch the release again.`)}}var Ume=(e,r)=>Ih(e,r,ut(JSON.parse(r)));async function Fme(e,r,n){let i=await e.read(r.path);if(!i)return[{file:r.path,where:"",found:"no such file",expected:"the file that the manifest lists"}];n.set(r.path,new TextDecoder().decode(i));let t=`${i.length} bytes, SHA-256 ${et(i)}`,o=`${r.sizeBytes} bytes, SHA-256 ${r.sha256}`;return t===o?[]:[{file:r.path,where:"",found:t,expected:o}]}async function Mme(e,{files:r}){let n=new Set([...r.map(({path:t})=>t),...Cme]);return(await e.list()??[]).filter(t=>!n.has(t)).map(t=>({file:t,where:"",found:"a file that the manifest does not list",expected:"no such file"}))}function Lme(e,r){let n=i=>[{file:"signature.json",where:"",found:i,expected:"the publisher’s signature of manifest.json"}];if(!e)return n("no such file");try{let{publicKey:i,signature:t,...o}=JSON.parse(new TextDecoder().decode(e));if(ut({publicKey:i,signature:t,...o})!==new TextDecoder().decode(e))return n("another form than the canonical one");if(ut(o)!==ut({formatVersion:1,algorithm:"Ed25519",signed:"manifest.json"}))return n("another kind of signature");let a=qme({key:Buffer.from(i,"base64"),format:"der",type:"spki"});return[i,t].every(u=>Buffer.from(u,"base64").toString("base64")===u)&&Tme(null,Buffer.from(r),a,Buffer.from(t,"base64"))?[]:n("a signature that does not fit")}catch{return n("what is not a signature")}}function Zme(e){try{return et(Buffer.from(JSON.parse(new TextDecoder().decode(e)).publicKey,"base64"))}catch{return null}}function Vme(e,r,n){let i=n.get("bundle.json");if(i===void 0)throw new Error(`${e.name} has no bundle.json; there is nothing to compute from.`);let{formatVersion:t,inputs:o}=ej(e,"bundle.json",i);if(t!==qt)return{figures:null,differences:[]};let a=KT(o),s=new Set(a.map(({path:m})=>m)),u=a.flatMap(({path:m,content:g})=>Ih(m,n.get(m)??"",g)),c=r.files.filter(({path:m})=>!s.has(m)&&!jme.includes(m)).map(({path:m})=>({file:m,where:"",found:"a file that nothing computes",expected:"no such file"})),d=[["edition",r.edition,o.evidence.edition.slug],["revision",r.revision,o.revision],["publishedAt",r.publishedAt,o.publishedAt],["softwareVersion",r.softwareVersion,o.softwareVersion],["previousDigest",r.previousDigest,o.previousDigest]].filter(([,m,g])=>m!==g).map(([m,g,h])=>({file:"manifest.json",where:`/${m}`,found:String(g),expected:String(h)}));return{figures:a.filter(({path:m})=>m.startsWith("documents/")).reduce((m,{content:g})=>m+Sh(JSON.parse(g)),0),differences:[...u,...c,...d]}}var kh=50,Gme=({file:e,where:r,found:n,expected:i})=>`  ${e}${r===""?"":` ${r}`}: found ${n}; expected ${i}`,bt=e=>process.stdout.write(`${e}
`);async function Hme(e){let r=[];for(let o of await Eh(e)){let a=await YT(o);r.push(a),bt(`${a.edition}, revision ${a.revision} (${a.name})`),bt(`  digest ${a.digest}`),bt(`  signed by the key ${a.keyFingerprint??"of nobody"}`),a.figures===null&&bt("  NOT recomputed: it is of another format than this program computes. Run the verify.mjs that lies in it.")}let n=[...r.flatMap(o=>o.differences),...zh(r)],i=r.reduce((o,a)=>o+(a.figures??0),0),t=r.reduce((o,a)=>o+a.files,0);if(n.length===0)return bt(`${i} figures recomputed, all equal; ${t} files, every one as signed.`),r.some(o=>o.figures===null)?2:0;bt(`${i} figures recomputed; ${n.length} differences:`);for(let o of n.slice(0,kh))bt(Gme(o));return n.length>kh&&bt(`  … and ${n.length-kh} more`),1}var Kme=Bme(Wme(import.meta.url)),[Jme=Kme]=process.argv.slice(2);process.exitCode=await Hme(Jme).catch(e=>(bt(e instanceof Error?e.message:String(e)),2));
