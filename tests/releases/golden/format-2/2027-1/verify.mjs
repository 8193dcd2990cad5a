// Recomputes this release: node verify.mjs. Made from the program that published it; needs Node 20 or newer and nothing else.
import { createRequire } from 'node:module';
const require = createRequire(import.meta.url);
var aq=Object.create;var ud=Object.defineProperty;var sq=Object.getOwnPropertyDescriptor;var uq=Object.getOwnPropertyNames;var cq=Object.getPrototypeOf,lq=Object.prototype.hasOwnProperty;var os=(e=>typeof require<"u"?require:typeof Proxy<"u"?new Proxy(e,{get:(r,n)=>(typeof require<"u"?require:r)[n]}):e)(function(e){if(typeof require<"u")return require.apply(this,arguments);throw Error('Dynamic require of "'+e+'" is not supported')});var g=(e,r)=>()=>{try{return r||e((r={exports:{}}).exports,r),r.exports}catch(n){throw r=0,n}},Xr=(e,r)=>{for(var n in r)ud(e,n,{get:r[n],enumerable:!0})},dq=(e,r,n,i)=>{if(r&&typeof r=="object"||typeof r=="function")for(let t of uq(r))!lq.call(e,t)&&t!==n&&ud(e,t,{get:()=>r[t],enumerable:!(i=sq(r,t))||i.enumerable});return e};var _t=(e,r,n)=>(n=e!=null?aq(cq(e)):{},dq(r||!e||!e.__esModule?ud(n,"default",{value:e,enumerable:!0}):n,e));var C2=g((yye,z2)=>{"use strict";/**
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
*/var SZ=typeof Object.defineProperty=="function"?Object.defineProperty:null;z2.exports=SZ});var R2=g((bye,q2)=>{"use strict";/**
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
*/var IZ=C2();function kZ(){try{return IZ({},"x",{}),!0}catch{return!1}}q2.exports=kZ});var F2=g(($ye,U2)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var OZ=Object.defineProperty;U2.exports=OZ});var Kv=g((_ye,M2)=>{"use strict";/**
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
*/function NZ(e){return typeof e=="number"}M2.exports=NZ});var Xv=g((wye,Z2)=>{"use strict";/**
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
*/function AZ(e){return e[0]==="-"}function L2(e){var r="",n;for(n=0;n<e;n++)r+="0";return r}function PZ(e,r,n){var i=!1,t=r-e.length;return t<0||(AZ(e)&&(i=!0,e=e.substr(1)),e=n?e+L2(t):L2(t)+e,i&&(e="-"+e)),e}Z2.exports=PZ});var G2=g((Sye,W2)=>{"use strict";/**
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
*/var xZ=Kv(),V2=Xv(),EZ=String.prototype.toLowerCase,B2=String.prototype.toUpperCase;function DZ(e){var r,n,i;switch(e.specifier){case"b":r=2;break;case"o":r=8;break;case"x":case"X":r=16;break;default:r=10;break}if(n=e.arg,i=parseInt(n,10),!isFinite(i)){if(!xZ(n))throw new Error("invalid integer. Value: "+n);i=0}return i<0&&(e.specifier==="u"||r!==10)&&(i=4294967295+i+1),i<0?(n=(-i).toString(r),e.precision&&(n=V2(n,e.precision,e.padRight)),n="-"+n):(n=i.toString(r),!i&&!e.precision?n="":e.precision&&(n=V2(n,e.precision,e.padRight)),e.sign&&(n=e.sign+n)),r===16&&(e.alternate&&(n="0x"+n),n=e.specifier===B2.call(e.specifier)?B2.call(n):EZ.call(n)),r===8&&e.alternate&&n.charAt(0)!=="0"&&(n="0"+n),n}W2.exports=DZ});var J2=g((Iye,H2)=>{"use strict";/**
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
*/function TZ(e){return typeof e=="string"}H2.exports=TZ});var Q2=g((kye,X2)=>{"use strict";/**
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
*/var jZ=Math.abs,zZ=String.prototype.toLowerCase,K2=String.prototype.toUpperCase,xn=String.prototype.replace,CZ=/e\+(\d)$/,qZ=/e-(\d)$/,RZ=/^(\d+)$/,UZ=/^(\d+)e/,FZ=/\.0$/,MZ=/\.0*e/,LZ=/(\..*[^0])0*e/;function ZZ(e,r){var n,i;switch(r.specifier){case"e":case"E":i=e.toExponential(r.precision);break;case"f":case"F":i=e.toFixed(r.precision);break;case"g":case"G":jZ(e)<1e-4?(n=r.precision,n>0&&(n-=1),i=e.toExponential(n)):i=e.toPrecision(r.precision),r.alternate||(i=xn.call(i,LZ,"$1e"),i=xn.call(i,MZ,"e"),i=xn.call(i,FZ,""));break;default:throw new Error("invalid double notation. Value: "+r.specifier)}return i=xn.call(i,CZ,"e+0$1"),i=xn.call(i,qZ,"e-0$1"),r.alternate&&(i=xn.call(i,RZ,"$1."),i=xn.call(i,UZ,"$1.e")),e>=0&&r.sign&&(i=r.sign+i),i=r.specifier===K2.call(r.specifier)?K2.call(i):zZ.call(i),i}X2.exports=ZZ});var r3=g((Oye,e3)=>{"use strict";/**
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
*/function Y2(e){var r="",n;for(n=0;n<e;n++)r+=" ";return r}function VZ(e,r,n){var i=r-e.length;return i<0||(e=n?e+Y2(i):Y2(i)+e),e}e3.exports=VZ});var n3=g((Nye,t3)=>{"use strict";/**
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
*/var BZ=G2(),WZ=J2(),GZ=Kv(),HZ=Q2(),JZ=r3(),KZ=Xv(),XZ=String.fromCharCode,QZ=Array.isArray;function wc(e){return e!==e}function YZ(e){var r={};return r.specifier=e.specifier,r.precision=e.precision===void 0?1:e.precision,r.width=e.width,r.flags=e.flags||"",r.mapping=e.mapping,r}function eV(e){var r,n,i,t,o,a,s,u,c,l;if(!QZ(e))throw new TypeError("invalid argument. First argument must be an array. Value: `"+e+"`.");for(a="",s=1,c=0;c<e.length;c++)if(i=e[c],WZ(i))a+=i;else{if(r=i.precision!==void 0,i=YZ(i),!i.specifier)throw new TypeError("invalid argument. Token is missing `specifier` property. Index: `"+c+"`. Value: `"+i+"`.");for(i.mapping&&(s=i.mapping),n=i.flags,l=0;l<n.length;l++)switch(t=n.charAt(l),t){case" ":i.sign=" ";break;case"+":i.sign="+";break;case"-":i.padRight=!0,i.padZeros=!1;break;case"0":i.padZeros=n.indexOf("-")<0;break;case"#":i.alternate=!0;break;default:throw new Error("invalid flag: "+t)}if(i.width==="*"){if(i.width=parseInt(arguments[s],10),s+=1,wc(i.width))throw new TypeError("the argument for * width at position "+s+" is not a number. Value: `"+i.width+"`.");i.width<0&&(i.padRight=!0,i.width=-i.width)}if(r&&i.precision==="*"){if(i.precision=parseInt(arguments[s],10),s+=1,wc(i.precision))throw new TypeError("the argument for * precision at position "+s+" is not a number. Value: `"+i.precision+"`.");i.precision<0&&(i.precision=1,r=!1)}switch(i.arg=arguments[s],i.specifier){case"b":case"o":case"x":case"X":case"d":case"i":case"u":r&&(i.padZeros=!1),i.arg=BZ(i);break;case"s":i.maxWidth=r?i.precision:-1,i.arg=String(i.arg);break;case"c":if(!wc(i.arg)){if(o=parseInt(i.arg,10),o<0||o>127)throw new Error("invalid character code. Value: "+i.arg);i.arg=wc(o)?String(i.arg):XZ(o)}break;case"e":case"E":case"f":case"F":case"g":case"G":if(r||(i.precision=6),u=parseFloat(i.arg),!isFinite(u)){if(!GZ(i.arg))throw new Error("invalid floating-point number. Value: "+a);u=i.arg,i.padZeros=!1}i.arg=HZ(u,i);break;default:throw new Error("invalid specifier: "+i.specifier)}i.maxWidth>=0&&i.arg.length>i.maxWidth&&(i.arg=i.arg.substring(0,i.maxWidth)),i.padZeros?i.arg=KZ(i.arg,i.width||i.precision,i.padRight):i.width&&(i.arg=JZ(i.arg,i.width,i.padRight)),a+=i.arg||"",s+=1}return a}t3.exports=eV});var o3=g((Aye,i3)=>{"use strict";/**
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
*/var rV=n3();i3.exports=rV});var s3=g((Pye,a3)=>{"use strict";/**
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
*/var Sc=/%(?:([1-9]\d*)\$)?([0 +\-#]*)(\*|\d+)?(?:(\.)(\*|\d+)?)?[hlL]?([%A-Za-z])/g;function tV(e){var r={mapping:e[1]?parseInt(e[1],10):void 0,flags:e[2],width:e[3],precision:e[5],specifier:e[6]};return e[4]==="."&&e[5]===void 0&&(r.precision="1"),r}function nV(e){var r,n,i,t;for(n=[],t=0,i=Sc.exec(e);i;)r=e.slice(t,Sc.lastIndex-i[0].length),r.length&&n.push(r),i[6]==="%"?n.push("%"):n.push(tV(i)),t=Sc.lastIndex,i=Sc.exec(e);return r=e.slice(t),r.length&&n.push(r),n}a3.exports=nV});var c3=g((xye,u3)=>{"use strict";/**
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
*/var iV=s3();u3.exports=iV});var d3=g((Eye,l3)=>{"use strict";/**
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
*/function oV(e){return typeof e=="string"}l3.exports=oV});var p3=g((Dye,m3)=>{"use strict";/**
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
*/var aV=o3(),sV=c3(),uV=d3();function f3(e){var r,n;if(!uV(e))throw new TypeError(f3("invalid argument. First argument must be a string. Value: `%s`.",e));for(r=[sV(e)],n=1;n<arguments.length;n++)r.push(arguments[n]);return aV.apply(null,r)}m3.exports=f3});var g3=g((Tye,v3)=>{"use strict";/**
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
*/var cV=p3();v3.exports=cV});var w3=g((jye,_3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var h3=g3(),qi=Object.prototype,y3=qi.toString,b3=qi.__defineGetter__,$3=qi.__defineSetter__,lV=qi.__lookupGetter__,dV=qi.__lookupSetter__;function fV(e,r,n){var i,t,o,a;if(typeof e!="object"||e===null||y3.call(e)==="[object Array]")throw new TypeError(h3("invalid argument. First argument must be an object. Value: `%s`.",e));if(typeof n!="object"||n===null||y3.call(n)==="[object Array]")throw new TypeError(h3("invalid argument. Property descriptor must be an object. Value: `%s`.",n));if(t="value"in n,t&&(lV.call(e,r)||dV.call(e,r)?(i=e.__proto__,e.__proto__=qi,delete e[r],e[r]=n.value,e.__proto__=i):e[r]=n.value),o="get"in n,a="set"in n,t&&(o||a))throw new Error("invalid argument. Cannot specify one or more accessors and a value or writable attribute in the property descriptor.");return o&&b3&&b3.call(e,r,n.get),a&&$3&&$3.call(e,r,n.set),e}_3.exports=fV});var I3=g((zye,S3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var mV=R2(),pV=F2(),vV=w3(),Qv;mV()?Qv=pV:Qv=vV;S3.exports=Qv});var O3=g((Cye,k3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gV=I3();function hV(e,r,n){gV(e,r,{configurable:!1,enumerable:!1,writable:!1,value:n})}k3.exports=hV});var Ze=g((qye,N3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yV=O3();N3.exports=yV});var P3=g((Rye,A3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function bV(e){return e!==e}A3.exports=bV});var V=g((Uye,x3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $V=P3();x3.exports=$V});var pe=g((Fye,E3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _V=Number.POSITIVE_INFINITY;E3.exports=_V});var T3=g((Mye,D3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/D3.exports=Number});var z3=g((Lye,j3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var wV=T3();j3.exports=wV});var He=g((Zye,C3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var SV=z3(),IV=SV.NEGATIVE_INFINITY;C3.exports=IV});var R3=g((Vye,q3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kV=pe(),OV=He();function NV(e){return e===kV||e===OV}q3.exports=NV});var En=g((Bye,U3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var AV=R3();U3.exports=AV});var M3=g((Wye,F3)=>{"use strict";/**
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
*/function PV(e){return Math.abs(e)}F3.exports=PV});var Y=g((Gye,L3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xV=M3();L3.exports=xV});var V3=g((Hye,Z3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function EV(){return typeof Symbol=="function"&&typeof Symbol("foo")=="symbol"}Z3.exports=EV});var W3=g((Jye,B3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var DV=V3();B3.exports=DV});var H3=g((Kye,G3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var TV=W3(),jV=TV();function zV(){return jV&&typeof Symbol.toStringTag=="symbol"}G3.exports=zV});var K3=g((Xye,J3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CV=H3();J3.exports=CV});var Yv=g((Qye,X3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qV=Object.prototype.toString;X3.exports=qV});var Y3=g((Yye,Q3)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var RV=Yv();function UV(e){return RV.call(e)}Q3.exports=UV});var r$=g((ebe,e$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var FV=Object.prototype.hasOwnProperty;function MV(e,r){return e==null?!1:FV.call(e,r)}e$.exports=MV});var n$=g((rbe,t$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var LV=r$();t$.exports=LV});var o$=g((tbe,i$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ZV=typeof Symbol=="function"?Symbol:void 0;i$.exports=ZV});var s$=g((nbe,a$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var VV=o$();a$.exports=VV});var l$=g((ibe,c$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var u$=s$(),BV=typeof u$=="function"?u$.toStringTag:"";c$.exports=BV});var f$=g((obe,d$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var WV=n$(),va=l$(),eg=Yv();function GV(e){var r,n,i;if(e==null)return eg.call(e);n=e[va],r=WV(e,va);try{e[va]=void 0}catch{return eg.call(e)}return i=eg.call(e),r?e[va]=n:delete e[va],i}d$.exports=GV});var ga=g((abe,m$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var HV=K3(),JV=Y3(),KV=f$(),rg;HV()?rg=KV:rg=JV;m$.exports=rg});var v$=g((sbe,p$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var XV=ga(),QV=typeof Uint32Array=="function";function YV(e){return QV&&e instanceof Uint32Array||XV(e)==="[object Uint32Array]"}p$.exports=YV});var h$=g((ube,g$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var eB=v$();g$.exports=eB});var b$=g((cbe,y$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var rB=4294967295;y$.exports=rB});var _$=g((lbe,$$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var tB=typeof Uint32Array=="function"?Uint32Array:null;$$.exports=tB});var I$=g((dbe,S$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nB=h$(),tg=b$(),w$=_$();function iB(){var e,r;if(typeof w$!="function")return!1;try{r=[1,3.14,-3.14,tg+1,tg+2],r=new w$(r),e=nB(r)&&r[0]===1&&r[1]===3&&r[2]===tg-2&&r[3]===0&&r[4]===1}catch{e=!1}return e}S$.exports=iB});var O$=g((fbe,k$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var oB=I$();k$.exports=oB});var A$=g((mbe,N$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var aB=typeof Uint32Array=="function"?Uint32Array:void 0;N$.exports=aB});var x$=g((pbe,P$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function sB(){throw new Error("not implemented")}P$.exports=sB});var Dn=g((vbe,E$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var uB=O$(),cB=A$(),lB=x$(),ng;uB()?ng=cB:ng=lB;E$.exports=ng});var T$=g((gbe,D$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var dB=ga(),fB=typeof Float64Array=="function";function mB(e){return fB&&e instanceof Float64Array||dB(e)==="[object Float64Array]"}D$.exports=mB});var z$=g((hbe,j$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var pB=T$();j$.exports=pB});var q$=g((ybe,C$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var vB=typeof Float64Array=="function"?Float64Array:null;C$.exports=vB});var F$=g((bbe,U$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gB=z$(),R$=q$();function hB(){var e,r;if(typeof R$!="function")return!1;try{r=new R$([1,3.14,-3.14,NaN]),e=gB(r)&&r[0]===1&&r[1]===3.14&&r[2]===-3.14&&r[3]!==r[3]}catch{e=!1}return e}U$.exports=hB});var L$=g(($be,M$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yB=F$();M$.exports=yB});var V$=g((_be,Z$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var bB=typeof Float64Array=="function"?Float64Array:void 0;Z$.exports=bB});var W$=g((wbe,B$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function $B(){throw new Error("not implemented")}B$.exports=$B});var Tn=g((Sbe,G$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _B=L$(),wB=V$(),SB=W$(),ig;_B()?ig=wB:ig=SB;G$.exports=ig});var J$=g((Ibe,H$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var IB=ga(),kB=typeof Uint8Array=="function";function OB(e){return kB&&e instanceof Uint8Array||IB(e)==="[object Uint8Array]"}H$.exports=OB});var X$=g((kbe,K$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var NB=J$();K$.exports=NB});var Y$=g((Obe,Q$)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var AB=255;Q$.exports=AB});var r5=g((Nbe,e5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var PB=typeof Uint8Array=="function"?Uint8Array:null;e5.exports=PB});var i5=g((Abe,n5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xB=X$(),og=Y$(),t5=r5();function EB(){var e,r;if(typeof t5!="function")return!1;try{r=[1,3.14,-3.14,og+1,og+2],r=new t5(r),e=xB(r)&&r[0]===1&&r[1]===3&&r[2]===og-2&&r[3]===0&&r[4]===1}catch{e=!1}return e}n5.exports=EB});var a5=g((Pbe,o5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var DB=i5();o5.exports=DB});var u5=g((xbe,s5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var TB=typeof Uint8Array=="function"?Uint8Array:void 0;s5.exports=TB});var l5=g((Ebe,c5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function jB(){throw new Error("not implemented")}c5.exports=jB});var f5=g((Dbe,d5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var zB=a5(),CB=u5(),qB=l5(),ag;zB()?ag=CB:ag=qB;d5.exports=ag});var p5=g((Tbe,m5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var RB=ga(),UB=typeof Uint16Array=="function";function FB(e){return UB&&e instanceof Uint16Array||RB(e)==="[object Uint16Array]"}m5.exports=FB});var g5=g((jbe,v5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var MB=p5();v5.exports=MB});var y5=g((zbe,h5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var LB=65535;h5.exports=LB});var $5=g((Cbe,b5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ZB=typeof Uint16Array=="function"?Uint16Array:null;b5.exports=ZB});var S5=g((qbe,w5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var VB=g5(),sg=y5(),_5=$5();function BB(){var e,r;if(typeof _5!="function")return!1;try{r=[1,3.14,-3.14,sg+1,sg+2],r=new _5(r),e=VB(r)&&r[0]===1&&r[1]===3&&r[2]===sg-2&&r[3]===0&&r[4]===1}catch{e=!1}return e}w5.exports=BB});var k5=g((Rbe,I5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var WB=S5();I5.exports=WB});var N5=g((Ube,O5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var GB=typeof Uint16Array=="function"?Uint16Array:void 0;O5.exports=GB});var P5=g((Fbe,A5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function HB(){throw new Error("not implemented")}A5.exports=HB});var E5=g((Mbe,x5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var JB=k5(),KB=N5(),XB=P5(),ug;JB()?ug=KB:ug=XB;x5.exports=ug});var T5=g((Lbe,D5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var QB=f5(),YB=E5(),eW={uint16:YB,uint8:QB};D5.exports=eW});var q5=g((Zbe,C5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var j5=T5(),z5;function rW(){var e,r;return e=new j5.uint16(1),e[0]=4660,r=new j5.uint8(e.buffer),r[0]===52}z5=rW();C5.exports=z5});var jn=g((Vbe,R5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var tW=q5();R5.exports=tW});var F5=g((Bbe,U5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nW=jn(),cg;nW===!0?cg=1:cg=0;U5.exports=cg});var Z5=g((Wbe,L5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var iW=Dn(),oW=Tn(),aW=F5(),M5=new oW(1),sW=new iW(M5.buffer);function uW(e){return M5[0]=e,sW[aW]}L5.exports=uW});var fr=g((Gbe,V5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cW=Z5();V5.exports=cW});var W5=g((Hbe,B5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var lW=jn(),lg;lW===!0?lg=1:lg=0;B5.exports=lg});var H5=g((Jbe,G5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var dW=Dn(),fW=Tn(),mW=W5(),dg=new fW(1),pW=new dW(dg.buffer);function vW(e,r){return dg[0]=e,pW[mW]=r>>>0,dg[0]}G5.exports=vW});var Ri=g((Kbe,J5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gW=H5();J5.exports=gW});var Mt=g((Xbe,K5)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hW=1023;K5.exports=hW});var Q5=g((Qbe,X5)=>{"use strict";/**
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
*/function yW(e){return e===0?.3999999999940942:.3999999999940942+e*(.22222198432149784+e*.15313837699209373)}X5.exports=yW});var e_=g((Ybe,Y5)=>{"use strict";/**
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
*/function bW(e){return e===0?.6666666666666735:.6666666666666735+e*(.2857142874366239+e*(.1818357216161805+e*.14798198605116586))}Y5.exports=bW});var i_=g((e6e,n_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var r_=fr(),$W=Ri(),_W=V(),wW=Mt(),SW=He(),IW=Q5(),kW=e_(),Ic=.6931471803691238,kc=19082149292705877e-26,OW=0x40000000000000,NW=.3333333333333333,t_=1048575,AW=2146435072,PW=1048576,xW=1072693248;function EW(e){var r,n,i,t,o,a,s,u,c,l,d,f;return e===0?SW:_W(e)||e<0?NaN:(n=r_(e),o=0,n<PW&&(o-=54,e*=OW,n=r_(e)),n>=AW?e+e:(o+=(n>>20)-wW|0,n&=t_,u=n+614244&1048576|0,e=$W(e,n|u^xW),o+=u>>20|0,s=e-1,(t_&2+n)<3?s===0?o===0?0:o*Ic+o*kc:(a=s*s*(.5-NW*s),o===0?s-a:o*Ic-(a-o*kc-s)):(l=s/(2+s),f=l*l,u=n-398458|0,d=f*f,c=440401-n|0,t=d*IW(d),i=f*kW(d),u|=c,a=i+t,u>0?(r=.5*s*s,o===0?s-(r-l*(r+a)):o*Ic-(r-(l*(r+a)+o*kc)-s)):o===0?s-l*(s-a):o*Ic-(l*(s-a)-o*kc-s))))}n_.exports=EW});var de=g((r6e,o_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var DW=i_();o_.exports=DW});var s_=g((t6e,a_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var TW=Math.floor;a_.exports=TW});var Nr=g((n6e,u_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var jW=s_();u_.exports=jW});var l_=g((i6e,c_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var zW=Math.ceil;c_.exports=zW});var f_=g((o6e,d_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CW=l_();d_.exports=CW});var p_=g((a6e,m_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qW=Nr(),RW=f_();function UW(e){return e<0?RW(e):qW(e)}m_.exports=UW});var Oc=g((s6e,v_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var FW=p_();v_.exports=FW});var h_=g((u6e,g_)=>{"use strict";/**
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
*/function MW(e){return e===0?.0416666666666666:.0416666666666666+e*(-.001388888888887411+e*2480158728947673e-20)}g_.exports=MW});var b_=g((c6e,y_)=>{"use strict";/**
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
*/function LW(e){return e===0?-27557314351390663e-23:-27557314351390663e-23+e*(2087572321298175e-24+e*-11359647557788195e-27)}y_.exports=LW});var __=g((l6e,$_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var ZW=h_(),VW=b_();function BW(e,r){var n,i,t,o;return o=e*e,t=o*o,i=o*ZW(o),i+=t*t*VW(o),n=.5*o,t=1-n,t+(1-t-n+(o*i-e*r))}$_.exports=BW});var fg=g((d6e,w_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var WW=__();w_.exports=WW});var k_=g((f6e,I_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var S_=-.16666666666666632,GW=.00833333333332249,HW=-.0001984126982985795,JW=27557313707070068e-22,KW=-25050760253406863e-24,XW=158969099521155e-24;function QW(e,r){var n,i,t,o;return o=e*e,t=o*o,n=GW+o*(HW+o*JW)+o*t*(KW+o*XW),i=o*e,r===0?e+i*(S_+o*n):e-(o*(.5*r-i*n)-r-i*S_)}I_.exports=QW});var mg=g((m6e,O_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var YW=k_();O_.exports=YW});var Lt=g((p6e,N_)=>{"use strict";/**
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
*/var eG=2147483647;N_.exports=eG});var ha=g((v6e,A_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var rG=2146435072;A_.exports=rG});var pg=g((g6e,P_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var tG=1048575;P_.exports=tG});var E_=g((h6e,x_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nG=jn(),vg;nG===!0?vg=0:vg=1;x_.exports=vg});var j_=g((y6e,T_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var iG=Dn(),oG=Tn(),aG=E_(),D_=new oG(1),sG=new iG(D_.buffer);function uG(e){return D_[0]=e,sG[aG]}T_.exports=uG});var C_=g((b6e,z_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cG=j_();z_.exports=cG});var U_=g(($6e,R_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var lG=jn(),q_,gg,hg;lG===!0?(gg=1,hg=0):(gg=0,hg=1);q_={HIGH:gg,LOW:hg};R_.exports=q_});var V_=g((_6e,Z_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var dG=Dn(),fG=Tn(),M_=U_(),L_=new fG(1),F_=new dG(L_.buffer),mG=M_.HIGH,pG=M_.LOW;function vG(e,r){return F_[mG]=e,F_[pG]=r,L_[0]}Z_.exports=vG});var ya=g((w6e,B_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gG=V_();B_.exports=gG});var G_=g((S6e,W_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hG=1023;W_.exports=hG});var J_=g((I6e,H_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yG=-1023;H_.exports=yG});var X_=g((k6e,K_)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var bG=-1074;K_.exports=bG});var Y_=g((O6e,Q_)=>{"use strict";/**
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
*/var $G=2147483648;Q_.exports=$G});var t7=g((N6e,r7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var _G=jn(),e7,yg,bg;_G===!0?(yg=1,bg=0):(yg=0,bg=1);e7={HIGH:yg,LOW:bg};r7.exports=e7});var $g=g((A6e,a7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var wG=Dn(),SG=Tn(),i7=t7(),o7=new SG(1),n7=new wG(o7.buffer),IG=i7.HIGH,kG=i7.LOW;function OG(e,r,n,i){return o7[0]=e,r[i]=n7[IG],r[i+n]=n7[kG],r}a7.exports=OG});var u7=g((P6e,s7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var NG=$g();function AG(e){return NG(e,[0,0],1,0)}s7.exports=AG});var Nc=g((x6e,l7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var PG=Ze(),c7=u7(),xG=$g();PG(c7,"assign",xG);l7.exports=c7});var f7=g((E6e,d7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var EG=Y_(),DG=Lt(),TG=Nc(),jG=fr(),zG=ya(),_g=[0,0];function CG(e,r){var n,i;return TG.assign(e,_g,1,0),n=_g[0],n&=DG,i=jG(r),i&=EG,n|=i,zG(n,_g[1])}d7.exports=CG});var Ac=g((D6e,m7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qG=f7();m7.exports=qG});var Zt=g((T6e,p7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var RG=22250738585072014e-324;p7.exports=RG});var wg=g((j6e,v7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var UG=Zt(),FG=En(),MG=V(),LG=Y(),ZG=4503599627370496;function VG(e,r,n,i){return MG(e)||FG(e)?(r[i]=e,r[i+n]=0,r):e!==0&&LG(e)<UG?(r[i]=e*ZG,r[i+n]=-52,r):(r[i]=e,r[i+n]=0,r)}v7.exports=VG});var h7=g((z6e,g7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var BG=wg();function WG(e){return BG(e,[0,0],1,0)}g7.exports=WG});var $7=g((C6e,b7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var GG=Ze(),y7=h7(),HG=wg();GG(y7,"assign",HG);b7.exports=y7});var w7=g((q6e,_7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var JG=fr(),KG=ha(),XG=Mt();function QG(e){var r=JG(e);return r=(r&KG)>>>20,r-XG|0}_7.exports=QG});var I7=g((R6e,S7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var YG=w7();S7.exports=YG});var O7=g((U6e,k7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var eH=pe(),rH=He(),tH=Mt(),nH=G_(),iH=J_(),oH=X_(),aH=V(),sH=En(),uH=Ac(),cH=$7().assign,lH=I7(),dH=Nc(),fH=ya(),mH=2220446049250313e-31,pH=2148532223,Sg=[0,0],Ig=[0,0];function vH(e,r){var n,i;return r===0||e===0||aH(e)||sH(e)?e:(cH(e,Sg,1,0),e=Sg[0],r+=Sg[1],r+=lH(e),r<oH?uH(0,e):r>nH?e<0?rH:eH:(r<=iH?(r+=52,i=mH):i=1,dH.assign(e,Ig,1,0),n=Ig[0],n&=pH,n|=r+tH<<20,i*fH(n,Ig[1])))}k7.exports=vH});var zn=g((F6e,N7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gH=O7();N7.exports=gH});var P7=g((M6e,A7)=>{"use strict";/**
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
*/function hH(e,r){var n,i;for(n=[],i=0;i<r;i++)n.push(e);return n}A7.exports=hH});var E7=g((L6e,x7)=>{"use strict";/**
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
*/var yH=P7();x7.exports=yH});var T7=g((Z6e,D7)=>{"use strict";/**
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
*/var bH=E7();function $H(e){return bH(0,e)}D7.exports=$H});var z7=g((V6e,j7)=>{"use strict";/**
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
*/var _H=T7();j7.exports=_H});var F7=g((B6e,U7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var wH=Nr(),Pc=zn(),Dc=z7(),q7=[10680707,7228996,1387004,2578385,16069853,12639074,9804092,4427841,16666979,11263675,12935607,2387514,4345298,14681673,3074569,13734428,16653803,1880361,10960616,8533493,3062596,8710556,7349940,6258241,3772886,3769171,3798172,8675211,12450088,3874808,9961438,366607,15675153,9132554,7151469,3571407,2607881,12013382,4155038,6285869,7677882,13102053,15825725,473591,9065106,15363067,6271263,9264392,5636912,4652155,7056368,13614112,10155062,1944035,9527646,15080200,6658437,6231200,6832269,16767104,5075751,3212806,1398474,7579849,6349435,12618859],SH=[1.570796251296997,7549789415861596e-23,5390302529957765e-30,3282003415807913e-37,1270655753080676e-44,12293330898111133e-52,27337005381646456e-60,21674168387780482e-67],kg=16777216,Og=5960464477539063e-23,xc=Dc(20),C7=Dc(20),Ec=Dc(20),Ve=Dc(20);function R7(e,r,n,i,t,o,a,s,u){var c,l,d,f,m,v,h,y,b;for(f=o,b=i[n],y=n,m=0;y>0;m++)l=Og*b|0,Ve[m]=b-kg*l|0,b=i[y-1]+l,y-=1;if(b=Pc(b,t),b-=8*wH(b*.125),h=b|0,b-=h,d=0,t>0?(m=Ve[n-1]>>24-t,h+=m,Ve[n-1]-=m<<24-t,d=Ve[n-1]>>23-t):t===0?d=Ve[n-1]>>23:b>=.5&&(d=2),d>0){for(h+=1,c=0,m=0;m<n;m++)y=Ve[m],c===0?y!==0&&(c=1,Ve[m]=16777216-y):Ve[m]=16777215-y;if(t>0)switch(t){case 1:Ve[n-1]&=8388607;break;case 2:Ve[n-1]&=4194303;break}d===2&&(b=1-b,c!==0&&(b-=Pc(1,t)))}if(b===0){for(y=0,m=n-1;m>=o;m--)y|=Ve[m];if(y===0){for(v=1;Ve[o-v]===0;v++);for(m=n+1;m<=n+v;m++){for(u[s+m]=q7[a+m],l=0,y=0;y<=s;y++)l+=e[y]*u[s+(m-y)];i[m]=l}return n+=v,R7(e,r,n,i,t,o,a,s,u)}for(n-=1,t-=24;Ve[n]===0;)n-=1,t-=24}else b=Pc(b,-t),b>=kg?(l=Og*b|0,Ve[n]=b-kg*l|0,n+=1,t+=24,Ve[n]=l):Ve[n]=b|0;for(l=Pc(1,t),m=n;m>=0;m--)i[m]=l*Ve[m],l*=Og;for(m=n;m>=0;m--){for(l=0,v=0;v<=f&&v<=n-m;v++)l+=SH[v]*i[m+v];Ec[n-m]=l}for(l=0,m=n;m>=0;m--)l+=Ec[m];for(d===0?r[0]=l:r[0]=-l,l=Ec[0]-l,m=1;m<=n;m++)l+=Ec[m];return d===0?r[1]=l:r[1]=-l,h&7}function IH(e,r,n,i){var t,o,a,s,u,c,l,d,f;for(o=4,s=i-1,a=(n-3)/24|0,a<0&&(a=0),c=n-24*(a+1),d=a-s,f=s+o,l=0;l<=f;l++)d<0?xc[l]=0:xc[l]=q7[d],d+=1;for(l=0;l<=o;l++){for(t=0,d=0;d<=s;d++)t+=e[d]*xc[s+(l-d)];C7[l]=t}return u=o,R7(e,r,u,C7,c,o,a,s,xc)}U7.exports=IH});var L7=g((W6e,M7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kH=Math.round;M7.exports=kH});var Ng=g((G6e,Z7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var OH=L7();Z7.exports=OH});var G7=g((H6e,W7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var NH=Ng(),V7=fr(),AH=.6366197723675814,PH=1.5707963267341256,xH=6077100506506192e-26,EH=6077100506303966e-26,DH=20222662487959506e-37,TH=20222662487111665e-37,jH=84784276603689e-45,B7=2047;function zH(e,r,n){var i,t,o,a,s,u,c;return t=NH(e*AH),a=e-t*PH,s=t*xH,c=r>>20|0,n[0]=a-s,i=V7(n[0]),u=c-(i>>20&B7),u>16&&(o=a,s=t*EH,a=o-s,s=t*DH-(o-a-s),n[0]=a-s,i=V7(n[0]),u=c-(i>>20&B7),u>49&&(o=a,s=t*TH,a=o-s,s=t*jH-(o-a-s),n[0]=a-s)),n[1]=a-n[0]-s,t}W7.exports=zH});var J7=g((J6e,H7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var CH=Lt(),qH=ha(),RH=pg(),UH=fr(),FH=C_(),MH=ya(),LH=F7(),Tc=G7(),ZH=0,VH=16777216,Vt=1.5707963267341256,Cn=6077100506506192e-26,jc=2*Cn,zc=3*Cn,Cc=4*Cn,BH=598523,WH=1072243195,GH=1073928572,HH=1074752122,JH=1074977148,KH=1075183036,XH=1075388923,QH=1075594811,YH=1094263291,ba=[0,0,0],$a=[0,0];function eJ(e,r){var n,i,t,o,a,s,u,c;if(t=UH(e)|0,o=t&CH|0,o<=WH)return r[0]=e,r[1]=0,0;if(o<=HH)return(o&RH)===BH?Tc(e,o,r):o<=GH?t>0?(c=e-Vt,r[0]=c-Cn,r[1]=c-r[0]-Cn,1):(c=e+Vt,r[0]=c+Cn,r[1]=c-r[0]+Cn,-1):t>0?(c=e-2*Vt,r[0]=c-jc,r[1]=c-r[0]-jc,2):(c=e+2*Vt,r[0]=c+jc,r[1]=c-r[0]+jc,-2);if(o<=QH)return o<=KH?o===JH?Tc(e,o,r):t>0?(c=e-3*Vt,r[0]=c-zc,r[1]=c-r[0]-zc,3):(c=e+3*Vt,r[0]=c+zc,r[1]=c-r[0]+zc,-3):o===XH?Tc(e,o,r):t>0?(c=e-4*Vt,r[0]=c-Cc,r[1]=c-r[0]-Cc,4):(c=e+4*Vt,r[0]=c+Cc,r[1]=c-r[0]+Cc,-4);if(o<YH)return Tc(e,o,r);if(o>=qH)return r[0]=NaN,r[1]=NaN,0;for(n=FH(e),i=(o>>20)-1046,c=MH(o-(i<<20|0),n),s=0;s<2;s++)ba[s]=c|0,c=(c-ba[s])*VH;for(ba[2]=c,a=3;ba[a-1]===ZH;)a-=1;return u=LH(ba,$a,i,a,1),t<0?(r[0]=-$a[0],r[1]=-$a[1],-u):(r[0]=$a[0],r[1]=$a[1],u)}H7.exports=eJ});var Ag=g((K6e,K7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var rJ=J7();K7.exports=rJ});var Y7=g((X6e,Q7)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var tJ=fr(),Pg=fg(),X7=mg(),nJ=Ag(),iJ=Lt(),oJ=ha(),ct=[0,0],aJ=1072243195,sJ=1044381696;function uJ(e){var r,n;if(r=tJ(e),r&=iJ,r<=aJ)return r<sJ?1:Pg(e,0);if(r>=oJ)return NaN;switch(n=nJ(e,ct),n&3){case 0:return Pg(ct[0],ct[1]);case 1:return-X7(ct[0],ct[1]);case 2:return-Pg(ct[0],ct[1]);default:return X7(ct[0],ct[1])}}Q7.exports=uJ});var qc=g((Q6e,e9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cJ=Y7();e9.exports=cJ});var n9=g((Y6e,t9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var lJ=Lt(),dJ=ha(),fJ=fr(),r9=fg(),xg=mg(),mJ=Ag(),pJ=1072243195,vJ=1045430272,lt=[0,0];function gJ(e){var r,n;if(r=fJ(e),r&=lJ,r<=pJ)return r<vJ?e:xg(e,0);if(r>=dJ)return NaN;switch(n=mJ(e,lt),n&3){case 0:return xg(lt[0],lt[1]);case 1:return r9(lt[0],lt[1]);case 2:return-xg(lt[0],lt[1]);default:return-r9(lt[0],lt[1])}}t9.exports=gJ});var Ui=g((e4e,i9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hJ=n9();i9.exports=hJ});var dt=g((r4e,o9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yJ=3.141592653589793;o9.exports=yJ});var u9=g((t4e,s9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var bJ=V(),$J=En(),a9=qc(),Eg=Ui(),_J=Y(),_a=Ac(),wa=dt();function wJ(e){var r,n;return bJ(e)?NaN:$J(e)?NaN:(n=e%2,r=_J(n),r===0||r===1?_a(0,n):r<.25?Eg(wa*n):r<.75?(r=.5-r,_a(a9(wa*r),n)):r<1.25?(n=_a(1,n)-n,Eg(wa*n)):r<1.75?(r-=1.5,-_a(a9(wa*r),n)):(n-=_a(2,n),Eg(wa*n)))}s9.exports=wJ});var l9=g((n4e,c9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var SJ=u9();c9.exports=SJ});var f9=g((i4e,d9)=>{"use strict";/**
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
*/function IJ(e){return e===0?.06735230105312927:.06735230105312927+e*(.007385550860814029+e*(.0011927076318336207+e*(.00022086279071390839+e*25214456545125733e-21)))}d9.exports=IJ});var p9=g((o4e,m9)=>{"use strict";/**
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
*/function kJ(e){return e===0?.020580808432516733:.020580808432516733+e*(.0028905138367341563+e*(.0005100697921535113+e*(.00010801156724758394+e*44864094961891516e-21)))}m9.exports=kJ});var g9=g((a4e,v9)=>{"use strict";/**
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
*/function OJ(e){return e===0?1.3920053346762105:1.3920053346762105+e*(.7219355475671381+e*(.17193386563280308+e*(.01864591917156529+e*(.0007779424963818936+e*7326684307446256e-21))))}v9.exports=OJ});var y9=g((s4e,h9)=>{"use strict";/**
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
*/function NJ(e){return e===0?.21498241596060885:.21498241596060885+e*(.325778796408931+e*(.14635047265246445+e*(.02664227030336386+e*(.0018402845140733772+e*3194753265841009e-20))))}h9.exports=NJ});var $9=g((u4e,b9)=>{"use strict";/**
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
*/function AJ(e){return e===0?-.032788541075985965:-.032788541075985965+e*(.006100538702462913+e*(-.0014034646998923284+e*.00031563207090362595))}b9.exports=AJ});var w9=g((c4e,_9)=>{"use strict";/**
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
*/function PJ(e){return e===0?.01797067508118204:.01797067508118204+e*(-.0036845201678113826+e*(.000881081882437654+e*-.00031275416837512086))}_9.exports=PJ});var I9=g((l4e,S9)=>{"use strict";/**
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
*/function xJ(e){return e===0?-.010314224129834144:-.010314224129834144+e*(.0022596478090061247+e*(-.0005385953053567405+e*.0003355291926355191))}S9.exports=xJ});var O9=g((d4e,k9)=>{"use strict";/**
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
*/function EJ(e){return e===0?.6328270640250934:.6328270640250934+e*(1.4549225013723477+e*(.9777175279633727+e*(.22896372806469245+e*.013381091853678766)))}k9.exports=EJ});var A9=g((f4e,N9)=>{"use strict";/**
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
*/function DJ(e){return e===0?2.4559779371304113:2.4559779371304113+e*(2.128489763798934+e*(.7692851504566728+e*(.10422264559336913+e*.003217092422824239)))}N9.exports=DJ});var x9=g((m4e,P9)=>{"use strict";/**
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
*/function TJ(e){return e===0?.08333333333333297:.08333333333333297+e*(-.0027777777772877554+e*(.0007936505586430196+e*(-.00059518755745034+e*(.0008363399189962821+e*-.0016309293409657527))))}P9.exports=TJ});var T9=g((p4e,D9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var jJ=V(),zJ=En(),CJ=Y(),Fi=de(),qJ=Oc(),RJ=l9(),UJ=dt(),Dg=pe(),FJ=f9(),MJ=p9(),LJ=g9(),ZJ=y9(),VJ=$9(),BJ=w9(),WJ=I9(),GJ=O9(),HJ=A9(),JJ=x9(),KJ=.07721566490153287,XJ=.3224670334241136,QJ=1,YJ=-.07721566490153287,eK=.48383612272381005,rK=-.1475877229945939,tK=.06462494023913339,nK=-.07721566490153287,iK=1,oK=.4189385332046727,Rc=1.4616321449683622,aK=4503599627370496,sK=72057594037927940,uK=13877787807814457e-33,E9=1.4616321449683622,cK=-.12148629053584961,lK=-3638676997039505e-33;function dK(e){var r,n,i,t,o,a,s,u,c,l,d,f,m;if(jJ(e)||zJ(e))return e;if(e===0)return Dg;if(e<0?(r=!0,e=-e):r=!1,e<uK)return-Fi(e);if(r){if(e>=aK||(c=RJ(e),c===0))return Dg;n=Fi(UJ/CJ(c*e))}if(e===1||e===2)return 0;if(e<2)switch(e<=.9?(m=-Fi(e),e>=Rc-1+.27?(d=1-e,i=0):e>=Rc-1-.27?(d=e-(E9-1),i=1):(d=e,i=2)):(m=0,e>=Rc+.27?(d=2-e,i=0):e>=Rc-.27?(d=e-E9,i=1):(d=e-1,i=2)),i){case 0:f=d*d,a=KJ+f*FJ(f),o=f*(XJ+f*MJ(f)),s=d*a+o,m+=s-.5*d;break;case 1:f=d*d,l=f*d,a=eK+l*VJ(l),o=rK+l*BJ(l),t=tK+l*WJ(l),s=f*a-(lK-l*(o+d*t)),m+=cK+s;break;case 2:a=d*(nK+d*GJ(d)),o=iK+d*HJ(d),m+=-.5*d+a/o;break}else if(e<8)switch(i=qJ(e),d=e-i,s=d*(YJ+d*ZJ(d)),u=QJ+d*LJ(d),m=.5*d+s/u,f=1,i){case 7:f*=d+6;case 6:f*=d+5;case 5:f*=d+4;case 4:f*=d+3;case 3:f*=d+2,m+=Fi(f)}else e<sK?(c=Fi(e),f=1/e,d=f*f,l=oK+f*JJ(d),m=(e-.5)*(c-1)+l):m=e*(Fi(e)-1);return r&&(m=n-m),m}D9.exports=dK});var Mi=g((v4e,j9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var fK=T9();j9.exports=fK});var C9=g((g4e,z9)=>{"use strict";/**
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
*/function mK(e){return e===0?.16666666666666602:.16666666666666602+e*(-.0027777777777015593+e*(6613756321437934e-20+e*(-16533902205465252e-22+e*41381367970572385e-24)))}z9.exports=mK});var R9=g((h4e,q9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var pK=zn(),vK=C9();function gK(e,r,n){var i,t,o,a;return i=e-r,t=i*i,o=i-t*vK(t),a=1-(r-i*o/(2-o)-e),pK(a,n)}q9.exports=gK});var V9=g((y4e,Z9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var hK=V(),U9=Oc(),yK=He(),F9=pe(),bK=R9(),$K=.6931471803691238,_K=19082149292705877e-26,M9=1.4426950408889634,wK=709.782712893384,SK=-745.1332191019411,L9=1/(1<<28),IK=-L9;function kK(e){var r,n,i;return hK(e)||e===F9?e:e===yK?0:e>wK?F9:e<SK?0:e>IK&&e<L9?1+e:(e<0?i=U9(M9*e-.5):i=U9(M9*e+.5),r=e-i*$K,n=i*_K,bK(r,n,i))}Z9.exports=kK});var Se=g((b4e,B9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var OK=V9();B9.exports=OK});var Sa=g(($4e,W9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var NK=2.5066282746310007;W9.exports=NK});var ft=g((_4e,G9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var AK=709.782712893384;G9.exports=AK});var Ia=g((w4e,H9)=>{"use strict";/**
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
*/var PK=170;H9.exports=PK});var K9=g((S4e,J9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xK=Nr();function EK(e){return xK(e)===e}J9.exports=EK});var qn=g((I4e,X9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var DK=K9();X9.exports=DK});var Y9=g((k4e,Q9)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var TK=He();function jK(e){return e===0&&1/e===TK}Q9.exports=jK});var Tg=g((O4e,ew)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var zK=Y9();ew.exports=zK});var tw=g((N4e,rw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CK=qn();function qK(e){return CK(e/2)}rw.exports=qK});var iw=g((A4e,nw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var RK=tw();nw.exports=RK});var sw=g((P4e,aw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ow=iw();function UK(e){return e>0?ow(e-1):ow(e+1)}aw.exports=UK});var Uc=g((x4e,uw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var FK=sw();uw.exports=FK});var lw=g((E4e,cw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var MK=Math.sqrt;cw.exports=MK});var ce=g((D4e,dw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var LK=lw();dw.exports=LK});var mw=g((T4e,fw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ZK=jn(),jg;ZK===!0?jg=0:jg=1;fw.exports=jg});var vw=g((j4e,pw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var VK=Dn(),BK=Tn(),WK=mw(),zg=new BK(1),GK=new VK(zg.buffer);function HK(e,r){return zg[0]=e,GK[WK]=r>>>0,zg[0]}pw.exports=HK});var Li=g((z4e,gw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var JK=vw();gw.exports=JK});var yw=g((C4e,hw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function KK(e){return e|0}hw.exports=KK});var Cg=g((q4e,bw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var XK=yw();bw.exports=XK});var ww=g((R4e,_w)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var $w=Uc(),QK=Ac(),YK=He(),Fc=pe();function eX(e,r){return r===YK?Fc:r===Fc?0:r>0?$w(r)?e:0:$w(r)?QK(Fc,e):Fc}_w.exports=eX});var Iw=g((U4e,Sw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var rX=Lt(),tX=fr(),nX=1072693247,Mc=1e300,Lc=1e-300;function iX(e,r){var n,i;return i=tX(e),n=i&rX,n<=nX?r<0?Mc*Mc:Lc*Lc:r>0?Mc*Mc:Lc*Lc}Sw.exports=iX});var Nw=g((F4e,Ow)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var oX=Y(),kw=pe();function aX(e,r){return e===-1?(e-e)/(e-e):e===1?1:oX(e)<1==(r===kw)?0:kw}Ow.exports=aX});var qg=g((M4e,Aw)=>{"use strict";/**
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
*/var sX=20;Aw.exports=sX});var xw=g((L4e,Pw)=>{"use strict";/**
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
*/function uX(e){return e===0?.5999999999999946:.5999999999999946+e*(.4285714285785502+e*(.33333332981837743+e*(.272728123808534+e*(.23066074577556175+e*.20697501780033842))))}Pw.exports=uX});var jw=g((Z4e,Tw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var cX=fr(),Zc=Li(),Ew=Ri(),lX=Mt(),dX=qg(),fX=xw(),mX=1048575,Dw=1048576,pX=1072693248,vX=536870912,gX=524288,hX=9007199254740992,yX=.9617966939259756,bX=.9617967009544373,$X=-7028461650952758e-24,_X=[1,1.5],wX=[0,.5849624872207642],SX=[0,1350039202129749e-23];function IX(e,r,n){var i,t,o,a,s,u,c,l,d,f,m,v,h,y,b,_,$,N,w,O,k,D;return O=0,n<Dw&&(r*=hX,O-=53,n=cX(r)),O+=(n>>dX)-lX|0,k=n&mX|0,n=k|pX|0,k<=235662?D=0:k<767610?D=1:(D=0,O+=1,n-=Dw),r=Ew(r,n),l=_X[D],N=r-l,w=1/(r+l),t=N*w,a=Zc(t,0),i=(n>>1|vX)+gX,i+=D<<18,u=Ew(0,i),c=r-(u-l),s=w*(N-a*u-a*c),o=t*t,$=o*o*fX(o),$+=s*(a+t),o=a*a,u=3+o+$,u=Zc(u,0),c=$-(u-3-o),N=a*u,w=s*u+c*t,f=N+w,f=Zc(f,0),m=w-(f-N),v=bX*f,h=$X*f+m*yX+SX[D],d=wX[D],_=O,y=v+h+d+_,y=Zc(y,0),b=h-(y-_-d-v),e[0]=y,e[1]=b,e}Tw.exports=IX});var Cw=g((V4e,zw)=>{"use strict";/**
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
*/function kX(e){return e===0?.5:.5+e*(-.3333333333333333+e*.25)}zw.exports=kX});var Rw=g((B4e,qw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var OX=Li(),NX=Cw(),AX=1.4426950408889634,PX=1.4426950216293335,xX=19259629911266175e-24;function EX(e,r){var n,i,t,o,a,s;return t=r-1,o=t*t*NX(t),a=PX*t,s=t*xX-o*AX,i=a+s,i=OX(i,0),n=s-(i-a),e[0]=i,e[1]=n,e}qw.exports=EX});var Fw=g((W4e,Uw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var DX=.6931471805599453;Uw.exports=DX});var Lw=g((G4e,Mw)=>{"use strict";/**
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
*/function TX(e){return e===0?.16666666666666602:.16666666666666602+e*(-.0027777777777015593+e*(6613756321437934e-20+e*(-16533902205465252e-22+e*41381367970572385e-24)))}Mw.exports=TX});var Jw=g((H4e,Hw)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var jX=fr(),Zw=Ri(),zX=Li(),CX=Cg(),qX=zn(),RX=Fw(),Vw=Mt(),Bw=Lt(),Ww=pg(),ka=qg(),UX=Lw(),Gw=1048576,FX=1071644672,MX=.6931471824645996,LX=-1904654299957768e-24;function ZX(e,r,n){var i,t,o,a,s,u,c,l,d,f,m;return f=e&Bw|0,m=(f>>ka)-Vw|0,d=0,f>FX&&(d=e+(Gw>>m+1)>>>0,m=((d&Bw)>>ka)-Vw|0,i=(d&~(Ww>>m))>>>0,o=Zw(0,i),d=(d&Ww|Gw)>>ka-m>>>0,e<0&&(d=-d),r-=o),o=n+r,o=zX(o,0),s=o*MX,u=(n-(o-r))*RX+o*LX,l=s+u,c=u-(l-s),o=l*l,t=l-o*UX(o),a=l*t/(t-2)-(c+l*c),l=1-(a-l),e=jX(l),e=CX(e),e+=d<<ka>>>0,e>>ka<=0?l=qX(l,d):l=Zw(l,e),l}Hw.exports=ZX});var a8=g((J4e,o8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var Kw=V(),Xw=Uc(),Qw=En(),VX=qn(),Yw=ce(),BX=Y(),Rg=Nc(),WX=Li(),e8=Cg(),GX=He(),HX=pe(),Ug=Lt(),JX=ww(),KX=Iw(),XX=Nw(),QX=jw(),YX=Rw(),eQ=Jw(),rQ=1072693247,tQ=1105199104,nQ=1139802112,r8=1083179008,iQ=1072693248,oQ=1083231232,aQ=3230714880,t8=31,Bt=1e300,Wt=1e-300,sQ=8008566259537294e-32,mt=[0,0],n8=[0,0];function i8(e,r){var n,i,t,o,a,s,u,c,l,d,f,m,v,h,y,b;if(Kw(e)||Kw(r))return NaN;if(Rg.assign(r,mt,1,0),s=mt[0],u=mt[1],u===0){if(r===0)return 1;if(r===1)return e;if(r===-1)return 1/e;if(r===.5)return Yw(e);if(r===-.5)return 1/Yw(e);if(r===2)return e*e;if(r===3)return e*e*e;if(r===4)return e*=e,e*e;if(Qw(r))return XX(e,r)}if(Rg.assign(e,mt,1,0),o=mt[0],a=mt[1],a===0){if(o===0)return JX(e,r);if(e===1)return 1;if(e===-1&&Xw(r))return-1;if(Qw(e))return e===GX?i8(-0,-r):r<0?0:HX}if(e<0&&VX(r)===!1)return(e-e)/(e-e);if(t=BX(e),n=o&Ug|0,i=s&Ug|0,c=o>>>t8|0,l=s>>>t8|0,c&&Xw(r)?c=-1:c=1,i>tQ){if(i>nQ)return KX(e,r);if(n<rQ)return l===1?c*Bt*Bt:c*Wt*Wt;if(n>iQ)return l===0?c*Bt*Bt:c*Wt*Wt;v=YX(n8,t)}else v=QX(n8,t,n);if(d=WX(r,0),m=(r-d)*v[0]+r*v[1],f=d*v[0],h=m+f,Rg.assign(h,mt,1,0),y=e8(mt[0]),b=e8(mt[1]),y>=r8){if((y-r8|b)!==0||m+sQ>h-f)return c*Bt*Bt}else if((y&Ug)>=oQ&&((y-aQ|b)!==0||m<=h-f))return c*Wt*Wt;return h=eQ(y,f,m),c*h}o8.exports=i8});var Oe=g((K4e,s8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var uQ=a8();s8.exports=uQ});var c8=g((X4e,u8)=>{"use strict";/**
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
*/function cQ(e){return e===0?.08333333333334822:.08333333333334822+e*(.0034722222160545866+e*(-.0026813261780578124+e*(-.00022954996161337813+e*.0007873113957930937)))}u8.exports=cQ});var f8=g((Q4e,d8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var lQ=Sa(),l8=Oe(),dQ=Se(),fQ=c8(),mQ=143.01608;function pQ(e){var r,n,i;return r=1/e,r=1+r*fQ(r),n=dQ(e),e>mQ?(i=l8(e,.5*e-.25),n=i*(i/n)):n=l8(e,e-.5)/n,lQ*n*r}d8.exports=pQ});var p8=g((Y4e,m8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var vQ=.5772156649015329;m8.exports=vQ});var g8=g((e2e,v8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var gQ=p8();function hQ(e,r){return r/((1+gQ*e)*e)}v8.exports=hQ});var y8=g((r2e,h8)=>{"use strict";/**
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
*/function yQ(e){var r,n,i;return e===0?1:(e<0?r=-e:r=e,r<=1?(n=1+e*(.4942148268014971+e*(.20744822764843598+e*(.04763678004571372+e*(.010421379756176158+e*(.0011913514700658638+e*(.00016011952247675185+e*0)))))),i=1+e*(.0714304917030273+e*(-.23459179571824335+e*(.035823639860549865+e*(.011813978522206043+e*(-.004456419138517973+e*(.0005396055804933034+e*-23158187332412014e-21))))))):(e=1/e,n=0+e*(.00016011952247675185+e*(.0011913514700658638+e*(.010421379756176158+e*(.04763678004571372+e*(.20744822764843598+e*(.4942148268014971+e*1)))))),i=-23158187332412014e-21+e*(.0005396055804933034+e*(-.004456419138517973+e*(.011813978522206043+e*(.035823639860549865+e*(-.23459179571824335+e*(.0714304917030273+e*1))))))),n/i)}h8.exports=yQ});var O8=g((t2e,k8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var bQ=V(),$Q=qn(),_Q=Tg(),b8=Y(),wQ=Nr(),SQ=Ui(),$8=pe(),_8=He(),w8=dt(),S8=f8(),I8=g8(),IQ=y8();function kQ(e){var r,n,i,t;if($Q(e)&&e<0||e===_8||bQ(e))return NaN;if(e===0)return _Q(e)?_8:$8;if(e>171.61447887182297)return $8;if(e<-170.5674972726612)return 0;if(n=b8(e),n>33)return e>=0?S8(e):(i=wQ(n),(i&1)===0?r=-1:r=1,t=n-i,t>.5&&(i+=1,t=n-i),t=n*SQ(w8*t),r*w8/(b8(t)*S8(n)));for(t=1;e>=3;)e-=1,t*=e;for(;e<0;){if(e>-1e-9)return I8(e,t);t/=e,e+=1}for(;e<2;){if(e<1e-9)return I8(e,t);t/=e,e+=1}return e===2?t:(e-=2,t*IQ(e))}k8.exports=kQ});var Fr=g((n2e,N8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var OQ=O8();N8.exports=OQ});var P8=g((i2e,A8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var NQ=14901161193847656e-24;A8.exports=NQ});var Gt=g((o2e,x8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var AQ=17976931348623157e292;x8.exports=AQ});var D8=g((a2e,E8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var PQ=eval;E8.exports=PQ});var j8=g((s2e,T8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xQ=D8();function EQ(){var e;try{xQ('"use strict"; (function* () {})'),e=!0}catch{e=!1}return e}T8.exports=EQ});var Fg=g((u2e,z8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var DQ=j8();z8.exports=DQ});var Ar=g((c2e,C8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var TQ=2220446049250313e-31;C8.exports=TQ});var R8=g((l2e,q8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Vc=Y(),jQ=Ar(),zQ=1e6;function CQ(e,r){var n,i,t,o,a,s;if(s={},arguments.length>1&&(s=r),i=s.tolerance||jQ,o=s.maxTerms||zQ,a=s.initialValue||0,n=typeof e.next=="function",n===!0){for(t of e)if(a+=t,Vc(i*a)>=Vc(t)||--o===0)break}else do t=e(),a+=t;while(Vc(i*a)<Vc(t)&&--o);return a}q8.exports=CQ});var M8=g((d2e,F8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var U8=Y(),qQ=Ar(),RQ=1e6;function UQ(e,r){var n,i,t,o,a;a={},arguments.length>1&&(a=r),n=a.tolerance||qQ,t=a.maxTerms||RQ,o=a.initialValue||0;do i=e(),o+=i;while(U8(n*o)<U8(i)&&--t);return o}F8.exports=UQ});var Zi=g((f2e,L8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var FQ=Fg(),MQ=R8(),LQ=M8(),Mg;FQ()?Mg=MQ:Mg=LQ;L8.exports=Mg});var V8=g((m2e,Z8)=>{"use strict";/**
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
*/function ZQ(e,r){var n=1,i=e,t=r;return o;function o(){var a=n;return n*=i/t,i-=1,a}}Z8.exports=ZQ});var W8=g((p2e,B8)=>{"use strict";/**
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
*/var VQ=Zi(),BQ=V8();function WQ(e,r){var n,i;return i=BQ(e,r),n=VQ(i),n}B8.exports=WQ});var H8=g((v2e,G8)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var GQ=Se();function HQ(e,r){var n,i,t,o;if(t=GQ(-r),i=t,i!==0)for(n=i,o=1;o<e;++o)n/=o,n*=r,i+=n;return i}G8.exports=HQ});var K8=g((g2e,J8)=>{"use strict";/**
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
*/function JQ(e){return e===0?-.3250421072470015:-.3250421072470015+e*(-.02848174957559851+e*(-.005770270296489442+e*-23763016656650163e-21))}J8.exports=JQ});var Q8=g((h2e,X8)=>{"use strict";/**
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
*/function KQ(e){return e===0?.39791722395915535:.39791722395915535+e*(.0650222499887673+e*(.005081306281875766+e*(.00013249473800432164+e*-3960228278775368e-21)))}X8.exports=KQ});var eS=g((y2e,Y8)=>{"use strict";/**
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
*/function XQ(e){return e===0?.41485611868374833:.41485611868374833+e*(-.3722078760357013+e*(.31834661990116175+e*(-.11089469428239668+e*(.035478304325618236+e*-.002166375594868791))))}Y8.exports=XQ});var tS=g((b2e,rS)=>{"use strict";/**
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
*/function QQ(e){return e===0?.10642088040084423:.10642088040084423+e*(.540397917702171+e*(.07182865441419627+e*(.12617121980876164+e*(.01363708391202905+e*.011984499846799107))))}rS.exports=QQ});var iS=g(($2e,nS)=>{"use strict";/**
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
*/function YQ(e){return e===0?-.6938585727071818:-.6938585727071818+e*(-10.558626225323291+e*(-62.375332450326006+e*(-162.39666946257347+e*(-184.60509290671104+e*(-81.2874355063066+e*-9.814329344169145)))))}nS.exports=YQ});var aS=g((_2e,oS)=>{"use strict";/**
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
*/function eY(e){return e===0?19.651271667439257:19.651271667439257+e*(137.65775414351904+e*(434.56587747522923+e*(645.3872717332679+e*(429.00814002756783+e*(108.63500554177944+e*(6.570249770319282+e*-.0604244152148581))))))}oS.exports=eY});var uS=g((w2e,sS)=>{"use strict";/**
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
*/function rY(e){return e===0?-.799283237680523:-.799283237680523+e*(-17.757954917754752+e*(-160.63638485582192+e*(-637.5664433683896+e*(-1025.0951316110772+e*-483.5191916086514))))}sS.exports=rY});var lS=g((S2e,cS)=>{"use strict";/**
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
*/function tY(e){return e===0?30.33806074348246:30.33806074348246+e*(325.7925129965739+e*(1536.729586084437+e*(3199.8582195085955+e*(2553.0504064331644+e*(474.52854120695537+e*-22.44095244658582)))))}cS.exports=tY});var pS=g((I2e,mS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var nY=V(),dS=Se(),iY=Li(),oY=pe(),aY=He(),sY=K8(),uY=Q8(),cY=eS(),lY=tS(),dY=iS(),fY=aS(),mY=uS(),pY=lS(),Bc=1e-300,vY=13877787807814457e-33,fS=.8450629115104675,gY=.12837916709551256,hY=1,yY=-.0023621185607526594,bY=1,$Y=-.009864944034847148,_Y=1,wY=-.0098649429247001,SY=1;function IY(e){var r,n,i,t,o,a,s,u;if(nY(e))return NaN;if(e===oY)return 0;if(e===aY)return 2;if(e===0)return 1;if(e<0?(r=!0,n=-e):(r=!1,n=e),n<.84375)return n<vY?1-e:(i=e*e,t=gY+i*sY(i),o=hY+i*uY(i),a=t/o,e<.25?1-(e+e*a):(t=e*a,t+=e-.5,.5-t));if(n<1.25)return o=n-1,s=yY+o*cY(o),u=bY+o*lY(o),r?1+fS+s/u:1-fS-s/u;if(n<28){if(o=1/(n*n),n<2.857142857142857)t=$Y+o*dY(o),o=_Y+o*fY(o);else{if(e<-6)return 2-Bc;t=wY+o*mY(o),o=SY+o*pY(o)}return i=iY(n,0),t=dS(-(i*i)-.5625)*dS((i-n)*(i+n)+t/o),r?2-t/n:t/n}return r?2-Bc:Bc*Bc}mS.exports=IY});var Oa=g((k2e,vS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var kY=pS();vS.exports=kY});var yS=g((O2e,hS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var OY=Oa(),gS=ce(),NY=Se(),AY=dt();function PY(e,r){var n,i,t,o,a;if(o=OY(gS(r)),o!==0&&e>1){for(i=NY(-r)/gS(AY*r),i*=r,n=.5,i/=n,t=i,a=2;a<e;++a)i/=a-n,i*=r,t+=i;o+=t}return o}hS.exports=PY});var Rn=g((N2e,bS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xY=-708.3964185322641;bS.exports=xY});var SS=g((A2e,wS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var Vi=Se(),Wc=Oe(),EY=de(),$S=ft(),_S=Rn();function DY(e,r){var n,i;return i=e*EY(r),r>=1?i<$S&&-r>_S?n=Wc(r,e)*Vi(-r):e>=1?n=Wc(r/Vi(r/e),e):n=Vi(i-r):i>_S?n=Wc(r,e)*Vi(-r):r/e<$S?n=Wc(r/Vi(r/e),e):n=Vi(i-r),n}wS.exports=DY});var Lg=g((P2e,IS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function TY(e,r){var n,i;if(i=e.length,i<2||r===0)return i===0?0:e[0];for(i-=1,n=e[i]*r+e[i-1],i-=2;i>=0;)n=n*r+e[i],i-=1;return n}IS.exports=TY});var OS=g((x2e,kS)=>{"use strict";/**
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
*/var jY=Function;kS.exports=jY});var AS=g((E2e,NS)=>{"use strict";/**
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
*/var zY=OS();NS.exports=zY});var xS=g((D2e,PS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var CY=AS(),qY=Lg();function RY(e){var r,n,i,t;if(e.length>500)return o;if(r="return function evalpoly(x){",n=e.length,n===0)r+="return 0.0;";else if(n===1)r+="return "+e[0]+";";else{for(r+="if(x===0.0){return "+e[0]+";}",r+="return "+e[0],i=n-1,t=1;t<n;t++)r+="+x*",t<i&&(r+="("),r+=e[t];for(t=0;t<i-1;t++)r+=")";r+=";"}return r+="}",r+="//# sourceURL=evalpoly.factory.js",new CY(r)();function o(a){return qY(e,a)}}PS.exports=RY});var pt=g((T2e,DS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var UY=Ze(),ES=Lg(),FY=xS();UY(ES,"factory",FY);DS.exports=ES});var jS=g((j2e,TS)=>{"use strict";/**
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
*/function MY(e){var r=-e,n=-1,i=0;return t;function t(){return n*=r,i+=1,n/i}}TS.exports=MY});var CS=g((z2e,zS)=>{"use strict";/**
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
*/var LY=Y(),ZY=de(),VY=Ar(),BY=Zi(),WY=jS();function GY(e){var r,n;return e<=-1?NaN:(n=LY(e),n>.95?ZY(1+e)-e:n<VY?-e*e/2:(r={initialValue:-e},BY(WY(e),r)))}zS.exports=GY});var Zg=g((C2e,qS)=>{"use strict";/**
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
*/var HY=CS();qS.exports=HY});var Vg=g((q2e,RS)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var JY=6.283185307179586;RS.exports=JY});var FS=g((R2e,US)=>{"use strict";/**
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
*/function KY(e){return e===0?-.3333333333333333:-.3333333333333333+e*(.08333333333333333+e*(-.014814814814814815+e*(.0011574074074074073+e*(.0003527336860670194+e*(-.0001787551440329218+e*(3919263178522438e-20+e*(-21854485106799924e-22+e*(-185406221071516e-20+e*(8296711340953087e-22+e*(-17665952736826078e-23+e*(6707853543401498e-24+e*(10261809784240309e-24+e*(-4382036018453353e-24+e*914769958223679e-24)))))))))))))}US.exports=KY});var LS=g((U2e,MS)=>{"use strict";/**
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
*/function XY(e){return e===0?-.001851851851851852:-.001851851851851852+e*(-.003472222222222222+e*(.0026455026455026454+e*(-.0009902263374485596+e*(.00020576131687242798+e*(-4018775720164609e-22+e*(-18098550334489977e-21+e*(764916091608111e-20+e*(-16120900894563446e-22+e*(4647127802807434e-24+e*(1378633446915721e-22+e*(-5752545603517705e-23+e*11951628599778148e-24)))))))))))}MS.exports=XY});var VS=g((F2e,ZS)=>{"use strict";/**
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
*/function QY(e){return e===0?.004133597883597883:.004133597883597883+e*(-.0026813271604938273+e*(.0007716049382716049+e*(20093878600823047e-22+e*(-.00010736653226365161+e*(52923448829120125e-21+e*(-12760635188618728e-21+e*(3423578734096138e-23+e*(13721957309062932e-22+e*(-6298992138380055e-22+e*14280614206064242e-23)))))))))}ZS.exports=QY});var WS=g((M2e,BS)=>{"use strict";/**
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
*/function YY(e){return e===0?.0006494341563786008:.0006494341563786008+e*(.00022947209362139917+e*(-.0004691894943952557+e*(.00026772063206283885+e*(-7561801671883977e-20+e*(-2396505113867297e-22+e*(11082654115347302e-21+e*(-56749528269915965e-22+e*14230900732435883e-22)))))))}BS.exports=YY});var HS=g((L2e,GS)=>{"use strict";/**
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
*/function eee(e){return e===0?-.0008618882909167117:-.0008618882909167117+e*(.0007840392217200666+e*(-.0002990724803031902+e*(-14638452578843418e-22+e*(6641498215465122e-20+e*(-3968365047179435e-20+e*11375726970678419e-21)))))}GS.exports=eee});var KS=g((Z2e,JS)=>{"use strict";/**
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
*/function ree(e){return e===0?-.00033679855336635813:-.00033679855336635813+e*(-6972813758365858e-20+e*(.0002772753244959392+e*(-.00019932570516188847+e*(6797780477937208e-20+e*(1419062920643967e-22+e*(-13594048189768693e-21+e*(8018470256334202e-21+e*-2291481176508095e-21)))))))}JS.exports=ree});var QS=g((V2e,XS)=>{"use strict";/**
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
*/function tee(e){return e===0?.0005313079364639922:.0005313079364639922+e*(-.0005921664373536939+e*(.0002708782096718045+e*(7902353232660328e-22+e*(-8153969367561969e-20+e*(561168275310625e-19+e*-18329116582843375e-21)))))}XS.exports=tee});var eI=g((B2e,YS)=>{"use strict";/**
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
*/function nee(e){return e===0?.00034436760689237765:.00034436760689237765+e*(5171790908260592e-20+e*(-.00033493161081142234+e*(.0002812695154763237+e*-.00010976582244684731)))}YS.exports=nee});var tI=g((W2e,rI)=>{"use strict";/**
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
*/function iee(e){return e===0?-.0006526239185953094:-.0006526239185953094+e*(.0008394987206720873+e*-.000438297098541721)}rI.exports=iee});var iI=g((G2e,nI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var oee=pt(),aee=Zg(),see=Oa(),Bg=ce(),uee=Se(),cee=Vg(),lee=FS(),dee=LS(),fee=VS(),mee=WS(),pee=HS(),vee=KS(),gee=QS(),hee=eI(),yee=tI(),Pr=[0,0,0,0,0,0,0,0,0,0];function bee(e,r){var n,i,t,o,a;return i=(r-e)/e,t=-aee(i),o=e*t,a=Bg(2*t),r<e&&(a=-a),Pr[0]=lee(a),Pr[1]=dee(a),Pr[2]=fee(a),Pr[3]=mee(a),Pr[4]=pee(a),Pr[5]=vee(a),Pr[6]=gee(a),Pr[7]=hee(a),Pr[8]=yee(a),Pr[9]=-.0005967612901927463,n=oee(Pr,1/e),n*=uee(-o)/Bg(cee*e),r<e&&(n=-n),n+=see(Bg(o))/2,n}nI.exports=bee});var aI=g((H2e,oI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/function $ee(e,r){var n=1,i=e,t=r;return o;function o(){var a=n;return i+=1,n*=t/i,a}}oI.exports=$ee});var Wg=g((J2e,sI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var _ee=Zi(),wee=aI();function See(e,r,n){var i,t;return n=n||0,t=wee(e,r),i=_ee(t,{initialValue:n}),i}sI.exports=See});var cI=g((K2e,uI)=>{"use strict";/**
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
*/function Iee(e){var r,n,i;return e===0?1/0:(e<0?r=-e:r=e,r<=1?(n=709811.662581658+e*(679979.8474157227+e*(293136.7857211597+e*(74887.54032914672+e*(12555.290582413863+e*(1443.4299244417066+e*(115.24194596137347+e*(6.309239205732627+e*(.22668404630224365+e*(.004826466289237662+e*4624429436045379e-20))))))))),i=0+e*(362880+e*(1026576+e*(1172700+e*(723680+e*(269325+e*(63273+e*(9450+e*(870+e*(45+e*1)))))))))):(e=1/e,n=4624429436045379e-20+e*(.004826466289237662+e*(.22668404630224365+e*(6.309239205732627+e*(115.24194596137347+e*(1443.4299244417066+e*(12555.290582413863+e*(74887.54032914672+e*(293136.7857211597+e*(679979.8474157227+e*709811.662581658))))))))),i=1+e*(45+e*(870+e*(9450+e*(63273+e*(269325+e*(723680+e*(1172700+e*(1026576+e*(362880+e*0)))))))))),n/i)}uI.exports=Iee});var dI=g((X2e,lI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var kee=cI();lI.exports=kee});var Na=g((Q2e,fI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Oee=dI();fI.exports=Oee});var pI=g((Y2e,mI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Nee=pe();function Aee(e){return e===0&&1/e===Nee}mI.exports=Aee});var gI=g((e3e,vI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Pee=pI();vI.exports=Pee});var bI=g((r3e,yI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xee=gI(),hI=V(),Gg=pe();function Eee(e,r){return hI(e)||hI(r)?NaN:e===Gg||r===Gg?Gg:e===r&&e===0?xee(e)?e:r:e>r?e:r}yI.exports=Eee});var Un=g((t3e,$I)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Dee=bI();$I.exports=Dee});var SI=g((n3e,wI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Tee=Tg(),_I=V(),Hg=He();function jee(e,r){return _I(e)||_I(r)?NaN:e===Hg||r===Hg?Hg:e===r&&e===0?Tee(e)?e:r:e<r?e:r}wI.exports=jee});var Ht=g((i3e,II)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var zee=SI();II.exports=zee});var Bi=g((o3e,kI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Cee=10.900511;kI.exports=Cee});var Fn=g((a3e,OI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qee=2.718281828459045;OI.exports=qee});var PI=g((s3e,AI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var Ree=Na(),Uee=Mi(),Fee=Fr(),Mee=Zg(),Lee=ce(),Zee=Y(),Jt=Se(),Aa=Oe(),Jg=Un(),Kg=Ht(),NI=de(),Vee=Gt(),Gc=ft(),Pa=Rn(),Xg=Bi(),Bee=Fn();function Wee(e,r){var n,i,t,o,a,s,u;return t=e+Xg-.5,u=(r-e-Xg+.5)/t,e<1?r<=Pa||e<1/Vee?Jt(e*NI(r)-r-Uee(e)):Aa(r,e)*Jt(-r)/Fee(e):(Zee(u*u*e)<=100&&e>150?(n=e*Mee(u)+r*(.5-Xg)/t,n=Jt(n)):(o=e*NI(r/t),a=e-r,Kg(o,a)<=Pa||Jg(o,a)>=Gc?(i=a/e,Kg(o,a)/2>Pa&&Jg(o,a)/2<Gc?(s=Aa(r/t,e/2)*Jt(a/2),n=s*s):Kg(o,a)/4>Pa&&Jg(o,a)/4<Gc&&r>e?(s=Aa(r/t,e/4)*Jt(a/4),n=s*s,n*=n):i>Pa&&i<Gc?n=Aa(r*Jt(i)/t,e):n=Jt(o+a)):n=Aa(r/t,e)*Jt(a)),n*=Lee(t/Bee)/Ree(e),n)}AI.exports=Wee});var EI=g((u3e,xI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Gee=.34657359027997264;xI.exports=Gee});var TI=g((c3e,DI)=>{"use strict";/**
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
*/function Hee(e){return e===0?-.03333333333333313:-.03333333333333313+e*(.0015873015872548146+e*(-793650757867488e-19+e*(4008217827329362e-21+e*-20109921818362437e-23)))}DI.exports=Hee});var UI=g((l3e,RI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var Jee=V(),jI=fr(),Qg=Ri(),Kee=ya(),zI=pe(),Xee=He(),CI=Mt(),Qee=EI(),Yee=TI(),ere=709.782712893384,Yg=.6931471803691238,eh=19082149292705877e-26,qI=1.4426950408889634,rre=38.816242111356935,tre=1.0397207708399179;function nre(e){var r,n,i,t,o,a,s,u,c,l,d,f,m;if(e===zI||Jee(e))return e;if(e===Xee)return-1;if(e===0)return e;if(e<0?(i=!0,u=-e):(i=!1,u=e),u>=rre){if(i)return-1;if(u>=ere)return zI}if(a=jI(u)|0,u>Qee)u<tre?i?(t=e+Yg,o=-eh,m=-1):(t=e-Yg,o=eh,m=1):(i?m=qI*e-.5:m=qI*e+.5,m|=0,d=m,t=e-d*Yg,o=d*eh),e=t-o,l=t-e-o;else{if(a<1016070144)return e;m=0}return r=.5*e,c=e*r,s=1+c*Yee(c),d=3-s*r,f=c*((s-d)/(6-e*d)),m===0?e-(e*f-c):(n=Kee(CI+m<<20,0),f=e*(f-l)-l,f-=c,m===-1?.5*(e-f)-.5:m===1?e<-.25?-2*(f-(e+.5)):1+2*(e-f):m<=-2||m>56?(u=1-(f-e),m===1024?(t=jI(u)+(m<<20)|0,u=Qg(u,t)):u*=n,u-1):(d=1,m<20?(t=1072693248-(2097152>>m)|0,d=Qg(d,t),u=d-(f-e)):(t=CI-m<<20|0,d=Qg(d,t),u=e-(f+d),u+=1),u*=n,u))}RI.exports=nre});var Mn=g((d3e,FI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ire=UI();FI.exports=ire});var ZI=g((f3e,LI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var rh=V(),ore=En(),MI=Y(),are=Mn(),sre=de(),ure=Oe(),cre=Oc();function lre(e,r){var n,i;if(rh(e)||rh(r))return NaN;if(r===0)return 0;if(e===0)return-1;if(e<0&&r%2===0&&(e=-e),e>0){if((MI(r*(e-1))<.5||MI(r)<.2)&&(i=sre(e)*r,i<.5))return are(i)}else if(cre(r)!==r)return NaN;return n=ure(e,r)-1,ore(n)||rh(n)?NaN:n}LI.exports=lre});var BI=g((m3e,VI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var dre=ZI();VI.exports=dre});var GI=g((p3e,WI)=>{"use strict";/**
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
*/function fre(e){return e===0?.6666666666666735:.6666666666666735+e*(.3999999999940942+e*(.2857142874366239+e*(.22222198432149784+e*(.1818357216161805+e*(.15313837699209373+e*.14798198605116586)))))}WI.exports=fre});var QI=g((v3e,XI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var mre=V(),HI=fr(),JI=Ri(),pre=pe(),vre=He(),KI=Mt(),gre=GI(),th=.6931471803691238,nh=19082149292705877e-26,hre=.41421356237309503,yre=-.2928932188134525,bre=1862645149230957e-24,$re=5551115123125783e-32,_re=9007199254740992,wre=.6666666666666666;function Sre(e){var r,n,i,t,o,a,s,u,c,l;if(e<-1||mre(e))return NaN;if(e===-1)return vre;if(e===pre||e===0)return e;if(e<0?i=-e:i=e,l=1,i<hre){if(i<bre)return i<$re?e:e-e*e*.5;e>yre&&(l=0,t=e,n=1)}return l!==0&&(i<_re?(c=1+e,n=HI(c),l=(n>>20)-KI,l>0?o=1-(c-e):o=e-(c-1),o/=c):(c=e,n=HI(c),l=(n>>20)-KI,o=0),n&=1048575,n<434334?c=JI(c,n|1072693248):(l+=1,c=JI(c,n|1071644672),n=1048576-n>>2),t=c-1),r=.5*t*t,n===0?t===0?(o+=l*nh,l*th+o):(u=r*(1-wre*t),l*th-(u-(l*nh+o)-t)):(a=t/(2+t),s=a*a,u=s*gre(s),l===0?t-(r-a*(r+u)):l*th-(r-(a*(r+u)+(l*nh+o))-t))}XI.exports=Sre});var Mr=g((g3e,YI)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ire=QI();YI.exports=Ire});var rk=g((h3e,ek)=>{"use strict";/**
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
*/function kre(e){var r,n,i;return e===0?-.01803556856784494:(e<0?r=-e:r=e,r<=1?(n=-.01803556856784494+e*(.02512664961998968+e*(.049410315156753225+e*(.0172491608709614+e*(-.0002594535632054381+e*(-.0005410098692152044+e*(-3245886498259485e-20+e*0)))))),i=1+e*(1.962029871977952+e*(1.4801966942423133+e*(.5413914320717209+e*(.09885042511280101+e*(.008213096746488934+e*(.00022493629192211576+e*-22335276320861708e-23))))))):(e=1/e,n=0+e*(-3245886498259485e-20+e*(-.0005410098692152044+e*(-.0002594535632054381+e*(.0172491608709614+e*(.049410315156753225+e*(.02512664961998968+e*-.01803556856784494)))))),i=-22335276320861708e-23+e*(.00022493629192211576+e*(.008213096746488934+e*(.09885042511280101+e*(.5413914320717209+e*(1.4801966942423133+e*(1.962029871977952+e*1))))))),n/i)}ek.exports=kre});var nk=g((y3e,tk)=>{"use strict";/**
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
*/function Ore(e){var r,n,i;return e===0?.04906224540690395:(e<0?r=-e:r=e,r<=1?(n=.04906224540690395+e*(-.09691175301595212+e*(-.4149833583594954+e*(-.4065671242119384+e*(-.1584135863906922+e*(-.024014982064857155+e*-.0010034668769627955))))),i=1+e*(3.0234982984646304+e*(3.4873958536072385+e*(1.9141558827442668+e*(.5071377386143635+e*(.05770397226904519+e*.001957681026011072)))))):(e=1/e,n=-.0010034668769627955+e*(-.024014982064857155+e*(-.1584135863906922+e*(-.4065671242119384+e*(-.4149833583594954+e*(-.09691175301595212+e*.04906224540690395))))),i=.001957681026011072+e*(.05770397226904519+e*(.5071377386143635+e*(1.9141558827442668+e*(3.4873958536072385+e*(3.0234982984646304+e*1)))))),n/i)}tk.exports=Ore});var ok=g((b3e,ik)=>{"use strict";/**
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
*/function Nre(e){var r,n,i;return e===0?-.029232972183027003:(e<0?r=-e:r=e,r<=1?(n=-.029232972183027003+e*(.14421626775719232+e*(-.14244039073863127+e*(.05428096940550536+e*(-.008505359768683364+e*(.0004311713426792973+e*0))))),i=1+e*(-1.5016935605448505+e*(.846973248876495+e*(-.22009515181499575+e*(.02558279715597587+e*(-.0010066679553914337+e*-8271935218912905e-22)))))):(e=1/e,n=0+e*(.0004311713426792973+e*(-.008505359768683364+e*(.05428096940550536+e*(-.14244039073863127+e*(.14421626775719232+e*-.029232972183027003))))),i=-8271935218912905e-22+e*(-.0010066679553914337+e*(.02558279715597587+e*(-.22009515181499575+e*(.846973248876495+e*(-1.5016935605448505+e*1)))))),n/i)}ik.exports=Nre});var sk=g(($3e,ak)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var ih=de(),Are=Ar(),Pre=rk(),xre=nk(),Ere=ok(),Dre=.15896368026733398,Tre=.5281534194946289,jre=.45201730728149414;function zre(e,r,n){var i,t,o,a;if(e<Are)return-ih(e);if(r===0||n===0)return 0;if(t=0,e>2){if(e>=3){do e-=1,n-=1,t+=ih(e);while(e>=3);n=e-2}return o=n*(e+1),a=Pre(n),t+=o*Dre+o*a,t}return e<1&&(t+=-ih(e),n=r,r=e,e+=1),e<=1.5?(o=xre(r),i=r*n,t+=i*Tre+i*o,t):(o=n*r,a=Ere(-n),t+=o*jre+o*a,t)}ak.exports=zre});var fk=g((_3e,dk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var uk=Fr(),ck=Mn(),Cre=Mr(),qre=V(),lk=sk();function Rre(e){return qre(e)?NaN:e<0?e<-.5?uk(1+e)-1:ck(-Cre(e)+lk(e+2,e+1,e)):e<2?ck(lk(e+1,e,e-1)):uk(1+e)-1}dk.exports=Rre});var pk=g((w3e,mk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ure=fk();mk.exports=Ure});var gk=g((S3e,vk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/function Fre(e,r){var n,i,t,o;return n=-r,r=-r,i=e+1,t=1,a;function a(){return o=n/i,n*=r,t+=1,n/=t,i+=1,o}}vk.exports=Fre});var yk=g((I3e,hk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var Mre=BI(),Lre=Zi(),Zre=pk(),Vre=gk();function Bre(e,r,n){var i,t,o,a,s;return t=Zre(e),o=(t+1)/e,a=Mre(r,e),t-=a,t/=e,s=Vre(e,r),a+=1,i=n?o:0,t=-a*Lre(s,{initialValue:(i-t)/a}),n&&(t=-t),[t,o]}hk.exports=Bre});var xa=g((k3e,bk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Wre=11754943508222875e-54;bk.exports=Wre});var _k=g((O3e,$k)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Hc=Y(),Lr=xa(),Gre=Ar(),Hre=1e6;function Jre(e,r,n){var i,t,o,a,s,u,c;if(i=typeof e.next=="function",c=i?e.next().value:e(),a=c[1],o=c[0],a===0&&(a=Lr),s=a,u=0,i===!0)do c=e.next().value,c&&(u=c[1]+c[0]*u,u===0&&(u=Lr),s=c[1]+c[0]/s,s===0&&(s=Lr),u=1/u,t=s*u,a*=t);while(Hc(t-1)>r&&--n);else do c=e(),c&&(u=c[1]+c[0]*u,u===0&&(u=Lr),s=c[1]+c[0]/s,s===0&&(s=Lr),u=1/u,t=s*u,a*=t);while(c&&Hc(t-1)>r&&--n);return o/a}function Kre(e,r,n){var i,t,o,a,s,u;if(i=typeof e.next=="function",u=i?e.next().value:e(),o=u[1],o===0&&(o=Lr),a=o,s=0,i===!0)do u=e.next().value,u&&(s=u[1]+u[0]*s,s===0&&(s=Lr),a=u[1]+u[0]/a,a===0&&(a=Lr),s=1/s,t=a*s,o*=t);while(u&&Hc(t-1)>r&&--n);else do u=e(),u&&(s=u[1]+u[0]*s,s===0&&(s=Lr),a=u[1]+u[0]/a,a===0&&(a=Lr),s=1/s,t=a*s,o*=t);while(u&&Hc(t-1)>r&&--n);return o}function Xre(e,r){var n,i,t;return i={},arguments.length>1&&(i=r),n=i.maxIter||Hre,t=i.tolerance||Gre,i.keep?Kre(e,t,n):Jre(e,t,n)}$k.exports=Xre});var Ik=g((N3e,Sk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var wk=Y(),Qre=Ar(),Wi=xa(),Yre=1e6;function ete(e,r,n){var i,t,o,a,s,u;u=e(),s=u[1],t=u[0],s===0&&(s=Wi),o=s,a=0;do u=e(),u&&(a=u[1]+u[0]*a,a===0&&(a=Wi),o=u[1]+u[0]/o,o===0&&(o=Wi),a=1/a,i=o*a,s*=i);while(u&&wk(i-1)>r&&--n);return t/s}function rte(e,r,n){var i,t,o,a,s;s=e(),a=s[1],a===0&&(a=Wi),t=a,o=0;do s=e(),s&&(o=s[1]+s[0]*o,o===0&&(o=Wi),t=s[1]+s[0]/t,t===0&&(t=Wi),o=1/o,i=t*o,a*=i);while(s&&wk(i-1)>r&&--n);return a}function tte(e,r){var n,i,t;return i={},arguments.length>1&&(i=r),t=i.tolerance||Qre,n=i.maxIter||Yre,i.keep?rte(e,t,n):ete(e,t,n)}Sk.exports=tte});var ah=g((A3e,kk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var nte=Fg(),ite=_k(),ote=Ik(),oh;nte()?oh=ite:oh=ote;kk.exports=oh});var Nk=g((P3e,Ok)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/function ate(e,r){var n=r-e+1,i=e,t=0;return o;function o(){return t+=1,n+=2,[t*(i-t),n]}}Ok.exports=ate});var sh=g((x3e,Ak)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var ste=ah(),ute=Nk();function cte(e,r){var n=ute(e,r);return 1/(r-e+1+ste(n))}Ak.exports=cte});var Dk=g((E3e,Ek)=>{"use strict";/**
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
*/var lte=Nr(),Ea=Fr(),uh=Y(),Pk=Oe(),dte=de(),fte=P8(),xk=Gt(),mte=ft(),pte=W8(),vte=H8(),gte=yS(),ch=SS(),hte=iI(),yte=Wg(),lh=PI(),bte=yk(),$te=sh();function _te(e,r,n,i){var t,o,a,s,u,c,l,d,f,m,v,h,y,b;switch(l=0,d=i,c=r<30&&r<=e+1&&e<mte,c?(y=lte(r),f=y===r,a=f?!1:uh(y-r)===.5):(f=!1,a=!1),f&&e>.6?(d=!d,o=0):a&&e>.2?(d=!d,o=1):e<fte&&r>1?o=6:e>1e3&&(r<e||uh(r-50)/e<1)?(d=!d,o=7):e<.5?-.4/dte(e)<r?o=2:o=3:e<1.1?e*.75<r?o=2:o=3:(u=!1,n&&r>20&&(m=uh((e-r)/r),r>200?20/r>m*m&&(u=!0):m<.4&&(u=!0)),u?o=5:e-1/(3*e)<r?o=2:(o=4,d=!d)),o){case 0:l=vte(r,e),n===!1&&(l*=Ea(r));break;case 1:l=gte(r,e),n===!1&&(l*=Ea(r));break;case 2:l=n?lh(r,e):ch(r,e),l!==0&&(s=0,t=!1,d&&(s=n?1:Ea(r),n||l>=1||xk*l>s?(s/=l,n||r<1||xk/r>s?(s*=-r,t=!0):s=0):s=0),l*=yte(r,e,s)/r,t&&(d=!1,l=-l));break;case 3:d=!d,v=bte(r,e,d),l=v[0],b=v[1],d=!1,n&&(l/=b);break;case 4:l=n?lh(r,e):ch(r,e),l!==0&&(l*=$te(r,e));break;case 5:l=hte(r,e),e>=r&&(d=!d);break;case 6:l=n?Pk(e,r)/Ea(r+1):Pk(e,r)/r,l*=1-r*e/(r+1);break;case 7:l=n?lh(r,e):ch(r,e),l/=e,l!==0&&(l*=pte(r,e));break}return n&&l>1&&(l=1),d&&(h=n?1:Ea(r),l=h-l),l}Ek.exports=_te});var Ck=g((D3e,zk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var wte=Mi(),Ste=Se(),Zr=de(),Ite=Sa(),kte=ft(),Ote=pe(),Nte=Ia(),Tk=Dk(),jk=Wg(),Ate=sh();function Pte(e,r,n,i){var t,o,a,s;return e<0||r<=0?NaN:(t=n===void 0?!0:n,a=i,r>=Nte&&!t?(a&&r*4<e?(s=r*Zr(e)-e,s+=Zr(Ate(r,e))):!a&&r>4*e?(s=r*Zr(e)-e,o=0,s+=Zr(jk(r,e,o)/r)):(s=Tk(e,r,!0,a),s===0?a?(s=1+1/(12*r)+1/(288*r*r),s=Zr(s)-r+(r-.5)*Zr(r),s+=Zr(Ite)):(s=r*Zr(e)-e,o=0,s+=Zr(jk(r,e,o)/r)):s=Zr(s)+wte(r)),s>kte?Ote:Ste(s)):Tk(e,r,t,a))}zk.exports=Pte});var Da=g((T3e,qk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xte=Ck();qk.exports=xte});var Uk=g((j3e,Rk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ete=Da(),dh=V(),Dte=pe();function Tte(e,r,n){return dh(e)||dh(r)||dh(n)||r<0||n<=0?NaN:r===0?e<0?0:1:e<=0?0:e===Dte?1:Ete(e*n,r)}Rk.exports=Tte});var Mk=g((z3e,Fk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function jte(e){return r;function r(){return e}}Fk.exports=jte});var xr=g((C3e,Lk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var zte=Mk();Lk.exports=zte});var Bk=g((q3e,Vk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Zk=V();function Cte(e,r){return Zk(e)||Zk(r)?NaN:e<r?0:1}Vk.exports=Cte});var Hk=g((R3e,Gk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var qte=xr(),Wk=V();function Rte(e){if(Wk(e))return qte(NaN);return r;function r(n){return Wk(n)?NaN:n<e?0:1}}Gk.exports=Rte});var fh=g((U3e,Kk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ute=Ze(),Jk=Bk(),Fte=Hk();Ute(Jk,"factory",Fte);Kk.exports=Jk});var Yk=g((F3e,Qk)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Mte=xr(),Lte=fh().factory,Zte=Da(),Xk=V(),Vte=pe();function Bte(e,r){if(Xk(e)||Xk(r)||e<0||r<=0)return Mte(NaN);if(e===0)return Lte(0);return n;function n(i){return i<=0?0:i===Vte?1:Zte(i*r,e)}}Qk.exports=Bte});var mh=g((M3e,rO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Wte=Ze(),eO=Uk(),Gte=Yk();Wte(eO,"factory",Gte);rO.exports=eO});var nO=g((L3e,tO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Hte=mh();function Jte(e,r){return Hte(e,r/2,.5)}tO.exports=Jte});var oO=g((Z3e,iO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Kte=mh().factory;function Xte(e){return Kte(e/2,.5)}iO.exports=Xte});var uO=g((V3e,sO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Qte=Ze(),aO=nO(),Yte=oO();Qte(aO,"factory",Yte);sO.exports=aO});var lO=g((B3e,cO)=>{var Ta=1e3,ja=Ta*60,za=ja*60,Ca=za*24,ene=Ca*365.25;cO.exports=function(e,r){r=r||{};var n=typeof e;if(n==="string"&&e.length>0)return rne(e);if(n==="number"&&isNaN(e)===!1)return r.long?nne(e):tne(e);throw new Error("val is not a non-empty string or a valid number. val="+JSON.stringify(e))};function rne(e){if(e=String(e),!(e.length>100)){var r=/^((?:\d+)?\.?\d+) *(milliseconds?|msecs?|ms|seconds?|secs?|s|minutes?|mins?|m|hours?|hrs?|h|days?|d|years?|yrs?|y)?$/i.exec(e);if(r){var n=parseFloat(r[1]),i=(r[2]||"ms").toLowerCase();switch(i){case"years":case"year":case"yrs":case"yr":case"y":return n*ene;case"days":case"day":case"d":return n*Ca;case"hours":case"hour":case"hrs":case"hr":case"h":return n*za;case"minutes":case"minute":case"mins":case"min":case"m":return n*ja;case"seconds":case"second":case"secs":case"sec":case"s":return n*Ta;case"milliseconds":case"millisecond":case"msecs":case"msec":case"ms":return n;default:return}}}}function tne(e){return e>=Ca?Math.round(e/Ca)+"d":e>=za?Math.round(e/za)+"h":e>=ja?Math.round(e/ja)+"m":e>=Ta?Math.round(e/Ta)+"s":e+"ms"}function nne(e){return Jc(e,Ca,"day")||Jc(e,za,"hour")||Jc(e,ja,"minute")||Jc(e,Ta,"second")||e+" ms"}function Jc(e,r,n){if(!(e<r))return e<r*1.5?Math.floor(e/r)+" "+n:Math.ceil(e/r)+" "+n+"s"}});var gh=g((ae,dO)=>{ae=dO.exports=vh.debug=vh.default=vh;ae.coerce=une;ae.disable=ane;ae.enable=one;ae.enabled=sne;ae.humanize=lO();ae.names=[];ae.skips=[];ae.formatters={};var ph;function ine(e){var r=0,n;for(n in e)r=(r<<5)-r+e.charCodeAt(n),r|=0;return ae.colors[Math.abs(r)%ae.colors.length]}function vh(e){function r(){if(r.enabled){var n=r,i=+new Date,t=i-(ph||i);n.diff=t,n.prev=ph,n.curr=i,ph=i;for(var o=new Array(arguments.length),a=0;a<o.length;a++)o[a]=arguments[a];o[0]=ae.coerce(o[0]),typeof o[0]!="string"&&o.unshift("%O");var s=0;o[0]=o[0].replace(/%([a-zA-Z%])/g,function(c,l){if(c==="%%")return c;s++;var d=ae.formatters[l];if(typeof d=="function"){var f=o[s];c=d.call(n,f),o.splice(s,1),s--}return c}),ae.formatArgs.call(n,o);var u=r.log||ae.log||console.log.bind(console);u.apply(n,o)}}return r.namespace=e,r.enabled=ae.enabled(e),r.useColors=ae.useColors(),r.color=ine(e),typeof ae.init=="function"&&ae.init(r),r}function one(e){ae.save(e),ae.names=[],ae.skips=[];for(var r=(typeof e=="string"?e:"").split(/[\s,]+/),n=r.length,i=0;i<n;i++)r[i]&&(e=r[i].replace(/\*/g,".*?"),e[0]==="-"?ae.skips.push(new RegExp("^"+e.substr(1)+"$")):ae.names.push(new RegExp("^"+e+"$")))}function ane(){ae.enable("")}function sne(e){var r,n;for(r=0,n=ae.skips.length;r<n;r++)if(ae.skips[r].test(e))return!1;for(r=0,n=ae.names.length;r<n;r++)if(ae.names[r].test(e))return!0;return!1}function une(e){return e instanceof Error?e.stack||e.message:e}});var pO=g((nr,mO)=>{nr=mO.exports=gh();nr.log=dne;nr.formatArgs=lne;nr.save=fne;nr.load=fO;nr.useColors=cne;nr.storage=typeof chrome<"u"&&typeof chrome.storage<"u"?chrome.storage.local:mne();nr.colors=["lightseagreen","forestgreen","goldenrod","dodgerblue","darkorchid","crimson"];function cne(){return typeof window<"u"&&window.process&&window.process.type==="renderer"?!0:typeof document<"u"&&document.documentElement&&document.documentElement.style&&document.documentElement.style.WebkitAppearance||typeof window<"u"&&window.console&&(window.console.firebug||window.console.exception&&window.console.table)||typeof navigator<"u"&&navigator.userAgent&&navigator.userAgent.toLowerCase().match(/firefox\/(\d+)/)&&parseInt(RegExp.$1,10)>=31||typeof navigator<"u"&&navigator.userAgent&&navigator.userAgent.toLowerCase().match(/applewebkit\/(\d+)/)}nr.formatters.j=function(e){try{return JSON.stringify(e)}catch(r){return"[UnexpectedJSONParseError]: "+r.message}};function lne(e){var r=this.useColors;if(e[0]=(r?"%c":"")+this.namespace+(r?" %c":" ")+e[0]+(r?"%c ":" ")+"+"+nr.humanize(this.diff),!!r){var n="color: "+this.color;e.splice(1,0,n,"color: inherit");var i=0,t=0;e[0].replace(/%[a-zA-Z%]/g,function(o){o!=="%%"&&(i++,o==="%c"&&(t=i))}),e.splice(t,0,n)}}function dne(){return typeof console=="object"&&console.log&&Function.prototype.apply.call(console.log,console,arguments)}function fne(e){try{e==null?nr.storage.removeItem("debug"):nr.storage.debug=e}catch{}}function fO(){var e;try{e=nr.storage.debug}catch{}return!e&&typeof process<"u"&&"env"in process&&(e=process.env.DEBUG),e}nr.enable(fO());function mne(){try{return window.localStorage}catch{}}});var yO=g((qe,hO)=>{var vO=os("tty"),qa=os("util");qe=hO.exports=gh();qe.init=$ne;qe.log=hne;qe.formatArgs=gne;qe.save=yne;qe.load=gO;qe.useColors=vne;qe.colors=[6,2,3,4,5,1];qe.inspectOpts=Object.keys(process.env).filter(function(e){return/^debug_/i.test(e)}).reduce(function(e,r){var n=r.substring(6).toLowerCase().replace(/_([a-z])/g,function(t,o){return o.toUpperCase()}),i=process.env[r];return/^(yes|on|true|enabled)$/i.test(i)?i=!0:/^(no|off|false|disabled)$/i.test(i)?i=!1:i==="null"?i=null:i=Number(i),e[n]=i,e},{});var Gi=parseInt(process.env.DEBUG_FD,10)||2;Gi!==1&&Gi!==2&&qa.deprecate(function(){},"except for stderr(2) and stdout(1), any other usage of DEBUG_FD is deprecated. Override debug.log if you want to use a different log function (https://git.io/debug_fd)")();var pne=Gi===1?process.stdout:Gi===2?process.stderr:bne(Gi);function vne(){return"colors"in qe.inspectOpts?!!qe.inspectOpts.colors:vO.isatty(Gi)}qe.formatters.o=function(e){return this.inspectOpts.colors=this.useColors,qa.inspect(e,this.inspectOpts).split(`
`).map(function(r){return r.trim()}).join(" ")};qe.formatters.O=function(e){return this.inspectOpts.colors=this.useColors,qa.inspect(e,this.inspectOpts)};function gne(e){var r=this.namespace,n=this.useColors;if(n){var i=this.color,t="  \x1B[3"+i+";1m"+r+" \x1B[0m";e[0]=t+e[0].split(`
`).join(`
`+t),e.push("\x1B[3"+i+"m+"+qe.humanize(this.diff)+"\x1B[0m")}else e[0]=new Date().toUTCString()+" "+r+" "+e[0]}function hne(){return pne.write(qa.format.apply(qa,arguments)+`
`)}function yne(e){e==null?delete process.env.DEBUG:process.env.DEBUG=e}function gO(){return process.env.DEBUG}function bne(e){var r,n=process.binding("tty_wrap");switch(n.guessHandleType(e)){case"TTY":r=new vO.WriteStream(e),r._type="tty",r._handle&&r._handle.unref&&r._handle.unref();break;case"FILE":var i=os("fs");r=new i.SyncWriteStream(e,{autoClose:!1}),r._type="fs";break;case"PIPE":case"TCP":var t=os("net");r=new t.Socket({fd:e,readable:!1,writable:!0}),r.readable=!1,r.read=null,r._type="pipe",r._handle&&r._handle.unref&&r._handle.unref();break;default:throw new Error("Implement me. Unknown stream file type!")}return r.fd=e,r._isStdio=!0,r}function $ne(e){e.inspectOpts={};for(var r=Object.keys(qe.inspectOpts),n=0;n<r.length;n++)e.inspectOpts[r[n]]=qe.inspectOpts[r[n]]}qe.enable(gO())});var yh=g((W3e,hh)=>{typeof process<"u"&&process.type==="renderer"?hh.exports=pO():hh.exports=yO()});var $O=g((G3e,bO)=>{"use strict";/**
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
*/function _ne(e){var r,n,i;return e===0?-.0005087819496582806:(e<0?r=-e:r=e,r<=1?(n=-.0005087819496582806+e*(-.008368748197417368+e*(.03348066254097446+e*(-.012692614766297404+e*(-.03656379714117627+e*(.02198786811111689+e*(.008226878746769157+e*(-.005387729650712429+e*(0+e*0)))))))),i=1+e*(-.9700050433032906+e*(-1.5657455823417585+e*(1.5622155839842302+e*(.662328840472003+e*(-.7122890234154284+e*(-.05273963823400997+e*(.07952836873415717+e*(-.0023339375937419+e*.0008862163904564247))))))))):(e=1/e,n=0+e*(0+e*(-.005387729650712429+e*(.008226878746769157+e*(.02198786811111689+e*(-.03656379714117627+e*(-.012692614766297404+e*(.03348066254097446+e*(-.008368748197417368+e*-.0005087819496582806)))))))),i=.0008862163904564247+e*(-.0023339375937419+e*(.07952836873415717+e*(-.05273963823400997+e*(-.7122890234154284+e*(.662328840472003+e*(1.5622155839842302+e*(-1.5657455823417585+e*(-.9700050433032906+e*1))))))))),n/i)}bO.exports=_ne});var wO=g((H3e,_O)=>{"use strict";/**
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
*/function wne(e){var r,n,i;return e===0?-.20243350835593876:(e<0?r=-e:r=e,r<=1?(n=-.20243350835593876+e*(.10526468069939171+e*(8.3705032834312+e*(17.644729840837403+e*(-18.851064805871424+e*(-44.6382324441787+e*(17.445385985570866+e*(21.12946554483405+e*-3.6719225470772936))))))),i=1+e*(6.242641248542475+e*(3.971343795334387+e*(-28.66081804998+e*(-20.14326346804852+e*(48.560921310873994+e*(10.826866735546016+e*(-22.643693341313973+e*1.7211476576120028)))))))):(e=1/e,n=-3.6719225470772936+e*(21.12946554483405+e*(17.445385985570866+e*(-44.6382324441787+e*(-18.851064805871424+e*(17.644729840837403+e*(8.3705032834312+e*(.10526468069939171+e*-.20243350835593876))))))),i=1.7211476576120028+e*(-22.643693341313973+e*(10.826866735546016+e*(48.560921310873994+e*(-20.14326346804852+e*(-28.66081804998+e*(3.971343795334387+e*(6.242641248542475+e*1)))))))),n/i)}_O.exports=wne});var IO=g((J3e,SO)=>{"use strict";/**
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
*/function Sne(e){var r,n,i;return e===0?-.1311027816799519:(e<0?r=-e:r=e,r<=1?(n=-.1311027816799519+e*(-.16379404719331705+e*(.11703015634199525+e*(.38707973897260434+e*(.3377855389120359+e*(.14286953440815717+e*(.029015791000532906+e*(.0021455899538880526+e*(-6794655751811263e-22+e*(28522533178221704e-24+e*-681149956853777e-24))))))))),i=1+e*(3.4662540724256723+e*(5.381683457070069+e*(4.778465929458438+e*(2.5930192162362027+e*(.848854343457902+e*(.15226433829533179+e*(.011059242293464892+e*(0+e*(0+e*0)))))))))):(e=1/e,n=-681149956853777e-24+e*(28522533178221704e-24+e*(-6794655751811263e-22+e*(.0021455899538880526+e*(.029015791000532906+e*(.14286953440815717+e*(.3377855389120359+e*(.38707973897260434+e*(.11703015634199525+e*(-.16379404719331705+e*-.1311027816799519))))))))),i=0+e*(0+e*(0+e*(.011059242293464892+e*(.15226433829533179+e*(.848854343457902+e*(2.5930192162362027+e*(4.778465929458438+e*(5.381683457070069+e*(3.4662540724256723+e*1)))))))))),n/i)}SO.exports=Sne});var OO=g((K3e,kO)=>{"use strict";/**
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
*/function Ine(e){var r,n,i;return e===0?-.0350353787183178:(e<0?r=-e:r=e,r<=1?(n=-.0350353787183178+e*(-.0022242652921344794+e*(.018557330651423107+e*(.009508047013259196+e*(.0018712349281955923+e*(.00015754461742496055+e*(460469890584318e-20+e*(-2304047769118826e-25+e*26633922742578204e-28))))))),i=1+e*(1.3653349817554064+e*(.7620591645536234+e*(.22009110576413124+e*(.03415891436709477+e*(.00263861676657016+e*(7646752923027944e-20+e*(0+e*0)))))))):(e=1/e,n=26633922742578204e-28+e*(-2304047769118826e-25+e*(460469890584318e-20+e*(.00015754461742496055+e*(.0018712349281955923+e*(.009508047013259196+e*(.018557330651423107+e*(-.0022242652921344794+e*-.0350353787183178))))))),i=0+e*(0+e*(7646752923027944e-20+e*(.00263861676657016+e*(.03415891436709477+e*(.22009110576413124+e*(.7620591645536234+e*(1.3653349817554064+e*1)))))))),n/i)}kO.exports=Ine});var AO=g((X3e,NO)=>{"use strict";/**
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
*/function kne(e){var r,n,i;return e===0?-.016743100507663373:(e<0?r=-e:r=e,r<=1?(n=-.016743100507663373+e*(-.0011295143874558028+e*(.001056288621524929+e*(.00020938631748758808+e*(14962478375834237e-21+e*(44969678992770644e-23+e*(4625961635228786e-24+e*(-2811287356288318e-29+e*9905570997331033e-32))))))),i=1+e*(.5914293448864175+e*(.1381518657490833+e*(.016074608709367652+e*(.0009640118070051656+e*(27533547476472603e-21+e*(282243172016108e-21+e*(0+e*0)))))))):(e=1/e,n=9905570997331033e-32+e*(-2811287356288318e-29+e*(4625961635228786e-24+e*(44969678992770644e-23+e*(14962478375834237e-21+e*(.00020938631748758808+e*(.001056288621524929+e*(-.0011295143874558028+e*-.016743100507663373))))))),i=0+e*(0+e*(282243172016108e-21+e*(27533547476472603e-21+e*(.0009640118070051656+e*(.016074608709367652+e*(.1381518657490833+e*(.5914293448864175+e*1)))))))),n/i)}NO.exports=kne});var DO=g((Q3e,EO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var One=V(),PO=ce(),xO=de(),Nne=pe(),Ane=He(),Pne=$O(),xne=wO(),Ene=IO(),Dne=OO(),Tne=AO(),jne=.08913147449493408,zne=2.249481201171875,Cne=.807220458984375,qne=.9399557113647461,Rne=.9836282730102539;function Une(e){var r,n,i,t,o;return One(e)?NaN:e===0?Nne:e===2?Ane:e===1?0:e>2||e<0?NaN:(e>1?(r=-1,i=2-e):(r=1,i=e),e=1-i,e<=.5?(t=e*(e+10),o=Pne(e),r*(t*jne+t*o)):i>=.25?(t=PO(-2*xO(i)),i-=.25,o=xne(i),r*(t/(zne+o))):(i=PO(-xO(i)),i<3?(n=i-1.125,o=Ene(n),r*(Cne*i+o*i)):i<6?(n=i-3,o=Dne(n),r*(qne*i+o*i)):(n=i-6,o=Tne(n),r*(Rne*i+o*i))))}EO.exports=Une});var Hi=g((Y3e,TO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Fne=DO();TO.exports=Fne});var Ra=g((e$e,jO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Mne=34028234663852886e22;jO.exports=Mne});var UO=g((r$e,RO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Lne=yh(),zO=Da(),Zne=Y(),Vne=Se(),CO=de(),Bne=Ra(),qO=Lne("gammaincinv:higher_newton");function Wne(e,r,n,i,t,o,a,s){var u,c,l,d,f,m,v,h,y,b,_,$,N,w;w=e,_=1,$=1,m=r*r,c=e;do{if(w=e,v=w*w,n===0){if(u=(1-r)*CO(w)+w+o,u>CO(Bne))return qO("Warning: overflow problems in one or more steps of the computation. The initial approximation to the root is returned."),c;N=Vne(u)}else N=-a*w;s?(h=zO(w,r,!0,!1),l=-N*(h-i)):(y=zO(w,r,!0,!0),l=N*(y-t)),N=l,i>1e-120||$>1?(d=.5*(w-r+1)/w,f=(2*v-4*w*r+4*w+2*m-3*r+1)/v,f/=6,e=w+N*(1+N*(d+N*f))):e=w+N,_=Zne(w/e-1),$+=1,w=e,w<0&&(w=c,$=100)}while(_>2e-14&&$<35);return(_>2e-14||$>99)&&qO("Warning: the number of iterations in the Newton method reached the upper limit N=35. The last value obtained for the root is given as output."),b=w||0,b}RO.exports=Wne});var MO=g((t$e,FO)=>{"use strict";/**
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
*/function Gne(e){return e===0?0:0+e*(1+e*(1+e*(1.5+e*(2.6666666666666665+e*(5.208333333333333+e*10.8)))))}FO.exports=Gne});var ZO=g((n$e,LO)=>{"use strict";/**
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
*/function Hne(e){return e===0?1:1+e*(1+e*(.3333333333333333+e*(.027777777777777776+e*(-.003703703703703704+e*(.0002314814814814815+e*5878894767783657e-20)))))}LO.exports=Hne});var bh=g((i$e,BO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Jne=Y(),Kne=Se(),VO=de(),Xne=pt(),Qne=MO(),Yne=ZO(),eie=1e-8,rie=.08333333333333333,tie=.008333333333333333,Ji=[1,0,0,0,0,0];function nie(e){var r,n,i,t,o,a,s,u,c;if(c=e*e*.5,e===0?o=0:e<-1?(u=Kne(-1-c),o=Qne(u)):e<1?(u=e,o=Yne(u)):(u=11+c,a=VO(u),o=u+a,u=1/u,r=a*a,n=r*a,i=n*a,t=i*a,Ji[1]=(2-a)*.5,Ji[2]=(-9*a+6+2*r)/6,Ji[3]=-(3*n+36*a-22*r-12)*rie,Ji[4]=(60+350*r-300*a-125*n+12*i)/60,Ji[5]=-(-120-274*i+900*a-1700*r+1125*n+20*t)*tie,o+=a*u*Xne(Ji,u)),u=1,e>-3.5&&e<-.03||e>.03&&e<40){u=1,s=o;do o=s*(c+VO(s))/(s-1),u=Jne(s/o-1),s=o;while(u>eie)}return o}BO.exports=nie});var GO=g((o$e,WO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var iie=.9189385332046728;WO.exports=iie});var JO=g((a$e,HO)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var oie=[1.9963790515900766,-.0017971032528832887,13129285796384672e-21,-2340875228178749e-22,72291210671127e-22,-3280997607821e-22,19875070901e-21,-1509214183e-21,1375340084e-22,-145728923e-22,17532367e-22,-2351465e-22,346551e-22,-55471e-22,9548e-22,-1748e-22,332e-22,-58e-22];function aie(e,r){var n,i,t,o,a;i=0,t=0,n=r+r,a=e;do o=t,t=i,i=n*t-o+oie[a],a-=1;while(a>=0);return(i-o)/2}HO.exports=aie});var XO=g((s$e,KO)=>{"use strict";/**
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
*/function sie(e){return e===0?.025721014990011306:.025721014990011306+e*(.08247596616699963+e*(-.0025328157302663564+e*(.0006099292666946337+e*(-.00033543297638406+e*.000250505279903))))}KO.exports=sie});var YO=g((u$e,QO)=>{"use strict";/**
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
*/function uie(e){return e===0?.08333333333333333:.08333333333333333+e*(-.002777777777777778+e*(.0007936507936507937+e*-.0005952380952380953))}QO.exports=uie});var rN=g((c$e,eN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $h=Mi(),Kc=de(),_h=GO(),cie=xa(),lie=Ra(),die=JO(),fie=XO(),mie=YO(),pie=.30865217988013566;function vie(e){var r;return e<cie?lie:e<1?$h(e+1)-(e+.5)*Kc(e)+e-_h:e<2?$h(e)-(e-.5)*Kc(e)+e-_h:e<3?$h(e-1)-(e-.5)*Kc(e)+e-_h+Kc(e-1):e<12?(r=18/(e*e)-1,die(17,r)/(12*e)):(r=1/(e*e),e<1e3?fie(r)/(pie+r)/e:mie(r)/e)}eN.exports=vie});var iN=g((l$e,nN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var tN=Se(),gie=Fr(),hie=de(),yie=Ra(),bie=Sa(),$ie=rN();function _ie(e){return e>=3?tN($ie(e)):e>0?gie(e)/(tN(-e+(e-.5)*hie(e))*bie):yie}nN.exports=_ie});var aN=g((d$e,oN)=>{"use strict";/**
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
*/function wie(e){var r,n,i;return e===0?-.3333333333438:(e<0?r=-e:r=e,r<=1?(n=-.3333333333438+e*(-.2070740359969+e*(-.05041806657154+e*(-.004923635739372+e*-4293658292782e-17))),i=1+e*(.7045554412463+e*(.2118190062224+e*(.03048648397436+e*.001605037988091)))):(e=1/e,n=-4293658292782e-17+e*(-.004923635739372+e*(-.05041806657154+e*(-.2070740359969+e*-.3333333333438))),i=.001605037988091+e*(.03048648397436+e*(.2118190062224+e*(.7045554412463+e*1)))),n/i)}oN.exports=wie});var uN=g((f$e,sN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Sie=Y(),Iie=de(),kie=bh(),Oie=aN();function Nie(e){var r;return Sie(e)<1?Oie(e):(r=kie(e),Iie(e/(r-1))/e)}sN.exports=Nie});var lN=g((m$e,cN)=>{"use strict";/**
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
*/function Aie(e){var r,n,i;return e===0?-.0172847633523:(e<0?r=-e:r=e,r<=1?(n=-.0172847633523+e*(-.0159372646475+e*(-.00464910887221+e*(-.00060683488776+e*-614830384279e-17))),i=1+e*(.764050615669+e*(.297143406325+e*(.0579490176079+e*.00574558524851)))):(e=1/e,n=-614830384279e-17+e*(-.00060683488776+e*(-.00464910887221+e*(-.0159372646475+e*-.0172847633523))),i=.00574558524851+e*(.0579490176079+e*(.297143406325+e*(.764050615669+e*1)))),n/i)}cN.exports=Aie});var fN=g((p$e,dN)=>{"use strict";/**
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
*/function Pie(e){var r,n,i;return e===0?-.0172839517431:(e<0?r=-e:r=e,r<=1?(n=-.0172839517431+e*(-.0146362417966+e*(-.00357406772616+e*(-.000391032032692+e*249634036069e-17))),i=1+e*(.690560400696+e*(.249962384741+e*(.0443843438769+e*.00424073217211)))):(e=1/e,n=249634036069e-17+e*(-.000391032032692+e*(-.00357406772616+e*(-.0146362417966+e*-.0172839517431))),i=.00424073217211+e*(.0443843438769+e*(.249962384741+e*(.690560400696+e*1)))),n/i)}dN.exports=Pie});var pN=g((v$e,mN)=>{"use strict";/**
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
*/function xie(e){var r,n,i;return e===0?.99994466948:(e<0?r=-e:r=e,r<=1?(n=.99994466948+e*(104.649839762+e*(857.204033806+e*(731.901559577+e*45.5174411671))),i=1+e*(104.526456943+e*(823.313447808+e*(3119.93802124+e*3970.03311219)))):(e=1/e,n=45.5174411671+e*(731.901559577+e*(857.204033806+e*(104.649839762+e*.99994466948))),i=3970.03311219+e*(3119.93802124+e*(823.313447808+e*(104.526456943+e*1)))),n/i)}mN.exports=xie});var gN=g((g$e,vN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Eie=de(),Die=lN(),Tie=fN(),jie=pN();function zie(e){var r,n;return e<-5?(n=e*e,r=Eie(-e),(12-n-6*(r*r))/(12*n*e)):e<-2?Die(e):e<2?Tie(e):e<1e3?(n=1/e,jie(e)/(-12*e)):-1/(12*e)}vN.exports=zie});var yN=g((h$e,hN)=>{"use strict";/**
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
*/function Cie(e){var r,n,i;return e===0?.0495346498136:(e<0?r=-e:r=e,r<=1?(n=.0495346498136+e*(.0299521337141+e*(.00688296911516+e*(.000512634846317+e*-201411722031e-16))),i=1+e*(.759803615283+e*(.261547111595+e*(.0464854522477+e*.00403751193496)))):(e=1/e,n=-201411722031e-16+e*(.000512634846317+e*(.00688296911516+e*(.0299521337141+e*.0495346498136))),i=.00403751193496+e*(.0464854522477+e*(.261547111595+e*(.759803615283+e*1)))),n/i)}hN.exports=Cie});var $N=g((y$e,bN)=>{"use strict";/**
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
*/function qie(e){var r,n,i;return e===0?.00452313583942:(e<0?r=-e:r=e,r<=1?(n=.00452313583942+e*(.00120744920113+e*(-789724156582e-16+e*(-504476066942e-16+e*-535770949796e-17))),i=1+e*(.912203410349+e*(.405368773071+e*(.0901638932349+e*.00948935714996)))):(e=1/e,n=-535770949796e-17+e*(-504476066942e-16+e*(-789724156582e-16+e*(.00120744920113+e*.00452313583942))),i=.00948935714996+e*(.0901638932349+e*(.405368773071+e*(.912203410349+e*1)))),n/i)}bN.exports=qie});var wN=g((b$e,_N)=>{"use strict";/**
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
*/function Rie(e){var r,n,i;return e===0?.00439937562904:(e<0?r=-e:r=e,r<=1?(n=.00439937562904+e*(.000487225670639+e*(-.000128470657374+e*(529110969589e-17+e*15716677175e-17))),i=1+e*(.794435257415+e*(.333094721709+e*(.0703527806143+e*.00806110846078)))):(e=1/e,n=15716677175e-17+e*(529110969589e-17+e*(-.000128470657374+e*(.000487225670639+e*.00439937562904))),i=.00806110846078+e*(.0703527806143+e*(.333094721709+e*(.794435257415+e*1)))),n/i)}_N.exports=Rie});var IN=g(($$e,SN)=>{"use strict";/**
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
*/function Uie(e){var r,n,i;return e===0?-.0011481191232:(e<0?r=-e:r=e,r<=1?(n=-.0011481191232+e*(-.112850923276+e*(1.51623048511+e*(-.218472031183+e*.0730002451555))),i=1+e*(14.2482206905+e*(69.7360396285+e*(218.938950816+e*277.067027185)))):(e=1/e,n=.0730002451555+e*(-.218472031183+e*(1.51623048511+e*(-.112850923276+e*-.0011481191232))),i=277.067027185+e*(218.938950816+e*(69.7360396285+e*(14.2482206905+e*1)))),n/i)}SN.exports=Uie});var ON=g((_$e,kN)=>{"use strict";/**
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
*/function Fie(e){var r,n,i;return e===0?-.000145727889667:(e<0?r=-e:r=e,r<=1?(n=-.000145727889667+e*(-.290806748131+e*(-13.308504545+e*(199.722374056+e*-11.4311378756))),i=1+e*(139.612587808+e*(2189.01116348+e*(7115.24019009+e*45574.6081453)))):(e=1/e,n=-11.4311378756+e*(199.722374056+e*(-13.308504545+e*(-.290806748131+e*-.000145727889667))),i=45574.6081453+e*(7115.24019009+e*(2189.01116348+e*(139.612587808+e*1)))),n/i)}kN.exports=Fie});var PN=g((w$e,AN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var NN=de(),Mie=yN(),Lie=$N(),Zie=wN(),Vie=IN(),Bie=ON();function Wie(e){var r,n;return e<-8?(r=e*e,n=NN(-e)/e,(-30+e*n*(6*r*n*n-12+r))/(12*e*r*r)):e<-4?Mie(e)/(e*e):e<-2?Lie(e):e<2?Zie(e):e<10?(r=1/e,Vie(r)/(e*e)):e<100?(r=1/e,Bie(r)/(e*e)):-NN(e)/(12*e*e*e)}AN.exports=Wie});var RN=g((S$e,qN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Gie=yh(),xN=pt(),Er=Mi(),Hie=Hi(),EN=Fr(),Xc=ce(),DN=Y(),Ki=Se(),Jie=Ht(),Kie=Oe(),hr=de(),Xie=Sa(),Qie=Ra(),Yie=Vg(),eoe=UO(),TN=bh(),jN=iN(),roe=uN(),toe=gN(),noe=PN(),ioe=Gie("gammaincinv:compute"),Kt=.5,wh=.3333333333333333,ooe=.25,zN=.2,CN=.16666666666666666,aoe=.08333333333333333,soe=.041666666666666664,yr=[0,0,0,0,0];function uoe(e,r,n){var i,t,o,a,s,u,c,l,d,f,m,v,h,y,b,_,$,N,w,O,k,D,F,re,se,me,we,ze,T,q,Hn,rd,td,nd,J1,Ke,Pe,id,Xe,Kr,wr,od,ad,sd;if(r<Kt?(a=!0,s=r,od=-1):(a=!1,s=n,od=1),Xe=0,DN(e-1)<1e-4&&(Kr=0,a?r<.001?(rd=r*r,ze=rd*r,Hn=ze*r,O=Hn*r,w=O*r,k=r+rd*Kt+ze*wh+Hn*ooe+O*zN+w*CN):k=-hr(1-r):k=-hr(n),e===1?(Xe=2,nd=k):(o=Er(e),Xe=1)),n<1e-30&&e<Kt&&(Kr=0,k=-hr(n*EN(e))+(e-1)*hr(-hr(n*EN(e))),Xe=1,o=Er(e)),e>1&&e<500&&r<1e-80){for(Kr=0,u=1/e,i=1/(e+1),k=(Er(e+1)+hr(r))*u,k=Ki(k),y=k,id=0;id<10;id++)k=y*Ki(k*u)*Kie(1-k*i,u);Xe=1,o=Er(e)}if(c=1/e*(hr(r)+Er(e+1)),c<hr(zN*(1+e))&&Xe===0&&(wr=Ki(c),Kr=0,D=e*e,td=D*e,T=td*e,b=e+1,m=b*b,f=b*m,d=m*m,_=e+2,l=_*_,$=e+3,yr[0]=1,yr[1]=1/b,yr[2]=Kt*(3*e+5)/(m*_),yr[3]=wh*(31+8*D+33*e)/(f*_*$),yr[4]=soe*(2888+1179*td+125*T+3971*D+5661*e)/(d*l*$*(e+4)),k=wr*xN(yr,wr),o=Er(e),Xe=1),e<10&&Xe===0&&(v=Xc(e)/(jN(e)*Xie),h=Jie(.02,v),n<h&&(Kr=0,Ke=1-e,me=Ke*Ke,we=me*Ke,N=Xc(-2/e*hr(n/v)),k=e*TN(N),Pe=hr(k),k>5?(F=Pe*Pe,re=F*Pe,se=re*Pe,wr=1/k,yr[0]=Pe-1,yr[1]=(3*Ke-2*Ke*Pe+F-2*Pe+2)*Kt,yr[2]=(24*Ke*Pe-11*me-24*Ke-6*F+12*Pe-12-9*Ke*F+6*me*Pe+2*re)*CN,yr[3]=(-12*we*Pe+8.04*Ke*F-114*me*Pe+(72+36*F)+(3*se-72*Pe+162)*(Ke-168*Ke*Pe)-(12*re+25*we)-(22*Ke*re+36*me*F+120*me))*aoe,yr[4]=0,k=k-Pe+Ke*wr*xN(yr,wr)):(wr=1/k,F=Pe*Pe,J1=Pe-1,ad=Pe-Ke*wr*J1,ad<k&&(k-=ad)),o=Er(e),Xe=1)),DN(s-Kt)<1e-5&&Xe===0&&(Kr=0,u=1/e,k=e-wh+(.019753086419753086+.007211444248481286*u)*u,o=Er(e),Xe=1),e<1&&Xe===0&&(Kr=0,a?k=Ki(1/e*(hr(s)+Er(e+1))):k=Ki(1/e*(hr(1-s)+Er(e+1))),o=Er(e),Xe=1),Xe===0)if(Kr=1,u=1/e,wr=Hie(2*s),N=od*wr/Xc(e*Kt),wr<Qie)N+=(roe(N)+(toe(N)+noe(N)*u)*u)*u,k=e*TN(N),sd=N,q=-Xc(e/Yie)*Ki(-Kt*e*sd*sd)/jN(e),t=1/q;else return ioe("Warning: Overflow problems in one or more steps of the computation."),NaN;return Xe<2&&(nd=eoe(k,e,Kr,r,n,o,t,a)),nd}qN.exports=uoe});var ZN=g((I$e,LN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var UN=V(),coe=xa(),FN=pe(),MN=RN();function loe(e,r,n){return UN(e)||UN(r)?NaN:r<coe?NaN:e>1||e<0?NaN:n===!0?e===0?FN:e===1?0:MN(r,1-e,e):e===0?0:e===1?FN:MN(r,e,1-e)}LN.exports=loe});var Qc=g((k$e,VN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var doe=ZN();VN.exports=doe});var WN=g((O$e,BN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Sh=V(),foe=Qc();function moe(e,r,n){return Sh(r)||Sh(n)||Sh(e)||r<0||n<=0||e<0||e>1?NaN:r===0?0:1/n*foe(e,r)}BN.exports=moe});var HN=g((N$e,GN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var poe=V();function voe(e,r){return poe(e)||e<0||e>1?NaN:r}GN.exports=voe});var XN=g((A$e,KN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var goe=xr(),JN=V();function hoe(e){if(JN(e))return goe(NaN);return r;function r(n){return JN(n)||n<0||n>1?NaN:e}}KN.exports=hoe});var Ih=g((P$e,YN)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yoe=Ze(),QN=HN(),boe=XN();yoe(QN,"factory",boe);YN.exports=QN});var rA=g((x$e,eA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $oe=xr(),_oe=Qc(),woe=Ih().factory,kh=V();function Soe(e,r){if(kh(e)||kh(r)||e<0||r<=0)return $oe(NaN);if(e===0)return woe(0);return n;function n(i){return kh(i)||i<0||i>1?NaN:1/r*_oe(i,e)}}eA.exports=Soe});var Oh=g((E$e,nA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ioe=Ze(),tA=WN(),koe=rA();Ioe(tA,"factory",koe);nA.exports=tA});var oA=g((D$e,iA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Ooe=Oh();function Noe(e,r){return Ooe(e,r/2,.5)}iA.exports=Noe});var sA=g((T$e,aA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Aoe=Oh().factory;function Poe(e){return Aoe(e/2,.5)}aA.exports=Poe});var lA=g((j$e,cA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var xoe=Ze(),uA=oA(),Eoe=sA();xoe(uA,"factory",Eoe);cA.exports=uA});var FA=g((J5e,UA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var dae=Oa(),fae=ce(),Rh=V();function mae(e,r,n){var i,t;return Rh(e)||Rh(r)||Rh(n)||n<0?NaN:n===0?e<r?0:1:(i=n*fae(2),t=e-r,.5*dae(-t/i))}UA.exports=mae});var LA=g((K5e,MA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var pae=xr(),vae=fh().factory,Uh=V(),gae=ce(),hae=Oa();function yae(e,r){var n;if(Uh(e)||Uh(r)||r<0)return pae(NaN);if(r===0)return vae(e);return n=r*gae(2),i;function i(t){var o;return Uh(t)?NaN:(o=t-e,.5*hae(-o/n))}}MA.exports=yae});var BA=g((X5e,VA)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var bae=Ze(),ZA=FA(),$ae=LA();bae(ZA,"factory",$ae);VA.exports=ZA});var GA=g((Q5e,WA)=>{"use strict";/**
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
*/function _ae(e){var r,n,i;return e===0?-.0005087819496582806:(e<0?r=-e:r=e,r<=1?(n=-.0005087819496582806+e*(-.008368748197417368+e*(.03348066254097446+e*(-.012692614766297404+e*(-.03656379714117627+e*(.02198786811111689+e*(.008226878746769157+e*(-.005387729650712429+e*(0+e*0)))))))),i=1+e*(-.9700050433032906+e*(-1.5657455823417585+e*(1.5622155839842302+e*(.662328840472003+e*(-.7122890234154284+e*(-.05273963823400997+e*(.07952836873415717+e*(-.0023339375937419+e*.0008862163904564247))))))))):(e=1/e,n=0+e*(0+e*(-.005387729650712429+e*(.008226878746769157+e*(.02198786811111689+e*(-.03656379714117627+e*(-.012692614766297404+e*(.03348066254097446+e*(-.008368748197417368+e*-.0005087819496582806)))))))),i=.0008862163904564247+e*(-.0023339375937419+e*(.07952836873415717+e*(-.05273963823400997+e*(-.7122890234154284+e*(.662328840472003+e*(1.5622155839842302+e*(-1.5657455823417585+e*(-.9700050433032906+e*1))))))))),n/i)}WA.exports=_ae});var JA=g((Y5e,HA)=>{"use strict";/**
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
*/function wae(e){var r,n,i;return e===0?-.20243350835593876:(e<0?r=-e:r=e,r<=1?(n=-.20243350835593876+e*(.10526468069939171+e*(8.3705032834312+e*(17.644729840837403+e*(-18.851064805871424+e*(-44.6382324441787+e*(17.445385985570866+e*(21.12946554483405+e*-3.6719225470772936))))))),i=1+e*(6.242641248542475+e*(3.971343795334387+e*(-28.66081804998+e*(-20.14326346804852+e*(48.560921310873994+e*(10.826866735546016+e*(-22.643693341313973+e*1.7211476576120028)))))))):(e=1/e,n=-3.6719225470772936+e*(21.12946554483405+e*(17.445385985570866+e*(-44.6382324441787+e*(-18.851064805871424+e*(17.644729840837403+e*(8.3705032834312+e*(.10526468069939171+e*-.20243350835593876))))))),i=1.7211476576120028+e*(-22.643693341313973+e*(10.826866735546016+e*(48.560921310873994+e*(-20.14326346804852+e*(-28.66081804998+e*(3.971343795334387+e*(6.242641248542475+e*1)))))))),n/i)}HA.exports=wae});var XA=g((e_e,KA)=>{"use strict";/**
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
*/function Sae(e){var r,n,i;return e===0?-.1311027816799519:(e<0?r=-e:r=e,r<=1?(n=-.1311027816799519+e*(-.16379404719331705+e*(.11703015634199525+e*(.38707973897260434+e*(.3377855389120359+e*(.14286953440815717+e*(.029015791000532906+e*(.0021455899538880526+e*(-6794655751811263e-22+e*(28522533178221704e-24+e*-681149956853777e-24))))))))),i=1+e*(3.4662540724256723+e*(5.381683457070069+e*(4.778465929458438+e*(2.5930192162362027+e*(.848854343457902+e*(.15226433829533179+e*(.011059242293464892+e*(0+e*(0+e*0)))))))))):(e=1/e,n=-681149956853777e-24+e*(28522533178221704e-24+e*(-6794655751811263e-22+e*(.0021455899538880526+e*(.029015791000532906+e*(.14286953440815717+e*(.3377855389120359+e*(.38707973897260434+e*(.11703015634199525+e*(-.16379404719331705+e*-.1311027816799519))))))))),i=0+e*(0+e*(0+e*(.011059242293464892+e*(.15226433829533179+e*(.848854343457902+e*(2.5930192162362027+e*(4.778465929458438+e*(5.381683457070069+e*(3.4662540724256723+e*1)))))))))),n/i)}KA.exports=Sae});var YA=g((r_e,QA)=>{"use strict";/**
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
*/function Iae(e){var r,n,i;return e===0?-.0350353787183178:(e<0?r=-e:r=e,r<=1?(n=-.0350353787183178+e*(-.0022242652921344794+e*(.018557330651423107+e*(.009508047013259196+e*(.0018712349281955923+e*(.00015754461742496055+e*(460469890584318e-20+e*(-2304047769118826e-25+e*26633922742578204e-28))))))),i=1+e*(1.3653349817554064+e*(.7620591645536234+e*(.22009110576413124+e*(.03415891436709477+e*(.00263861676657016+e*(7646752923027944e-20+e*(0+e*0)))))))):(e=1/e,n=26633922742578204e-28+e*(-2304047769118826e-25+e*(460469890584318e-20+e*(.00015754461742496055+e*(.0018712349281955923+e*(.009508047013259196+e*(.018557330651423107+e*(-.0022242652921344794+e*-.0350353787183178))))))),i=0+e*(0+e*(7646752923027944e-20+e*(.00263861676657016+e*(.03415891436709477+e*(.22009110576413124+e*(.7620591645536234+e*(1.3653349817554064+e*1)))))))),n/i)}QA.exports=Iae});var rP=g((t_e,eP)=>{"use strict";/**
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
*/function kae(e){var r,n,i;return e===0?-.016743100507663373:(e<0?r=-e:r=e,r<=1?(n=-.016743100507663373+e*(-.0011295143874558028+e*(.001056288621524929+e*(.00020938631748758808+e*(14962478375834237e-21+e*(44969678992770644e-23+e*(4625961635228786e-24+e*(-2811287356288318e-29+e*9905570997331033e-32))))))),i=1+e*(.5914293448864175+e*(.1381518657490833+e*(.016074608709367652+e*(.0009640118070051656+e*(27533547476472603e-21+e*(282243172016108e-21+e*(0+e*0)))))))):(e=1/e,n=9905570997331033e-32+e*(-2811287356288318e-29+e*(4625961635228786e-24+e*(44969678992770644e-23+e*(14962478375834237e-21+e*(.00020938631748758808+e*(.001056288621524929+e*(-.0011295143874558028+e*-.016743100507663373))))))),i=0+e*(0+e*(282243172016108e-21+e*(27533547476472603e-21+e*(.0009640118070051656+e*(.016074608709367652+e*(.1381518657490833+e*(.5914293448864175+e*1)))))))),n/i)}eP.exports=kae});var oP=g((n_e,iP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var Oae=V(),tP=ce(),nP=de(),Nae=pe(),Aae=He(),Pae=GA(),xae=JA(),Eae=XA(),Dae=YA(),Tae=rP(),jae=.08913147449493408,zae=2.249481201171875,Cae=.807220458984375,qae=.9399557113647461,Rae=.9836282730102539;function Uae(e){var r,n,i,t,o,a;return Oae(e)?NaN:e===1?Nae:e===-1?Aae:e===0?e:e>1||e<-1?NaN:(e<0?(r=-1,n=-e):(r=1,n=e),t=1-n,n<=.5?(o=n*(n+10),a=Pae(n),r*(o*jae+o*a)):t>=.25?(o=tP(-2*nP(t)),t-=.25,a=xae(t),r*(o/(zae+a))):(t=tP(-nP(t)),t<3?(i=t-1.125,a=Eae(i),r*(Cae*t+a*t)):t<6?(i=t-3,a=Dae(i),r*(qae*t+a*t)):(i=t-6,a=Tae(i),r*(Rae*t+a*t))))}iP.exports=Uae});var Fh=g((i_e,aP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Fae=oP();aP.exports=Fae});var uP=g((o_e,sP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Mae=Fh(),Mh=V(),Lae=ce();function Zae(e,r,n){var i,t;return Mh(r)||Mh(n)||Mh(e)||n<0||e<0||e>1?NaN:n===0?r:(i=r,t=n*Lae(2),i+t*Mae(2*e-1))}sP.exports=Zae});var lP=g((a_e,cP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Vae=xr(),Bae=Ih().factory,Wae=Fh(),Lh=V(),Gae=ce();function Hae(e,r){var n,i;if(Lh(e)||Lh(r)||r<0)return Vae(NaN);return r===0&&Bae(e),n=e,i=r*Gae(2),t;function t(o){return Lh(o)||o<0||o>1?NaN:n+i*Wae(2*o-1)}}cP.exports=Hae});var mP=g((s_e,fP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Jae=Ze(),dP=uP(),Kae=lP();Jae(dP,"factory",Kae);fP.exports=dP});var Xh=g((X7e,KP)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Lse=.7853981633974483;KP.exports=Lse});var QP=g((Q7e,XP)=>{"use strict";/**
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
*/function Zse(e){var r,n,i;return e===0?.16666666666666713:(e<0?r=-e:r=e,r<=1?(n=-8.198089802484825+e*(19.562619833175948+e*(-16.262479672107002+e*(5.444622390564711+e*(-.6019598008014124+e*.004253011369004428)))),i=-49.18853881490881+e*(139.51056146574857+e*(-147.1791292232726+e*(70.49610280856842+e*(-14.740913729888538+e*1))))):(e=1/e,n=.004253011369004428+e*(-.6019598008014124+e*(5.444622390564711+e*(-16.262479672107002+e*(19.562619833175948+e*-8.198089802484825)))),i=1+e*(-14.740913729888538+e*(70.49610280856842+e*(-147.1791292232726+e*(139.51056146574857+e*-49.18853881490881))))),n/i)}XP.exports=Zse});var ex=g((Y7e,YP)=>{"use strict";/**
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
*/function Vse(e){var r,n,i;return e===0?.08333333333333809:(e<0?r=-e:r=e,r<=1?(n=28.536655482610616+e*(-25.56901049652825+e*(6.968710824104713+e*(-.5634242780008963+e*.002967721961301243))),i=342.43986579130785+e*(-383.8770957603691+e*(147.0656354026815+e*(-21.947795316429207+e*1)))):(e=1/e,n=.002967721961301243+e*(-.5634242780008963+e*(6.968710824104713+e*(-25.56901049652825+e*28.536655482610616))),i=1+e*(-21.947795316429207+e*(147.0656354026815+e*(-383.8770957603691+e*342.43986579130785)))),n/i)}YP.exports=Vse});var nx=g((e9e,tx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var Bse=V(),Wse=ce(),rx=Xh(),Gse=QP(),Hse=ex(),Jse=6123233995736766e-32;function Kse(e){var r,n,i,t,o;if(Bse(e))return NaN;if(e>0?i=e:(r=!0,i=-e),i>1)return NaN;if(i>.625)n=1-i,t=n*Hse(n),n=Wse(n+n),o=rx-n,n=n*t-Jse,o-=n,o+=rx;else{if(i<1e-8)return e;n=i*i,o=n*Gse(n),o=i*o+i}return r?-o:o}tx.exports=Kse});var gl=g((r9e,ix)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Xse=nx();ix.exports=Xse});var ax=g((t9e,ox)=>{"use strict";/**
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
*/function Qse(e){var r,n,i;return e===0?1/0:(e<0?r=-e:r=e,r<=1?(n=709811.662581658+e*(679979.8474157227+e*(293136.7857211597+e*(74887.54032914672+e*(12555.290582413863+e*(1443.4299244417066+e*(115.24194596137347+e*(6.309239205732627+e*(.22668404630224365+e*(.004826466289237662+e*4624429436045379e-20))))))))),i=0+e*(362880+e*(1026576+e*(1172700+e*(723680+e*(269325+e*(63273+e*(9450+e*(870+e*(45+e*1)))))))))):(e=1/e,n=4624429436045379e-20+e*(.004826466289237662+e*(.22668404630224365+e*(6.309239205732627+e*(115.24194596137347+e*(1443.4299244417066+e*(12555.290582413863+e*(74887.54032914672+e*(293136.7857211597+e*(679979.8474157227+e*709811.662581658))))))))),i=1+e*(45+e*(870+e*(9450+e*(63273+e*(269325+e*(723680+e*(1172700+e*(1026576+e*(362880+e*0)))))))))),n/i)}ox.exports=Qse});var cx=g((n9e,ux)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var sx=V(),Yse=Mr(),eue=ce(),rue=Y(),tue=Se(),Qh=Oe(),nue=Fn(),Yh=Ar(),e1=ax(),r1=10.900511;function iue(e,r){var n,i,t,o,a,s,u;return sx(e)||sx(r)?NaN:e<0||r<0?NaN:r===1?1/e:e===1?1/r:(u=e+r,u<Yh?(a=u/e,a/=r,a):u===e&&r<Yh?1/r:u===r&&e<Yh?1/e:(e<r&&(s=r,r=e,e=s),i=e+r1-.5,t=r+r1-.5,o=u+r1-.5,a=e1(e)*(e1(r)/e1(u)),n=e-.5-r,rue(r*n)<o*100&&e>100?a*=tue(n*Yse(-r/o)):a*=Qh(i/o,n),o>1e10?a*=Qh(i/o*(t/o),r):a*=Qh(i*t/(o*o),r),a*=eue(nue/t),a))}ux.exports=iue});var t1=g((i9e,lx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var oue=cx();lx.exports=oue});var n1=g((o9e,dx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var aue=2147483647;dx.exports=aue});var hl=g((a9e,fx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var sue=1.5707963267948966;fx.exports=sue});var mx=g((s9e,uue)=>{uue.exports=[1,1,2,6,24,120,720,5040,40320,362880,3628800,39916800,479001600,6227020800,87178291200,1307674368e3,20922789888e3,355687428096e3,6402373705728e3,121645100408832e3,243290200817664e4,5109094217170944e4,11240007277776077e5,2585201673888498e7,6204484017332394e8,15511210043330986e9,40329146112660565e10,10888869450418352e12,30488834461171387e13,8841761993739702e15,26525285981219107e16,8222838654177922e18,2631308369336935e20,8683317618811886e21,29523279903960416e22,10333147966386145e24,37199332678990125e25,13763753091226346e27,5230226174666011e29,20397882081197444e30,8159152832478977e32,3345252661316381e34,140500611775288e37,6041526306337383e37,2658271574788449e39,11962222086548019e40,5502622159812089e42,25862324151116818e43,12413915592536073e45,6082818640342675e47,30414093201713376e48,15511187532873822e50,8065817517094388e52,42748832840600255e53,2308436973392414e56,12696403353658276e57,7109985878048635e59,40526919504877214e60,23505613312828785e62,13868311854568984e64,832098711274139e67,5075802138772248e68,3146997326038794e70,198260831540444e73,12688693218588417e73,8247650592082472e75,5443449390774431e77,3647111091818868e79,24800355424368305e80,1711224524281413e83,11978571669969892e84,8504785885678623e86,61234458376886085e87,44701154615126844e89,3307885441519386e92,248091408113954e95,18854947016660504e95,14518309202828587e97,11324281178206297e99,8946182130782976e101,7156945704626381e103,5797126020747368e105,4753643337012842e107,3945523969720659e109,3314240134565353e111,281710411438055e114,24227095383672734e114,2107757298379528e117,18548264225739844e118,1650795516090846e121,14857159644817615e122,1352001527678403e125,12438414054641308e126,11567725070816416e128,1087366156656743e131,1032997848823906e133,9916779348709496e134,9619275968248212e136,9426890448883248e138,9332621544394415e140,9332621544394415e142,942594775983836e145,9614466715035127e146,990290071648618e149,10299016745145628e150,1081396758240291e153,11462805637347084e154,1226520203196138e157,1324641819451829e159,14438595832024937e160,1588245541522743e163,17629525510902446e164,1974506857221074e167,22311927486598138e168,25435597334721877e170,2925093693493016e173,3393108684451898e175,3969937160808721e177,4684525849754291e179,5574585761207606e181,6689502913449127e183,8094298525273444e185,9875044200833601e187,1214630436702533e190,1506141741511141e192,1882677176888926e194,2372173242880047e196,30126600184576594e197,3856204823625804e200,4974504222477287e202,6466855489220474e204,847158069087882e207,11182486511960043e208,14872707060906857e210,19929427461615188e212,26904727073180504e214,3659042881952549e217,5012888748274992e219,6917786472619489e221,9615723196941089e223,13462012475717526e225,1898143759076171e228,2695364137888163e230,3854370717180073e232,55502938327393044e233,8047926057471992e236,11749972043909107e238,1727245890454639e241,25563239178728654e242,380892263763057e246,5713383956445855e247,862720977423324e250,13113358856834524e251,20063439050956823e253,30897696138473508e255,4789142901463394e258,7471062926282894e260,11729568794264145e262,1853271869493735e265,29467022724950384e266,47147236359920616e268,7590705053947219e271,12296942187394494e273,20044015765453026e275,3287218585534296e278,5423910666131589e280,9003691705778438e282,1503616514864999e285,25260757449731984e286,4269068009004705e289,7257415615307999e291]});var vx=g((u9e,px)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cue=V(),lue=qn(),due=Fr(),fue=pe(),mue=Ia(),pue=mx();function vue(e){return cue(e)?NaN:lue(e)?e<0?NaN:e<=mue?pue[e]:fue:due(e+1)}px.exports=vue});var i1=g((c9e,gx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gue=vx();gx.exports=gue});var yx=g((l9e,hx)=>{"use strict";/**
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
*/function hue(e){var r,n,i;return e===0?1/0:(e<0?r=-e:r=e,r<=1?(n=3847467039331777e-5+e*(3685766504351951e-5+e*(1588920245372942e-5+e*(4059208354298835e-6+e*(6805476611834733e-7+e*(7823975500312005e-8+e*(6246580776401795e-9+e*(341986.3488721347+e*(12287.194511824551+e*(261.61404416416684+e*2.5066282746310007))))))))),i=0+e*(362880+e*(1026576+e*(1172700+e*(723680+e*(269325+e*(63273+e*(9450+e*(870+e*(45+e*1)))))))))):(e=1/e,n=2.5066282746310007+e*(261.61404416416684+e*(12287.194511824551+e*(341986.3488721347+e*(6246580776401795e-9+e*(7823975500312005e-8+e*(6805476611834733e-7+e*(4059208354298835e-6+e*(1588920245372942e-5+e*(3685766504351951e-5+e*3847467039331777e-5))))))))),i=1+e*(45+e*(870+e*(9450+e*(63273+e*(269325+e*(723680+e*(1172700+e*(1026576+e*(362880+e*0)))))))))),n/i)}hx.exports=hue});var $x=g((d9e,bx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var yue=yx();bx.exports=yue});var wx=g((f9e,_x)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var bue=$x();_x.exports=bue});var Ex=g((m9e,xx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var Sx=wx(),$ue=Fr(),_ue=Mr(),Ix=Y(),kx=Se(),Ox=Oe(),Nx=Ar(),wue=Fn(),Sue=Bi(),Ax=Ia(),Iue=4269068009004705e289;function Px(e,r){var n,i,t;return e<Nx?r>=Ax?(i=Px(r,Ax-r),i*=e,i*=Iue,1/i):1/(e*$ue(e+r)):(t=e+Sue-.5,e+r===e?Ix(r/t)<Nx?n=kx(-r):n=1:(Ix(r)<10?n=kx((.5-e)*_ue(r/t)):n=Ox(t/(t+r),e-.5),n*=Sx(e)/Sx(e+r)),n*=Ox(wue/(t+r),r),n)}xx.exports=Px});var qx=g((p9e,Cx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var kue=Y(),Dx=Nr(),Tx=Fr(),jx=i1(),zx=Ia(),Oue=Ex();function Nue(e,r){var n,i,t;if(e<=0||e+r<=0)return Tx(e)/Tx(e+r);if(i=Dx(r),i===r){if(t=Dx(e),t===e&&e<=zx&&e+r<=zx)return jx(t-1)/jx(i+t-1);if(kue(r)<20){if(r===0)return 1;if(r<0){for(e-=1,n=e,r+=1;r!==0;)e-=1,n*=e,r+=1;return n}for(n=1/e,r-=1;r!==0;)e+=1,n/=e,r-=1;return n}}return Oue(e,r)}Cx.exports=Nue});var yl=g((v9e,Rx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Aue=qx();Rx.exports=Aue});var Lx=g((g9e,Mx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var no=Se(),bl=Oe(),Pue=de(),Ux=ft(),Fx=Rn();function xue(e,r){var n,i;return i=e*Pue(r),r>=1?i<Ux&&-r>Fx?n=bl(r,e)*no(-r):e>=1?n=bl(r/no(r/e),e):n=no(i-r):i>Fx?n=bl(r,e)*no(-r):r/e<Ux?n=bl(r/no(r/e),e):n=no(i-r),n}Mx.exports=xue});var Bx=g((h9e,Vx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var Eue=Na(),Due=Mi(),Tue=Fr(),jue=Mr(),zue=ce(),Cue=Y(),nn=Se(),Wa=Oe(),o1=Un(),a1=Ht(),Zx=de(),$l=ft(),Ga=Rn(),s1=Bi(),que=Fn();function Rue(e,r){var n,i,t,o,a,s,u;return t=e+s1-.5,u=(r-e-s1+.5)/t,e<1?r<=Ga?nn(e*Zx(r)-r-Due(e)):Wa(r,e)*nn(-r)/Tue(e):(Cue(u*u*e)<=100&&e>150?(n=e*(jue(u)-u)+r*(.5-s1)/t,n=nn(n)):(o=e*Zx(r/t),a=e-r,a1(o,a)<=Ga||o1(o,a)>=$l?(i=a/e,a1(o,a)/2>Ga&&o1(o,a)/2<$l?(s=Wa(r/t,e/2)*nn(a/2),n=s*s):a1(o,a)/4>Ga&&o1(o,a)/4<$l&&r>e?(s=Wa(r/t,e/4)*nn(a/4),n=s*s,n*=n):i>Ga&&i<$l?n=Wa(r*nn(i)/t,e):n=nn(o+a)):n=Wa(r/t,e)*nn(a)),n*=zue(t/que)/Eue(e),n)}Vx.exports=Rue});var Kx=g((y9e,Jx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var Uue=yl(),Wx=i1(),Fue=Da(),Mue=Mr(),_l=Y(),Gx=Oe(),Lue=de(),Zue=Zt(),Hx=Ar(),Vue=Lx(),Bue=Bx(),on=new Array(30);function Wue(e,r,n,i,t,o,a){var s,u,c,l,d,f,m,v,h,y,b,_,$,N,w,O,k,D;if(f=r-1,k=e+f/2,i<.35?y=Mue(-i):y=Lue(n),D=-k*y,_=Bue(r,D),_<=Zue)return t;for(a?(s=_/Uue(e,r),s/=Gx(k,r)):s=Vue(r,D)/Gx(k,r),s*=o,on[0]=1,$=Fue(D,r,!0,!0),$/=_,l=t+s*$,c=1,m=y/2,m*=m,v=1,b=4*k*k,d=r,w=1;w<on.length;++w){for(c+=2,on[w]=0,h=r-w,u=3,N=1;N<w;++N)h=N*r-w,on[w]+=h*on[w-N]/Wx(u),u+=2;if(on[w]/=w,on[w]+=f/Wx(c),$=(d*(d+1)*$+(D+d+1)*v)/b,v*=m,d+=2,O=s*on[w]*$,l+=O,O>1){if(_l(O)<_l(Hx*l))break}else if(_l(O/Hx)<_l(l))break}return l}Jx.exports=Wue});var Qx=g((b9e,Xx)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/function Gue(e,r,n){var i,t;if(n===0)return 1;for(i=1,t=0;t<n;t++)i*=(e+t)/(r+t);return i}Xx.exports=Gue});var rE=g(($9e,eE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Yx=Y(),Hue=Un();function Jue(e,r){return Hue(Yx(e),Yx(r))}eE.exports=Jue});var nE=g((_9e,tE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Kue=rE();tE.exports=Kue});var aE=g((w9e,oE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var iE=Y(),Xue=Ht();function Que(e,r){return Xue(iE(e),iE(r))}oE.exports=Que});var uE=g((S9e,sE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Yue=aE();sE.exports=Yue});var Sl=g((I9e,dE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var u1=Na(),ece=nE(),rce=uE(),cE=Mn(),an=Mr(),lE=ce(),wl=Y(),Vr=Se(),Br=Oe(),tce=Ht(),br=de(),Wr=ft(),io=Rn(),c1=Bi(),nce=Fn();function ice(e,r,n,i,t){var o,a,s,u,c,l,d,f,m,v,h,y,b,_;if(!t)return Br(n,e)*Br(i,r);if(b=e+r,u=e+c1-.5,c=r+c1-.5,l=b+c1-.5,o=u1(b),o/=u1(e)*u1(r),o*=lE(c/nce),o*=lE(u/l),d=(n*r-i*u)/u,f=(i*e-n*c)/c,rce(d,f)<.2)if(d*f>0||tce(e,r)<1)wl(d)<.1?o*=Vr(e*an(d)):o*=Br(n*l/u,e),wl(f)<.1?o*=Vr(r*an(f)):o*=Br(i*l/c,r);else if(ece(d,f)<.5)a=e<r,s=r/e,a&&s*f<.1||!a&&d/s>.1?(m=cE(s*an(f)),m=d+m+m*d,m=e*an(m),o*=Vr(m)):(m=cE(an(d)/s),m=f+m+m*f,m=r*an(m),o*=Vr(m));else if(wl(d)<wl(f))if(_=e*an(d)+r*br(i*l/c),_<=io||_>=Wr){if(_+=br(o),_>=Wr)return NaN;o=Vr(_)}else o*=Vr(_);else if(_=r*an(f)+e*br(n*l/u),_<=io||_>=Wr){if(_+=br(o),_>=Wr)return NaN;o=Vr(_)}else o*=Vr(_);else if(h=n*l/u,y=i*l/c,d=e*br(h),f=r*br(y),d>=Wr||d<=io||f>=Wr||f<=io)if(e<r)if(v=Br(y,r/e),m=e*(br(h)+br(v)),m<Wr&&m>io)o*=Br(v*h,e);else{if(f+=d+br(o),f>=Wr)return NaN;o=Vr(f)}else if(v=Br(h,e/r),m=(br(v)+br(y))*r,m<Wr&&m>io)o*=Br(v*y,r);else{if(f+=d+br(o),f>=Wr)return NaN;o=Vr(f)}else o*=Br(h,e)*Br(y,r);return o}dE.exports=ice});var mE=g((k9e,fE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var oce=ah(),ace=Sl(),sce={keep:!0,maxIter:1e3};function uce(e,r,n,i){var t=0;return o;function o(){var a,s,u;return s=(e+t-1)*(e+r+t-1)*t*(r-t)*n*n,a=e+2*t-1,s/=a*a,u=t,u+=t*(r-t)*n/(e+2*t-1),u+=(e+t)*(e*i-r*n+1+t*(2-n))/(e+2*t+1),t+=1,[s,u]}}function cce(e,r,n,i,t,o){var a,s,u;return a=ace(e,r,n,i,t),o&&(o[1]=a),a===0?a:(u=uce(e,r,n,i),s=oce(u,sce),a/s)}fE.exports=cce});var vE=g((O9e,pE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var lce=9007199254740991;pE.exports=lce});var hE=g((N9e,gE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function dce(e,r){var n=0,i;if(e===0)return r;if(r===0)return e;for(;(e&1)===0&&(r&1)===0;)e>>>=1,r>>>=1,n+=1;for(;(e&1)===0;)e>>>=1;for(;r;){for(;(r&1)===0;)r>>>=1;e>r&&(i=r,r=e,e=i),r-=e}return e<<n}gE.exports=dce});var bE=g((A9e,yE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/function fce(e,r){var n=1,i;if(e===0)return r;if(r===0)return e;for(;e%2===0&&r%2===0;)e/=2,r/=2,n*=2;for(;e%2===0;)e/=2;for(;r;){for(;r%2===0;)r/=2;e>r&&(i=r,r=e,e=i),r-=e}return n*e}yE.exports=fce});var OE=g((P9e,kE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $E=V(),_E=qn(),wE=pe(),SE=He(),IE=n1(),mce=hE(),pce=bE();function vce(e,r){return $E(e)||$E(r)?NaN:e===wE||r===wE||e===SE||r===SE?NaN:_E(e)&&_E(r)?(e<0&&(e=-e),r<0&&(r=-r),e<=IE&&r<=IE?mce(e,r):pce(e,r)):NaN}kE.exports=vce});var AE=g((x9e,NE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var gce=OE();NE.exports=gce});var DE=g((E9e,EE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hce=vE(),yce=pe(),PE=qn(),xE=V(),bce=Uc(),$ce=Nr(),_ce=AE();function l1(e,r){var n,i,t,o,a,s,u;if(xE(e)||xE(r))return NaN;if(!PE(e)||!PE(r))return NaN;if(r<0||(i=1,e<0&&(e=-e+r-1,bce(r)&&(i*=-1)),r>e))return 0;if(r===0||r===e)return i;if(r===1||r===e-1)return i*e;for(e-r<r&&(r=e-r),u=$ce(hce/e),n=1,a=1;a<=r&&!(n>u);a++)n*=e,n/=a,e-=1;return a>r?i*n:(t=l1(e,r-a+1),t===yce?i*t:(o=l1(r,r-a+1),s=_ce(t,o),t/=s,o/=s,n/=o,i*n*t))}EE.exports=l1});var jE=g((D9e,TE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var wce=DE();TE.exports=wce});var qE=g((T9e,CE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var zE=jE(),Vn=Nr(),Ha=Oe(),Sce=Zt();function Ice(e,r,n,i){var t,o,a,s,u;if(o=Ha(n,e),o>Sce)for(s=o,u=Vn(e-1);u>r;u--)s*=(u+1)*i/((e-u)*n),o+=s;else if(a=Vn(e*n),a<=r+1&&(a=Vn(r+2)),o=Ha(n,a)*Ha(i,e-a),o*=zE(Vn(e),Vn(a)),o===0)for(u=a-1;u>r;u--)o+=Ha(n,u)*Ha(i,e-u),o*=zE(Vn(e),Vn(u));else{for(s=o,t=o,u=a-1;u>r;u--)s*=(u+1)*i/((e-u)*n),o+=s;for(s=t,u=a+1;u<=e;u++)s*=(e-u+1)*n/(u*i),o+=s}return o}CE.exports=Ice});var UE=g((j9e,RE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var kce=Sl();function Oce(e,r,n,i,t,o,a){var s,u,c,l;if(s=kce(e,r,n,i,o),a&&(a[1]=s),s/=e,s===0)return s;for(c=1,u=1,l=0;l<t-1;++l)u*=(e+r+l)*n/(e+l+1),c+=u;return s*=c,s}RE.exports=Oce});var VE=g((z9e,ZE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var d1=Na(),Nce=Zi(),Ace=Mr(),Pce=ce(),f1=Se(),Il=Oe(),Ja=de(),xce=Zt(),FE=ft(),ME=Rn(),m1=Bi(),Ece=Fn(),LE={maxTerms:100};function Dce(e,r,n,i){var t=1-r,o=1;return a;function a(){var s=i/e;return e+=1,i*=t*n/o,o+=1,t+=1,s}}function Tce(e,r,n,i,t,o,a){var s,u,c,l,d,f,m,v;return t?(m=e+r,u=e+m1-.5,c=r+m1-.5,l=m+m1-.5,s=d1(m)/(d1(e)*d1(r)),d=Ja(l/c)*(r-.5),f=Ja(n*l/u)*e,d>ME&&d<FE&&f>ME&&f<FE?(e*r<c*10?s*=f1((r-.5)*Ace(e/c)):s*=Il(l/c,r-.5),s*=Il(n*l/u,e),s*=Pce(u/Ece),o&&(o[1]=s*Il(a,r))):(s=Ja(s)+d+f+(Ja(u)-1)/2,o&&(o[1]=f1(s+r*Ja(a))),s=f1(s))):s=Il(n,e),s<xce?i:(v=Dce(e,r,n,s),LE.initialValue=i,Nce(v,LE))}ZE.exports=Tce});var g1=g((C9e,XE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var jce=V(),zce=Mn(),kl=Nr(),BE=Mr(),WE=gl(),$r=t1(),p1=ce(),Cce=Se(),Ka=Oe(),qce=Un(),GE=Ht(),Ol=Gt(),HE=Zt(),Rce=n1(),Uce=hl(),KE=dt(),sn=Kx(),v1=Qx(),Fce=Sl(),JE=mE(),Mce=qE(),Xa=UE(),Gr=VE(),Lce=1/KE;function Zce(e,r,n,i,t,o,a,s){var u,c,l,d,f,m,v,h,y,b,_,$;if($=1-e,v=s,h=s+a,o[h]=-1,jce(e)||e<0||e>1)return o[v]=NaN,o[h]=NaN,o;if(i){if(r<0||n<0)return o[v]=NaN,o[h]=NaN,o;if(r===0){if(n===0)return o[v]=NaN,o[h]=NaN,o;if(n>0)return o[v]=t?0:1,o}else if(n===0&&r>0)return o[v]=t?1:0,o}else if(r<=0||n<=0)return o[v]=NaN,o[h]=NaN,o;return e===0?(r===1?o[h]=1:o[h]=r<1?Ol/2:HE*2,t?(o[v]=i?1:$r(r,n),o):(o[v]=0,o)):e===1?(n===1?o[h]=1:o[h]=n<1?Ol/2:HE*2,t?o[v]=0:o[v]=i?1:$r(r,n),o):r===.5&&n===.5?(o[h]=Lce*p1($*e),_=WE(p1(t?$:e)),_/=Uce,i||(_*=KE),o[v]=_,o):(r===1&&(m=n,n=r,r=m,m=$,$=e,e=m,t=!t),n===1?r===1?(o[v]=t?$:e,o[h]=1,o):(o[h]=r*Ka(e,r-1),$<.5?_=t?-zce(r*BE(-$)):Cce(r*BE(-$)):_=t?-(Ka(e,r)-1):Ka(e,r),i||(_/=r),o[v]=_,o):(GE(r,n)<=1?(e>.5&&(m=n,n=r,r=m,m=$,$=e,e=m,t=!t),qce(r,n)<=1?r>=GE(.2,n)||Ka(e,r)<=.9?t?(l=-(i?1:$r(r,n)),t=!1,l=-Gr(r,n,e,l,i,o,$)):l=Gr(r,n,e,0,i,o,$):(m=n,n=r,r=m,m=$,$=e,e=m,t=!t,$>=.3?t?(l=-(i?1:$r(r,n)),t=!1,l=-Gr(r,n,e,l,i,o,$)):l=Gr(r,n,e,0,i,o,$):(i?c=1:c=v1(r+n,r,20),l=Xa(r,n,e,$,20,i,o),t?(l-=i?1:$r(r,n),t=!1,l=-sn(r+20,n,e,$,l,c,i)):l=sn(r+20,n,e,$,l,c,i))):n<=1||e<.1&&Ka(n*e,r)<=.7?t?(l=-(i?1:$r(r,n)),t=!1,l=-Gr(r,n,e,l,i,o,$)):l=Gr(r,n,e,0,i,o,$):(m=n,n=r,r=m,m=$,$=e,e=m,t=!t,$>=.3?t?(l=-(i?1:$r(r,n)),t=!1,l=-Gr(r,n,e,l,i,o,$)):l=Gr(r,n,e,0,i,o,$):r>=15?t?(l=-(i?1:$r(r,n)),t=!1,l=-sn(r,n,e,$,l,1,i)):l=sn(r,n,e,$,0,1,i):(i?c=1:c=v1(r+n,r,20),l=Xa(r,n,e,$,20,i,o),t?(l-=i?1:$r(r,n),t=!1,l=-sn(r+20,n,e,$,l,c,i)):l=sn(r+20,n,e,$,l,c,i)))):(r<n?u=r-(r+n)*e:u=(r+n)*$-n,u<0&&(m=n,n=r,r=m,m=$,$=e,e=m,t=!t),n<40?kl(r)===r&&kl(n)===n&&r<Rce-100?(y=r-1,b=n+y,l=Mce(b,y,e,$),i||(l*=$r(r,n))):n*e<=.7?t?(l=-(i?1:$r(r,n)),t=!1,l=-Gr(r,n,e,l,i,o,$)):l=Gr(r,n,e,0,i,o,$):r>15?(b=kl(n),b===n&&(b-=1),d=n-b,i?c=1:c=v1(r+d,d,b),l=Xa(d,r,$,e,b,i),l=sn(r,d,e,$,l,1,i),l/=c):i?(b=kl(n),d=n-b,d<=0&&(b-=1,d+=1),l=Xa(d,r,$,e,b,i),l+=Xa(r,d,e,$,20,i),t&&(l-=1),l=sn(r+20,d,e,$,l,1,i),t&&(l=-l,t=!1)):l=JE(r,n,e,$,i,o):l=JE(r,n,e,$,i,o)),o[h]<0&&(o[h]=Fce(r,n,e,$,!0)),f=$*e,o[h]!==0&&(Ol*f<o[h]?o[h]=Ol/2:o[h]/=f),o[v]=t?(i?1:$r(r,n))-l:l,o))}XE.exports=Zce});var YE=g((q9e,QE)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Vce=g1();function Bce(e,r,n,i,t){return Vce(e,r,n,i,t,[0,0],1,0)}QE.exports=Bce});var h1=g((R9e,rD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Wce=Ze(),eD=YE(),Gce=g1();Wce(eD,"assign",Gce);rD.exports=eD});var nD=g((U9e,tD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Hce=h1().assign;function Jce(e,r,n,i,t){var o=[0,0];return i=i!==!1,t=t===!0,Hce(e,r,n,i,t,o,1,0),o[0]}tD.exports=Jce});var oo=g((F9e,iD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Kce=nD();iD.exports=Kce});var uD=g((M9e,sD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var oD=oo(),aD=V(),Xce=Oe();function Qce(e,r){var n,i,t;return aD(e)||aD(r)||r<=0?NaN:e===0?.5:(n=Xce(e,2),r>2*n?(t=n/(r+n),i=oD(t,.5,r/2,!0,!0)/2):(t=r/(r+n),i=oD(t,r/2,.5,!0,!1)/2),e>0?1-i:i)}sD.exports=Qce});var fD=g((L9e,dD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Yce=xr(),cD=oo(),lD=V(),ele=Oe();function rle(e){if(lD(e)||e<=0)return Yce(NaN);return r;function r(n){var i,t,o;return lD(n)?NaN:n===0?.5:(i=ele(n,2),e>2*i?(o=i/(e+i),t=cD(o,.5,e/2,!0,!0)/2):(o=e/(e+i),t=cD(o,e/2,.5,!0,!1)/2),n>0?1-t:t)}}dD.exports=rle});var vD=g((Z9e,pD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var tle=Ze(),mD=uD(),nle=fD();tle(mD,"factory",nle);pD.exports=mD});var bD=g((V9e,yD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var ile=V(),gD=gl(),ole=ce(),hD=Xh(),ale=6123233995736766e-32;function sle(e){var r;return ile(e)?NaN:e<-1||e>1?NaN:e>.5?2*gD(ole(.5-.5*e)):(r=hD-gD(e),r+=ale,r+=hD,r)}yD.exports=sle});var _D=g((B9e,$D)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ule=bD();$D.exports=ule});var Nl=g((W9e,wD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var cle=1.4142135623730951;wD.exports=cle});var ID=g((G9e,SD)=>{"use strict";/**
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
*/function lle(e){return e===0?.16666666666666666:.16666666666666666+e*.16666666666666666}SD.exports=lle});var OD=g((H9e,kD)=>{"use strict";/**
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
*/function dle(e){return e===0?.058333333333333334:.058333333333333334+e*(.06666666666666667+e*.008333333333333333)}kD.exports=dle});var AD=g((J9e,ND)=>{"use strict";/**
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
*/function fle(e){return e===0?.0251984126984127:.0251984126984127+e*(.026785714285714284+e*(.0017857142857142857+e*.0001984126984126984))}ND.exports=fle});var xD=g((K9e,PD)=>{"use strict";/**
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
*/function mle(e){return e===0?.012039792768959435:.012039792768959435+e*(.010559964726631394+e*(-.0011078042328042327+e*(.0003747795414462081+e*27557319223985893e-22)))}PD.exports=mle});var DD=g((X9e,ED)=>{"use strict";/**
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
*/function ple(e){return e===0?.003837005972422639:.003837005972422639+e*(.00610392115600449+e*(-.0016095979637646305+e*(.0005945867404200738+e*(-6270542728876062e-20+e*2505210838544172e-23))))}ED.exports=ple});var jD=g((Q9e,TD)=>{"use strict";/**
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
*/function vle(e){return e===0?.0032177478835464946:.0032177478835464946+e*(.0010898206731540065+e*(-.0012579159844784845+e*(.0006908420797309686+e*(-.00016376804137220805+e*(154012654012654e-19+e*16059043836821613e-26)))))}TD.exports=vle});var CD=g((Y9e,zD)=>{"use strict";/**
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
*/function gle(e){return e===0?.001743826229834001:.001743826229834001+e*(3353097688001788e-20+e*(-.0007624513544032393+e*(.0006451304695145635+e*(-.000249472580470431+e*(49255746366361444e-21+e*(-39851014346715405e-22+e*7647163731819816e-28))))))}zD.exports=gle});var RD=g((ewe,qD)=>{"use strict";/**
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
*/function hle(e){return e===0?.0009647274732138864:.0009647274732138864+e*(-.0003110108632631878+e*(-.00036307660358786886+e*(.0005140660578834113+e*(-.00029133414466938067+e*(9086710793521991e-20+e*(-15303004486655377e-21+e*(10914179173496788e-22+e*28114572543455206e-31)))))))}qD.exports=hle});var FD=g((rwe,UD)=>{"use strict";/**
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
*/function yle(e){return e===0?.0005422926281312969:.0005422926281312969+e*(-.0003694266780000966+e*(-.00010230378073700413+e*(.00035764655430568635+e*(-.00028690924218514614+e*(.00012645437628698076+e*(-33202652391372056e-21+e*(4890304529197534e-21+e*(-3123956959982987e-22+e*822063524662433e-32))))))))}UD.exports=yle});var LD=g((twe,MD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var ble=yl(),$le=pt(),_le=ce(),wle=dt(),Sle=ID(),Ile=OD(),kle=AD(),Ole=xD(),Nle=DD(),Ale=jD(),Ple=CD(),xle=RD(),Ele=FD(),Dle=0,Hr=[1,0,0,0,0,0,0,0,0,0];function Tle(e,r){var n,i;return i=ble(e/2,.5)*_le(e*wle)*(r-.5),n=1/e,Hr[1]=Sle(n),Hr[2]=Ile(n),Hr[3]=kle(n),Hr[4]=Ole(n),Hr[5]=Nle(n),Hr[6]=Ale(n),Hr[7]=Ple(n),Hr[8]=xle(n),Hr[9]=Ele(n),Dle+i*$le(Hr,i*i)}MD.exports=Tle});var BD=g((nwe,VD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var jle=yl(),zle=pt(),ZD=ce(),Cle=Oe(),qle=dt(),un=[0,0,0,0,0,0,0];function Rle(e,r){var n,i,t,o,a,s,u,c;return c=jle(e/2,.5)*ZD(e*qle)*r,o=e+2,a=e+4,s=e+6,un[0]=1,un[1]=-(e+1)/(2*o),o*=e+2,un[2]=-e*(e+1)*(e+3)/(8*o*a),o*=e+2,un[3]=-e*(e+1)*(e+5)*((3*e+7)*e-2)/(48*o*a*s),o*=e+2,a*=e+4,un[4]=-e*(e+1)*(e+7)*(((((15*e+154)*e+465)*e+286)*e-336)*e+64)/(384*o*a*s*(e+8)),o*=e+2,un[5]=-e*(e+1)*(e+3)*(e+9)*((((((35*e+452)*e+1573)*e+600)*e-2020)*e+928)*e-128)/(1280*o*a*s*(e+8)*(e+10)),o*=e+2,a*=e+4,s*=e+6,un[6]=-e*(e+1)*(e+11)*(((((((((((945*e+31506)*e+425858)*e+2980236)*e+11266745)*e+20675018)*e+7747124)*e-22574632)*e-8565600)*e+18108416)*e-7099392)*e+884736)/(46080*o*a*s*(e+8)*(e+10)*(e+12)),u=ZD(e),t=Cle(u*c,1/e),i=t*t,n=zle(un,i),n*=u,n/=t,-n}VD.exports=Rle});var KD=g((iwe,JD)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var WD=Hi(),Ule=Mn(),GD=ce(),Fle=Oe(),Mle=hl(),HD=Nl();function Lle(e,r){var n,i,t,o,a,s,u;return e>1e20?-WD(2*r)*HD:(n=1/(e-.5),i=48/(n*n),t=((20700*n/i-98)*n-16)*n+96.36,o=((94.5/(i+t)-3)/i+1)*GD(n*Mle)*e,u=Fle(o*2*r,2/e),u>.05+n?(s=-WD(2*r)*HD,u=s*s,e<5&&(t+=.3*(e-4.5)*(s+.6)),t+=(((.05*o*s-5)*s-7)*s-2)*s+i,u=(((((.4*u+6.3)*u+36)*u+94.5)/t-u-3)/i+1)*s,u=Ule(n*u*u)):u=((1/(((e+6)/(e*u)-.089*o-.822)*(e+2)*3)+.5/(e+4))*u-1)*(e+1)/(e+2)+1/u,a=GD(e*u),-a)}JD.exports=Lle});var aT=g((owe,oT)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var XD=Hi(),QD=Nr(),y1=zn(),YD=Ng(),Zle=_D(),Al=ce(),Vle=Y(),eT=qc(),Ble=Oe(),Wle=Ui(),rT=Nl(),tT=dt(),nT=LD(),Pl=BD(),b1=KD(),iT=268435456,Gle=1/3,Hle=106/3,Jle=.8549879733383485;function Kle(e,r,n){var i,t,o,a,s,u,c,l,d,f,m,v,h,y,b,_;if(s=0,r>n?(c=n,n=r,r=c,a=!0):a=!1,QD(e)===e&&e<20)switch(t=y1(1,Hle),QD(e)){case 1:r===.5?s=0:s=-eT(tT*r)/Wle(tT*r);break;case 2:s=(2*r-1)/Al(2*r*n);break;case 4:u=4*r*n,o=Al(u),h=4*eT(Zle(o)/3)/o,y=Al(h-4),s=r-.5<0?-y:y;break;case 6:if(r<1e-150)return(a?-1:1)*b1(e,r);b=4*(r-r*r),_=Ble(b,Gle),v=6*(1+Jle*(1/_-1));do d=v*v,f=d*d,m=v*f,l=v,v=2*(8*b*m-270*d+2187)/(5*(4*b*f-216*v-243));while(Vle((v-l)/v)>t);v=Al(v-e),s=r-.5<0?-v:v;break;default:e>iT?s=XD(2*r)*rT:e<3?(i=.2742-e*.0242143,r>i?s=nT(e,r):s=Pl(e,r)):(i=y1(1,YD(e/-.654)),r>i?s=b1(e,r):s=Pl(e,r))}else e>iT?s=-XD(2*r)*rT:e<3?(i=.2742-e*.0242143,r>i?s=nT(e,r):s=Pl(e,r)):(i=y1(1,YD(e/-.654)),r>i?s=b1(e,r):s=Pl(e,r));return a?-s:s}oT.exports=Kle});var uT=g((awe,sT)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var Xle=aT();function Qle(e,r,n){var i,t,o,a;return t=r/2,o=1-t,i=e*2,a=Xle(i,t,o),n&&(n.value=a*a/(i+a*a)),i/(i+a*a)}sT.exports=Qle});var dT=g((swe,lT)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var xl=pt(),Yle=Hi(),cT=ce(),ede=Se(),yt=Nl(),$e=[0,0,0,0,0,0,0],Qa=[0,0,0,0];function rde(e,r,n){var i,t,o,a,s,u,c;return i=Yle(2*n),i/=-cT(e/2),Qa[0]=i,u=r-e,a=u*u,s=a*u,$e[0]=-u*yt/2,$e[1]=(1-2*u)/8,$e[2]=-(u*yt/48),$e[3]=-1/192,$e[4]=-u*yt/3840,$e[5]=0,$e[6]=0,Qa[1]=xl($e,i),$e[0]=u*yt*(3*u-2)/12,$e[1]=(20*a-12*u+1)/128,$e[2]=u*yt*(20*u-1)/960,$e[3]=(16*a+30*u-15)/4608,$e[4]=u*yt*(21*u+32)/53760,$e[5]=(-(32*a)+63)/368640,$e[6]=-u*yt*(120*u+17)/25804480,Qa[2]=xl($e,i),$e[0]=u*yt*(-75*a+80*u-16)/480,$e[1]=(-1080*s+868*a-90*u-45)/9216,$e[2]=u*yt*(-1190*a+84*u+373)/53760,$e[3]=(-2240*s-2508*a+2100*u-165)/368640,$e[4]=0,$e[5]=0,$e[6]=0,Qa[3]=xl($e,i),o=xl(Qa,1/e),t=o*o,c=-ede(-t/2),t===0?.5:(1+o*cT((1+c)/t))/2}lT.exports=rde});var $1=g((uwe,mT)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var fT=de(),tde=Gt(),El=tde/4;function nde(e,r){return n;function n(i){var t,o,a;return a=1-i,a===0?[-El,-El]:i===0?[-El,-El]:(o=fT(i)+r*fT(a)+e,t=1/i-r/a,[o,t])}}mT.exports=nde});var vT=g((cwe,pT)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ide=V();function ode(e){return e===0||ide(e)?e:e<0?-1:1}pT.exports=ode});var Ya=g((lwe,gT)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var ade=vT();gT.exports=ade});var w1=g((dwe,yT)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var hT=Ya(),Dl=Y(),sde=zn(),_1=Gt();function ude(e,r,n,i,t,o){var a,s,u,c,l,d,f,m,v,h;v=0,a=0,l=r,c=sde(1,1-t),f=_1,s=_1,u=_1,d=o;do{if(a=v,u=s,s=f,m=e(l),v=m[0],h=m[1],d-=1,v===0)break;if(h===0?(a===0&&(l===n?r=i:r=n,a=e(r),f=r-l),hT(a)*hT(v)<0?f<0?f=(l-n)/2:f=(l-i)/2:f<0?f=(l-i)/2:f=(l-n)/2):f=v/h,Dl(f*2)>Dl(u)&&(f=f>0?(l-n)/2:(l-i)/2),r=l,l-=f,l<=n){if(f=.5*(r-n),l=r-f,l===n||l===i)break}else if(l>=i&&(f=.5*(r-i),l=r-f,l===n||l===i))break;f>0?i=r:n=r}while(d&&Dl(l*c)<Dl(f));return l}yT.exports=ude});var $T=g((fwe,bT)=>{"use strict";/**
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
*/function cde(e){return e===0?-1:-1+e*(-5+e*5)}bT.exports=cde});var wT=g((mwe,_T)=>{"use strict";/**
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
*/function lde(e){return e===0?1:1+e*(21+e*(-69+e*46))}_T.exports=lde});var IT=g((pwe,ST)=>{"use strict";/**
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
*/function dde(e){return e===0?7:7+e*(-2+e*(33+e*(-62+e*31)))}ST.exports=dde});var OT=g((vwe,kT)=>{"use strict";/**
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
*/function fde(e){return e===0?25:25+e*(-52+e*(-17+e*(88+e*(-115+e*46))))}kT.exports=fde});var AT=g((gwe,NT)=>{"use strict";/**
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
*/function mde(e){return e===0?7:7+e*(12+e*(-78+e*52))}NT.exports=mde});var xT=g((hwe,PT)=>{"use strict";/**
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
*/function pde(e){return e===0?-7:-7+e*(2+e*(183+e*(-370+e*185)))}PT.exports=pde});var DT=g((ywe,ET)=>{"use strict";/**
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
*/function vde(e){return e===0?-533:-533+e*(776+e*(-1835+e*(10240+e*(-13525+e*5410))))}ET.exports=vde});var jT=g((bwe,TT)=>{"use strict";/**
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
*/function gde(e){return e===0?-1579:-1579+e*(3747+e*(-3372+e*(-15821+e*(45588+e*(-45213+e*15071)))))}TT.exports=gde});var CT=g(($we,zT)=>{"use strict";/**
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
*/function hde(e){return e===0?449:449+e*(-1259+e*(-769+e*(6686+e*(-9260+e*3704))))}zT.exports=hde});var RT=g((_we,qT)=>{"use strict";/**
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
*/function yde(e){return e===0?63149:63149+e*(-151557+e*(140052+e*(-727469+e*(2239932+e*(-2251437+e*750479)))))}qT.exports=yde});var FT=g((wwe,UT)=>{"use strict";/**
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
*/function bde(e){return e===0?29233:29233+e*(-78755+e*(105222+e*(146879+e*(-1602610+e*(3195183+e*(-2554139+e*729754))))))}UT.exports=bde});var LT=g((Swe,MT)=>{"use strict";/**
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
*/function $de(e){return e===0?1:1+e*(-13+e*13)}MT.exports=$de});var VT=g((Iwe,ZT)=>{"use strict";/**
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
*/function _de(e){return e===0?1:1+e*(21+e*(-69+e*46))}ZT.exports=_de});var GT=g((kwe,WT)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var ao=pt(),wde=Hi(),Sde=Y(),Ide=Se(),BT=de(),kde=ce(),Ode=Ui(),Nde=qc(),Ade=$1(),Pde=w1(),xde=$T(),Ede=wT(),Dde=IT(),Tde=OT(),jde=AT(),zde=xT(),Cde=DT(),qde=jT(),Rde=CT(),Ude=RT(),Fde=FT(),Mde=LT(),Lde=VT(),Q=[0,0,0,0,0,0],es=[0,0,0,0];function Zde(e,r,n){var i,t,o,a,s,u,c,l,d,f,m,v,h,y,b,_,$,N,w,O;return s=wde(2*e)/-kde(r/2),N=Ode(n),$=Nde(n),es[0]=s,b=N*N,_=$*$,h=N*$,v=h*h,m=v*h,f=v*v,d=v*m,l=m*m,c=f*m,Q[0]=(2*b-1)/(3*h),Q[1]=-xde(b)/(36*v),Q[2]=Ede(b)/(1620*m),Q[3]=Dde(b)/(6480*f),Q[4]=Tde(b)/(90720*d),Q[5]=0,es[1]=ao(Q,s),Q[0]=-jde(b)/(405*m),Q[1]=zde(b)/(2592*f),Q[2]=-Cde(b)/(204120*d),Q[3]=-qde(b)/(2099520*l),Q[4]=0,Q[5]=0,es[2]=ao(Q,s),Q[0]=Rde(b)/(102060*d),Q[1]=-Ude(b)/(20995200*l),Q[2]=Fde(b)/(36741600*c),Q[3]=0,Q[4]=0,Q[5]=0,es[3]=ao(Q,s),u=ao(es,1/r),o=$/N,o*=o,y=-(u*u)/(2*b)+BT(b)+_*BT(_)/b,Sde(u)<.7?(Q[0]=b,Q[1]=h,Q[2]=(1-2*b)/3,Q[3]=Mde(b)/(36*h),Q[4]=Lde(b)/(270*v),Q[5]=0,O=ao(Q,u)):(w=Ide(y),Q[0]=w,Q[1]=o,Q[2]=0,Q[3]=3*o*(3*o+1)/6,Q[4]=4*o*(4*o+1)*(4*o+2)/24,Q[5]=5*o*(5*o+1)*(5*o+2)*(5*o+3)/120,O=ao(Q,w),(O-b)*u<0&&(O=1-O)),u<0?(t=0,i=b):(t=b,i=1),(O<t||O>i)&&(O=(t+i)/2),a=Ade(-y,o),O=Pde(a,O,t,i,32,100),O}WT.exports=Zde});var JT=g((Owe,HT)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Vde=5e-324;HT.exports=Vde});var YT=g((Nwe,QT)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var KT=Qc(),XT=de(),Bde=ce(),Wde=JT(),Gde=$1(),Hde=w1();function Jde(e,r,n,i){var t,o,a,s,u,c,l,d,f,m,v,h,y,b,_,$,N,w,O,k,D,F,re,se,me,we,ze,T,q,Hn;return n<i?u=KT(n,r,!0):u=KT(i,r,!1),u/=e,b=r/e,T=Bde(1+b),w=T*T,O=w*T,k=w*w,D=O*w,F=O*O,re=k*O,se=k*k,me=D*k,l=D*D,ze=u-b,_=ze*ze,$=_*ze,N=_*_,we=T+1,d=we*we,f=we*d,m=d*d,v=(T+2)*(T-1)/(3*T),v+=(O+9*w+21*T+5)*ze/(36*w*we),v-=(k-13*O+69*w+167*T+46)*_/(1620*d*O),v-=(7*D+21*k+70*O+26*w-93*T-31)*$/(6480*f*k),v-=(75*F+202*D+188*k-888*O-1345*w+118*T+138)*N/(272160*m*D),h=(28*k+131*O+402*w+581*T+208)*(T-1)/(1620*we*O),h-=(35*F-154*D-623*k-1636*O-3983*w-3514*T-925)*ze/(12960*d*k),h-=(2132*re+7915*F+16821*D+35066*k+87490*O+141183*w+95993*T+21640)*_/(816480*D*f),h-=(11053*se+53308*re+117010*F+163924*D+116188*k-258428*O-677042*w-481940*T-105497)*$/(14696640*m*F),y=-((3592*re+8375*F-1323*D-29198*k-89578*O-154413*w-116063*T-29632)*(T-1))/(816480*D*d),y-=(442043*me+2054169*se+3803094*re+3470754*F+2141568*D-2393568*k-19904934*O-34714674*w-23128299*T-5253353)*ze/(146966400*F*f),y-=(116932*l+819281*me+2378172*se+4341330*re+6806004*F+10622748*D+18739500*k+30651894*O+30869976*w+15431867*T+2919016)*_/(146966400*m*re),c=u+v/e+h/(e*e)+y/(e*e*e),c<=0&&(c=Wde),q=c-b*XT(c)+(1+b)*XT(1+b)-b,t=1/(1+b),a=c<b?t:0,s=c<b?1:t,Hn=(a+s)/2,o=Gde(q,b),Hde(o,Hn,a,s,32,100)}QT.exports=Jde});var rj=g((Awe,ej)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var xe=Y(),Kde=zn(),S1=Ya(),Xde=Un(),I1=Gt();function Qde(e,r,n,i,t,o){var a,s,u,c,l,d,f,m,v,h,y,b,_,$,N,w;$=0,s=!1,d=r,l=Kde(1,1-t),v=Xde(1e7*r,1e7),f=0,u=v,c=v,m=o;do{if(f=$,c=u,u=v,_=e(d),$=_[0],N=_[1],w=_[2],m-=1,$===0)break;if(N===0?(f===0&&(d===n?r=i:r=n,f=e(r),v=r-d),S1(f)*S1($)<0?v<0?v=(d-n)/2:v=(d-i)/2:v<0?v=(d-i)/2:v=(d-n)/2):w===0?v=$/N:(h=2*$,b=2*N-$*(w/N),xe(b)<1&&xe(h)>=xe(b)*I1?v=$/N:v=h/b,v*N/$<0&&(v=$/N,xe(v)>2*xe(r)&&(v=(v<0?-1:1)*2*xe(r)))),a=xe(v/c),a>.8&&a<2&&(v=v>0?(d-n)/2:(d-i)/2,xe(v)>d&&(v=S1(v)*d),c=v*3),r=d,d-=v,d<n){if(xe(n)<1&&xe(d)>1&&I1/xe(d)<xe(n)?y=1e3:y=d/n,xe(y)<1&&(y=1/y),!s&&y>0&&y<3)v=.99*(r-n),d=r-v,s=!0;else if(v=(r-n)/2,d=r-v,d===n||d===i)break}else if(d>i){if(xe(i)<1&&xe(d)>1&&I1/xe(d)<xe(i)?y=1e3:y=d/i,xe(y)<1&&(y=1/y),!s&&y>0&&y<3)v=.99*(r-i),d=r-v,s=!0;else if(v=(r-i)/2,d=r-v,d===n||d===i)break}v>0?i=r:n=r}while(m&&xe(d*l)<xe(v));return d}ej.exports=Qde});var nj=g((Pwe,tj)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var Yde=h1().assign,efe=Y(),rfe=Gt(),k1=Zt();function tfe(e,r,n,i){return t;function t(o){var a,s,u,c,l;return l=1-o,a=[0,0],Yde(o,e,r,!0,i,a,1,0),c=a[0]-n,s=a[1],i&&(s=-s),l===0&&(l=k1*64),o===0&&(o=k1*64),u=s*(-(l*e)+(r-2)*o+1),efe(u)<l*o*rfe&&(u/=l*o),i&&(u=-u),s===0&&(s=(i?-1:1)*k1*64),[c,s,u]}}tj.exports=tfe});var mj=g((xwe,fj)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
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
*/var nfe=pt(),ij=oo(),O1=Mn(),oj=Mr(),ife=gl(),so=t1(),aj=ce(),ofe=Y(),sj=Se(),Jr=Oe(),uj=Ui(),afe=Un(),sfe=Ht(),cj=de(),N1=Zt(),lj=hl(),dj=Ar(),ufe=uT(),cfe=dT(),lfe=GT(),dfe=YT(),ffe=rj(),mfe=nj(),pfe=32,vfe=1e3,Bn=[0,0,0,0,0];function gfe(e,r,n,i){var t,o,a,s,u,c,l,d,f,m,v,h,y,b,_,$,N,w,O,k,D,F,re,se,me,we,ze,T,q;if(o=!1,i===0)return[1,0];if(n===0)return[0,1];if(e===1){if(r===1)return[n,1-n];h=r,r=e,e=h,h=i,i=n,n=h,o=!0}if(T=0,s=0,c=1,e===.5){if(r===.5)return T=uj(n*lj),T*=T,q=uj(i*lj),q*=q,[T,q];r>.5&&(h=r,r=e,e=h,h=i,i=n,n=h,o=!o)}if(r===.5&&e>=.5&&n!==1)D={},T=ufe(e,n,D),q=D.value;else{if(r===1)return n<i?e>1?(T=Jr(n,1/e),q=-O1(cj(n)/e)):(T=Jr(n,1/e),q=1-T):(T=sj(oj(-i)/e),q=-O1(oj(-i)/e)),o&&(h=q,q=T,T=h),[T,q];if(e+r>5)n>.5&&(h=r,r=e,e=h,h=i,i=n,n=h,o=!o),f=sfe(e,r),d=afe(e,r),aj(f)>d-f&&f>5?(T=cfe(e,r,n),q=1-T):(me=e+r,u=ife(aj(e/me)),a=f/me,a>=.2&&a<=.8&&me>=10?(v=Jr(n,1/e),v<.0025&&e+r<200?T=v*Jr(e*so(e,r),1/e):T=lfe(n,me,u),q=1-T):(e<r&&(h=r,r=e,e=h,h=i,i=n,n=h,o=!o),m=0,r<2&&(m=so(e,r)),m===0?q=1:(q=Jr(r*i*m,1/r),T=1-q)),q>1e-5&&(T=dfe(e,r,n,i),q=1-T));else if(e<1&&r<1){if(k=(1-e)/(2-e-r),$=ij(k,e,r)-n,ofe($)/n<dj*3)return o?[1-k,k]:[k,1-k];$<0&&(h=r,r=e,e=h,h=i,i=n,n=h,o=!o,k=1-k),O=Jr(e*n*so(e,r),1/e),T=O/(1+O),q=1/(1+O),T>k&&(T=k),c=k}else e>1&&r>1?(k=(e-1)/(e+r-2),y=(r-1)/(e+r-2),w=ij(k,e,r)-n,w<0&&(h=r,r=e,e=h,h=i,i=n,n=h,h=y,y=k,k=h,o=!o),N=cj(n*e*so(e,r))/e,T=sj(N),q=T<.9?1-T:-O1(N),r<e&&T<.2&&(b=e-1,_=r-1,F=e*e,re=e*F,se=r*r,Bn[0]=0,Bn[1]=1,Bn[2]=_/b,b*=b,Bn[3]=_*(3*e*r+5*r+F-e-4)/(2*(e+2)*b),b*=e+1,Bn[4]=_*(33*e*se+31*se+8*F*se-30*e*r-47*r+11*F*r+6*re*r+18+4*e-re+F*F-10*F),Bn[4]/=3*(e+3)*(e+2)*b,T=nfe(Bn,T)),T>k&&(T=k),c=k):(r<e&&(h=r,r=e,e=h,h=i,i=n,n=h,o=!o),Jr(n,1/e)<.5?(T=Jr(n*e*so(e,r),1/e),T===0&&(T=N1),q=1-T):(q=Jr(1-Jr(n,r*so(e,r)),1/r),q===0&&(q=N1),T=1-q))}return T>.5&&(h=r,r=e,e=h,h=i,i=n,n=h,h=q,q=T,T=h,o=!o,we=1-c,ze=1-s,s=we,c=ze),s===0&&(o?(s=dj,T<s&&(T=s)):s=N1,T<s&&(T=s)),t=pfe,T<1e-50&&(e<1||r<1)&&(t*=3,t/=2),l=mfe(e,r,n<i?n:i,n>=i),T=ffe(l,T,s,c,t,vfe),T===s&&(T=0),o?[1-T,T]:[T,1-T]}fj.exports=gfe});var rs=g((Ewe,pj)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var hfe=mj();pj.exports=hfe});var hj=g((Dwe,gj)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var yfe=rs(),vj=V(),bfe=Ya(),$fe=ce();function _fe(e,r){var n,i;return vj(r)||vj(e)||r<=0||e<0||e>1?NaN:(n=e>.5?1-e:e,i=yfe(r/2,.5,2*n,1-2*n),bfe(e-.5)*$fe(r*i[1]/i[0]))}gj.exports=_fe});var $j=g((Twe,bj)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var wfe=xr(),Sfe=rs(),yj=V(),Ife=Ya(),kfe=ce();function Ofe(e){if(yj(e)||e<=0)return wfe(NaN);return r;function r(n){var i,t;return yj(n)||n<0||n>1?NaN:(i=n>.5?1-n:n,t=Sfe(e/2,.5,2*i,1-2*i),Ife(n-.5)*kfe(e*t[1]/t[0]))}}bj.exports=Ofe});var Sj=g((jwe,wj)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Nfe=Ze(),_j=hj(),Afe=$j();Nfe(_j,"factory",Afe);wj.exports=_j});var Kz=g((jOe,Jz)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var Hz=oo(),F1=V(),m0e=pe();function p0e(e,r,n){return F1(e)||F1(r)||F1(n)||r<=0||n<=0?NaN:e<=0?0:e===m0e?1:r*e>n?Hz(r*e/(n+r*e),r/2,n/2,!0,!1):Hz(n/(n+r*e),n/2,r/2,!0,!0)}Jz.exports=p0e});var Yz=g((zOe,Qz)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var v0e=xr(),Xz=oo(),M1=V(),g0e=pe();function h0e(e,r){if(M1(e)||M1(r)||e<=0||r<=0)return v0e(NaN);return n;function n(i){return M1(i)?NaN:i<=0?0:i===g0e?1:e*i>r?Xz(e*i/(r+e*i),e/2,r/2,!0,!1):Xz(r/(r+e*i),r/2,e/2,!0,!0)}}Qz.exports=h0e});var tC=g((COe,rC)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var y0e=Ze(),eC=Kz(),b0e=Yz();y0e(eC,"factory",b0e);rC.exports=eC});var iC=g((qOe,nC)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var $0e=rs(),L1=V();function _0e(e,r,n){var i;return L1(e)||L1(r)||L1(n)||r<=0||n<=0||e<0||e>1?NaN:(i=$0e(r/2,n/2,e,1-e),n*i[0]/(r*i[1]))}nC.exports=_0e});var aC=g((ROe,oC)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var w0e=xr(),S0e=rs(),Z1=V();function I0e(e,r){if(Z1(e)||Z1(r)||e<=0||r<=0)return w0e(NaN);return n;function n(i){var t;return Z1(i)||i<0||i>1?NaN:(t=S0e(e/2,r/2,i,1-i),r*t[0]/(e*t[1]))}}oC.exports=I0e});var cC=g((UOe,uC)=>{"use strict";/**
* @license Apache-2.0
*
* Copyright (c) 2018 The Stdlib Authors.
*
* Licensed under the Apache License, Version 2.0 (the "License");
* you may not use this file except in compliance with the License.
* You may obtain a copy of the License at
*
*    http://www.apache.org/licenses/LICENSE-2.0
*
* Unless required by applicable law or agreed to in writing, software
* distributed under the License is distributed on an "AS IS" BASIS,
* WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
* See the License for the specific language governing permissions and
* limitations under the License.
*/var k0e=Ze(),sC=iC(),O0e=aC();k0e(sC,"factory",O0e);uC.exports=sC});function fq(e,r){let n=new Map,i=0;for(let t of e){let o=r(t,i++),a=n.get(o);a?a.push(t):n.set(o,[t])}return n}Object.hasOwn(Map,"groupBy")||(Map.groupBy=fq);import{dirname as zpe}from"node:path";import{fileURLToPath as Cpe}from"node:url";var Q1=({found:e})=>e===Y1,Y1="nothing",mq=/^-?\d+(\.\d+)?$/;function cd(e){return typeof e=="number"?1:typeof e=="string"?mq.test(e)?1:0:e===null||typeof e!="object"?0:Object.values(e).reduce((r,n)=>r+cd(n),0)}function ld(e,r,n){if(r===n)return[];let[i,t]=[K1(r),K1(n)],o=e.endsWith(".json")&&i!==void 0&&t!==void 0?ey(e,"",i,t):vq(e,r.split(`
`),n.split(`
`));return o.length>0?o:[{file:e,where:"",found:"the same values in other bytes",expected:"the canonical form (RFC 8785)"}]}function K1(e){try{return JSON.parse(e)}catch{return}}function ey(e,r,n,i){return X1(n)&&X1(i)&&Array.isArray(n)===Array.isArray(i)?[...new Set([...Object.keys(n),...Object.keys(i)])].flatMap(o=>ey(e,`${r}/${pq(o)}`,n[o],i[o])):Object.is(n,i)?[]:[{file:e,where:r,found:as(n),expected:as(i)}]}var X1=e=>typeof e=="object"&&e!==null,pq=e=>e.replaceAll("~","~0").replaceAll("/","~1");function as(e){let r=e===void 0?Y1:JSON.stringify(e);return r.length>120?`${r.slice(0,120)}…`:r}var vq=(e,r,n)=>Array.from({length:Math.max(r.length,n.length)},(i,t)=>t).filter(i=>r[i]!==n[i]).map(i=>({file:e,where:`line ${i+1}`,found:as(r[i]),expected:as(n[i])}));import{readdir as ny,readFile as gq}from"node:fs/promises";import{join as ry,relative as hq,sep as yq}from"node:path";var iy="manifest.json";async function oy(e){let r=/^https?:/.test(e)?await _q(new URL(e)):await bq(e);if(r.length===0)throw new Error(`No release was found at ${e}; expected a folder with a ${iy}, or the address of a release or of a house.`);return r}async function bq(e){return(await ny(e,{recursive:!0,withFileTypes:!0}).catch(()=>[])).filter(n=>n.isFile()&&n.name===iy).map(({parentPath:n})=>$q(n)).sort((n,i)=>n.name<i.name?-1:1)}var $q=e=>({name:e,read:r=>gq(ry(e,r)).catch(()=>null),list:async()=>(await ny(e,{recursive:!0,withFileTypes:!0})).filter(n=>n.isFile()).map(({parentPath:n,name:i})=>hq(e,ry(n,i)).replaceAll(yq,"/"))});async function _q(e){if(/\/v1\/releases\/[^/]+\/\d+\/?$/.test(e.pathname))return[ty(e.href.replace(/\/?$/,"/"))];let r=await ay(new URL("/v1/releases",e).href);if(!r)return[];let{items:n}=JSON.parse(new TextDecoder().decode(r));return n.map(({edition:i,revision:t})=>ty(new URL(`/v1/releases/${i}/${t}/`,e).href))}var ty=e=>({name:e,read:r=>ay(e+r),list:()=>Promise.resolve(null)});async function ay(e){let r=await fetch(e);return r.ok?new Uint8Array(await r.arrayBuffer()):null}function sy(e){let r=new Set(e.map(({digest:n})=>n));return e.flatMap(({edition:n,revision:i,previousDigest:t})=>{let o=(a,s)=>[{file:`${n}/${i}/manifest.json`,where:"/previousDigest",found:a,expected:s}];if(i>1){let a=e.find(s=>s.edition===n&&s.revision===i-1);if(a&&a.digest!==t)return o(String(t),a.digest)}return t===null||r.has(t)?[]:e.length>1?o(t,"the digest of a release that is there"):[]})}var dd=50,wq=({file:e,where:r,found:n,expected:i})=>`  ${e}${r===""?"":` ${r}`}: found ${n}; expected ${i}`,Qr=e=>process.stdout.write(`${e}
`);async function uy(e,r){let n=[];for(let a of await oy(e)){let s=await r(a);n.push(s),Qr(`${s.edition}, revision ${s.revision} (${s.name})`),Qr(`  digest ${s.digest}`),Qr(`  signed by the key ${s.keyFingerprint??"of nobody"}`);for(let u of Sq(s))Qr(`  ${u}`)}let i=[...n.flatMap(a=>a.differences),...sy(n)],t=n.reduce((a,s)=>a+(s.figures??0),0),o=n.reduce((a,s)=>a+s.files,0);if(i.length===0)return Qr(`${t} figures recomputed, all equal; ${o} files, every one as signed.`),n.some(cy)?2:0;Qr(`${t} figures recomputed; ${i.length} differences:`);for(let a of i.slice(0,dd))Qr(wq(a));return i.length>dd&&Qr(`  … and ${i.length-dd} more`),1}var cy=({figures:e,isByOwnProgram:r})=>e===null&&r!==!0;function Sq(e){if(cy(e))return["NOT recomputed: it is of another format than this program computes. Run the verify.mjs that lies in it."];let r=e.otherwise.filter(Q1).length,n=e.otherwise.length-r;return[...e.isByOwnProgram?["recomputed by the program that lies in it"]:[],...r>0?[`this program computes ${r} values more than the one that published it`]:[],...n>0?[`this program computes ${n} values otherwise than the one that published it`]:[]]}async function ly(e){return e().catch(r=>(Qr(r instanceof Error?r.message:String(r)),2))}import{createPublicKey as kpe,verify as Ope}from"node:crypto";import{createHash as Iq,randomBytes as Kpe,randomInt as Xpe}from"node:crypto";function Yr(e){return Iq("sha256").update(e).digest("hex")}var p={};Xr(p,{$brand:()=>kd,$input:()=>Qm,$output:()=>Xm,INVALID:()=>er,NEVER:()=>Id,TimePrecision:()=>l0,ZodAny:()=>Xp,ZodArray:()=>rv,ZodBase64:()=>tc,ZodBase64URL:()=>nc,ZodBigInt:()=>Di,ZodBigIntFormat:()=>ac,ZodBoolean:()=>Ei,ZodCIDRv4:()=>ec,ZodCIDRv6:()=>rc,ZodCUID:()=>Gu,ZodCUID2:()=>Hu,ZodCatch:()=>wv,ZodCodec:()=>ua,ZodCompileAsyncError:()=>Ir,ZodCompileUnsupportedError:()=>K,ZodCreditCard:()=>Zp,ZodCustom:()=>ca,ZodCustomStringFormat:()=>On,ZodDate:()=>ta,ZodDefault:()=>gv,ZodDiscriminatedUnion:()=>nv,ZodE164:()=>ic,ZodEmail:()=>Zu,ZodEmoji:()=>Bu,ZodEnum:()=>Ai,ZodError:()=>ZM,ZodExactOptional:()=>lc,ZodFile:()=>fv,ZodFirstPartyTypeKind:()=>Cv,ZodFunction:()=>Dv,ZodGUID:()=>Vu,ZodIBAN:()=>Vp,ZodIPv4:()=>Qu,ZodIPv6:()=>Yu,ZodISODate:()=>Dt,ZodISODateTime:()=>Et,ZodISODuration:()=>jt,ZodISOTime:()=>Tt,ZodInstanceOf:()=>zv,ZodIntersection:()=>iv,ZodIssueCode:()=>WM,ZodJWT:()=>oc,ZodKSUID:()=>Xu,ZodLazy:()=>Pv,ZodLiteral:()=>dv,ZodMAC:()=>Lp,ZodMap:()=>cv,ZodNaN:()=>Iv,ZodNanoID:()=>Wu,ZodNever:()=>Yp,ZodNonOptional:()=>dc,ZodNull:()=>Jp,ZodNullable:()=>vv,ZodNumber:()=>xi,ZodNumberFormat:()=>Nn,ZodObject:()=>ia,ZodOptional:()=>aa,ZodPipe:()=>sa,ZodPrefault:()=>yv,ZodPreprocess:()=>kv,ZodPromise:()=>Ev,ZodReadonly:()=>Ov,ZodRealError:()=>ur,ZodRecord:()=>Ni,ZodSet:()=>lv,ZodString:()=>Pi,ZodStringFormat:()=>ue,ZodSuccess:()=>_v,ZodSymbol:()=>Gp,ZodTemplateLiteral:()=>Av,ZodTransform:()=>mv,ZodTuple:()=>av,ZodType:()=>G,ZodULID:()=>Ju,ZodURL:()=>ra,ZodUUID:()=>qr,ZodUndefined:()=>Hp,ZodUnion:()=>oa,ZodUnknown:()=>Qp,ZodVoid:()=>ev,ZodXID:()=>Ku,ZodXor:()=>tv,_ZodString:()=>Lu,_default:()=>hv,_function:()=>V4,any:()=>_4,array:()=>na,base64:()=>r4,base64url:()=>t4,bigint:()=>g4,boolean:()=>Wp,catch:()=>Sv,check:()=>B4,cidrv4:()=>Y6,cidrv6:()=>e4,clone:()=>te,codec:()=>F4,coerce:()=>Rv,compile:()=>t0,config:()=>ke,core:()=>it,creditCard:()=>i4,cuid:()=>B6,cuid2:()=>W6,currencyCode:()=>l4,custom:()=>W4,date:()=>S4,decode:()=>zp,decodeAsync:()=>qp,deepPartial:()=>o2,describe:()=>G4,discriminatedUnion:()=>P4,e164:()=>n4,email:()=>z6,emoji:()=>Z6,encode:()=>jp,encodeAsync:()=>Cp,endsWith:()=>gi,enum:()=>uc,exactOptional:()=>pv,file:()=>C4,flattenError:()=>Io,float32:()=>f4,float64:()=>m4,formatError:()=>ko,fromJSONSchema:()=>n2,function:()=>V4,getDiscriminatedOption:()=>km,getErrorMap:()=>HM,globalRegistry:()=>Me,gt:()=>zr,gte:()=>dr,guid:()=>C6,hash:()=>d4,hex:()=>c4,hostname:()=>u4,httpUrl:()=>L6,iban:()=>o4,includes:()=>pi,input:()=>s2,instanceof:()=>J4,int:()=>Fu,int32:()=>p4,int64:()=>h4,intersection:()=>ov,invertCodec:()=>M4,ipv4:()=>K6,ipv6:()=>Q6,iso:()=>la,json:()=>X4,jwt:()=>a4,keyof:()=>I4,ksuid:()=>J6,lazy:()=>xv,length:()=>_n,literal:()=>z4,locales:()=>Bo,looseObject:()=>N4,looseRecord:()=>E4,lowercase:()=>fi,lt:()=>jr,lte:()=>lr,mac:()=>X6,map:()=>D4,maxLength:()=>$n,maxSize:()=>Nt,memoizer:()=>Zo,meta:()=>H4,mime:()=>yi,minLength:()=>nt,minSize:()=>Cr,multipleOf:()=>Ot,nan:()=>U4,nanoid:()=>V6,nativeEnum:()=>j4,negative:()=>Pu,never:()=>sc,nonnegative:()=>Eu,nonoptional:()=>$v,nonpositive:()=>xu,normalize:()=>bi,null:()=>Kp,nullable:()=>ea,nullish:()=>q4,number:()=>Bp,object:()=>k4,optional:()=>In,output:()=>u2,overwrite:()=>kr,parse:()=>xp,parseAsync:()=>Ep,partialRecord:()=>x4,pipe:()=>Mu,positive:()=>Au,prefault:()=>bv,preprocess:()=>Q4,prettifyError:()=>xd,promise:()=>Z4,properties:()=>hi,property:()=>Du,readonly:()=>Nv,record:()=>uv,refine:()=>Tv,regex:()=>di,regexes:()=>gr,registry:()=>nu,safeDecode:()=>Up,safeDecodeAsync:()=>Mp,safeEncode:()=>Rp,safeEncodeAsync:()=>Fp,safeParse:()=>Dp,safeParseAsync:()=>Tp,set:()=>T4,setErrorMap:()=>GM,size:()=>bn,slugify:()=>Si,startsWith:()=>vi,strictObject:()=>O4,string:()=>Yo,stringFormat:()=>s4,stringbool:()=>K4,success:()=>R4,superRefine:()=>jv,symbol:()=>b4,templateLiteral:()=>L4,toJSONSchema:()=>Cu,toLowerCase:()=>_i,toUpperCase:()=>wi,toZod:()=>po,transform:()=>cc,treeifyError:()=>Pd,trim:()=>$i,tuple:()=>sv,uint32:()=>v4,uint64:()=>y4,ulid:()=>G6,undefined:()=>$4,union:()=>Ti,unknown:()=>Sn,uppercase:()=>mi,url:()=>M6,util:()=>A,uuid:()=>q6,uuidv4:()=>R6,uuidv6:()=>U6,uuidv7:()=>F6,validate:()=>Oo,validateAsync:()=>No,void:()=>w4,withParser:()=>iu,xid:()=>H6,xor:()=>A4});var it={};Xr(it,{$ZodAny:()=>gm,$ZodArray:()=>wm,$ZodAsyncError:()=>ar,$ZodBase64:()=>im,$ZodBase64URL:()=>om,$ZodBigInt:()=>Zs,$ZodBigIntFormat:()=>fm,$ZodBoolean:()=>qo,$ZodCIDRv4:()=>tm,$ZodCIDRv6:()=>nm,$ZodCUID:()=>Vf,$ZodCUID2:()=>Bf,$ZodCatch:()=>Mm,$ZodCheck:()=>le,$ZodCheckBigIntFormat:()=>hf,$ZodCheckEndsWith:()=>Pf,$ZodCheckGreaterThan:()=>Ns,$ZodCheckIncludes:()=>Nf,$ZodCheckLengthEquals:()=>Sf,$ZodCheckLessThan:()=>Os,$ZodCheckLowerCase:()=>kf,$ZodCheckMaxLength:()=>_f,$ZodCheckMaxSize:()=>yf,$ZodCheckMimeType:()=>Df,$ZodCheckMinLength:()=>wf,$ZodCheckMinSize:()=>bf,$ZodCheckMultipleOf:()=>vf,$ZodCheckNumberFormat:()=>gf,$ZodCheckOverwrite:()=>Tf,$ZodCheckProperties:()=>Ef,$ZodCheckProperty:()=>xf,$ZodCheckRegex:()=>If,$ZodCheckSizeEquals:()=>$f,$ZodCheckStartsWith:()=>Af,$ZodCheckStringFormat:()=>ai,$ZodCheckUpperCase:()=>Of,$ZodCodec:()=>Uo,$ZodCreditCard:()=>sm,$ZodCustom:()=>Hm,$ZodCustomStringFormat:()=>lm,$ZodCyclicError:()=>Ks,$ZodDate:()=>$m,$ZodDefault:()=>qm,$ZodDiscriminatedUnion:()=>Om,$ZodE164:()=>am,$ZodEmail:()=>Rf,$ZodEmoji:()=>Lf,$ZodEncodeError:()=>It,$ZodEnum:()=>Em,$ZodError:()=>Ad,$ZodExactOptional:()=>zm,$ZodFile:()=>Tm,$ZodFunction:()=>Wm,$ZodGUID:()=>Cf,$ZodIBAN:()=>um,$ZodIPv4:()=>Yf,$ZodIPv6:()=>em,$ZodISODate:()=>Kf,$ZodISODateTime:()=>Jf,$ZodISODuration:()=>Qf,$ZodISOTime:()=>Xf,$ZodIntersection:()=>Nm,$ZodJWT:()=>cm,$ZodKSUID:()=>Hf,$ZodLazy:()=>Fo,$ZodLiteral:()=>Dm,$ZodMAC:()=>rm,$ZodMap:()=>Pm,$ZodNaN:()=>Lm,$ZodNanoID:()=>Zf,$ZodNever:()=>ym,$ZodNonOptional:()=>Um,$ZodNull:()=>vm,$ZodNullable:()=>Cm,$ZodNumber:()=>Ls,$ZodNumberFormat:()=>dm,$ZodObject:()=>By,$ZodObjectJIT:()=>Sm,$ZodOptional:()=>Bs,$ZodPipe:()=>Ws,$ZodPrefault:()=>Rm,$ZodPreprocess:()=>Zm,$ZodPromise:()=>Gm,$ZodReadonly:()=>Vm,$ZodRealError:()=>sr,$ZodRecord:()=>Am,$ZodRegistry:()=>tu,$ZodSet:()=>xm,$ZodString:()=>vn,$ZodStringFormat:()=>ne,$ZodSuccess:()=>Fm,$ZodSymbol:()=>mm,$ZodTemplateLiteral:()=>Bm,$ZodTransform:()=>jm,$ZodTuple:()=>Vs,$ZodType:()=>B,$ZodULID:()=>Wf,$ZodURL:()=>Mf,$ZodUUID:()=>qf,$ZodUndefined:()=>pm,$ZodUnion:()=>Ro,$ZodUnknown:()=>hm,$ZodVoid:()=>bm,$ZodXID:()=>Gf,$ZodXor:()=>Im,$brand:()=>kd,$constructor:()=>S,$input:()=>Qm,$output:()=>Xm,Doc:()=>pn,INVALID:()=>er,JSONSchema:()=>D6,JSONSchemaGenerator:()=>qu,NEVER:()=>Id,TimePrecision:()=>l0,URL_BAD_FORMAT:()=>Uf,URL_UNPARSEABLE:()=>Do,ZodCompileAsyncError:()=>Ir,ZodCompileUnsupportedError:()=>K,_any:()=>N0,_array:()=>j0,_base64:()=>Iu,_base64url:()=>ku,_bigint:()=>$0,_boolean:()=>y0,_catch:()=>EM,_check:()=>g6,_cidrv4:()=>wu,_cidrv6:()=>Su,_coercedBigint:()=>_0,_coercedBoolean:()=>b0,_coercedDate:()=>D0,_coercedNumber:()=>f0,_coercedString:()=>a0,_creditCard:()=>u0,_cuid:()=>vu,_cuid2:()=>gu,_custom:()=>C0,_date:()=>E0,_decode:()=>vs,_decodeAsync:()=>hs,_default:()=>AM,_discriminatedUnion:()=>gM,_e164:()=>Ou,_email:()=>su,_emoji:()=>mu,_encode:()=>ps,_encodeAsync:()=>gs,_endsWith:()=>gi,_enum:()=>wM,_file:()=>z0,_float32:()=>p0,_float64:()=>v0,_gt:()=>zr,_gte:()=>dr,_guid:()=>uu,_iban:()=>c0,_includes:()=>pi,_int:()=>m0,_int32:()=>g0,_int64:()=>w0,_intersection:()=>hM,_ipv4:()=>$u,_ipv6:()=>_u,_isoDate:()=>Ho,_isoDateTime:()=>Go,_isoDuration:()=>Ko,_isoTime:()=>Jo,_jwt:()=>Nu,_ksuid:()=>bu,_lazy:()=>zM,_length:()=>_n,_literal:()=>IM,_lowercase:()=>fi,_lt:()=>jr,_lte:()=>lr,_mac:()=>s0,_map:()=>$M,_max:()=>lr,_maxLength:()=>$n,_maxSize:()=>Nt,_mime:()=>yi,_min:()=>dr,_minLength:()=>nt,_minSize:()=>Cr,_multipleOf:()=>Ot,_nan:()=>T0,_nanoid:()=>pu,_nativeEnum:()=>SM,_negative:()=>Pu,_never:()=>P0,_nonnegative:()=>Eu,_nonoptional:()=>PM,_nonpositive:()=>xu,_normalize:()=>bi,_null:()=>O0,_nullable:()=>NM,_number:()=>d0,_optional:()=>OM,_overwrite:()=>kr,_parse:()=>ti,_parseAsync:()=>ni,_pipe:()=>DM,_positive:()=>Au,_promise:()=>CM,_properties:()=>hi,_property:()=>Du,_readonly:()=>TM,_record:()=>bM,_refine:()=>q0,_regex:()=>di,_safeDecode:()=>bs,_safeDecodeAsync:()=>_s,_safeEncode:()=>ys,_safeEncodeAsync:()=>$s,_safeParse:()=>ii,_safeParseAsync:()=>oi,_set:()=>_M,_size:()=>bn,_slugify:()=>Si,_startsWith:()=>vi,_string:()=>o0,_stringFormat:()=>wn,_stringbool:()=>M0,_success:()=>xM,_superRefine:()=>R0,_symbol:()=>I0,_templateLiteral:()=>jM,_toLowerCase:()=>_i,_toUpperCase:()=>wi,_transform:()=>kM,_trim:()=>$i,_tuple:()=>yM,_uint32:()=>h0,_uint64:()=>S0,_ulid:()=>hu,_undefined:()=>k0,_union:()=>pM,_unknown:()=>A0,_uppercase:()=>mi,_url:()=>Wo,_uuid:()=>cu,_uuidv4:()=>lu,_uuidv6:()=>du,_uuidv7:()=>fu,_void:()=>x0,_xid:()=>yu,_xor:()=>vM,base64Charset:()=>qs,base64urlCharset:()=>Co,canParseURL:()=>Ff,clone:()=>te,compile:()=>t0,compileFn:()=>ou,config:()=>ke,createStandardJSONSchemaMethod:()=>Ii,createToJSONSchemaMethod:()=>Z0,decode:()=>vR,decodeAsync:()=>hR,describe:()=>U0,encode:()=>pR,encodeAsync:()=>gR,extractDefs:()=>Pt,finalize:()=>xt,flattenError:()=>Io,formatError:()=>ko,getDiscriminatedOption:()=>km,globalConfig:()=>Ce,globalRegistry:()=>Me,handleUnrepresentable:()=>Ee,initializeContext:()=>At,isBackEdge:()=>Qs,isRecursiveSchema:()=>Xs,isValidBase64:()=>zo,isValidBase64URL:()=>Rs,isValidCIDRv6:()=>Cs,isValidCreditCard:()=>Us,isValidIBAN:()=>Fs,isValidIPv6:()=>jo,isValidJWT:()=>Ms,locales:()=>Bo,memoizer:()=>Zo,mergeValues:()=>si,meta:()=>F0,parse:()=>fs,parseAsync:()=>ms,parseURLObject:()=>Ly,prettifyError:()=>xd,process:()=>ie,processSchema:()=>ie,regexes:()=>gr,registry:()=>nu,safeDecode:()=>bR,safeDecodeAsync:()=>_R,safeEncode:()=>yR,safeEncodeAsync:()=>$R,safeParse:()=>cR,safeParseAsync:()=>lR,standardProps:()=>Ds,stripTabAndNewline:()=>To,toDotPath:()=>_y,toJSONSchema:()=>Cu,toZod:()=>po,treeifyError:()=>Pd,urlHostnameOk:()=>js,urlProtocolOk:()=>zs,util:()=>A,validate:()=>Oo,validateAsync:()=>No,validateURL:()=>Ts,version:()=>jf,withParser:()=>iu});var A={};Xr(A,{BIGINT_FORMAT_RANGES:()=>bo,CONSTANT_CATCH:()=>ls,Class:()=>pd,NUMBER_FORMAT_RANGES:()=>yo,aborted:()=>Ye,allowsEval:()=>hd,assert:()=>Pq,assertEqual:()=>kq,assertIs:()=>Nq,assertNever:()=>Aq,assertNotEqual:()=>Oq,assignProp:()=>Fe,attachSchema:()=>$o,base64ToUint8Array:()=>vy,base64urlToUint8Array:()=>Hq,cached:()=>Qn,captureStackTrace:()=>us,cleanEnum:()=>Gq,cleanRegex:()=>rt,clone:()=>te,cloneDef:()=>Dq,codePointLength:()=>fn,constantCatch:()=>wd,createTransparentProxy:()=>Rq,defineLazy:()=>vd,defineLazyInternal:()=>H,derived:()=>Qq,esc:()=>Qe,escapeRegex:()=>vr,explicitlyAborted:()=>$d,extend:()=>Mq,finalizeIssue:()=>or,floatSafeRemainder:()=>vo,getElementAtPath:()=>Tq,getEnumValues:()=>Kn,getLengthableOrigin:()=>wo,getParsedType:()=>qq,getSizableOrigin:()=>_o,hexToUint8Array:()=>Kq,hide:()=>So,installLazyProp:()=>tR,isObject:()=>dn,isPlainObject:()=>pr,issue:()=>ri,joinValues:()=>I,jsonStringifyReplacer:()=>Xn,members:()=>_d,merge:()=>Zq,mergeDefs:()=>Sr,normalizeParams:()=>j,nullish:()=>ss,numKeys:()=>Cq,objectClone:()=>xq,omit:()=>Fq,optionalKeys:()=>bd,own:()=>St,parsedType:()=>x,partial:()=>Vq,pick:()=>Uq,prefixIssues:()=>ir,primitiveTypes:()=>yd,promiseAllObject:()=>jq,propertyKeyTypes:()=>ho,randomString:()=>zq,rawShape:()=>Yn,required:()=>Bq,safeExtend:()=>Lq,shallowClone:()=>go,sizeCaps:()=>ei,slugify:()=>gd,stringifyPrimitive:()=>P,toZod:()=>po,uint8ArrayToBase64:()=>gy,uint8ArrayToBase64url:()=>Jq,uint8ArrayToHex:()=>Xq,unwrapMessage:()=>Jn});function kq(e){return e}function Oq(e){return e}function po(){return e=>e}function Nq(e){}function Aq(e){throw new Error("Unexpected value in exhaustive check")}function Pq(e){}function Kn(e){let r=Object.values(e).filter(i=>typeof i=="number");return Object.entries(e).filter(([i,t])=>r.indexOf(+i)===-1).map(([i,t])=>t)}function I(e,r="|"){return e.map(n=>P(n)).join(r)}function Xn(e,r){return typeof r=="bigint"?r.toString():r}var md=class{constructor(r){this._getter=r,this._value=void 0}get value(){let r=this._getter;return r!==void 0&&(this._value=r(),this._getter=void 0),this._value}};function Qn(e){return new md(e)}function ss(e){return e==null}function rt(e){let r=e.startsWith("^")?1:0,n=e.endsWith("$")?e.length-1:e.length;return e.slice(r,n)}function vo(e,r){let n=e/r,i=Math.round(n),t=4*Number.EPSILON*Math.max(Math.abs(n),1);return Math.abs(n-i)<t?0:n-i}var dy=Symbol("evaluating");function vd(e,r,n){let i;Object.defineProperty(e,r,{get(){if(i!==dy)return i===void 0&&(i=dy,i=n()),i},set(t){Object.defineProperty(e,r,{value:t})},configurable:!0})}function xq(e){return Object.create(Object.getPrototypeOf(e),Object.getOwnPropertyDescriptors(e))}function Fe(e,r,n){Object.defineProperty(e,r,{value:n,writable:!0,enumerable:!0,configurable:!0})}function Yn(e){let r=Object.getOwnPropertyDescriptor(e,"shape");return r?.get?r.get.raw:r?.value}function et(e){return Yn(e._zod.def)??e._zod.def.shape}function fy(e,r,n){Object.defineProperty(e,r,{get(){let i=n();return Fe(this,r,i),i},enumerable:!0,configurable:!0})}function my(e,r,n){r in e?Fe(e,r,n):e[r]=n}function ln(e,r,n,i){let t=et(r);for(let o of n){let a=Object.getOwnPropertyDescriptor(t,o);a.enumerable&&(a.get?fy(e,o,()=>{let s=r._zod.def.shape[o];return i?i(s,o):s}):my(e,o,i?i(a.value,o):a.value))}}function Eq(e,r){for(let n of Reflect.ownKeys(r)){let i=Object.getOwnPropertyDescriptor(r,n);i.enumerable&&(i.get?fy(e,n,()=>r[n]):my(e,n,i.value))}}function Sr(...e){let r={};for(let n of e){let i=Object.getOwnPropertyDescriptors(n);Object.assign(r,i)}return Object.defineProperties({},r)}function Dq(e){return Sr(e._zod.def)}function Tq(e,r){return r?r.reduce((n,i)=>n?.[i],e):e}function jq(e){let r=Object.keys(e),n=r.map(i=>e[i]);return Promise.all(n).then(i=>{let t={};for(let o=0;o<r.length;o++)t[r[o]]=i[o];return t})}function zq(e=10){let r="abcdefghijklmnopqrstuvwxyz",n="";for(let i=0;i<e;i++)n+=r[Math.floor(Math.random()*r.length)];return n}function Qe(e){return JSON.stringify(e)}function gd(e){return e.toLowerCase().trim().replace(/[^\w\s-]/g,"").replace(/[\s_-]+/g,"-").replace(/^-+|-+$/g,"")}var us="captureStackTrace"in Error?Error.captureStackTrace:(...e)=>{};function dn(e){return typeof e=="object"&&e!==null&&!Array.isArray(e)}var hd=Qn(()=>{if(Ce.jitless||typeof navigator<"u"&&navigator?.userAgent?.includes("Cloudflare"))return!1;try{let e=Function;return new e(""),!0}catch{return!1}});function pr(e){if(dn(e)===!1)return!1;let r=e.constructor;if(r===void 0||typeof r!="function")return!0;let n=r.prototype;return!(dn(n)===!1||Object.prototype.hasOwnProperty.call(n,"isPrototypeOf")===!1)}function go(e){return pr(e)?{...e}:Array.isArray(e)?[...e]:e instanceof Map?new Map(e):e instanceof Set?new Set(e):e}function Cq(e){let r=0;for(let n in e)Object.prototype.hasOwnProperty.call(e,n)&&r++;return r}var qq=e=>{let r=typeof e;switch(r){case"undefined":return"undefined";case"string":return"string";case"number":return Number.isNaN(e)?"nan":"number";case"boolean":return"boolean";case"function":return"function";case"bigint":return"bigint";case"symbol":return"symbol";case"object":return Array.isArray(e)?"array":e===null?"null":e.then&&typeof e.then=="function"&&e.catch&&typeof e.catch=="function"?"promise":typeof Map<"u"&&e instanceof Map?"map":typeof Set<"u"&&e instanceof Set?"set":typeof Date<"u"&&e instanceof Date?"date":typeof File<"u"&&e instanceof File?"file":"object";default:throw new Error(`Unknown data type: ${r}`)}},ho=new Set(["string","number","symbol"]),yd=new Set(["string","number","bigint","boolean","symbol","undefined"]);function vr(e){return e.replace(/[.*+?^${}()|[\]\\]/g,"\\$&")}function te(e,r,n){let i=new e._zod.constr(r??e._zod.def);return(!r||n?.parent)&&(i._zod.parent=e),i}function j(e){let r=e;if(!r)return{};if(typeof r=="string")return{error:()=>r};if(r?.message!==void 0){if(r?.error!==void 0)throw new Error("Cannot specify both `message` and `error` params");r.error=r.message}return delete r.message,typeof r.error=="string"?{...r,error:()=>r.error}:r}function Rq(e){let r;return new Proxy({},{get(n,i,t){return r??(r=e()),Reflect.get(r,i,t)},set(n,i,t,o){return r??(r=e()),Reflect.set(r,i,t,o)},has(n,i){return r??(r=e()),Reflect.has(r,i)},deleteProperty(n,i){return r??(r=e()),Reflect.deleteProperty(r,i)},ownKeys(n){return r??(r=e()),Reflect.ownKeys(r)},getOwnPropertyDescriptor(n,i){return r??(r=e()),Reflect.getOwnPropertyDescriptor(r,i)},defineProperty(n,i,t){return r??(r=e()),Reflect.defineProperty(r,i,t)}})}function P(e){return typeof e=="bigint"?e.toString()+"n":typeof e=="string"?`"${e}"`:`${e}`}function bd(e){return Object.keys(e).filter(r=>e[r]._zod.optin!==void 0&&e[r]._zod.optout==="optional")}var yo={safeint:[Number.MIN_SAFE_INTEGER,Number.MAX_SAFE_INTEGER],int32:[-2147483648,2147483647],uint32:[0,4294967295],float32:[-34028234663852886e22,34028234663852886e22],float64:[-Number.MAX_VALUE,Number.MAX_VALUE]},bo={int64:[BigInt("-9223372036854775808"),BigInt("9223372036854775807")],uint64:[BigInt(0),BigInt("18446744073709551615")]};function Uq(e,r){let n=e._zod.def,i=n.checks;if(i&&i.length>0)throw new Error(".pick() cannot be used on object schemas containing refinements");let o={};return ln(o,e,cs(e,r)),te(e,Sr(n,{shape:o,checks:[]}))}function cs(e,r){let n=et(e),i=[];for(let t of Reflect.ownKeys(r)){if(!Object.getOwnPropertyDescriptor(n,t)?.enumerable)throw new Error(`Unrecognized key: "${String(t)}"`);r[t]&&i.push(t)}return i}function Fq(e,r){let n=e._zod.def,i=n.checks;if(i&&i.length>0)throw new Error(".omit() cannot be used on object schemas containing refinements");let o=new Set(cs(e,r)),a={};return ln(a,e,Reflect.ownKeys(et(e)).filter(s=>!o.has(s))),te(e,Sr(n,{shape:a,checks:[]}))}function Mq(e,r){if(!pr(r))throw new Error("Invalid input to extend: expected a plain object");let n=e._zod.def.checks;if(n&&n.length>0){let t=et(e);for(let o of Reflect.ownKeys(r))if(Object.getOwnPropertyDescriptor(t,o)!==void 0)throw new Error("Cannot overwrite keys on object schemas containing refinements. Use `.safeExtend()` instead.")}return te(e,Sr(e._zod.def,{shape:py(e,r)}))}function py(e,r){let n={};return ln(n,e,Reflect.ownKeys(et(e))),Eq(n,r),n}function Lq(e,r){if(!pr(r))throw new Error("Invalid input to safeExtend: expected a plain object");return te(e,Sr(e._zod.def,{shape:py(e,r)}))}function Zq(e,r){if(!r?._zod?.def)throw new Error("Invalid input to merge: expected an object schema. To merge a plain shape, use `.extend()`.");if(e._zod.def.checks?.length)throw new Error(".merge() cannot be used on object schemas containing refinements. Use .safeExtend() instead.");let n={};ln(n,e,Reflect.ownKeys(et(e))),ln(n,r,Reflect.ownKeys(et(r)));let i=Sr(e._zod.def,{shape:n,get catchall(){return r._zod.def.catchall},checks:r._zod.def.checks??[]});return te(e,i)}function Vq(e,r,n,i="partial"){let o=r._zod.def.checks;if(o&&o.length>0)throw new Error(`.${i}() cannot be used on object schemas containing refinements`);let s=n?new Set(cs(r,n)):void 0,u={};return ln(u,r,Reflect.ownKeys(et(r)),e&&((c,l)=>s&&!s.has(l)?c:new e({type:"optional",innerType:c}))),te(r,Sr(r._zod.def,{shape:u,checks:[]}))}function Bq(e,r,n){let i=n?new Set(cs(r,n)):void 0,t={};return ln(t,r,Reflect.ownKeys(et(r)),(o,a)=>i&&!i.has(a)?o:new e({type:"nonoptional",innerType:o})),te(r,Sr(r._zod.def,{shape:t}))}function Ye(e,r=0){if(e.aborted===!0)return!0;for(let n=r;n<e.issues.length;n++)if(e.issues[n]?.continue!==!0)return!0;return!1}function $d(e,r=0){if(e.aborted===!0)return!0;for(let n=r;n<e.issues.length;n++)if(e.issues[n]?.continue===!1)return!0;return!1}function ir(e,r){return r.map(n=>{var i;return(i=n).path??(i.path=[]),n.path.unshift(e),n})}function Jn(e){return typeof e=="string"?e:e?.message}function ei(e){let r=[];for(let n of e??[]){let i=n._zod.def;if(!/_(length|size)$|_equals$/.test(i.check))break;let t=i.maximum??i.length??i.size;t>=0&&r.push([t,n])}return r}function $o(e,r,n){var i;for(let t=r;t<e.length;t++)(i=e[t]).schema??(i.schema=n)}function or(e,r,n){var i;let t=e.inst?._zod?.traits;t?.has("$ZodType")&&(t.has("$ZodCheck")?(i=e).schema??(i.schema=e.inst):e.schema=e.inst);let o=e.schema!==e.inst?e.schema?._zod.def?.error:void 0,a=e.message?e.message:Jn(e.inst?._zod.def?.error?.(e))??Jn(o?.(e))??Jn(r?.error?.(e))??Jn(n.customError?.(e))??Jn(n.localeError?.(e))??"Invalid input",s={};for(let u of Object.keys(e))u==="inst"||u==="schema"||u==="continue"||u==="input"||u==="__proto__"||(s[u]=e[u]);return s.path??(s.path=[]),s.message=a,r?.reportInput&&(s.input=e.input),s}function _o(e){return e instanceof Set?"set":e instanceof Map?"map":e instanceof File?"file":"unknown"}var Wq=/[\uD800-\uDBFF]/;function fn(e){let r=e.length;if(!Wq.test(e))return r;let n=r;for(let i=0;i<r-1;i++)(e.charCodeAt(i)&64512)===55296&&(e.charCodeAt(i+1)&64512)===56320&&(n--,i++);return n}function wo(e){return Array.isArray(e)?"array":typeof e=="string"?"string":"unknown"}function x(e){let r=typeof e;switch(r){case"number":return Number.isNaN(e)?"nan":"number";case"object":{if(e===null)return"null";if(Array.isArray(e))return"array";let n=e;if(n&&Object.getPrototypeOf(n)!==Object.prototype&&"constructor"in n&&n.constructor)return n.constructor.name}}return r}function ri(...e){let[r,n,i]=e;return typeof r=="string"?{message:r,code:"custom",input:n,inst:i}:{...r}}function Gq(e){return Object.entries(e).filter(([r,n])=>Number.isNaN(Number.parseInt(r,10))).map(r=>r[1])}function vy(e){let r=atob(e),n=new Uint8Array(r.length);for(let i=0;i<r.length;i++)n[i]=r.charCodeAt(i);return n}function gy(e){let r="";for(let n=0;n<e.length;n++)r+=String.fromCharCode(e[n]);return btoa(r)}function Hq(e){let r=e.replace(/-/g,"+").replace(/_/g,"/"),n="=".repeat((4-r.length%4)%4);return vy(r+n)}function Jq(e){return gy(e).replace(/\+/g,"-").replace(/\//g,"_").replace(/=/g,"")}function Kq(e){let r=e.replace(/^0x/,"");if(r.length%2!==0)throw new Error("Invalid hex string length");let n=new Uint8Array(r.length/2);for(let i=0;i<r.length;i+=2)n[i/2]=Number.parseInt(r.slice(i,i+2),16);return n}function Xq(e){return Array.from(e).map(r=>r.toString(16).padStart(2,"0")).join("")}var pd=class{constructor(...r){}};function _d(e,r){for(let n in r){let i=Object.getOwnPropertyDescriptor(r,n);i.get?Object.defineProperty(e,n,{...i,enumerable:!1}):Yq(e,n,i.value)}}function St(e,r,n,i=!0){return Object.defineProperty(e,r,{configurable:!0,writable:!0,enumerable:i,value:n}),n}function So(e,r,n){return St(e,r,n,!1)}function Qq(e,r){for(let n in e){let i=e[n];Object.defineProperty(r,n,{configurable:!0,enumerable:!0,get(){return St(this,n,i(this))},set(t){St(this,n,t)}})}return r}function Yq(e,r,n){Object.defineProperty(e,r,{configurable:!0,get(){return this==null?n:St(this,r,n.bind(this))},set(i){St(this,r,i)}})}function eR(e,r){let n=Object.getPrototypeOf(e);return r in n?void 0:n}var fd,wt=!1,rR={configurable:!0,get(){wt=!0}};function H(e,r,n){let i=Object.getPrototypeOf(e._zod);if(r in i&&fd!==e._zod){fd=void 0;return}fd=e._zod,Object.defineProperty(i,r,{configurable:!0,get(){Object.defineProperty(this,r,rR);let t=wt;wt=!1;try{let o=n(this);return wt?delete this[r]:Object.defineProperty(this,r,{configurable:!0,writable:!0,value:o}),wt=wt||t,o}catch(o){throw delete this[r],wt=wt||t,o}},set(t){Object.defineProperty(this,r,{configurable:!0,writable:!0,value:t})}})}function tR(e,r,n,i){let t=eR(e,r);t&&Object.defineProperty(t,r,{configurable:!0,get(){let o={configurable:!0,writable:!0,enumerable:i,value:void 0};return Object.defineProperty(this,r,o),o.value=n(this),Object.defineProperty(this,r,o),o.value},set(o){Object.defineProperty(this,r,{configurable:!0,writable:!0,enumerable:i,value:o})}})}var ls="~constantCatch";function wd(e){let r=()=>e;return r[ls]=!0,r}var hy,Id=Object.freeze({status:"aborted"}),Sd={value:void 0,enumerable:!1},yy="captureStackTrace"in Error?Error:null;function nR(e){let r=yy;if(r){let n=r.stackTraceLimit;if(typeof n=="number"){try{r.stackTraceLimit=0}catch{return yy=null,new e}try{return new e}finally{r.stackTraceLimit=n}}}return new e}function S(e,r,n,i){let t={};function o(f){this.def=f,this.constr=d,this.traits=new Set}o.prototype=t;let a=n,s=a&&new WeakSet;function u(f,m){if(f._zod){if(f._zod.traits.has(e))return}else{Sd.value=new o(m);try{Object.defineProperty(f,"_zod",Sd)}finally{Sd.value=void 0}}if(f._zod.traits.add(e),r(f,m),s){let h=Object.getPrototypeOf(f),y=f._zod.constr.prototype,b=h;for(;b&&b!==y;)b=Object.getPrototypeOf(b);let _=b??h;s.has(_)||(s.add(_),_d(_,a))}let v=d.prototype;for(let h in v)Object.prototype.hasOwnProperty.call(v,h)&&(h in f||(f[h]=v[h].bind(f)))}let c=i?.Parent??Object;class l extends c{}Object.defineProperty(l,"name",{value:e});function d(f){let m=i?.Parent?nR(l):this;u(m,f);let v=m._zod.deferred;if(v){for(let y of v)y();m._zod.deferred=void 0}let h=globalThis.__zod_globalConfig?.postProcessor;return h&&h(m),m}return Object.defineProperty(d,"init",{value:u}),Object.defineProperty(d,Symbol.hasInstance,{value:f=>i?.Parent&&f instanceof i.Parent?!0:f?._zod?.traits?.has(e)}),Object.defineProperty(d,"name",{value:e}),d}var kd=Symbol("zod_brand"),ar=class extends Error{constructor(){super("Encountered Promise during synchronous parse. Use .parseAsync() instead.")}},It=class extends Error{constructor(r){super(`Encountered unidirectional transform during encode: ${r}`),this.name="ZodEncodeError"}};(hy=globalThis).__zod_globalConfig??(hy.__zod_globalConfig={});var Ce=globalThis.__zod_globalConfig;function ke(e){return e&&Object.assign(Ce,e),Ce}function iR(){let e=this._zod;return e.message??(e.message=JSON.stringify(e.def,Xn,2)),e.message}function oR(e){this._zod.message=e}var aR={get:iR,set:oR,enumerable:!0,configurable:!0},Nd={value:void 0,enumerable:!1},by=new WeakSet([Object.prototype,Error.prototype]),$y=(e,r)=>{e.name="$ZodError",Nd.value=r,Object.defineProperty(e,"issues",Nd),Nd.value=void 0,Object.defineProperty(e,"message",aR);let n=Object.getPrototypeOf(e);by.has(n)||(by.add(n),Object.defineProperty(n,"toString",{configurable:!0,enumerable:!1,get(){let i=()=>this.message;return Object.defineProperty(this,"toString",{value:i,configurable:!0,writable:!0}),i},set(i){Object.defineProperty(this,"toString",{value:i,configurable:!0,writable:!0})}}))},Ad=S("$ZodError",$y),sr=S("$ZodError",$y,void 0,{Parent:Error});function sR(e,r,n){return Object.prototype.hasOwnProperty.call(e,r)||(r==="__proto__"?Object.defineProperty(e,r,{value:n(),writable:!0,enumerable:!0,configurable:!0}):e[r]=n()),e[r]}function Io(e,r=n=>n.message){let n={},i=[];for(let t of e.issues)t.path.length>0?sR(n,t.path[0],()=>[]).push(r(t)):i.push(r(t));return{formErrors:i,fieldErrors:n}}function ko(e,r=n=>n.message){let n={_errors:[]},i=(t,o=[])=>{for(let a of t.issues)if(a.code==="invalid_union"&&a.errors.length)a.errors.map(s=>i({issues:s},[...o,...a.path]));else if(a.code==="invalid_key")i({issues:a.issues},[...o,...a.path]);else if(a.code==="invalid_element")i({issues:a.issues},[...o,...a.path]);else{let s=[...o,...a.path];if(s.length===0)n._errors.push(r(a));else{let u=n,c=0;for(;c<s.length;){let l=s[c],d=c===s.length-1;if(l==="_errors"){d&&u._errors.push(r(a)),c++;continue}Object.prototype.hasOwnProperty.call(u,l)||Object.defineProperty(u,l,{value:{_errors:[]},enumerable:!0,writable:!0,configurable:!0});let f=u[l];d&&f._errors.push(r(a)),u=f,c++}}}};return i(e),n}function Pd(e,r=n=>n.message){let n={errors:[]},i=(t,o=[])=>{var a;for(let s of t.issues)if(s.code==="invalid_union"&&s.errors.length)s.errors.map(u=>i({issues:u},[...o,...s.path]));else if(s.code==="invalid_key")i({issues:s.issues},[...o,...s.path]);else if(s.code==="invalid_element")i({issues:s.issues},[...o,...s.path]);else{let u=[...o,...s.path];if(u.length===0){n.errors.push(r(s));continue}let c=n,l=0;for(;l<u.length;){let d=u[l],f=l===u.length-1;typeof d=="string"?(c.properties??(c.properties={}),Object.prototype.hasOwnProperty.call(c.properties,d)||Object.defineProperty(c.properties,d,{value:{errors:[]},enumerable:!0,writable:!0,configurable:!0}),c=c.properties[d]):(c.items??(c.items=[]),(a=c.items)[d]??(a[d]={errors:[]}),c=c.items[d]),f&&c.errors.push(r(s)),l++}}};return i(e),n}function _y(e){let r=[],n=e.map(i=>typeof i=="object"?i.key:i);for(let i of n)typeof i=="number"?r.push(`[${i}]`):typeof i=="symbol"?r.push(`[${JSON.stringify(String(i))}]`):/[^\w$]/.test(i)?r.push(`[${JSON.stringify(i)}]`):(r.length&&r.push("."),r.push(i));return r.join("")}function xd(e){let r=[],n=[...e.issues].sort((i,t)=>(i.path??[]).length-(t.path??[]).length);for(let i of n)r.push(`✖ ${i.message}`),i.path?.length&&r.push(`  → at ${_y(i.path)}`);return r.join(`
`)}function ds(e,r){return{callee:r?.callee??e,Err:r?.Err}}var ti=e=>{let r=(n,i,t,o)=>{let a=t?{...t,async:!1}:{async:!1},s=n._zod.run({value:i,issues:[]},a);if(s instanceof Promise)throw new ar;if(s.issues.length){let u=new(o?.Err??e)(s.issues.map(c=>or(c,a,ke())));throw us(u,o?.callee??r),u}return s.value};return r},fs=ti(sr),ni=e=>{let r=async(n,i,t,o)=>{let a=t?{...t,async:!0}:{async:!0},s=n._zod.run({value:i,issues:[]},a);if(s instanceof Promise&&(s=await s),s.issues.length){let u=new(o?.Err??e)(s.issues.map(c=>or(c,a,ke())));throw us(u,o?.callee??r),u}return s.value};return r},ms=ni(sr),ii=e=>(r,n,i)=>{let t=i?{...i,async:!1}:{async:!1},o=r._zod.run({value:n,issues:[]},t);if(o instanceof Promise)throw new ar;return o.issues.length?wy(e,o.issues,t):{success:!0,data:o.value}},cR=ii(sr);function wy(e,r,n){let i;return{success:!1,get error(){return i||(i=new e(r.map(t=>or(t,n,ke()))),r=void 0,n=void 0),i},set error(t){i=t,r=void 0,n=void 0}}}var oi=e=>async(r,n,i)=>{let t=i?{...i,async:!0}:{async:!0},o=r._zod.run({value:n,issues:[]},t);return o instanceof Promise&&(o=await o),o.issues.length?wy(e,o.issues,t):{success:!0,data:o.value}},lR=oi(sr),dR=Symbol.for("zod.compile.invalid"),fR=Symbol.for("zod.compile.fallback"),Oo=((e,r,n)=>{let i=e._zod.bag.validator;if(i!==void 0){if(i(r)!==dR)return!0;if(i.definite===!0&&n===void 0)return!1}return mR(e,r,n)});function mR(e,r,n){let i=n?{...n,async:!1,abortEarly:!0}:{async:!1,abortEarly:!0},t=e._zod.bag.fallbackRun,o;if(t?(i[fR]=!0,o=t({value:r,issues:[]},i)):o=e._zod.run({value:r,issues:[]},i),o instanceof Promise)throw new ar;return o.issues.length===0}var No=async(e,r,n)=>{let i=n?{...n,async:!0,abortEarly:!0}:{async:!0,abortEarly:!0},t=e._zod.run({value:r,issues:[]},i);return t instanceof Promise&&(t=await t),t.issues.length===0},ps=e=>{let r=ti(e),n=(i,t,o,a)=>{let s=o?{...o,direction:"backward"}:{direction:"backward"};return r(i,t,s,ds(n,a))};return n},pR=ps(sr),vs=e=>{let r=ti(e),n=(i,t,o,a)=>r(i,t,o,ds(n,a));return n},vR=vs(sr),gs=e=>{let r=ni(e),n=async(i,t,o,a)=>{let s=o?{...o,direction:"backward"}:{direction:"backward"};return await r(i,t,s,ds(n,a))};return n},gR=gs(sr),hs=e=>{let r=ni(e),n=async(i,t,o,a)=>await r(i,t,o,ds(n,a));return n},hR=hs(sr),ys=e=>(r,n,i)=>{let t=i?{...i,direction:"backward"}:{direction:"backward"};return ii(e)(r,n,t)},yR=ys(sr),bs=e=>(r,n,i)=>ii(e)(r,n,i),bR=bs(sr),$s=e=>async(r,n,i)=>{let t=i?{...i,direction:"backward"}:{direction:"backward"};return oi(e)(r,n,t)},$R=$s(sr),_s=e=>async(r,n,i)=>oi(e)(r,n,i),_R=_s(sr);var gr={};Xr(gr,{anyString:()=>nf,base64:()=>Hd,base64url:()=>Jd,bigint:()=>af,boolean:()=>sf,browserEmail:()=>PR,cidrv4:()=>Wd,cidrv6:()=>Gd,creditCard:()=>ws,cuid:()=>Dd,cuid2:()=>Td,currencyCode:()=>Yd,date:()=>ef,datetime:()=>tf,domain:()=>Xd,duration:()=>Ud,e164:()=>Qd,email:()=>Md,emoji:()=>Ld,extendedDuration:()=>wR,guid:()=>Fd,hex:()=>ff,hostname:()=>Kd,html5Email:()=>OR,httpProtocol:()=>Ao,iban:()=>Ss,idnEmail:()=>AR,integer:()=>Po,ipv4:()=>Zd,ipv6:()=>Vd,ksuid:()=>Cd,lowercase:()=>lf,mac:()=>Bd,md5_base64:()=>TR,md5_base64url:()=>jR,md5_hex:()=>DR,nanoid:()=>qd,nanoidOfLength:()=>Rd,null:()=>uf,number:()=>tt,rfc5322Email:()=>NR,sha1_base64:()=>CR,sha1_base64url:()=>qR,sha1_hex:()=>zR,sha256_base64:()=>UR,sha256_base64url:()=>FR,sha256_hex:()=>RR,sha384_base64:()=>LR,sha384_base64url:()=>ZR,sha384_hex:()=>MR,sha512_base64:()=>BR,sha512_base64url:()=>WR,sha512_hex:()=>VR,string:()=>of,time:()=>rf,ulid:()=>jd,undefined:()=>cf,unicodeEmail:()=>Sy,uppercase:()=>df,uuid:()=>mn,uuid4:()=>SR,uuid6:()=>IR,uuid7:()=>kR,xid:()=>zd});var Dd=/^[cC][0-9a-z]{6,}$/,Td=/^[0-9a-z]+$/,jd=/^[0-7][0-9A-HJKMNP-TV-Za-hjkmnp-tv-z]{25}$/,zd=/^[0-9a-vA-V]{20}$/,Cd=/^[A-Za-z0-9]{27}$/,qd=/^[a-zA-Z0-9_-]{21}$/;function Rd(e){return new RegExp(`^[a-zA-Z0-9_-]{${e}}$`)}var Ud=/^P(?:(\d+W)|(?!.*W)(?=\d|T\d)(\d+Y)?(\d+M)?(\d+D)?(T(?=\d)(\d+H)?(\d+M)?(\d+([.,]\d+)?S)?)?)$/,wR=/^[-+]?P(?!$)(?:(?:[-+]?\d+Y)|(?:[-+]?\d+[.,]\d+Y$))?(?:(?:[-+]?\d+M)|(?:[-+]?\d+[.,]\d+M$))?(?:(?:[-+]?\d+W)|(?:[-+]?\d+[.,]\d+W$))?(?:(?:[-+]?\d+D)|(?:[-+]?\d+[.,]\d+D$))?(?:T(?=[\d+-])(?:(?:[-+]?\d+H)|(?:[-+]?\d+[.,]\d+H$))?(?:(?:[-+]?\d+M)|(?:[-+]?\d+[.,]\d+M$))?(?:[-+]?\d+(?:[.,]\d+)?S)?)??$/,Fd=/^([0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12})$/,mn=e=>e?new RegExp(`^([0-9a-fA-F]{8}-[0-9a-fA-F]{4}-${e}[0-9a-fA-F]{3}-[89abAB][0-9a-fA-F]{3}-[0-9a-fA-F]{12})$`):/^([0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[1-8][0-9a-fA-F]{3}-[89abAB][0-9a-fA-F]{3}-[0-9a-fA-F]{12}|00000000-0000-0000-0000-000000000000|ffffffff-ffff-ffff-ffff-ffffffffffff)$/,SR=mn(4),IR=mn(6),kR=mn(7),Md=/^(?:[A-Za-z0-9_'+\-]+\.)*[A-Za-z0-9_'+\-]*[A-Za-z0-9_+-]@(?:[A-Za-z0-9][A-Za-z0-9\-]*\.)+[A-Za-z]{2,}$/,OR=/^[a-zA-Z0-9.!#$%&'*+/=?^_`{|}~-]+@[a-zA-Z0-9](?:[a-zA-Z0-9-]{0,61}[a-zA-Z0-9])?(?:\.[a-zA-Z0-9](?:[a-zA-Z0-9-]{0,61}[a-zA-Z0-9])?)*$/,NR=/^(([^<>()\[\]\\.,;:\s@"]+(\.[^<>()\[\]\\.,;:\s@"]+)*)|(".+"))@((\[[0-9]{1,3}\.[0-9]{1,3}\.[0-9]{1,3}\.[0-9]{1,3}])|(([a-zA-Z\-0-9]+\.)+[a-zA-Z]{2,}))$/,Sy=/^[^\s@"]{1,64}@[^\s@]{1,255}$/u,AR=Sy,PR=/^[a-zA-Z0-9.!#$%&'*+/=?^_`{|}~-]+@[a-zA-Z0-9](?:[a-zA-Z0-9-]{0,61}[a-zA-Z0-9])?(?:\.[a-zA-Z0-9](?:[a-zA-Z0-9-]{0,61}[a-zA-Z0-9])?)*$/,xR="^(?=[\\s\\S]*[\\p{Extended_Pictographic}\\p{Regional_Indicator}\\u20E3])[\\p{Extended_Pictographic}\\p{Emoji_Component}]+$";function Ld(){return new RegExp(xR,"u")}var Zd=/^(?:(?:25[0-5]|2[0-4][0-9]|1[0-9][0-9]|[1-9][0-9]|[0-9])\.){3}(?:25[0-5]|2[0-4][0-9]|1[0-9][0-9]|[1-9][0-9]|[0-9])$/,Vd=/^(([0-9a-fA-F]{1,4}:){7}[0-9a-fA-F]{1,4}|([0-9a-fA-F]{1,4}:){1,7}:|([0-9a-fA-F]{1,4}:){1,6}:[0-9a-fA-F]{1,4}|([0-9a-fA-F]{1,4}:){1,5}(:[0-9a-fA-F]{1,4}){1,2}|([0-9a-fA-F]{1,4}:){1,4}(:[0-9a-fA-F]{1,4}){1,3}|([0-9a-fA-F]{1,4}:){1,3}(:[0-9a-fA-F]{1,4}){1,4}|([0-9a-fA-F]{1,4}:){1,2}(:[0-9a-fA-F]{1,4}){1,5}|[0-9a-fA-F]{1,4}:((:[0-9a-fA-F]{1,4}){1,6})|:((:[0-9a-fA-F]{1,4}){1,7}|:))$/,Bd=e=>{let r=vr(e??":");return new RegExp(`^(?:[0-9A-F]{2}${r}){5}[0-9A-F]{2}$|^(?:[0-9a-f]{2}${r}){5}[0-9a-f]{2}$`)},Wd=/^((25[0-5]|2[0-4][0-9]|1[0-9][0-9]|[1-9][0-9]|[0-9])\.){3}(25[0-5]|2[0-4][0-9]|1[0-9][0-9]|[1-9][0-9]|[0-9])\/([0-9]|[1-2][0-9]|3[0-2])$/,Gd=/^(([0-9a-fA-F]{1,4}:){7}[0-9a-fA-F]{1,4}|([0-9a-fA-F]{1,4}:){1,7}:|([0-9a-fA-F]{1,4}:){1,6}:[0-9a-fA-F]{1,4}|([0-9a-fA-F]{1,4}:){1,5}(:[0-9a-fA-F]{1,4}){1,2}|([0-9a-fA-F]{1,4}:){1,4}(:[0-9a-fA-F]{1,4}){1,3}|([0-9a-fA-F]{1,4}:){1,3}(:[0-9a-fA-F]{1,4}){1,4}|([0-9a-fA-F]{1,4}:){1,2}(:[0-9a-fA-F]{1,4}){1,5}|[0-9a-fA-F]{1,4}:((:[0-9a-fA-F]{1,4}){1,6})|:((:[0-9a-fA-F]{1,4}){1,7}|:))\/(12[0-8]|1[01][0-9]|[1-9]?[0-9])$/,Hd=/^$|^(?:[0-9a-zA-Z+/]{4})*(?:(?:[0-9a-zA-Z+/]{2}==)|(?:[0-9a-zA-Z+/]{3}=))?$/,Jd=/^(?:[A-Za-z0-9_-]{4})*(?:[A-Za-z0-9_-]{2,3})?$/,Kd=/^(?=.{1,253}\.?$)[a-zA-Z0-9](?:[a-zA-Z0-9-]{0,61}[a-zA-Z0-9])?(?:\.[a-zA-Z0-9](?:[-0-9a-zA-Z]{0,61}[0-9a-zA-Z])?)*\.?$/,Xd=/^(?=.{1,253}$)([a-zA-Z0-9](?:[a-zA-Z0-9-]{0,61}[a-zA-Z0-9])?\.)+[a-zA-Z]{2,63}$/,Ao=/^https?$/,Qd=/^\+[1-9]\d{6,14}$/,ws=/^\d(?:[ -]?\d){11,18}$/,Yd=/^(?:AED|AFN|ALL|AMD|AOA|ARS|AUD|AWG|AZN|BAM|BBD|BDT|BHD|BIF|BMD|BND|BOB|BOV|BRL|BSD|BTN|BWP|BYN|BZD|CAD|CDF|CHE|CHF|CHW|CLF|CLP|CNY|COP|COU|CRC|CUP|CVE|CZK|DJF|DKK|DOP|DZD|EGP|ERN|ETB|EUR|FJD|FKP|GBP|GEL|GHS|GIP|GMD|GNF|GTQ|GYD|HKD|HNL|HTG|HUF|IDR|ILS|INR|IQD|IRR|ISK|JMD|JOD|JPY|KES|KGS|KHR|KMF|KPW|KRW|KWD|KYD|KZT|LAK|LBP|LKR|LRD|LSL|LYD|MAD|MDL|MGA|MKD|MMK|MNT|MOP|MRU|MUR|MVR|MWK|MXN|MXV|MYR|MZN|NAD|NGN|NIO|NOK|NPR|NZD|OMR|PAB|PEN|PGK|PHP|PKR|PLN|PYG|QAR|RON|RSD|RUB|RWF|SAR|SBD|SCR|SDG|SEK|SGD|SHP|SLE|SOS|SRD|SSP|STN|SVC|SYP|SZL|THB|TJS|TMT|TND|TOP|TRY|TTD|TWD|TZS|UAH|UGX|USD|USN|UYI|UYU|UYW|UZS|VED|VES|VND|VUV|WST|XAD|XAF|XAG|XAU|XBA|XBB|XBC|XBD|XCD|XCG|XDR|XOF|XPD|XPF|XPT|XSU|XTS|XUA|XXX|YER|ZAR|ZMW|ZWG)$/,Ss=/^[A-Z]{2}(?!00|01|99)\d{2}[A-Z0-9]{11,30}$/,Iy="(?:(?:\\d\\d[2468][048]|\\d\\d[13579][26]|\\d\\d0[48]|[02468][048]00|[13579][26]00)-02-29|\\d{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\\d|30)|(?:02)-(?:0[1-9]|1\\d|2[0-8])))";function ER(e){return new RegExp(`^${e}$`)}var ef=ER(Iy);function Ed(e){let r="(?:[01]\\d|2[0-3]):[0-5]\\d";return typeof e.precision=="number"?e.precision===-1?`${r}`:e.precision===0?`${r}:[0-5]\\d`:`${r}:[0-5]\\d\\.\\d{${e.precision}}`:e.seconds?`${r}:[0-5]\\d(?:\\.\\d+)?`:`${r}(?::[0-5]\\d(?:\\.\\d+)?)?`}function rf(e){return new RegExp(`^${Ed(e)}$`)}function tf(e){let r=["Z"];e.offset&&r.push("([+-](?:[01]\\d|2[0-3]):[0-5]\\d)");let n=`${Ed({precision:e.precision,seconds:!0})}(?:${r.join("|")})`,i=e.local?`${n}|${Ed({precision:e.precision})}`:n;return new RegExp(`^${Iy}T(?:${i})$`)}var nf=/^[\s\S]{0,}$/,of=e=>{let r=e?`[\\s\\S]{${e?.minimum??0},${e?.maximum??""}}`:"[\\s\\S]*";return new RegExp(`^${r}$`)},af=/^-?\d+n?$/,Po=/^-?\d+$/,tt=/^-?\d+(?:\.\d+)?$/,sf=/^(?:true|false)$/i,uf=/^null$/i;var cf=/^undefined$/i;var lf=/^[^A-Z]*$/,df=/^[^a-z]*$/,ff=/^[0-9a-fA-F]*$/;function xo(e,r){return new RegExp(`^[A-Za-z0-9+/]{${e}}${r}$`)}function Eo(e){return new RegExp(`^[A-Za-z0-9_-]{${e}}$`)}var DR=/^[0-9a-fA-F]{32}$/,TR=xo(22,"=="),jR=Eo(22),zR=/^[0-9a-fA-F]{40}$/,CR=xo(27,"="),qR=Eo(27),RR=/^[0-9a-fA-F]{64}$/,UR=xo(43,"="),FR=Eo(43),MR=/^[0-9a-fA-F]{96}$/,LR=xo(64,""),ZR=Eo(64),VR=/^[0-9a-fA-F]{128}$/,BR=xo(86,"=="),WR=Eo(86);var le=S("$ZodCheck",(e,r)=>{var n;e._zod??(e._zod={}),e._zod.def=r,(n=e._zod).onattach??(n.onattach=[])}),mf=e=>{let r=e.value;return!ss(r)&&r.size!==void 0},pf=e=>{let r=e.value;return!ss(r)&&r.length!==void 0},Is={number:"number",bigint:"bigint",object:"date"},Os=S("$ZodCheckLessThan",(e,r)=>{le.init(e,r);let n=Is[typeof r.value];e._zod.check=i=>{(r.inclusive?i.value<=r.value:i.value<r.value)||i.issues.push({origin:Is[typeof i.value]??n,code:"too_big",maximum:typeof r.value=="object"?r.value.getTime():r.value,input:i.value,inclusive:r.inclusive,inst:e,continue:!r.abort})}}),Ns=S("$ZodCheckGreaterThan",(e,r)=>{le.init(e,r);let n=Is[typeof r.value];e._zod.check=i=>{(r.inclusive?i.value>=r.value:i.value>r.value)||i.issues.push({origin:Is[typeof i.value]??n,code:"too_small",minimum:typeof r.value=="object"?r.value.getTime():r.value,input:i.value,inclusive:r.inclusive,inst:e,continue:!r.abort})}}),vf=S("$ZodCheckMultipleOf",(e,r)=>{le.init(e,r),e._zod.check=n=>{if(typeof n.value!=typeof r.value)throw new Error("Cannot mix number and bigint in multiple_of check.");(typeof n.value=="bigint"?r.value!==BigInt(0)&&n.value%r.value===BigInt(0):vo(n.value,r.value)===0)||n.issues.push({origin:typeof n.value,code:"not_multiple_of",divisor:r.value,input:n.value,inst:e,continue:!r.abort})}}),gf=S("$ZodCheckNumberFormat",(e,r)=>{le.init(e,r),r.format=r.format||"float64";let n=r.format?.includes("int"),i=n?"int":"number",[t,o]=yo[r.format];e._zod.check=a=>{let s=a.value;if(n){if(!Number.isInteger(s)){a.issues.push({expected:i,format:r.format,code:"invalid_type",continue:!1,input:s,inst:e});return}if(!Number.isSafeInteger(s)){s>0?a.issues.push({input:s,code:"too_big",maximum:Number.MAX_SAFE_INTEGER,note:"Integers must be within the safe integer range.",inst:e,origin:i,inclusive:!0,continue:!r.abort}):a.issues.push({input:s,code:"too_small",minimum:Number.MIN_SAFE_INTEGER,note:"Integers must be within the safe integer range.",inst:e,origin:i,inclusive:!0,continue:!r.abort});return}}s<t&&a.issues.push({origin:"number",input:s,code:"too_small",minimum:t,inclusive:!0,inst:e,continue:!r.abort}),s>o&&a.issues.push({origin:"number",input:s,code:"too_big",maximum:o,inclusive:!0,inst:e,continue:!r.abort})}}),hf=S("$ZodCheckBigIntFormat",(e,r)=>{le.init(e,r);let[n,i]=bo[r.format];e._zod.check=t=>{let o=t.value;o<n&&t.issues.push({origin:"bigint",input:o,code:"too_small",minimum:n,inclusive:!0,inst:e,continue:!r.abort}),o>i&&t.issues.push({origin:"bigint",input:o,code:"too_big",maximum:i,inclusive:!0,inst:e,continue:!r.abort})}}),yf=S("$ZodCheckMaxSize",(e,r)=>{var n;le.init(e,r),(n=e._zod.def).when??(n.when=mf),e._zod.check=i=>{let t=i.value;t.size<=r.maximum||i.issues.push({origin:_o(t),code:"too_big",maximum:r.maximum,inclusive:!0,input:t,inst:e,continue:!r.abort})}}),bf=S("$ZodCheckMinSize",(e,r)=>{var n;le.init(e,r),(n=e._zod.def).when??(n.when=mf),e._zod.check=i=>{let t=i.value;t.size>=r.minimum||i.issues.push({origin:_o(t),code:"too_small",minimum:r.minimum,inclusive:!0,input:t,inst:e,continue:!r.abort})}}),$f=S("$ZodCheckSizeEquals",(e,r)=>{var n;le.init(e,r),(n=e._zod.def).when??(n.when=mf),e._zod.check=i=>{let t=i.value,o=t.size;if(o===r.size)return;let a=o>r.size;i.issues.push({origin:_o(t),...a?{code:"too_big",maximum:r.size}:{code:"too_small",minimum:r.size},inclusive:!0,exact:!0,input:i.value,inst:e,continue:!r.abort})}}),_f=S("$ZodCheckMaxLength",(e,r)=>{var n;le.init(e,r),(n=e._zod.def).when??(n.when=pf),e._zod.check=i=>{let t=i.value,o=t.length;if((typeof t=="string"&&o>r.maximum?fn(t):o)<=r.maximum)return;let s=wo(t);i.issues.push({origin:s,code:"too_big",maximum:r.maximum,inclusive:!0,input:t,inst:e,continue:!r.abort})}}),wf=S("$ZodCheckMinLength",(e,r)=>{var n;le.init(e,r),(n=e._zod.def).when??(n.when=pf),e._zod.check=i=>{let t=i.value,o=t.length;if((typeof t=="string"&&o>=r.minimum&&o<r.minimum*2?fn(t):o)>=r.minimum)return;let s=wo(t);i.issues.push({origin:s,code:"too_small",minimum:r.minimum,inclusive:!0,input:t,inst:e,continue:!r.abort})}}),Sf=S("$ZodCheckLengthEquals",(e,r)=>{var n;le.init(e,r),(n=e._zod.def).when??(n.when=pf),e._zod.check=i=>{let t=i.value,o=t.length,a=typeof t=="string"&&o>=r.length&&o<=r.length*2?fn(t):o;if(a===r.length)return;let s=wo(t),u=a>r.length;i.issues.push({origin:s,...u?{code:"too_big",maximum:r.length}:{code:"too_small",minimum:r.length},inclusive:!0,exact:!0,input:i.value,inst:e,continue:!r.abort})}}),ai=S("$ZodCheckStringFormat",(e,r)=>{var n,i;le.init(e,r),r.pattern?(n=e._zod).check??(n.check=t=>{r.pattern.lastIndex=0,!r.pattern.test(t.value)&&t.issues.push({origin:"string",code:"invalid_format",format:r.format,input:t.value,...r.pattern?{pattern:r.pattern.toString()}:{},inst:e,continue:!r.abort})}):(i=e._zod).check??(i.check=()=>{})}),If=S("$ZodCheckRegex",(e,r)=>{ai.init(e,r),e._zod.check=n=>{r.pattern.lastIndex=0,!r.pattern.test(n.value)&&n.issues.push({origin:"string",code:"invalid_format",format:"regex",input:n.value,pattern:r.pattern.toString(),inst:e,continue:!r.abort})}}),kf=S("$ZodCheckLowerCase",(e,r)=>{r.pattern??(r.pattern=lf),ai.init(e,r)}),Of=S("$ZodCheckUpperCase",(e,r)=>{r.pattern??(r.pattern=df),ai.init(e,r)}),Nf=S("$ZodCheckIncludes",(e,r)=>{le.init(e,r);let n=vr(r.includes),i=new RegExp(typeof r.position=="number"?`^.{${r.position},}${n}`:n);r.pattern=i,e._zod.check=t=>{t.value.includes(r.includes,r.position)||t.issues.push({origin:"string",code:"invalid_format",format:"includes",includes:r.includes,input:t.value,inst:e,continue:!r.abort})}}),Af=S("$ZodCheckStartsWith",(e,r)=>{le.init(e,r);let n=new RegExp(`^${vr(r.prefix)}.*`);r.pattern??(r.pattern=n),e._zod.check=i=>{i.value.startsWith(r.prefix)||i.issues.push({origin:"string",code:"invalid_format",format:"starts_with",prefix:r.prefix,input:i.value,inst:e,continue:!r.abort})}}),Pf=S("$ZodCheckEndsWith",(e,r)=>{le.init(e,r);let n=new RegExp(`.*${vr(r.suffix)}$`);r.pattern??(r.pattern=n),e._zod.check=i=>{i.value.endsWith(r.suffix)||i.issues.push({origin:"string",code:"invalid_format",format:"ends_with",suffix:r.suffix,input:i.value,inst:e,continue:!r.abort})}});function ks(e,r,n){e.issues.length&&r.issues.push(...ir(n,e.issues))}var xf=S("$ZodCheckProperty",(e,r)=>{le.init(e,r),e._zod.check=n=>{let i=r.schema._zod.run({value:n.value[r.property],issues:[]},{});if(i instanceof Promise)return i.then(t=>ks(t,n,r.property));ks(i,n,r.property)}}),Ef=S("$ZodCheckProperties",(e,r)=>{le.init(e,r),So(e,Symbol.iterator,function*(){yield e});let n;e._zod.check=i=>{if(i.value==null){i.issues.push({expected:"object",code:"invalid_type",input:i.value,inst:e});return}n??(n=Reflect.ownKeys(r.shape).map(a=>[a,r.shape[a]]));let t=i.value,o;for(let[a,s]of n){let u=s._zod.run({value:t[a],issues:[]},{});u instanceof Promise?(o??(o=[]),o.push(u.then(c=>ks(c,i,a)))):ks(u,i,a)}if(o)return Promise.all(o).then(()=>{})}}),Df=S("$ZodCheckMimeType",(e,r)=>{le.init(e,r);let n=new Set(r.mime);e._zod.check=i=>{n.has(i.value.type)||i.issues.push({code:"invalid_value",values:r.mime,input:i.value.type,inst:e,continue:!r.abort})}}),Tf=S("$ZodCheckOverwrite",(e,r)=>{le.init(e,r),e._zod.check=n=>{n.value=r.tx(n.value)}});var pn=class{constructor(r=[],n={}){this.content=[],this.indent=0,this.args=r,this.closed=n}indented(r){this.indent+=1;try{r(this)}finally{this.indent-=1}}write(r){if(typeof r=="function"){r(this,{execution:"sync"}),r(this,{execution:"async"});return}let i=r.split(`
`).filter(a=>a),t=Math.min(...i.map(a=>a.length-a.trimStart().length)),o=i.map(a=>a.slice(t)).map(a=>" ".repeat(this.indent*2)+a);for(let a of o)this.content.push(a)}compile(){let r=Function,n=this?.content??[""];return new r(...Object.keys(this.closed),`return function (${this.args.join(", ")}) {
${n.join(`
`)}
};`)(...Object.values(this.closed))}};var jf={major:4,minor:6,patch:7};var B=S("$ZodType",(e,r)=>{var n;e??(e={}),e._zod.def=r,e._zod.bag=e._zod.bag||{},e._zod.version=jf;let i=e._zod.def.checks,t=e._zod.traits.has("$ZodCheck")?[e,...i??[]]:i?.length?[...i]:[];for(let o of t)for(let a of o._zod.onattach)a(e);if(t.length===0)(n=e._zod).deferred??(n.deferred=[]),e._zod.deferred?.push(()=>{e._zod.run=e._zod.parse});else{let o=(s,u,c)=>{if(s.memo)return s;let l=Ye(s),d;for(let f of u){if(f._zod.def.when){if($d(s)||!f._zod.def.when(s))continue}else if(l)continue;let m=s.issues.length,v=f._zod.check(s);if(v instanceof Promise&&c?.async===!1)throw new ar;if(d||v instanceof Promise)d=(d??Promise.resolve()).then(async()=>{await v,s.issues.length!==m&&($o(s.issues,m,e),l||(l=Ye(s,m)))});else{if(s.issues.length===m)continue;$o(s.issues,m,e),l||(l=Ye(s,m))}}return d?d.then(()=>s):s},a=(s,u,c)=>{if(Ye(s))return s.aborted=!0,s;let l=o(u,t,c);if(l instanceof Promise){if(c.async===!1)throw new ar;return l.then(d=>e._zod.parse(d,c))}return e._zod.parse(l,c)};e._zod.run=(s,u)=>{if(u.skipChecks)return e._zod.parse(s,u);if(u.direction==="backward"){let l=e._zod.parse({value:s.value,issues:[]},{...u,skipChecks:!0});return l instanceof Promise?l.then(d=>a(d,s,u)):a(l,s,u)}let c=e._zod.parse(s,u);if(c instanceof Promise){if(u.async===!1)throw new ar;return c.then(l=>o(l,t,u))}return o(c,t,u)}}},{get"~standard"(){return So(this,"~standard",Ds(this))},set"~standard"(e){St(this,"~standard",e)}}),My=(e,r)=>e.issues.length?{issues:e.issues.map(n=>or(n,r,ke()))}:{value:e.value};async function GR(e,r){let n={async:!0};return My(await e._zod.run({value:r,issues:[]},n),n)}function Ds(e){return{validate:r=>{let n={async:!1};try{let i=e._zod.run({value:r,issues:[]},n);if(!(i instanceof Promise))return My(i,n)}catch{}return GR(e,r)},vendor:"zod",version:1}}var vn=S("$ZodString",(e,r)=>{B.init(e,r),e._zod.pattern=r.pattern??nf,e._zod.parse=(n,i)=>{if(r.coerce)try{n.value=String(n.value)}catch{}return typeof n.value=="string"||n.issues.push({expected:"string",code:"invalid_type",input:n.value,inst:e}),n}}),ne=S("$ZodStringFormat",(e,r)=>{ai.init(e,r),vn.init(e,r)}),Cf=S("$ZodGUID",(e,r)=>{r.pattern??(r.pattern=Fd),ne.init(e,r)}),qf=S("$ZodUUID",(e,r)=>{if(r.version){let i={v1:1,v2:2,v3:3,v4:4,v5:5,v6:6,v7:7,v8:8}[r.version];if(i===void 0)throw new Error(`Invalid UUID version: "${r.version}"`);r.pattern??(r.pattern=mn(i))}else r.pattern??(r.pattern=mn());ne.init(e,r)}),Rf=S("$ZodEmail",(e,r)=>{r.pattern??(r.pattern=Md),ne.init(e,r)}),Uf=1,Do=2;function Ff(e){try{return typeof URL<"u"&&typeof URL.canParse=="function"?URL.canParse(e):(new URL(e),!0)}catch{return!1}}function Ts(e,r){return!("normalize"in r)&&!("hostname"in r)&&!("protocol"in r)?Ff(e)||Do:Ly(e,r)}function Ly(e,r){if(!r.normalize&&r.protocol?.source===Ao.source&&!/^https?:\/\//i.test(e))return Uf;try{if(typeof URL<"u"){let n=URL;if(typeof n.parse=="function")return n.parse(e)??Do}return new URL(e)}catch{return Do}}var HR=/[\t\n\r]/g;function To(e){return e.replace(HR,"")}function js(e,r){return r.lastIndex=0,r.test(e.hostname)}function zs(e,r){return r.lastIndex=0,r.test(e.protocol.endsWith(":")?e.protocol.slice(0,-1):e.protocol)}var Mf=S("$ZodURL",(e,r)=>{ne.init(e,r),e._zod.check=n=>{try{let i=n.value.trim(),t=Ts(i,r);if(t===Uf){n.issues.push({code:"invalid_format",format:"url",note:"Invalid URL format",input:n.value,inst:e,continue:!r.abort});return}if(t===Do){n.issues.push({code:"invalid_format",format:"url",input:n.value,inst:e,continue:!r.abort});return}if(t===!0){n.value=To(i);return}r.hostname&&!js(t,r.hostname)&&n.issues.push({code:"invalid_format",format:"url",note:"Invalid hostname",pattern:r.hostname.source,input:n.value,inst:e,continue:!r.abort}),r.protocol&&!zs(t,r.protocol)&&n.issues.push({code:"invalid_format",format:"url",note:"Invalid protocol",pattern:r.protocol.source,input:n.value,inst:e,continue:!r.abort}),n.value=r.normalize?t.href:To(i);return}catch{n.issues.push({code:"invalid_format",format:"url",input:n.value,inst:e,continue:!r.abort})}}}),Lf=S("$ZodEmoji",(e,r)=>{r.pattern??(r.pattern=Ld()),ne.init(e,r)}),Zf=S("$ZodNanoID",(e,r)=>{if(r.length!==void 0&&(!Number.isInteger(r.length)||r.length<1))throw new Error(`Invalid nanoid length: ${r.length}`);r.pattern??(r.pattern=r.length===void 0?qd:Rd(r.length)),ne.init(e,r)}),Vf=S("$ZodCUID",(e,r)=>{r.pattern??(r.pattern=Dd),ne.init(e,r)}),Bf=S("$ZodCUID2",(e,r)=>{r.pattern??(r.pattern=Td),ne.init(e,r)}),Wf=S("$ZodULID",(e,r)=>{r.pattern??(r.pattern=jd),ne.init(e,r)}),Gf=S("$ZodXID",(e,r)=>{r.pattern??(r.pattern=zd),ne.init(e,r)}),Hf=S("$ZodKSUID",(e,r)=>{r.pattern??(r.pattern=Cd),ne.init(e,r)}),Jf=S("$ZodISODateTime",(e,r)=>{r.pattern??(r.pattern=tf(r)),ne.init(e,r)}),Kf=S("$ZodISODate",(e,r)=>{r.pattern??(r.pattern=ef),ne.init(e,r)}),Xf=S("$ZodISOTime",(e,r)=>{r.pattern??(r.pattern=rf(r)),ne.init(e,r)}),Qf=S("$ZodISODuration",(e,r)=>{r.pattern??(r.pattern=Ud),ne.init(e,r)}),Yf=S("$ZodIPv4",(e,r)=>{r.pattern??(r.pattern=Zd),ne.init(e,r)}),JR=/^[0-9a-fA-F:.]+$/;function jo(e){return JR.test(e)?Ff(`http://[${e}]`):!1}var em=S("$ZodIPv6",(e,r)=>{r.pattern??(r.pattern=Vd),ne.init(e,r),e._zod.check=n=>{jo(n.value)||n.issues.push({code:"invalid_format",format:"ipv6",input:n.value,inst:e,continue:!r.abort})}}),rm=S("$ZodMAC",(e,r)=>{r.pattern??(r.pattern=Bd(r.delimiter)),ne.init(e,r)}),tm=S("$ZodCIDRv4",(e,r)=>{r.pattern??(r.pattern=Wd),ne.init(e,r)});function Cs(e){let r=e.split("/");if(r.length!==2)return!1;let[n,i]=r;if(!i)return!1;let t=Number(i);return`${t}`!==i||t<0||t>128?!1:jo(n)}var nm=S("$ZodCIDRv6",(e,r)=>{r.pattern??(r.pattern=Gd),ne.init(e,r),e._zod.check=n=>{Cs(n.value)||n.issues.push({code:"invalid_format",format:"cidrv6",input:n.value,inst:e,continue:!r.abort})}});function zo(e){if(e==="")return!0;if(/\s/.test(e)||e.length%4!==0)return!1;try{return atob(e),!0}catch{return!1}}var qs=/^[0-9a-zA-Z+/]*={0,2}$/,im=S("$ZodBase64",(e,r)=>{r.pattern??(r.pattern=qs),ne.init(e,r),e._zod.check=n=>{zo(n.value)||n.issues.push({code:"invalid_format",format:"base64",input:n.value,inst:e,continue:!r.abort})}}),Co=/^[A-Za-z0-9_-]*$/;function Rs(e){if(!Co.test(e))return!1;let r=e.replace(/[-_]/g,i=>i==="-"?"+":"/"),n=r.padEnd(Math.ceil(r.length/4)*4,"=");return zo(n)}var om=S("$ZodBase64URL",(e,r)=>{r.pattern??(r.pattern=Co),ne.init(e,r),e._zod.check=n=>{Rs(n.value)||n.issues.push({code:"invalid_format",format:"base64url",input:n.value,inst:e,continue:!r.abort})}}),am=S("$ZodE164",(e,r)=>{r.pattern??(r.pattern=Qd),ne.init(e,r)}),KR=/[- ]/g;function XR(e){let r=e.length,n=1,i=0;for(;r;){let t=e.charCodeAt(--r)-48;n^=1,i+=n?[0,2,4,6,8,1,3,5,7,9][t]:t}return i%10===0}function Us(e){return ws.test(e)?XR(e.replace(KR,"")):!1}var sm=S("$ZodCreditCard",(e,r)=>{r.pattern??(r.pattern=ws),ne.init(e,r),e._zod.check=n=>{Us(n.value)||n.issues.push({code:"invalid_format",format:"credit_card",input:n.value,inst:e,continue:!r.abort})}});function QR(e){let r=0,n=e.length;for(let i=4;i<n;i++){let t=e.charCodeAt(i);r=(t>=65?r*100+(t-55):r*10+(t-48))%97}for(let i=0;i<4;i++){let t=e.charCodeAt(i);r=(t>=65?r*100+(t-55):r*10+(t-48))%97}return r===1}function Fs(e){return Ss.test(e)?QR(e):!1}var um=S("$ZodIBAN",(e,r)=>{r.pattern??(r.pattern=Ss),ne.init(e,r),e._zod.check=n=>{Fs(n.value)||n.issues.push({code:"invalid_format",format:"iban",input:n.value,inst:e,continue:!r.abort})}});function Ms(e,r=null){try{let n=e.split(".");if(n.length!==3)return!1;let[i]=n;if(!i)return!1;let t=JSON.parse(atob(i));return!("typ"in t&&t?.typ!=="JWT"||!t.alg||r&&(!("alg"in t)||t.alg!==r))}catch{return!1}}var cm=S("$ZodJWT",(e,r)=>{ne.init(e,r),e._zod.check=n=>{Ms(n.value,r.alg)||n.issues.push({code:"invalid_format",format:"jwt",input:n.value,inst:e,continue:!r.abort})}}),lm=S("$ZodCustomStringFormat",(e,r)=>{ne.init(e,r),e._zod.check=n=>{r.fn(n.value)||n.issues.push({code:"invalid_format",format:r.format,input:n.value,inst:e,continue:!r.abort})}}),Ls=S("$ZodNumber",(e,r)=>{B.init(e,r),e._zod.pattern=tt,e._zod.parse=(n,i)=>{if(r.coerce)try{n.value=Number(n.value)}catch{}let t=n.value;if(typeof t=="number"&&!Number.isNaN(t)&&Number.isFinite(t))return n;let o=typeof t=="number"?Number.isNaN(t)?"NaN":Number.isFinite(t)?void 0:String(t):void 0;return n.issues.push({expected:"number",code:"invalid_type",input:t,inst:e,...o?{received:o}:{}}),n}}),dm=S("$ZodNumberFormat",(e,r)=>{gf.init(e,r),Ls.init(e,r)}),qo=S("$ZodBoolean",(e,r)=>{B.init(e,r),e._zod.pattern=sf,e._zod.parse=(n,i)=>{if(r.coerce)try{n.value=!!n.value}catch{}let t=n.value;return typeof t=="boolean"||n.issues.push({expected:"boolean",code:"invalid_type",input:t,inst:e}),n}}),Zs=S("$ZodBigInt",(e,r)=>{B.init(e,r),e._zod.pattern=af,e._zod.parse=(n,i)=>{if(r.coerce)try{n.value=BigInt(n.value)}catch{}return typeof n.value=="bigint"||n.issues.push({expected:"bigint",code:"invalid_type",input:n.value,inst:e}),n}}),fm=S("$ZodBigIntFormat",(e,r)=>{hf.init(e,r),Zs.init(e,r)}),mm=S("$ZodSymbol",(e,r)=>{B.init(e,r),e._zod.parse=(n,i)=>{let t=n.value;return typeof t=="symbol"||n.issues.push({expected:"symbol",code:"invalid_type",input:t,inst:e}),n}}),pm=S("$ZodUndefined",(e,r)=>{B.init(e,r),e._zod.pattern=cf,e._zod.values=new Set([void 0]),e._zod.parse=(n,i)=>{let t=n.value;return typeof t>"u"||n.issues.push({expected:"undefined",code:"invalid_type",input:t,inst:e}),n}}),vm=S("$ZodNull",(e,r)=>{B.init(e,r),e._zod.pattern=uf,e._zod.values=new Set([null]),e._zod.parse=(n,i)=>{let t=n.value;return t===null||n.issues.push({expected:"null",code:"invalid_type",input:t,inst:e}),n}}),gm=S("$ZodAny",(e,r)=>{B.init(e,r),e._zod.parse=n=>n}),hm=S("$ZodUnknown",(e,r)=>{B.init(e,r),e._zod.parse=n=>n}),ym=S("$ZodNever",(e,r)=>{B.init(e,r),e._zod.parse=(n,i)=>(n.issues.push({expected:"never",code:"invalid_type",input:n.value,inst:e}),n)}),bm=S("$ZodVoid",(e,r)=>{B.init(e,r),e._zod.parse=(n,i)=>{let t=n.value;return typeof t>"u"||n.issues.push({expected:"void",code:"invalid_type",input:t,inst:e}),n}}),$m=S("$ZodDate",(e,r)=>{B.init(e,r),e._zod.parse=(n,i)=>{if(r.coerce)try{n.value=new Date(n.value)}catch{}let t=n.value,o=t instanceof Date;return o&&!Number.isNaN(t.getTime())||n.issues.push({expected:"date",code:"invalid_type",input:t,...o?{received:"Invalid Date"}:{},inst:e}),n}});function _m(e,r){let n=ei(e._zod.def.checks);if(!n.length)return;let i=Math.min(...n.map(o=>o[0])),t=e._zod.parse;e._zod.parse=(o,a)=>{let s=r(o.value);if(s>i&&!a?.skipChecks&&a?.direction!=="backward"){for(let[u,c]of ei(e._zod.def.checks))if(s>u&&c._zod.def.when(o)){let l=o.issues.length;return c._zod.check(o),o.issues[l].continue=!1,$o(o.issues,l,e),o}}return t(o,a)}}var YR=e=>Array.isArray(e)?e.length:-1,eU=e=>e instanceof Map?e.size:-1,rU=e=>e instanceof Set?e.size:-1;function Oy(e,r,n){e.issues.length&&r.issues.push(...ir(n,e.issues)),r.value[n]=e.value}var wm=S("$ZodArray",(e,r)=>{B.init(e,r);let n=Ce.memoizer;n?.attach(e),e._zod.parse=(i,t)=>{let o=i.value;if(!Array.isArray(o))return i.issues.push({expected:"array",code:"invalid_type",input:o,inst:e}),i;i.value=n?n.alloc(e,i,Array(o.length),t):Array(o.length);let a=[],s=t?.abortEarly;for(let u=0;u<o.length;u++){let c=o[u],l=r.element._zod.run({value:c,issues:[]},t);if(l instanceof Promise)a.push(l.then(d=>Oy(d,i,u)));else if(Oy(l,i,u),s&&l.issues.length!==0&&Ye(l))break}return a.length?Promise.all(a).then(()=>i):i},_m(e,YR)});function Es(e,r,n,i,t,o){let a=n in i,s=o==="optional";if(!(!a&&s&&t==="optional")){if(e.issues.length){if(t!==void 0&&s&&!a)return;r.issues.push(...ir(n,e.issues))}if(!a&&t===void 0){e.issues.length||r.issues.push({code:"invalid_type",expected:"nonoptional",input:void 0,path:[n]});return}e.value===void 0?(a||t==="defaulted"&&!s)&&(r.value[n]=void 0):r.value[n]=e.value}}var tU=[];function Zy(e){let r=Object.keys(e.shape),n=Object.getOwnPropertySymbols(e.shape),i=n.length?n:tU,t=i.length?[...r,...i]:r;for(let a of t)if(!e.shape?.[a]?._zod?.traits?.has("$ZodType"))throw new Error(`Invalid element at key "${String(a)}": expected a Zod schema`);let o=bd(e.shape);return{...e,allKeys:t,symbolKeys:i,keySet:new Set(r),numKeys:r.length,optionalKeys:new Set(o)}}function Vy(e,r,n,i,t,o,a){let s=[],u=t.keySet,c=t.catchall._zod,l=c.def.type,d=c.optin,f=c.optout,m=0;for(let v in r){if(a&&n.issues.length!==m){if(Ye(n,m))break;m=n.issues.length}if(u.has(v))continue;if(v==="__proto__"){l==="never"&&s.push(v);continue}if(l==="never"){s.push(v);continue}let h=c.run({value:r[v],issues:[]},i);h instanceof Promise?e.push(h.then(y=>Es(y,n,v,r,d,f))):Es(h,n,v,r,d,f)}return s.length&&n.issues.push({code:"unrecognized_keys",keys:s,input:r,inst:o,continue:!0}),e.length?Promise.all(e).then(()=>n):n}var By=S("$ZodObject",(e,r)=>{B.init(e,r);let n=Object.getOwnPropertyDescriptor(r,"shape"),i=n?.get?n.get.raw:r.shape??{};if(i){let c=()=>{let l={...i};return Object.defineProperty(r,"shape",{value:l}),c.raw=l,l};c.raw=i,Object.defineProperty(r,"shape",{get:c})}let t=Qn(()=>Zy(r));H(e,"propValues",c=>{let l=c.def.shape,d={};for(let f in l){let m=l[f]._zod;if(m.values){Object.prototype.hasOwnProperty.call(d,f)||Fe(d,f,new Set);for(let v of m.values)d[f].add(v);m.optin!==void 0&&d[f].add(void 0)}}return d});let o=dn,a=r.catchall,s,u=Ce.memoizer;u?.attach(e),e._zod.parse=(c,l)=>{s??(s=t.value);let d=c.value;if(!o(d))return c.issues.push({expected:"object",code:"invalid_type",input:d,inst:e}),c;c.value=u?u.alloc(e,c,{},l):{};let f=[],m=s.shape,v=l?.abortEarly,h=c.issues.length;for(let y of s.allKeys){if(v&&c.issues.length!==h){if(Ye(c,h))break;h=c.issues.length}if(y==="__proto__")continue;let b=m[y],_=b._zod.optin,$=b._zod.optout,N=b._zod.run({value:d[y],issues:[]},l);N instanceof Promise?f.push(N.then(w=>Es(w,c,y,d,_,$))):Es(N,c,y,d,_,$)}return a?Vy(f,d,c,l,t.value,e,v===!0):f.length?Promise.all(f).then(()=>c):c}}),Sm=S("$ZodObjectJIT",(e,r)=>{By.init(e,r);let n=e._zod.parse,i=Qn(()=>Zy(r)),t=Ce.memoizer,o=m=>{let v=i.value,h=v.symbolKeys,y=new pn(["payload","ctx"],{shape:m,inst:e,memo:t,syms:h}),b=w=>`shape[${w}]._zod.run({ value: input[${w}], issues: [] }, ctx)`,_=(w,O)=>`
          let ${w}_ab = false;
          for (let i = 0; i < ${w}.issues.length; i++) {
            const iss = ${w}.issues[i];
            iss.path = iss.path ? [${O}, ...iss.path] : [${O}];
            payload.issues.push(iss);
            if (iss.continue !== true) ${w}_ab = true;
          }
          if (${w}_ab && ctx && ctx.abortEarly) {
            payload.value = newResult;
            return payload;
          }`;y.write("const input = payload.value;");let $=Object.create(null),N=0;for(let w of v.allKeys)$[w]=`key_${N++}`;y.write(t?"const newResult = memo.alloc(inst, payload, {}, ctx);":"const newResult = {};");for(let w of v.allKeys){if(w==="__proto__")continue;let O=$[w],k=typeof w=="symbol"?`syms[${h.indexOf(w)}]`:Qe(w),D=`${k} in input`,F=m[w],re=F?._zod?.optin,se=re!==void 0,me=F?._zod?.optout==="optional";if(y.write(`const ${O} = ${b(k)};`),se&&me){let we=re==="optional"?`${O}_present`:`${O}.value !== undefined || ${O}_present`;y.write(`
        const ${O}_present = ${D};
        if (!${O}.issues.length || ${O}_present) {
          if (${O}.issues.length) {${_(O,k)}
          }

          if (${we}) {
            newResult[${k}] = ${O}.value;
          }
        }

      `)}else se?(y.write(`
        if (${O}.issues.length) {${_(O,k)}
        }
      `),re==="defaulted"?y.write(`newResult[${k}] = ${O}.value;`):y.write(`
        if (${O}.value !== undefined || ${D}) {
          newResult[${k}] = ${O}.value;
        }
      `)):y.write(`
        const ${O}_present = ${D};
        if (${O}.issues.length) {${_(O,k)}
        }
        if (!${O}_present && !${O}.issues.length) {
          payload.issues.push({
            code: "invalid_type",
            expected: "nonoptional",
            input: undefined,
            path: [${k}]
          });
          if (ctx && ctx.abortEarly) {
            payload.value = newResult;
            return payload;
          }
        }

        if (${O}_present) {
          newResult[${k}] = ${O}.value;
        }

      `)}return y.write("payload.value = newResult;"),y.write("return payload;"),y.compile()},a,s=dn,u=!Ce.jitless,l=u&&hd.value,d=r.catchall,f;e._zod.parse=(m,v)=>{f??(f=i.value);let h=m.value;return s(h)?u&&l&&v?.async===!1&&v.jitless!==!0?(a||(a=o(r.shape)),m=a(m,v),d?Vy([],h,m,v,f,e,v?.abortEarly===!0):m):n(m,v):(m.issues.push({expected:"object",code:"invalid_type",input:h,inst:e}),m)}});function Ny(e,r,n,i){for(let o of e)if(o.issues.length===0)return r.value=o.value,r;let t=e.filter(o=>!Ye(o));return t.length===1?(r.value=t[0].value,t[0]):(r.issues.push({code:"invalid_union",input:r.value,inst:n,errors:e.map(o=>o.issues.map(a=>or(a,i,ke())))}),r)}var Ro=S("$ZodUnion",(e,r)=>{B.init(e,r),H(e,"optin",i=>i.def.options.some(t=>t._zod.optin==="defaulted")?"defaulted":i.def.options.some(t=>t._zod.optin!==void 0)?"optional":void 0),H(e,"optout",i=>i.def.options.some(t=>t._zod.optout==="optional")?"optional":void 0),H(e,"values",i=>{if(i.def.options.every(t=>t._zod.values))return new Set(i.def.options.flatMap(t=>Array.from(t._zod.values)))}),H(e,"pattern",i=>{if(i.def.options.every(t=>t._zod.pattern)){let t=i.def.options.map(o=>o._zod.pattern);return new RegExp(`^(${t.map(o=>rt(o.source)).join("|")})$`)}});let n=r.options.length===1?r.options[0]._zod.run:null;e._zod.parse=(i,t)=>{if(n)return n(i,t);let o=!1,a=[];for(let s of r.options){let u=s._zod.run({value:i.value,issues:[]},t);if(u instanceof Promise)a.push(u),o=!0;else{if(u.issues.length===0)return u;a.push(u)}}return o?Promise.all(a).then(s=>Ny(s,i,e,t)):Ny(a,i,e,t)}});function Ay(e,r,n,i){let t=[];for(let o=0;o<e.length;o++)e[o].issues.length===0&&t.push(o);return t.length===1?(r.value=e[t[0]].value,r):(t.length===0?r.issues.push({code:"invalid_union",input:r.value,inst:n,errors:e.map(o=>o.issues.map(a=>or(a,i,ke())))}):r.issues.push({code:"invalid_union",input:r.value,inst:n,errors:[],inclusive:!1,matches:t}),r)}var Im=S("$ZodXor",(e,r)=>{Ro.init(e,r),r.inclusive=!1;let n=r.options.length===1?r.options[0]._zod.run:null;e._zod.parse=(i,t)=>{if(n)return n(i,t);let o=!1,a=[];for(let s of r.options){let u=s._zod.run({value:i.value,issues:[]},t);u instanceof Promise?(a.push(u),o=!0):a.push(u)}return o?Promise.all(a).then(s=>Ay(s,i,e,t)):Ay(a,i,e,t)}});function km(e,r){let n=e._zod,i=n.bag.optionsMap;i||(i=Wy(n.def),n.bag.optionsMap=i);let t=i.get(r);if(t===null)throw new Error(`Ambiguous discriminator value "${String(r)}"`);return t}function Wy(e){let r=new Map;for(let n of e.options){let i=n._zod.propValues?.[e.discriminator];if(!i||i.size===0)throw new Error(`Invalid discriminated union option at index "${e.options.indexOf(n)}"`);for(let t of i)if(r.has(t)){if(t!==void 0)throw new Error(`Duplicate discriminator value "${String(t)}"`);r.set(t,null)}else r.set(t,n)}return r}var Om=S("$ZodDiscriminatedUnion",(e,r)=>{r.inclusive=!1,Ro.init(e,r);let n=e._zod.parse;H(e,"propValues",t=>{let o={},a=0;for(let s of t.def.options){let u=s._zod.propValues;if(!u||Object.keys(u).length===0)throw new Error(`Invalid discriminated union option at index "${t.def.options.indexOf(s)}"`);u[t.def.discriminator]?.has(void 0)&&a++;for(let[c,l]of Object.entries(u)){Object.prototype.hasOwnProperty.call(o,c)||Fe(o,c,new Set);for(let d of l)o[c].add(d)}}return!t.def.unionFallback&&a>1&&o[t.def.discriminator]?.delete(void 0),o}),r.options.forEach((t,o)=>{let a=Yn(t._zod.def);if(a&&!Object.prototype.hasOwnProperty.call(a,r.discriminator))throw new Error(`Invalid discriminated union option at index "${o}"`)});let i=Qn(()=>Wy(r));e._zod.parse=(t,o)=>{let a=t.value;if(!dn(a))return t.issues.push({code:"invalid_type",expected:"object",input:a,inst:e}),t;let s=a?.[r.discriminator],u=i.value.get(s);return u&&(s!==void 0||o.direction!=="backward")?u._zod.run(t,o):r.unionFallback||o.direction==="backward"?n(t,o):(t.issues.push({code:"invalid_union",errors:[],note:"No matching discriminator",discriminator:r.discriminator,options:Array.from(i.value.keys()).filter(c=>i.value.get(c)!==null),input:a,path:[r.discriminator],inst:e}),t)}}),Nm=S("$ZodIntersection",(e,r)=>{B.init(e,r),e._zod.parse=(n,i)=>{let t=n.value,o=r.left._zod.run({value:t,issues:[]},i),a=r.right._zod.run({value:t,issues:[]},i);return o instanceof Promise||a instanceof Promise?Promise.all([o,a]).then(([u,c])=>Py(n,u,c)):Py(n,o,a)}});function si(e,r){if(e===r)return{valid:!0,data:e};if(e instanceof Date&&r instanceof Date&&+e==+r)return{valid:!0,data:e};if(pr(e)&&pr(r)){let n=Object.keys(r),i=Object.keys(e).filter(o=>n.indexOf(o)!==-1),t={...e,...r};Object.prototype.hasOwnProperty.call(t,"__proto__")&&delete t.__proto__;for(let o of i){if(o==="__proto__")continue;let a=si(e[o],r[o]);if(!a.valid)return{valid:!1,mergeErrorPath:[o,...a.mergeErrorPath]};t[o]=a.data}return{valid:!0,data:t}}if(Array.isArray(e)&&Array.isArray(r)){if(e.length!==r.length)return{valid:!1,mergeErrorPath:[]};let n=[];for(let i=0;i<e.length;i++){let t=e[i],o=r[i],a=si(t,o);if(!a.valid)return{valid:!1,mergeErrorPath:[i,...a.mergeErrorPath]};n.push(a.data)}return{valid:!0,data:n}}return{valid:!1,mergeErrorPath:[]}}function Py(e,r,n){let i=new Map,t,o=new Map,a=(c,l)=>{let d;if(c.code==="unrecognized_keys"&&!c.path?.length)t??(t=c),d=c.keys;else if(c.code==="invalid_key"&&c.origin==="record"&&c.path?.length===1){let f=String(c.path[0]);o.has(f)||o.set(f,c),d=[f]}else return!1;for(let f of d)i.has(f)||i.set(f,{}),i.get(f)[l]=!0;return!0};for(let c of r.issues)a(c,"l")||e.issues.push(c);for(let c of n.issues)a(c,"r")||e.issues.push(c);let s=[...i].filter(([,c])=>c.l&&c.r).map(([c])=>c);if(s.length){let c=t?s.filter(l=>t.keys.includes(l)):[];c.length&&e.issues.push({...t,keys:c});for(let l of s)!c.includes(l)&&o.has(l)&&e.issues.push(o.get(l))}let u=si(r.value,n.value);if(!u.valid){if(Ye(e))return e;throw new Error(`Unmergable intersection. Error path: ${JSON.stringify(u.mergeErrorPath)}`)}return e.value=u.data,e}var Vs=S("$ZodTuple",(e,r)=>{B.init(e,r);let n=r.items,i=Ce.memoizer;i?.attach(e),e._zod.parse=(t,o)=>{let a=t.value;if(!Array.isArray(a))return t.issues.push({input:a,inst:e,expected:"tuple",code:"invalid_type"}),t;t.value=i?i.alloc(e,t,[],o):[];let s=[],u=xy(n,"optin"),c=xy(n,"optout");if(!r.rest){if(a.length<u)return t.issues.push({code:"too_small",minimum:u,inclusive:!0,input:a,inst:e,origin:"array"}),t;a.length>n.length&&t.issues.push({code:"too_big",maximum:n.length,inclusive:!0,input:a,inst:e,origin:"array"})}let l=new Array(n.length),d=r.rest?o?.abortEarly:void 0,f=!1;for(let m=0;m<n.length;m++){let v=n[m]._zod.run({value:a[m],issues:[]},o);v instanceof Promise?s.push(v.then(h=>{l[m]=h})):(l[m]=v,d&&!f&&v.issues.length&&(f=Ye(v)))}if(r.rest&&!f){let m=n.length-1,v=a.slice(n.length),h=t.issues.length;for(let y of v){if(d&&t.issues.length!==h){if(Ye(t,h))break;h=t.issues.length}m++;let b=r.rest._zod.run({value:y,issues:[]},o);b instanceof Promise?s.push(b.then(_=>Ey(_,t,m))):Ey(b,t,m)}}return s.length?Promise.all(s).then(()=>Dy(l,t,n,a,c)):Dy(l,t,n,a,c)}});function xy(e,r){for(let n=e.length-1;n>=0;n--)if(!(r==="optin"?e[n]._zod.optin!==void 0:e[n]._zod.optout==="optional"))return n+1;return 0}function Ey(e,r,n){e.issues.length&&r.issues.push(...ir(n,e.issues)),r.value[n]=e.value}function Dy(e,r,n,i,t){for(let o=0;o<n.length;o++){let a=e[o],s=o<i.length;if(!s&&o>=t&&n[o]._zod.optin==="optional"){r.value.length=o;break}if(a.issues.length){if(!s&&o>=t){r.value.length=o;break}r.issues.push(...ir(o,a.issues))}r.value[o]=a.value}for(let o=r.value.length-1;o>=i.length&&(n[o]._zod.optout==="optional"&&r.value[o]===void 0);o--)r.value.length=o;return r}var Am=S("$ZodRecord",(e,r)=>{B.init(e,r);let n=Ce.memoizer;n?.attach(e),e._zod.parse=(i,t)=>{let o=i.value;if(!pr(o))return i.issues.push({expected:"record",code:"invalid_type",input:o,inst:e}),i;let a=[],s=r.keyType._zod.values;if(s&&!r.partial){i.value=n?n.alloc(e,i,{},t):{};let u=new Set;for(let l of s)if(typeof l=="string"||typeof l=="number"||typeof l=="symbol"){if(u.add(typeof l=="number"?l.toString():l),l==="__proto__")continue;let d=r.keyType._zod.run({value:l,issues:[]},t);if(d instanceof Promise)throw new Error("Async schemas not supported in object keys currently");if(d.issues.length){i.issues.push({code:"invalid_key",origin:"record",issues:d.issues.map(v=>or(v,t,ke())),input:l,path:[l],inst:e});continue}let f=d.value;if(f==="__proto__")continue;let m=r.valueType._zod.run({value:o[l],issues:[]},t);m instanceof Promise?a.push(m.then(v=>{v.issues.length&&i.issues.push(...ir(l,v.issues)),i.value[f]=v.value})):(m.issues.length&&i.issues.push(...ir(l,m.issues)),i.value[f]=m.value)}let c;for(let l in o)if(!u.has(l))if(r.mode==="loose"){if(l==="__proto__")continue;i.value[l]=o[l]}else c=c??[],c.push(l);c&&c.length>0&&i.issues.push({code:"unrecognized_keys",input:o,inst:e,keys:c,continue:!0})}else{i.value=n?n.alloc(e,i,{},t):{};let u;for(let c of Reflect.ownKeys(o)){if(c==="__proto__"||!Object.prototype.propertyIsEnumerable.call(o,c))continue;let l=r.keyType._zod.run({value:c,issues:[]},t);if(l instanceof Promise)throw new Error("Async schemas not supported in object keys currently");if(typeof c=="string"&&tt.test(c)&&l.issues.length){let v=r.keyType._zod.run({value:Number(c),issues:[]},t);if(v instanceof Promise)throw new Error("Async schemas not supported in object keys currently");v.issues.length===0&&(l=v)}if(l.issues.length){r.mode==="loose"?i.value[c]=o[c]:s?(u=u??[],u.push(c)):i.issues.push({code:"invalid_key",origin:"record",issues:l.issues.map(v=>or(v,t,ke())),input:c,path:[c],inst:e});continue}let f=l.value;if(f==="__proto__")continue;let m=r.valueType._zod.run({value:o[c],issues:[]},t);m instanceof Promise?a.push(m.then(v=>{v.issues.length&&i.issues.push(...ir(c,v.issues)),i.value[f]=v.value})):(m.issues.length&&i.issues.push(...ir(c,m.issues)),i.value[f]=m.value)}u&&u.length>0&&i.issues.push({code:"unrecognized_keys",input:o,inst:e,keys:u,continue:!0})}return a.length?Promise.all(a).then(()=>i):i}}),Pm=S("$ZodMap",(e,r)=>{B.init(e,r);let n=Ce.memoizer;n?.attach(e),e._zod.parse=(i,t)=>{let o=i.value;if(!(o instanceof Map))return i.issues.push({expected:"map",code:"invalid_type",input:o,inst:e}),i;let a=[];i.value=n?n.alloc(e,i,new Map,t):new Map;let s=t?.abortEarly,u=i.issues.length;for(let[c,l]of o){if(s&&i.issues.length!==u){if(Ye(i,u))break;u=i.issues.length}let d=r.keyType._zod.run({value:c,issues:[]},t),f=r.valueType._zod.run({value:l,issues:[]},t);d instanceof Promise||f instanceof Promise?a.push(Promise.all([d,f]).then(([m,v])=>{Ty(m,v,i,c,o,e,t)})):Ty(d,f,i,c,o,e,t)}return a.length?Promise.all(a).then(()=>i):i},_m(e,eU)});function Ty(e,r,n,i,t,o,a){e.issues.length&&(ho.has(typeof i)?n.issues.push(...ir(i,e.issues)):n.issues.push({code:"invalid_key",origin:"map",input:t,inst:o,issues:e.issues.map(s=>or(s,a,ke()))})),r.issues.length&&(ho.has(typeof i)?n.issues.push(...ir(i,r.issues)):n.issues.push({origin:"map",code:"invalid_element",input:t,inst:o,key:i,issues:r.issues.map(s=>or(s,a,ke()))})),n.value.set(e.value,r.value)}var xm=S("$ZodSet",(e,r)=>{B.init(e,r);let n=Ce.memoizer;n?.attach(e),e._zod.parse=(i,t)=>{let o=i.value;if(!(o instanceof Set))return i.issues.push({input:o,inst:e,expected:"set",code:"invalid_type"}),i;let a=[];i.value=n?n.alloc(e,i,new Set,t):new Set;let s=t?.abortEarly,u=i.issues.length;for(let c of o){if(s&&i.issues.length!==u){if(Ye(i,u))break;u=i.issues.length}let l=r.valueType._zod.run({value:c,issues:[]},t);l instanceof Promise?a.push(l.then(d=>jy(d,i))):jy(l,i)}return a.length?Promise.all(a).then(()=>i):i},_m(e,rU)});function jy(e,r){e.issues.length&&r.issues.push(...e.issues),r.value.add(e.value)}var Em=S("$ZodEnum",(e,r)=>{B.init(e,r);let n=Kn(r.entries),i=new Set(n);e._zod.values=i,H(e,"pattern",t=>{let o=Kn(t.def.entries).filter(a=>ho.has(typeof a));return new RegExp(o.length?`^(${o.map(a=>vr(a.toString())).join("|")})$`:"^[^\\s\\S]$")}),e._zod.parse=(t,o)=>{let a=t.value;return i.has(a)||t.issues.push({code:"invalid_value",values:n,input:a,inst:e}),t}}),Dm=S("$ZodLiteral",(e,r)=>{B.init(e,r);let n=new Set(r.values);e._zod.values=n,H(e,"pattern",i=>{let t=i.def.values;return new RegExp(t.length?`^(${t.map(o=>typeof o=="string"?vr(o):o?vr(o.toString()):String(o)).join("|")})$`:"^[^\\s\\S]$")}),e._zod.parse=(i,t)=>{let o=i.value;return n.has(o)||i.issues.push({code:"invalid_value",values:r.values,input:o,inst:e}),i}}),Tm=S("$ZodFile",(e,r)=>{B.init(e,r),e._zod.parse=(n,i)=>{let t=n.value;return t instanceof File||n.issues.push({expected:"file",code:"invalid_type",input:t,inst:e}),n}}),jm=S("$ZodTransform",(e,r)=>{B.init(e,r),e._zod.optin="optional",Ce.memoizer?.guard(e),e._zod.parse=(n,i)=>{if(i.direction==="backward")throw new It(e.constructor.name);let t=r.transform(n.value,n);if(i.async)return(t instanceof Promise?t:Promise.resolve(t)).then(a=>(n.value=a,n));if(t instanceof Promise)throw new ar;return n.value=t,n}});function zy(e,r){return e.value=r.issues.length?void 0:r.value,e}var Bs=S("$ZodOptional",(e,r)=>{B.init(e,r),H(e,"optin",n=>n.def.innerType._zod.optin==="defaulted"?"defaulted":"optional"),e._zod.optout="optional",H(e,"values",n=>{let i=n.def.innerType._zod.values;return i?new Set([...i,void 0]):void 0}),H(e,"pattern",n=>{let i=n.def.innerType._zod.pattern;return i?new RegExp(`^(${rt(i.source)})?$`):void 0}),e._zod.parse=(n,i)=>{if(n.value===void 0){if(r.innerType._zod.optin!=="defaulted")return n;let t=r.innerType._zod.run({value:n.value,issues:[]},i);return t instanceof Promise?t.then(o=>zy(n,o)):zy(n,t)}return r.innerType._zod.run(n,i)}}),zm=S("$ZodExactOptional",(e,r)=>{Bs.init(e,r),H(e,"values",n=>n.def.innerType._zod.values),H(e,"pattern",n=>n.def.innerType._zod.pattern),e._zod.parse=(n,i)=>r.innerType._zod.run(n,i)}),Cm=S("$ZodNullable",(e,r)=>{B.init(e,r),H(e,"optin",n=>n.def.innerType._zod.optin),H(e,"optout",n=>n.def.innerType._zod.optout),H(e,"pattern",n=>{let i=n.def.innerType._zod.pattern;return i?new RegExp(`^(${rt(i.source)}|null)$`):void 0}),H(e,"values",n=>n.def.innerType._zod.values?new Set([...n.def.innerType._zod.values,null]):void 0),e._zod.parse=(n,i)=>n.value===null?n:r.innerType._zod.run(n,i)}),qm=S("$ZodDefault",(e,r)=>{B.init(e,r),e._zod.optin="defaulted",H(e,"values",n=>n.def.innerType._zod.values),e._zod.parse=(n,i)=>{if(i.direction==="backward")return r.innerType._zod.run(n,i);if(n.value===void 0)return n.value=r.defaultValue,n;let t=r.innerType._zod.run(n,i);return t instanceof Promise?t.then(o=>Cy(o,r)):Cy(t,r)}});function Cy(e,r){return e.value===void 0&&(e.value=r.defaultValue),e}var Rm=S("$ZodPrefault",(e,r)=>{B.init(e,r),e._zod.optin="defaulted",H(e,"values",n=>n.def.innerType._zod.values),e._zod.parse=(n,i)=>(i.direction==="backward"||n.value===void 0&&(n.value=r.defaultValue),r.innerType._zod.run(n,i))}),Um=S("$ZodNonOptional",(e,r)=>{B.init(e,r),H(e,"values",n=>{let i=n.def.innerType._zod.values;return i?new Set([...i].filter(t=>t!==void 0)):void 0}),e._zod.parse=(n,i)=>{let t=r.innerType._zod.run(n,i);return t instanceof Promise?t.then(o=>qy(o,e)):qy(t,e)}});function qy(e,r){return!e.issues.length&&e.value===void 0&&e.issues.push({code:"invalid_type",expected:"nonoptional",input:e.value,inst:r}),e}var Fm=S("$ZodSuccess",(e,r)=>{B.init(e,r),e._zod.parse=(n,i)=>{if(i.direction==="backward")throw new It("ZodSuccess");let t=r.innerType._zod.run(n,i);return t instanceof Promise?t.then(o=>(n.value=o.issues.length===0,n)):(n.value=t.issues.length===0,n)}});function Ry(e,r,n,i){return r.issues.length?(e.value=n.catchValue({...r,value:e.value,error:{issues:r.issues.map(t=>or(t,i,ke()))},input:e.value}),e):(e.value=r.value,r.memo&&(e.memo=!0),e)}var Mm=S("$ZodCatch",(e,r)=>{B.init(e,r),H(e,"optin",n=>n.def.innerType._zod.optin==="defaulted"?"defaulted":"optional"),H(e,"optout",n=>n.def.innerType._zod.optout),H(e,"values",n=>n.def.innerType._zod.values),e._zod.parse=(n,i)=>{if(i.direction==="backward")return r.innerType._zod.run(n,i);let t=r.innerType._zod.run({value:n.value,issues:[]},i);return t instanceof Promise?t.then(o=>Ry(n,o,r,i)):Ry(n,t,r,i)}}),Lm=S("$ZodNaN",(e,r)=>{B.init(e,r),e._zod.parse=(n,i)=>((typeof n.value!="number"||!Number.isNaN(n.value))&&n.issues.push({input:n.value,inst:e,expected:"nan",code:"invalid_type"}),n)}),Ws=S("$ZodPipe",(e,r)=>{B.init(e,r),H(e,"values",n=>n.def.in._zod.values),H(e,"optin",n=>n.def.in._zod.optin),H(e,"optout",n=>n.def.out._zod.optout),H(e,"propValues",n=>n.def.in._zod.propValues),e._zod.parse=(n,i)=>{if(i.direction==="backward"){let o=r.out._zod.run(n,i);return o instanceof Promise?o.then(a=>As(a,r.in,i)):As(o,r.in,i)}let t=r.in._zod.run(n,i);return t instanceof Promise?t.then(o=>As(o,r.out,i)):As(t,r.out,i)}});function As(e,r,n){return e.issues.some(i=>i.code!=="unrecognized_keys")?(e.aborted=!0,e):r._zod.run({value:e.value,issues:e.issues},n)}var Uo=S("$ZodCodec",(e,r)=>{B.init(e,r),H(e,"values",n=>n.def.in._zod.values),H(e,"optin",n=>n.def.in._zod.optin),H(e,"optout",n=>n.def.out._zod.optout),H(e,"propValues",n=>n.def.in._zod.propValues),e._zod.parse=(n,i)=>{if((i.direction||"forward")==="forward"){let o=r.in._zod.run(n,i);return o instanceof Promise?o.then(a=>Ps(a,r,i)):Ps(o,r,i)}else{let o=r.out._zod.run(n,i);return o instanceof Promise?o.then(a=>Ps(a,r,i)):Ps(o,r,i)}}});function Ps(e,r,n){if(e.issues.length)return e.aborted=!0,e;if((n.direction||"forward")==="forward"){let t=r.transform(e.value,e);return t instanceof Promise?t.then(o=>xs(e,o,r.out,n)):xs(e,t,r.out,n)}else{let t=r.reverseTransform(e.value,e);return t instanceof Promise?t.then(o=>xs(e,o,r.in,n)):xs(e,t,r.in,n)}}function xs(e,r,n,i){return e.issues.length?(e.aborted=!0,e):n._zod.run({value:r,issues:e.issues},i)}var Zm=S("$ZodPreprocess",(e,r)=>{Ws.init(e,r)}),Vm=S("$ZodReadonly",(e,r)=>{B.init(e,r),H(e,"propValues",n=>n.def.innerType._zod.propValues),H(e,"values",n=>n.def.innerType._zod.values),H(e,"optin",n=>n.def.innerType?._zod?.optin),H(e,"optout",n=>n.def.innerType?._zod?.optout),e._zod.parse=(n,i)=>{if(i.direction==="backward")return r.innerType._zod.run(n,i);let t=r.innerType._zod.run(n,i);return t instanceof Promise?t.then(Uy):Uy(t)}});function Uy(e){return e.memo||(e.value=Object.freeze(e.value)),e}function nU(e){let r=e._zod.def,n=r.pattern,i=!!r.format?.includes("int"),t,o;for(let s of r.checks??[]){let u=s._zod.def;u.pattern&&(n=u.pattern),i||(i=!!u.format?.includes("int"));let c=u.minimum??u.length,l=u.maximum??u.length;c!==void 0&&(t===void 0||c>t)&&(t=c),l!==void 0&&(o===void 0||l<o)&&(o=l)}if(n)return n.source;if(t!==void 0&&o!==void 0&&t>o)return"(?!)";if(t!==void 0||o!==void 0)return of({minimum:t,maximum:o}).source;let a=e._zod.pattern;return(i&&a===tt?Po:a)?.source}function zf(e){let r=e._zod.def,n=e._zod.pattern?.source,i=r.innerType??e._zod.innerType;if(i){let t=i._zod.pattern?.source,o=zf(i);return n&&t&&o&&o!==t?n.replace(rt(t),()=>rt(o)):n}if(r.options){let t=r.options.map(zf);if(t.every(Boolean))return`^(${t.map(o=>rt(o)).join("|")})$`}return nU(e)}var Bm=S("$ZodTemplateLiteral",(e,r)=>{B.init(e,r);let n=[];for(let i of r.parts)if(typeof i=="object"&&i!==null){let t=zf(i);if(!t)throw new Error(`Invalid template literal part, no pattern found: ${[...i._zod.traits].shift()}`);n.push(rt(t))}else if(i===null||yd.has(typeof i))n.push(vr(`${i}`));else throw new Error(`Invalid template literal part: ${i}`);e._zod.pattern=new RegExp(`^${n.join("")}$`),e._zod.parse=(i,t)=>typeof i.value!="string"?(i.issues.push({input:i.value,inst:e,expected:"string",code:"invalid_type"}),i):(e._zod.pattern.lastIndex=0,e._zod.pattern.test(i.value)||i.issues.push({input:i.value,inst:e,code:"invalid_format",format:r.format??"template_literal",pattern:e._zod.pattern.source}),i)}),Wm=S("$ZodFunction",(e,r)=>(B.init(e,r),Object.defineProperty(e,"_def",{value:r}),e._zod.def=r,e.implement=n=>{if(typeof n!="function")throw new Error("implement() must be called with a function");return Object.defineProperty(function(...i){let t=e._def.input?fs(e._def.input,i):i,o=Reflect.apply(n,this,t);return e._def.output?fs(e._def.output,o):o},"_zod",{value:e._zod,enumerable:!1})},e.implementAsync=n=>{if(typeof n!="function")throw new Error("implementAsync() must be called with a function");return Object.defineProperty(async function(...i){let t=e._def.input?await ms(e._def.input,i):i,o=await Reflect.apply(n,this,t);return e._def.output?await ms(e._def.output,o):o},"_zod",{value:e._zod,enumerable:!1})},e._zod.parse=(n,i)=>typeof n.value!="function"?(n.issues.push({code:"invalid_type",expected:"function",input:n.value,inst:e}),n):(e._def.output&&e._def.output._zod.def.type==="promise"?n.value=e.implementAsync(n.value):n.value=e.implement(n.value),n),e.input=(...n)=>{let i=e.constructor;return Array.isArray(n[0])?new i({type:"function",input:new Vs({type:"tuple",items:n[0],rest:n[1]}),output:e._def.output}):new i({type:"function",input:n[0],output:e._def.output})},e.output=n=>{let i=e.constructor;return new i({type:"function",input:e._def.input,output:n})},e)),Gm=S("$ZodPromise",(e,r)=>{B.init(e,r),e._zod.parse=(n,i)=>Promise.resolve(n.value).then(t=>r.innerType._zod.run({value:t,issues:[]},i))}),Fo=S("$ZodLazy",(e,r)=>{B.init(e,r),vd(e._zod,"innerType",()=>{let n=r;return n._cachedInner||(n._cachedInner=r.getter()),n._cachedInner}),H(e,"pattern",n=>n.innerType?._zod?.pattern),H(e,"propValues",n=>n.innerType?._zod?.propValues),H(e,"optin",n=>n.innerType?._zod?.optin??void 0),H(e,"optout",n=>n.innerType?._zod?.optout??void 0),e._zod.parse=(n,i)=>e._zod.innerType._zod.run(n,i)}),Hm=S("$ZodCustom",(e,r)=>{le.init(e,r),B.init(e,r),e._zod.parse=(n,i)=>n,e._zod.check=n=>{let i=n.value,t=r.fn(i);if(t instanceof Promise)return t.then(o=>Fy(o,n,i,e));Fy(t,n,i,e)}});function Fy(e,r,n,i){if(!e){let t={code:"custom",input:n,inst:i,path:[...i._zod.def.path??[]],continue:!i._zod.def.abort};i._zod.def.params&&(t.params=i._zod.def.params),r.issues.push(ri(t))}}var Ks=class extends Error{constructor(){super("Cannot parse a reference cycle that closes through a transform"),this.name="ZodCyclicError"}},Km="~memo",Hy=[];function Jy(e){return e!==null&&typeof e=="object"}function Jm(e){return e.map(r=>r.path?{...r,path:r.path.slice()}:{...r})}var Ky=new WeakMap,ui=0,Js=1,Mo=2;function Lo(e,r,n){let i=Ky.get(e);if(i!==void 0)return i?Mo:ui;if(r.has(e))return Mo;r.add(e);let t=ui,o=l=>{if(t!==Mo&&l?._zod){let d=Lo(l,r,n);d>t&&(t=d)}},a=(l,d)=>{let f=ui;for(let m of Reflect.ownKeys(l)){let v=Object.getOwnPropertyDescriptor(l,m);if(d&&!v.enumerable)continue;let h=v.get?Js:v.value?._zod?Lo(v.value,r,n):ui;h>f&&(f=h)}return f},s=l=>{l>t&&(t=l)},u=e._zod.def,c=u.type;switch(c){case"object":{let l=Yn(u);s(l?a(l,!0):Js),o(u.catchall);break}case"array":o(u.element);break;case"tuple":for(let l of u.items)o(l);o(u.rest);break;case"record":case"map":o(u.keyType),o(u.valueType);break;case"set":o(u.valueType);break;case"union":for(let l of u.options)o(l);break;case"intersection":o(u.left),o(u.right);break;case"optional":case"nullable":case"default":case"prefault":case"catch":case"readonly":case"nonoptional":case"promise":case"success":o(u.innerType);break;case"pipe":o(u.in),o(u.out);break;case"function":o(u.input),o(u.output);break;case"lazy":{let l=u._cachedInner??(n?e._zod.innerType:void 0);s(l?Lo(l,r,!1):Js);break}case"template_literal":case"string":case"number":case"int":case"boolean":case"bigint":case"symbol":case"undefined":case"null":case"void":case"never":case"any":case"unknown":case"date":case"nan":case"enum":case"literal":case"file":case"transform":case"custom":break;default:for(let l in u){let d=Object.getOwnPropertyDescriptor(u,l);if(!d||d.get)continue;let f=d.value;if(!(!f||typeof f!="object")){if(f._zod)o(f);else if(Array.isArray(f))for(let m of f)o(m)}}}return r.delete(e),iU(e,t)}function iU(e,r){return r!==Js&&Ky.set(e,r===Mo),r}function Xs(e){return Lo(e,new Set,!0)!==ui}function oU(e,r){let n=e.buckets.get(r);return n||(n=new WeakMap,e.buckets.set(r,n)),n}var Gs,Hs=[],aU={alloc(e,r,n){let i=Gs;if(!i)return n;Gs=void 0;let t={value:n,issues:null};return i.set(r.value,t),Hs.push(t),n},guard(e){var r;(r=e._zod).deferred??(r.deferred=[]),e._zod.deferred.push(()=>{let n=e._zod.parse,i=(t,o)=>{if(o.direction!=="backward"&&Qs(o,t.value))throw new Ks;return n(t,o)};e._zod.parse=i,e._zod.run===n&&(e._zod.run=i)})},attach(e){var r;let n,i=!1,t,o;(r=e._zod).deferred??(r.deferred=[]),e._zod.deferred.push(()=>{let a=e._zod.parse,s=(u,c)=>{if(n===void 0){let b=Lo(e,new Set,!1);if(b===ui)return e._zod.parse=a,e._zod.run===s&&(e._zod.run=a),a(u,c);b===Mo||i?n=!0:i=!0}let l=u.value;if(!Jy(l))return a(u,c);let d=c[Km];d||(d={buckets:new WeakMap,backEdges:void 0},c[Km]=d);let f;t===c?f=o:(f=oU(d,e),t=c,o=f);let m=f.get(l);if(m)return u.value=m.value,m.issues?m.issues.length&&u.issues.push(...Jm(m.issues)):(u.memo=!0,d.backEdges??(d.backEdges=new WeakSet),d.backEdges.add(m.value)),u;Gs=f;let v=Hs.length,h=a(u,c);Gs=void 0;let y=Hs.length>v?Hs.pop():void 0;return h instanceof Promise?h.then(b=>(y&&(y.issues=b.issues.length?Jm(b.issues):Hy),b)):(y&&(y.issues=h.issues.length?Jm(h.issues):Hy),h)};e._zod.parse=s,e._zod.run===a&&(e._zod.run=s)})}};function Zo(){return aU}function Qs(e,r){let n=e[Km]?.backEdges;return n!==void 0&&Jy(r)&&n.has(r)}var Bo={};Xr(Bo,{ar:()=>Xy,az:()=>Qy,be:()=>eb,bg:()=>rb,bn:()=>tb,ca:()=>nb,ckb:()=>ib,cs:()=>ob,da:()=>ab,de:()=>sb,el:()=>ub,en:()=>Ys,eo:()=>cb,es:()=>lb,fa:()=>db,fi:()=>fb,fr:()=>mb,frCA:()=>pb,gu:()=>vb,he:()=>gb,hi:()=>hb,hr:()=>yb,hu:()=>bb,hy:()=>_b,id:()=>wb,is:()=>Sb,it:()=>Ib,ja:()=>kb,ka:()=>Ob,kh:()=>Nb,km:()=>eu,kn:()=>Ab,ko:()=>Pb,lt:()=>Eb,mk:()=>Db,ms:()=>Tb,ne:()=>jb,nl:()=>zb,nn:()=>Cb,no:()=>qb,ota:()=>Rb,pl:()=>Fb,ps:()=>Ub,pt:()=>Mb,ptBR:()=>Lb,ro:()=>Zb,ru:()=>Bb,sk:()=>Wb,sl:()=>Gb,sv:()=>Hb,ta:()=>Jb,tg:()=>Kb,th:()=>Xb,tk:()=>Qb,tr:()=>Yb,ua:()=>e6,uk:()=>ru,ur:()=>r6,uz:()=>t6,vi:()=>n6,yo:()=>a6,zhCN:()=>i6,zhTW:()=>o6});var sU=()=>{let e={string:{unit:"حرف",verb:"أن يحوي"},file:{unit:"بايت",verb:"أن يحوي"},array:{unit:"عنصر",verb:"أن يحوي"},set:{unit:"عنصر",verb:"أن يحوي"},map:{unit:"عنصر",verb:"أن يحوي"}};function r(t){return e[t]??null}let n={regex:"مدخل",email:"بريد إلكتروني",url:"رابط",emoji:"إيموجي",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"تاريخ ووقت بمعيار ISO",date:"تاريخ بمعيار ISO",time:"وقت بمعيار ISO",duration:"مدة بمعيار ISO",ipv4:"عنوان IPv4",ipv6:"عنوان IPv6",mac:"عنوان MAC",cidrv4:"مدى عناوين بصيغة IPv4",cidrv6:"مدى عناوين بصيغة IPv6",base64:"نَص بترميز base64-encoded",base64url:"نَص بترميز base64url-encoded",json_string:"نَص على هيئة JSON",e164:"رقم هاتف بمعيار E.164",credit_card:"رقم بطاقة الائتمان",currency_code:"رمز العملة",iban:"IBAN",jwt:"JWT",template_literal:"مدخل"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`مدخلات غير مقبولة: يفترض إدخال instanceof ${t.expected}، ولكن تم إدخال ${s}`:`مدخلات غير مقبولة: يفترض إدخال ${o}، ولكن تم إدخال ${s}`}case"invalid_value":return t.values.length===1?`مدخلات غير مقبولة: يفترض إدخال ${P(t.values[0])}`:`اختيار غير مقبول: يتوقع انتقاء أحد هذه الخيارات: ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?` أكبر من اللازم: يفترض أن تكون ${t.origin??"القيمة"} ${o} ${t.maximum.toString()} ${a.unit??"عنصر"}`:`أكبر من اللازم: يفترض أن تكون ${t.origin??"القيمة"} ${o} ${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`أصغر من اللازم: يفترض لـ ${t.origin} أن يكون ${o} ${t.minimum.toString()} ${a.unit}`:`أصغر من اللازم: يفترض لـ ${t.origin} أن يكون ${o} ${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`نَص غير مقبول: يجب أن يبدأ بـ "${t.prefix}"`:o.format==="ends_with"?`نَص غير مقبول: يجب أن ينتهي بـ "${o.suffix}"`:o.format==="includes"?`نَص غير مقبول: يجب أن يتضمَّن "${o.includes}"`:o.format==="regex"?`نَص غير مقبول: يجب أن يطابق النمط ${o.pattern}`:`${n[o.format]??t.format} غير مقبول`}case"not_multiple_of":return`رقم غير مقبول: يجب أن يكون من مضاعفات ${t.divisor}`;case"unrecognized_keys":return`معرف${t.keys.length>1?"ات":""} غريب${t.keys.length>1?"ة":""}: ${I(t.keys,"، ")}`;case"invalid_key":return`معرف غير مقبول في ${t.origin}`;case"invalid_union":return"مدخل غير مقبول";case"invalid_element":return`مدخل غير مقبول في ${t.origin}`;default:return"مدخل غير مقبول"}}};function Xy(){return{localeError:sU()}}var uU=()=>{let e={string:{unit:"simvol",verb:"olmalıdır"},file:{unit:"bayt",verb:"olmalıdır"},array:{unit:"element",verb:"olmalıdır"},set:{unit:"element",verb:"olmalıdır"},map:{unit:"element",verb:"olmalıdır"}};function r(t){return e[t]??null}let n={regex:"input",email:"email address",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO datetime",date:"ISO date",time:"ISO time",duration:"ISO duration",ipv4:"IPv4 address",ipv6:"IPv6 address",mac:"MAC address",cidrv4:"IPv4 range",cidrv6:"IPv6 range",base64:"base64-encoded string",base64url:"base64url-encoded string",json_string:"JSON string",e164:"E.164 number",credit_card:"kredit kartı nömrəsi",currency_code:"valyuta kodu",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Yanlış dəyər: gözlənilən instanceof ${t.expected}, daxil olan ${s}`:`Yanlış dəyər: gözlənilən ${o}, daxil olan ${s}`}case"invalid_value":return t.values.length===1?`Yanlış dəyər: gözlənilən ${P(t.values[0])}`:`Yanlış seçim: aşağıdakılardan biri olmalıdır: ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Çox böyük: gözlənilən ${t.origin??"dəyər"} ${o}${t.maximum.toString()} ${a.unit??"element"}`:`Çox böyük: gözlənilən ${t.origin??"dəyər"} ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Çox kiçik: gözlənilən ${t.origin} ${o}${t.minimum.toString()} ${a.unit}`:`Çox kiçik: gözlənilən ${t.origin} ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Yanlış mətn: "${o.prefix}" ilə başlamalıdır`:o.format==="ends_with"?`Yanlış mətn: "${o.suffix}" ilə bitməlidir`:o.format==="includes"?`Yanlış mətn: "${o.includes}" daxil olmalıdır`:o.format==="regex"?`Yanlış mətn: ${o.pattern} şablonuna uyğun olmalıdır`:`Yanlış ${n[o.format]??t.format}`}case"not_multiple_of":return`Yanlış ədəd: ${t.divisor} ilə bölünə bilən olmalıdır`;case"unrecognized_keys":return`Tanınmayan açar${t.keys.length>1?"lar":""}: ${I(t.keys,", ")}`;case"invalid_key":return`${t.origin} daxilində yanlış açar`;case"invalid_union":return"Yanlış dəyər";case"invalid_element":return`${t.origin} daxilində yanlış dəyər`;default:return"Yanlış dəyər"}}};function Qy(){return{localeError:uU()}}function Yy(e,r,n,i){let t=Math.abs(e),o=t%10,a=t%100;return a>=11&&a<=19?i:o===1?r:o>=2&&o<=4?n:i}var cU=()=>{let e={string:{unit:{one:"сімвал",few:"сімвалы",many:"сімвалаў"},verb:"мець"},array:{unit:{one:"элемент",few:"элементы",many:"элементаў"},verb:"мець"},set:{unit:{one:"элемент",few:"элементы",many:"элементаў"},verb:"мець"},map:{unit:{one:"элемент",few:"элементы",many:"элементаў"},verb:"мець"},file:{unit:{one:"байт",few:"байты",many:"байтаў"},verb:"мець"}};function r(t){return e[t]??null}let n={regex:"увод",email:"email адрас",url:"URL",emoji:"эмодзі",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO дата і час",date:"ISO дата",time:"ISO час",duration:"ISO працягласць",ipv4:"IPv4 адрас",ipv6:"IPv6 адрас",mac:"MAC адрас",cidrv4:"IPv4 дыяпазон",cidrv6:"IPv6 дыяпазон",base64:"радок у фармаце base64",base64url:"радок у фармаце base64url",json_string:"JSON радок",e164:"нумар E.164",credit_card:"нумар крэдытнай карты",currency_code:"код валюты",iban:"IBAN",jwt:"JWT",template_literal:"увод"},i={nan:"NaN",number:"лік",array:"масіў"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Няправільны ўвод: чакаўся instanceof ${t.expected}, атрымана ${s}`:`Няправільны ўвод: чакаўся ${o}, атрымана ${s}`}case"invalid_value":return t.values.length===1?`Няправільны ўвод: чакалася ${P(t.values[0])}`:`Няправільны варыянт: чакаўся адзін з ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);if(a){let s=Number(t.maximum),u=Yy(s,a.unit.one,a.unit.few,a.unit.many);return`Занадта вялікі: чакалася, што ${t.origin??"значэнне"} павінна ${a.verb} ${o}${t.maximum.toString()} ${u}`}return`Занадта вялікі: чакалася, што ${t.origin??"значэнне"} павінна быць ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);if(a){let s=Number(t.minimum),u=Yy(s,a.unit.one,a.unit.few,a.unit.many);return`Занадта малы: чакалася, што ${t.origin} павінна ${a.verb} ${o}${t.minimum.toString()} ${u}`}return`Занадта малы: чакалася, што ${t.origin} павінна быць ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Няправільны радок: павінен пачынацца з "${o.prefix}"`:o.format==="ends_with"?`Няправільны радок: павінен заканчвацца на "${o.suffix}"`:o.format==="includes"?`Няправільны радок: павінен змяшчаць "${o.includes}"`:o.format==="regex"?`Няправільны радок: павінен адпавядаць шаблону ${o.pattern}`:`Няправільны ${n[o.format]??t.format}`}case"not_multiple_of":return`Няправільны лік: павінен быць кратным ${t.divisor}`;case"unrecognized_keys":return`Нераспазнаны ${t.keys.length>1?"ключы":"ключ"}: ${I(t.keys,", ")}`;case"invalid_key":return`Няправільны ключ у ${t.origin}`;case"invalid_union":return"Няправільны ўвод";case"invalid_element":return`Няправільнае значэнне ў ${t.origin}`;default:return"Няправільны ўвод"}}};function eb(){return{localeError:cU()}}var lU=()=>{let e={string:{unit:"символа",verb:"да съдържа"},file:{unit:"байта",verb:"да съдържа"},array:{unit:"елемента",verb:"да съдържа"},set:{unit:"елемента",verb:"да съдържа"},map:{unit:"елемента",verb:"да съдържа"}};function r(t){return e[t]??null}let n={regex:"вход",email:"имейл адрес",url:"URL",emoji:"емоджи",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO време",date:"ISO дата",time:"ISO време",duration:"ISO продължителност",ipv4:"IPv4 адрес",ipv6:"IPv6 адрес",mac:"MAC адрес",cidrv4:"IPv4 диапазон",cidrv6:"IPv6 диапазон",base64:"base64-кодиран низ",base64url:"base64url-кодиран низ",json_string:"JSON низ",e164:"E.164 номер",credit_card:"номер на кредитна карта",currency_code:"код на валута",iban:"IBAN",jwt:"JWT",template_literal:"вход"},i={nan:"NaN",number:"число",array:"масив"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Невалиден вход: очакван instanceof ${t.expected}, получен ${s}`:`Невалиден вход: очакван ${o}, получен ${s}`}case"invalid_value":return t.values.length===1?`Невалиден вход: очакван ${P(t.values[0])}`:`Невалидна опция: очаквано едно от ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Твърде голямо: очаква се ${t.origin??"стойност"} да съдържа ${o}${t.maximum.toString()} ${a.unit??"елемента"}`:`Твърде голямо: очаква се ${t.origin??"стойност"} да бъде ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Твърде малко: очаква се ${t.origin} да съдържа ${o}${t.minimum.toString()} ${a.unit}`:`Твърде малко: очаква се ${t.origin} да бъде ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;if(o.format==="starts_with")return`Невалиден низ: трябва да започва с "${o.prefix}"`;if(o.format==="ends_with")return`Невалиден низ: трябва да завършва с "${o.suffix}"`;if(o.format==="includes")return`Невалиден низ: трябва да включва "${o.includes}"`;if(o.format==="regex")return`Невалиден низ: трябва да съвпада с ${o.pattern}`;let a="Невалиден";return o.format==="emoji"&&(a="Невалидно"),o.format==="datetime"&&(a="Невалидно"),o.format==="date"&&(a="Невалидна"),o.format==="time"&&(a="Невалидно"),o.format==="duration"&&(a="Невалидна"),`${a} ${n[o.format]??t.format}`}case"not_multiple_of":return`Невалидно число: трябва да бъде кратно на ${t.divisor}`;case"unrecognized_keys":return`Неразпознат${t.keys.length>1?"и":""} ключ${t.keys.length>1?"ове":""}: ${I(t.keys,", ")}`;case"invalid_key":return`Невалиден ключ в ${t.origin}`;case"invalid_union":return"Невалиден вход";case"invalid_element":return`Невалидна стойност в ${t.origin}`;default:return"Невалиден вход"}}};function rb(){return{localeError:lU()}}var dU=()=>{let e={string:{unit:"অক্ষর",verb:"থাকতে হবে"},file:{unit:"বাইট",verb:"থাকতে হবে"},array:{unit:"আইটেম",verb:"থাকতে হবে"},set:{unit:"আইটেম",verb:"থাকতে হবে"},map:{unit:"এন্ট্রি",verb:"থাকতে হবে"}};function r(t){return e[t]??null}let n={regex:"ইনপুট",email:"ইমেইল ঠিকানা",url:"URL",emoji:"ইমোজি",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO তারিখ ও সময়",date:"ISO তারিখ",time:"ISO সময়",duration:"ISO সময়কাল",ipv4:"IPv4 ঠিকানা",ipv6:"IPv6 ঠিকানা",mac:"MAC ঠিকানা",cidrv4:"IPv4 রেঞ্জ",cidrv6:"IPv6 রেঞ্জ",base64:"base64-এনকোডেড স্ট্রিং",base64url:"base64url-এনকোডেড স্ট্রিং",json_string:"JSON স্ট্রিং",e164:"E.164 নম্বর",credit_card:"ক্রেডিট কার্ড নম্বর",currency_code:"মুদ্রা কোড",iban:"IBAN",jwt:"JWT",template_literal:"ইনপুট"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return`অবৈধ ইনপুট: প্রত্যাশিত ${o}, প্রাপ্ত ${s}`}case"invalid_value":return t.values.length===1?`অবৈধ ইনপুট: প্রত্যাশিত ${P(t.values[0])}`:`অবৈধ অপশন: ${I(t.values," | ")} এর মধ্যে একটি প্রত্যাশিত`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`অনেক বড়: ${t.origin??"মান"} ${o}${t.maximum.toString()} ${a.unit??"এলিমেন্ট"} হতে হবে`:`অনেক বড়: ${t.origin??"মান"} ${o}${t.maximum.toString()} হতে হবে`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`অনেক ছোট: ${t.origin} ${o}${t.minimum.toString()} ${a.unit} হতে হবে`:`অনেক ছোট: ${t.origin} ${o}${t.minimum.toString()} হতে হবে`}case"invalid_format":{let o=t;return o.format==="starts_with"?`অবৈধ স্ট্রিং: "${o.prefix}" দিয়ে শুরু হতে হবে`:o.format==="ends_with"?`অবৈধ স্ট্রিং: "${o.suffix}" দিয়ে শেষ হতে হবে`:o.format==="includes"?`অবৈধ স্ট্রিং: "${o.includes}" অন্তর্ভুক্ত থাকতে হবে`:o.format==="regex"?`অবৈধ স্ট্রিং: ${o.pattern} প্যাটার্ন মিলতে হবে`:`অবৈধ ${n[o.format]??t.format}`}case"not_multiple_of":return`অবৈধ নম্বর: ${t.divisor} এর গুণিতক হতে হবে`;case"unrecognized_keys":return`অচেনা কী${t.keys.length>1?"গুলো":""}: ${I(t.keys,", ")}`;case"invalid_key":return`${t.origin} এ অবৈধ কী`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`অবৈধ ডিসক্রিমিনেটর মান। প্রত্যাশিত ${t.options.map(a=>`'${a}'`).join(" | ")}`:"অবৈধ ইনপুট";case"invalid_element":return`${t.origin} এ অবৈধ মান`;default:return"অবৈধ ইনপুট"}}};function tb(){return{localeError:dU()}}var fU=()=>{let e={string:{unit:"caràcters",verb:"contenir"},file:{unit:"bytes",verb:"contenir"},array:{unit:"elements",verb:"contenir"},set:{unit:"elements",verb:"contenir"},map:{unit:"elements",verb:"contenir"}};function r(t){return e[t]??null}let n={regex:"entrada",email:"adreça electrònica",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"data i hora ISO",date:"data ISO",time:"hora ISO",duration:"durada ISO",ipv4:"adreça IPv4",ipv6:"adreça IPv6",mac:"adreça MAC",cidrv4:"rang IPv4",cidrv6:"rang IPv6",base64:"cadena codificada en base64",base64url:"cadena codificada en base64url",json_string:"cadena JSON",e164:"número E.164",credit_card:"número de targeta de crèdit",currency_code:"codi de moneda",iban:"IBAN",jwt:"JWT",template_literal:"entrada"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Tipus invàlid: s'esperava instanceof ${t.expected}, s'ha rebut ${s}`:`Tipus invàlid: s'esperava ${o}, s'ha rebut ${s}`}case"invalid_value":return t.values.length===1?`Valor invàlid: s'esperava ${P(t.values[0])}`:`Opció invàlida: s'esperava una de ${I(t.values," o ")}`;case"too_big":{let o=t.inclusive?"com a màxim":"menys de",a=r(t.origin);return a?`Massa gran: s'esperava que ${t.origin??"el valor"} contingués ${o} ${t.maximum.toString()} ${a.unit??"elements"}`:`Massa gran: s'esperava que ${t.origin??"el valor"} fos ${o} ${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?"com a mínim":"més de",a=r(t.origin);return a?`Massa petit: s'esperava que ${t.origin} contingués ${o} ${t.minimum.toString()} ${a.unit}`:`Massa petit: s'esperava que ${t.origin} fos ${o} ${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Format invàlid: ha de començar amb "${o.prefix}"`:o.format==="ends_with"?`Format invàlid: ha d'acabar amb "${o.suffix}"`:o.format==="includes"?`Format invàlid: ha d'incloure "${o.includes}"`:o.format==="regex"?`Format invàlid: ha de coincidir amb el patró ${o.pattern}`:`Format invàlid per a ${n[o.format]??t.format}`}case"not_multiple_of":return`Número invàlid: ha de ser múltiple de ${t.divisor}`;case"unrecognized_keys":return`Clau${t.keys.length>1?"s":""} no reconeguda${t.keys.length>1?"s":""}: ${I(t.keys,", ")}`;case"invalid_key":return`Clau invàlida a ${t.origin}`;case"invalid_union":return"Entrada invàlida";case"invalid_element":return`Element invàlid a ${t.origin}`;default:return"Entrada invàlida"}}};function nb(){return{localeError:fU()}}var mU=()=>{let e={string:{unit:"پیت",verb:"بێت"},file:{unit:"بایت",verb:"بێت"},array:{unit:"دانە",verb:"بێت"},set:{unit:"دانە",verb:"بێت"},map:{unit:"دانە",verb:"بێت"}};function r(t){return e[t]??null}let n={regex:"regex",email:"ئیمەیڵ",url:"بەستەر (URL)",emoji:"ئیمۆجی",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ڕێکەوت و کات",date:"ڕێکەوت",time:"کات",duration:"ماوە",ipv4:"ناونیشانی IPv4",ipv6:"ناونیشانی IPv6",mac:"ناونیشانی MAC",cidrv4:"مەودای IPv4",cidrv6:"مەودای IPv6",base64:"دەقی base64",base64url:"دەقی base64url",json_string:"دەقی JSON",e164:"ژمارەی E.164",credit_card:"ژمارەی کارتی کرێدیت",currency_code:"کۆدی دراو",iban:"IBAN",jwt:"JWT",template_literal:"تێکردە"},i={nan:"NaN",string:"نووسین",number:"ژمارە",boolean:"boolean",array:"array",object:"object",date:"ڕێکەوت",integer:"ژمارە",float:"ژمارە",null:"null",undefined:"undefined",function:"function",symbol:"symbol",unknown:"unknown",promise:"promise",void:"void",never:"never",map:"map",set:"set"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a,u=["ا","و","ۆ","وو","ە","ی","ێ"].some(l=>s.endsWith(l))?"یە":"ە",c=/^[a-zA-Z]+$/.test(s);return a==="null"||a==="undefined"?"داواکراوە":`چاوەڕوانکراوە ${o} بێت، بەڵام ${s}${c?"":u}`}case"invalid_value":return t.values.length===1?`بەهاکە نادرووستە: چاوەڕوانکراوە ${P(t.values[0])} بێت`:`هەڵبژاردەی نادروست: چاوەڕوانکراوە یەکێک بێت لە ${I(t.values,"|")}`;case"too_big":{let o=r(t.origin);return o?`پێویستە بە لایەنی زۆرەوە ${t.maximum.toString()} ${o.unit} ${o.verb}`:`پێویستە بە لایەنی زۆرەوە ${t.maximum.toString()} بێت`}case"too_small":{let o=r(t.origin);return o?`پێویستە بە لایەنی کەمەوە ${t.minimum.toString()} ${o.unit} ${o.verb}`:`پێویستە بە لایەنی کەمەوە ${t.minimum.toString()} بێت`}case"invalid_format":{let o=t;return o.format==="starts_with"?`دەقی نادروست: پێویستە دەستپێبکات بە "${o.prefix}"`:o.format==="ends_with"?`دەقی نادروست: پێویستە کۆتاییبێت بە "${o.suffix}"`:o.format==="includes"?`دەقی نادروست: پێویستە "${o.includes}" لەخۆبگرێت`:o.format==="regex"?`دەقی نادروست: پێویستە لەگەڵ پاتێرنی ${o.pattern} بگونجێت`:`بەهای ${n[o.format]??t.format} نادروستە`}case"not_multiple_of":return`ژمارەی نادروست: دەبێت چەند هێندە بێت بۆ ${t.divisor}`;case"unrecognized_keys":return`کلیلی نەناسراو: ${I(t.keys,", ")}`;case"invalid_key":return`کلیلی نادروست لە ${t.origin}`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`بەهای نەناسراو هەیە. بەهای چاوەڕوانکراو: ${t.options.map(a=>`'${a}'`).join(" | ")}`:"یەکگرتنی نادروست";case"invalid_element":return`${t.origin} بەهاکە نادروستە`;default:return"تێکردەی نادروست"}}};function ib(){return{localeError:mU()}}var pU=()=>{let e={string:{unit:"znaků",verb:"mít"},file:{unit:"bajtů",verb:"mít"},array:{unit:"prvků",verb:"mít"},set:{unit:"prvků",verb:"mít"},map:{unit:"prvků",verb:"mít"}};function r(t){return e[t]??null}let n={regex:"regulární výraz",email:"e-mailová adresa",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"datum a čas ve formátu ISO",date:"datum ve formátu ISO",time:"čas ve formátu ISO",duration:"doba trvání ISO",ipv4:"IPv4 adresa",ipv6:"IPv6 adresa",mac:"MAC adresa",cidrv4:"rozsah IPv4",cidrv6:"rozsah IPv6",base64:"řetězec zakódovaný ve formátu base64",base64url:"řetězec zakódovaný ve formátu base64url",json_string:"řetězec ve formátu JSON",e164:"číslo E.164",credit_card:"číslo kreditní karty",currency_code:"kód měny",iban:"IBAN",jwt:"JWT",template_literal:"vstup"},i={nan:"NaN",number:"číslo",string:"řetězec",function:"funkce",array:"pole"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Neplatný vstup: očekáváno instanceof ${t.expected}, obdrženo ${s}`:`Neplatný vstup: očekáváno ${o}, obdrženo ${s}`}case"invalid_value":return t.values.length===1?`Neplatný vstup: očekáváno ${P(t.values[0])}`:`Neplatná možnost: očekávána jedna z hodnot ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Hodnota je příliš velká: ${t.origin??"hodnota"} musí mít ${o}${t.maximum.toString()} ${a.unit??"prvků"}`:`Hodnota je příliš velká: ${t.origin??"hodnota"} musí být ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Hodnota je příliš malá: ${t.origin??"hodnota"} musí mít ${o}${t.minimum.toString()} ${a.unit??"prvků"}`:`Hodnota je příliš malá: ${t.origin??"hodnota"} musí být ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Neplatný řetězec: musí začínat na "${o.prefix}"`:o.format==="ends_with"?`Neplatný řetězec: musí končit na "${o.suffix}"`:o.format==="includes"?`Neplatný řetězec: musí obsahovat "${o.includes}"`:o.format==="regex"?`Neplatný řetězec: musí odpovídat vzoru ${o.pattern}`:`Neplatný formát ${n[o.format]??t.format}`}case"not_multiple_of":return`Neplatné číslo: musí být násobkem ${t.divisor}`;case"unrecognized_keys":return`Neznámé klíče: ${I(t.keys,", ")}`;case"invalid_key":return`Neplatný klíč v ${t.origin}`;case"invalid_union":return"Neplatný vstup";case"invalid_element":return`Neplatná hodnota v ${t.origin}`;default:return"Neplatný vstup"}}};function ob(){return{localeError:pU()}}var vU=()=>{let e={string:{unit:"tegn",verb:"havde"},file:{unit:"bytes",verb:"havde"},array:{unit:"elementer",verb:"indeholdt"},set:{unit:"elementer",verb:"indeholdt"},map:{unit:"elementer",verb:"indeholdt"}};function r(t){return e[t]??null}let n={regex:"input",email:"e-mailadresse",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO dato- og klokkeslæt",date:"ISO-dato",time:"ISO-klokkeslæt",duration:"ISO-varighed",ipv4:"IPv4-adresse",ipv6:"IPv6-adresse",mac:"MAC-adresse",cidrv4:"IPv4-spektrum",cidrv6:"IPv6-spektrum",base64:"base64-kodet streng",base64url:"base64url-kodet streng",json_string:"JSON-streng",e164:"E.164-nummer",credit_card:"kreditkortnummer",currency_code:"valutakode",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN",string:"streng",number:"tal",boolean:"boolean",array:"liste",object:"objekt",set:"sæt",file:"fil"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ugyldigt input: forventede instanceof ${t.expected}, fik ${s}`:`Ugyldigt input: forventede ${o}, fik ${s}`}case"invalid_value":return t.values.length===1?`Ugyldig værdi: forventede ${P(t.values[0])}`:`Ugyldigt valg: forventede en af følgende ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin),s=i[t.origin]??t.origin;return a?`For stor: forventede ${s??"value"} ${a.verb} ${o} ${t.maximum.toString()} ${a.unit??"elementer"}`:`For stor: forventede ${s??"value"} havde ${o} ${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin),s=i[t.origin]??t.origin;return a?`For lille: forventede ${s} ${a.verb} ${o} ${t.minimum.toString()} ${a.unit}`:`For lille: forventede ${s} havde ${o} ${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ugyldig streng: skal starte med "${o.prefix}"`:o.format==="ends_with"?`Ugyldig streng: skal ende med "${o.suffix}"`:o.format==="includes"?`Ugyldig streng: skal indeholde "${o.includes}"`:o.format==="regex"?`Ugyldig streng: skal matche mønsteret ${o.pattern}`:`Ugyldig ${n[o.format]??t.format}`}case"not_multiple_of":return`Ugyldigt tal: skal være deleligt med ${t.divisor}`;case"unrecognized_keys":return`${t.keys.length>1?"Ukendte nøgler":"Ukendt nøgle"}: ${I(t.keys,", ")}`;case"invalid_key":return`Ugyldig nøgle i ${t.origin}`;case"invalid_union":return"Ugyldigt input: matcher ingen af de tilladte typer";case"invalid_element":return`Ugyldig værdi i ${t.origin}`;default:return"Ugyldigt input"}}};function ab(){return{localeError:vU()}}var gU=()=>{let e={string:{unit:"Zeichen",verb:"zu haben"},file:{unit:"Bytes",verb:"zu haben"},array:{unit:"Elemente",verb:"zu haben"},set:{unit:"Elemente",verb:"zu haben"},map:{unit:"Elemente",verb:"zu haben"}};function r(t){return e[t]??null}let n={regex:"Eingabe",email:"E-Mail-Adresse",url:"URL",emoji:"Emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO-Datum und -Uhrzeit",date:"ISO-Datum",time:"ISO-Uhrzeit",duration:"ISO-Dauer",ipv4:"IPv4-Adresse",ipv6:"IPv6-Adresse",mac:"MAC-Adresse",cidrv4:"IPv4-Bereich",cidrv6:"IPv6-Bereich",base64:"Base64-codierter String",base64url:"Base64-URL-codierter String",json_string:"JSON-String",e164:"E.164-Nummer",credit_card:"Kreditkartennummer",currency_code:"Währungscode",iban:"IBAN",jwt:"JWT",template_literal:"Eingabe"},i={nan:"NaN",number:"Zahl",array:"Array"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ungültige Eingabe: erwartet instanceof ${t.expected}, erhalten ${s}`:`Ungültige Eingabe: erwartet ${o}, erhalten ${s}`}case"invalid_value":return t.values.length===1?`Ungültige Eingabe: erwartet ${P(t.values[0])}`:`Ungültige Option: erwartet eine von ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Zu groß: erwartet, dass ${t.origin??"Wert"} ${o}${t.maximum.toString()} ${a.unit??"Elemente"} hat`:`Zu groß: erwartet, dass ${t.origin??"Wert"} ${o}${t.maximum.toString()} ist`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Zu klein: erwartet, dass ${t.origin} ${o}${t.minimum.toString()} ${a.unit} hat`:`Zu klein: erwartet, dass ${t.origin} ${o}${t.minimum.toString()} ist`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ungültiger String: muss mit "${o.prefix}" beginnen`:o.format==="ends_with"?`Ungültiger String: muss mit "${o.suffix}" enden`:o.format==="includes"?`Ungültiger String: muss "${o.includes}" enthalten`:o.format==="regex"?`Ungültiger String: muss dem Muster ${o.pattern} entsprechen`:`Ungültig: ${n[o.format]??t.format}`}case"not_multiple_of":return`Ungültige Zahl: muss ein Vielfaches von ${t.divisor} sein`;case"unrecognized_keys":return`${t.keys.length>1?"Unbekannte Schlüssel":"Unbekannter Schlüssel"}: ${I(t.keys,", ")}`;case"invalid_key":return`Ungültiger Schlüssel in ${t.origin}`;case"invalid_union":return"Ungültige Eingabe";case"invalid_element":return`Ungültiger Wert in ${t.origin}`;default:return"Ungültige Eingabe"}}};function sb(){return{localeError:gU()}}var hU=()=>{let e={string:{unit:"χαρακτήρες",verb:"να έχει"},file:{unit:"bytes",verb:"να έχει"},array:{unit:"στοιχεία",verb:"να έχει"},set:{unit:"στοιχεία",verb:"να έχει"},map:{unit:"καταχωρήσεις",verb:"να έχει"}};function r(t){return e[t]??null}let n={regex:"είσοδος",email:"διεύθυνση email",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO ημερομηνία και ώρα",date:"ISO ημερομηνία",time:"ISO ώρα",duration:"ISO διάρκεια",ipv4:"διεύθυνση IPv4",ipv6:"διεύθυνση IPv6",mac:"διεύθυνση MAC",cidrv4:"εύρος IPv4",cidrv6:"εύρος IPv6",base64:"συμβολοσειρά κωδικοποιημένη σε base64",base64url:"συμβολοσειρά κωδικοποιημένη σε base64url",json_string:"συμβολοσειρά JSON",e164:"αριθμός E.164",credit_card:"αριθμός πιστωτικής κάρτας",currency_code:"κωδικός νομίσματος",iban:"IBAN",jwt:"JWT",template_literal:"είσοδος"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return typeof t.expected=="string"&&/^[A-Z]/.test(t.expected)?`Μη έγκυρη είσοδος: αναμενόταν instanceof ${t.expected}, λήφθηκε ${s}`:`Μη έγκυρη είσοδος: αναμενόταν ${o}, λήφθηκε ${s}`}case"invalid_value":return t.values.length===1?`Μη έγκυρη είσοδος: αναμενόταν ${P(t.values[0])}`:`Μη έγκυρη επιλογή: αναμενόταν ένα από ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Πολύ μεγάλο: αναμενόταν ${t.origin??"τιμή"} να έχει ${o}${t.maximum.toString()} ${a.unit??"στοιχεία"}`:`Πολύ μεγάλο: αναμενόταν ${t.origin??"τιμή"} να είναι ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Πολύ μικρό: αναμενόταν ${t.origin} να έχει ${o}${t.minimum.toString()} ${a.unit}`:`Πολύ μικρό: αναμενόταν ${t.origin} να είναι ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Μη έγκυρη συμβολοσειρά: πρέπει να ξεκινά με "${o.prefix}"`:o.format==="ends_with"?`Μη έγκυρη συμβολοσειρά: πρέπει να τελειώνει με "${o.suffix}"`:o.format==="includes"?`Μη έγκυρη συμβολοσειρά: πρέπει να περιέχει "${o.includes}"`:o.format==="regex"?`Μη έγκυρη συμβολοσειρά: πρέπει να ταιριάζει με το μοτίβο ${o.pattern}`:`Μη έγκυρο: ${n[o.format]??t.format}`}case"not_multiple_of":return`Μη έγκυρος αριθμός: πρέπει να είναι πολλαπλάσιο του ${t.divisor}`;case"unrecognized_keys":return`Άγνωστ${t.keys.length>1?"α":"ο"} κλειδ${t.keys.length>1?"ιά":"ί"}: ${I(t.keys,", ")}`;case"invalid_key":return`Μη έγκυρο κλειδί στο ${t.origin}`;case"invalid_union":return"Μη έγκυρη είσοδος";case"invalid_element":return`Μη έγκυρη τιμή στο ${t.origin}`;default:return"Μη έγκυρη είσοδος"}}};function ub(){return{localeError:hU()}}var yU=()=>{let e={string:{unit:"characters",verb:"to have"},file:{unit:"bytes",verb:"to have"},array:{unit:"items",verb:"to have"},set:{unit:"items",verb:"to have"},map:{unit:"entries",verb:"to have"}};function r(o){return e[o]??null}let n={regex:"input",email:"email address",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO datetime",date:"ISO date",time:"ISO time",duration:"ISO duration",ipv4:"IPv4 address",ipv6:"IPv6 address",mac:"MAC address",cidrv4:"IPv4 range",cidrv6:"IPv6 range",base64:"base64-encoded string",base64url:"base64url-encoded string",json_string:"JSON string",e164:"E.164 number",currency_code:"currency code",credit_card:"credit card number",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN"};function t(o,a){return o==="number"&&typeof a=="number"&&!Number.isFinite(a)?String(a):i[o]??o}return o=>{switch(o.code){case"invalid_type":{let a=t(o.expected),s=x(o.input),u=t(s,o.input);return`Invalid input: expected ${a}, received ${u}`}case"invalid_value":return o.values.length===1?`Invalid input: expected ${P(o.values[0])}`:`Invalid option: expected one of ${I(o.values,"|")}`;case"too_big":{let a=o.exact?"exactly ":o.inclusive?"<=":"<",s=r(o.origin);return s?`Too big: expected ${o.origin??"value"} to have ${a}${o.maximum.toString()} ${s.unit??"elements"}`:`Too big: expected ${o.origin??"value"} to be ${a}${o.maximum.toString()}`}case"too_small":{let a=o.exact?"exactly ":o.inclusive?">=":">",s=r(o.origin);return s?`Too small: expected ${o.origin} to have ${a}${o.minimum.toString()} ${s.unit}`:`Too small: expected ${o.origin} to be ${a}${o.minimum.toString()}`}case"invalid_format":{let a=o;return a.format==="starts_with"?`Invalid string: must start with "${a.prefix}"`:a.format==="ends_with"?`Invalid string: must end with "${a.suffix}"`:a.format==="includes"?`Invalid string: must include "${a.includes}"`:a.format==="regex"?`Invalid string: must match pattern ${a.pattern}`:`Invalid ${n[a.format]??o.format}`}case"not_multiple_of":return`Invalid number: must be a multiple of ${o.divisor}`;case"unrecognized_keys":return`Unrecognized key${o.keys.length>1?"s":""}: ${I(o.keys,", ")}`;case"invalid_key":return`Invalid key in ${o.origin}`;case"invalid_union":return o.options&&Array.isArray(o.options)&&o.options.length>0?`Invalid discriminator value. Expected ${o.options.map(s=>`'${s}'`).join(" | ")}`:o.inclusive===!1?"Invalid input: more than one option matched":"Invalid input";case"invalid_element":return`Invalid value in ${o.origin}`;default:return"Invalid input"}}};function Ys(){return{localeError:yU()}}var bU=()=>{let e={string:{unit:"karaktrojn",verb:"havi"},file:{unit:"bajtojn",verb:"havi"},array:{unit:"elementojn",verb:"havi"},set:{unit:"elementojn",verb:"havi"},map:{unit:"elementojn",verb:"havi"}};function r(t){return e[t]??null}let n={regex:"enigo",email:"retadreso",url:"URL",emoji:"emoĝio",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO-datotempo",date:"ISO-dato",time:"ISO-tempo",duration:"ISO-daŭro",ipv4:"IPv4-adreso",ipv6:"IPv6-adreso",mac:"MAC-adreso",cidrv4:"IPv4-rango",cidrv6:"IPv6-rango",base64:"64-ume kodita karaktraro",base64url:"URL-64-ume kodita karaktraro",json_string:"JSON-karaktraro",e164:"E.164-nombro",credit_card:"kreditkarta numero",currency_code:"valuta kodo",iban:"IBAN",jwt:"JWT",template_literal:"enigo"},i={nan:"NaN",number:"nombro",array:"tabelo",null:"senvalora"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Nevalida enigo: atendiĝis instanceof ${t.expected}, riceviĝis ${s}`:`Nevalida enigo: atendiĝis ${o}, riceviĝis ${s}`}case"invalid_value":return t.values.length===1?`Nevalida enigo: atendiĝis ${P(t.values[0])}`:`Nevalida opcio: atendiĝis unu el ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Tro granda: atendiĝis ke ${t.origin??"valoro"} havu ${o}${t.maximum.toString()} ${a.unit??"elementojn"}`:`Tro granda: atendiĝis ke ${t.origin??"valoro"} havu ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Tro malgranda: atendiĝis ke ${t.origin} havu ${o}${t.minimum.toString()} ${a.unit}`:`Tro malgranda: atendiĝis ke ${t.origin} estu ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Nevalida karaktraro: devas komenciĝi per "${o.prefix}"`:o.format==="ends_with"?`Nevalida karaktraro: devas finiĝi per "${o.suffix}"`:o.format==="includes"?`Nevalida karaktraro: devas inkluzivi "${o.includes}"`:o.format==="regex"?`Nevalida karaktraro: devas kongrui kun la modelo ${o.pattern}`:`Nevalida ${n[o.format]??t.format}`}case"not_multiple_of":return`Nevalida nombro: devas esti oblo de ${t.divisor}`;case"unrecognized_keys":return`Nekonata${t.keys.length>1?"j":""} ŝlosilo${t.keys.length>1?"j":""}: ${I(t.keys,", ")}`;case"invalid_key":return`Nevalida ŝlosilo en ${t.origin}`;case"invalid_union":return"Nevalida enigo";case"invalid_element":return`Nevalida valoro en ${t.origin}`;default:return"Nevalida enigo"}}};function cb(){return{localeError:bU()}}var $U=()=>{let e={string:{unit:"caracteres",verb:"tener"},file:{unit:"bytes",verb:"tener"},array:{unit:"elementos",verb:"tener"},set:{unit:"elementos",verb:"tener"}};function r(t){return e[t]??null}let n={regex:"entrada",email:"dirección de correo electrónico",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"fecha y hora ISO",date:"fecha ISO",time:"hora ISO",duration:"duración ISO",ipv4:"dirección IPv4",ipv6:"dirección IPv6",mac:"dirección MAC",cidrv4:"rango IPv4",cidrv6:"rango IPv6",base64:"cadena codificada en base64",base64url:"URL codificada en base64",json_string:"cadena JSON",e164:"número E.164",credit_card:"número de tarjeta de crédito",currency_code:"código de moneda",iban:"IBAN",jwt:"JWT",template_literal:"entrada"},i={nan:"NaN",string:"texto",number:"número",boolean:"booleano",array:"arreglo",object:"objeto",set:"conjunto",file:"archivo",date:"fecha",bigint:"número grande",symbol:"símbolo",undefined:"indefinido",null:"nulo",function:"función",map:"mapa",record:"registro",tuple:"tupla",enum:"enumeración",union:"unión",literal:"literal",promise:"promesa",void:"vacío",never:"nunca",unknown:"desconocido",any:"cualquiera"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Entrada inválida: se esperaba instanceof ${t.expected}, recibido ${s}`:`Entrada inválida: se esperaba ${o}, recibido ${s}`}case"invalid_value":return t.values.length===1?`Entrada inválida: se esperaba ${P(t.values[0])}`:`Opción inválida: se esperaba una de ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin),s=i[t.origin]??t.origin;return a?`Demasiado grande: se esperaba que ${s??"valor"} tuviera ${o}${t.maximum.toString()} ${a.unit??"elementos"}`:`Demasiado grande: se esperaba que ${s??"valor"} fuera ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin),s=i[t.origin]??t.origin;return a?`Demasiado pequeño: se esperaba que ${s} tuviera ${o}${t.minimum.toString()} ${a.unit}`:`Demasiado pequeño: se esperaba que ${s} fuera ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Cadena inválida: debe comenzar con "${o.prefix}"`:o.format==="ends_with"?`Cadena inválida: debe terminar en "${o.suffix}"`:o.format==="includes"?`Cadena inválida: debe incluir "${o.includes}"`:o.format==="regex"?`Cadena inválida: debe coincidir con el patrón ${o.pattern}`:`Inválido ${n[o.format]??t.format}`}case"not_multiple_of":return`Número inválido: debe ser múltiplo de ${t.divisor}`;case"unrecognized_keys":return`Llave${t.keys.length>1?"s":""} desconocida${t.keys.length>1?"s":""}: ${I(t.keys,", ")}`;case"invalid_key":return`Llave inválida en ${i[t.origin]??t.origin}`;case"invalid_union":return"Entrada inválida";case"invalid_element":return`Valor inválido en ${i[t.origin]??t.origin}`;default:return"Entrada inválida"}}};function lb(){return{localeError:$U()}}var _U=()=>{let e={string:{unit:"کاراکتر",verb:"داشته باشد"},file:{unit:"بایت",verb:"داشته باشد"},array:{unit:"آیتم",verb:"داشته باشد"},set:{unit:"آیتم",verb:"داشته باشد"},map:{unit:"آیتم",verb:"داشته باشد"}};function r(t){return e[t]??null}let n={regex:"ورودی",email:"آدرس ایمیل",url:"URL",emoji:"ایموجی",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"تاریخ و زمان ایزو",date:"تاریخ ایزو",time:"زمان ایزو",duration:"مدت زمان ایزو",ipv4:"IPv4 آدرس",ipv6:"IPv6 آدرس",mac:"MAC آدرس",cidrv4:"IPv4 دامنه",cidrv6:"IPv6 دامنه",base64:"base64-encoded رشته",base64url:"base64url-encoded رشته",json_string:"JSON رشته",e164:"E.164 عدد",credit_card:"شماره کارت اعتباری",currency_code:"کد ارز",iban:"IBAN",jwt:"JWT",template_literal:"ورودی"},i={nan:"NaN",number:"عدد",array:"آرایه"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`ورودی نامعتبر: می‌بایست instanceof ${t.expected} می‌بود، ${s} دریافت شد`:`ورودی نامعتبر: می‌بایست ${o} می‌بود، ${s} دریافت شد`}case"invalid_value":return t.values.length===1?`ورودی نامعتبر: می‌بایست ${P(t.values[0])} می‌بود`:`گزینه نامعتبر: می‌بایست یکی از ${I(t.values,"|")} می‌بود`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`خیلی بزرگ: ${t.origin??"مقدار"} باید ${o}${t.maximum.toString()} ${a.unit??"عنصر"} باشد`:`خیلی بزرگ: ${t.origin??"مقدار"} باید ${o}${t.maximum.toString()} باشد`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`خیلی کوچک: ${t.origin} باید ${o}${t.minimum.toString()} ${a.unit} باشد`:`خیلی کوچک: ${t.origin} باید ${o}${t.minimum.toString()} باشد`}case"invalid_format":{let o=t;return o.format==="starts_with"?`رشته نامعتبر: باید با "${o.prefix}" شروع شود`:o.format==="ends_with"?`رشته نامعتبر: باید با "${o.suffix}" تمام شود`:o.format==="includes"?`رشته نامعتبر: باید شامل "${o.includes}" باشد`:o.format==="regex"?`رشته نامعتبر: باید با الگوی ${o.pattern} مطابقت داشته باشد`:`${n[o.format]??t.format} نامعتبر`}case"not_multiple_of":return`عدد نامعتبر: باید مضرب ${t.divisor} باشد`;case"unrecognized_keys":return`کلید${t.keys.length>1?"های":""} ناشناس: ${I(t.keys,", ")}`;case"invalid_key":return`کلید ناشناس در ${t.origin}`;case"invalid_union":return"ورودی نامعتبر";case"invalid_element":return`مقدار نامعتبر در ${t.origin}`;default:return"ورودی نامعتبر"}}};function db(){return{localeError:_U()}}var wU=()=>{let e={string:{unit:"merkkiä",subject:"merkkijonon"},file:{unit:"tavua",subject:"tiedoston"},array:{unit:"alkiota",subject:"listan"},set:{unit:"alkiota",subject:"joukon"},map:{unit:"alkiota",subject:"kuvauksen"},number:{unit:"",subject:"luvun"},bigint:{unit:"",subject:"suuren kokonaisluvun"},int:{unit:"",subject:"kokonaisluvun"},date:{unit:"",subject:"päivämäärän"}};function r(t){return e[t]??null}let n={regex:"säännöllinen lauseke",email:"sähköpostiosoite",url:"URL-osoite",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO-aikaleima",date:"ISO-päivämäärä",time:"ISO-aika",duration:"ISO-kesto",ipv4:"IPv4-osoite",ipv6:"IPv6-osoite",mac:"MAC-osoite",cidrv4:"IPv4-alue",cidrv6:"IPv6-alue",base64:"base64-koodattu merkkijono",base64url:"base64url-koodattu merkkijono",json_string:"JSON-merkkijono",e164:"E.164-luku",credit_card:"luottokortin numero",currency_code:"valuuttakoodi",iban:"IBAN",jwt:"JWT",template_literal:"templaattimerkkijono"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Virheellinen tyyppi: odotettiin instanceof ${t.expected}, oli ${s}`:`Virheellinen tyyppi: odotettiin ${o}, oli ${s}`}case"invalid_value":return t.values.length===1?`Virheellinen syöte: täytyy olla ${P(t.values[0])}`:`Virheellinen valinta: täytyy olla yksi seuraavista: ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Liian suuri: ${a.subject} täytyy olla ${o}${t.maximum.toString()} ${a.unit}`.trim():`Liian suuri: arvon täytyy olla ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Liian pieni: ${a.subject} täytyy olla ${o}${t.minimum.toString()} ${a.unit}`.trim():`Liian pieni: arvon täytyy olla ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Virheellinen syöte: täytyy alkaa "${o.prefix}"`:o.format==="ends_with"?`Virheellinen syöte: täytyy loppua "${o.suffix}"`:o.format==="includes"?`Virheellinen syöte: täytyy sisältää "${o.includes}"`:o.format==="regex"?`Virheellinen syöte: täytyy vastata säännöllistä lauseketta ${o.pattern}`:`Virheellinen ${n[o.format]??t.format}`}case"not_multiple_of":return`Virheellinen luku: täytyy olla luvun ${t.divisor} monikerta`;case"unrecognized_keys":return`${t.keys.length>1?"Tuntemattomat avaimet":"Tuntematon avain"}: ${I(t.keys,", ")}`;case"invalid_key":return"Virheellinen avain tietueessa";case"invalid_union":return"Virheellinen unioni";case"invalid_element":return"Virheellinen arvo joukossa";default:return"Virheellinen syöte"}}};function fb(){return{localeError:wU()}}var SU=()=>{let e={string:{unit:"caractères",verb:"avoir"},file:{unit:"octets",verb:"avoir"},array:{unit:"éléments",verb:"avoir"},set:{unit:"éléments",verb:"avoir"}};function r(t){return e[t]??null}let n={regex:"expression régulière",email:"adresse e-mail",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"date et heure ISO",date:"date ISO",time:"heure ISO",duration:"durée ISO",ipv4:"adresse IPv4",ipv6:"adresse IPv6",mac:"adresse MAC",cidrv4:"plage IPv4",cidrv6:"plage IPv6",base64:"chaîne de caractères encodée en base64",base64url:"chaîne de caractères encodée en base64url",json_string:"chaîne de caractères JSON",e164:"numéro au format E.164",credit_card:"numéro de carte de crédit",currency_code:"code de devise",iban:"IBAN",jwt:"JWT",template_literal:"entrée"},i={string:"chaîne de caractères",number:"nombre",int:"entier",boolean:"booléen",bigint:"grand entier",symbol:"symbole",undefined:"indéfini",null:"null",never:"jamais",void:"vide",date:"date",array:"tableau",object:"objet",tuple:"tuple",record:"record",map:"map",set:"ensemble",file:"fichier",nonoptional:"non optionnel",nan:"NaN",function:"fonction"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Entrée invalide : instance de ${t.expected} attendu, ${s} reçu`:`Entrée invalide : ${o} attendu, ${s} reçu`}case"invalid_value":return t.values.length===1?`Entrée invalide : ${P(t.values[0])} attendu`:`Option invalide : une valeur parmi ${I(t.values,"|")} attendue`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Trop grand : ${i[t.origin]??"valeur"} doit ${a.verb} ${o}${t.maximum.toString()} ${a.unit??"élément(s)"}`:`Trop grand : ${i[t.origin]??"valeur"} doit être ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Trop petit : ${i[t.origin]??"valeur"} doit ${a.verb} ${o}${t.minimum.toString()} ${a.unit}`:`Trop petit : ${i[t.origin]??"valeur"} doit être ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Chaîne de caractères invalide : doit commencer par "${o.prefix}"`:o.format==="ends_with"?`Chaîne de caractères invalide : doit se terminer par "${o.suffix}"`:o.format==="includes"?`Chaîne de caractères invalide : doit inclure "${o.includes}"`:o.format==="regex"?`Chaîne de caractères invalide : doit correspondre au motif ${o.pattern}`:`${n[o.format]??t.format} invalide`}case"not_multiple_of":return`Nombre invalide : doit être un multiple de ${t.divisor}`;case"unrecognized_keys":return`Clé${t.keys.length>1?"s":""} non reconnue${t.keys.length>1?"s":""} : ${I(t.keys,", ")}`;case"invalid_key":return`Clé invalide dans ${t.origin}`;case"invalid_union":return"Entrée invalide";case"invalid_element":return`Valeur invalide dans ${t.origin}`;default:return"Entrée invalide"}}};function mb(){return{localeError:SU()}}var IU=()=>{let e={string:{unit:"caractères",verb:"avoir"},file:{unit:"octets",verb:"avoir"},array:{unit:"éléments",verb:"avoir"},set:{unit:"éléments",verb:"avoir"},map:{unit:"éléments",verb:"avoir"}};function r(t){return e[t]??null}let n={regex:"entrée",email:"adresse courriel",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"date-heure ISO",date:"date ISO",time:"heure ISO",duration:"durée ISO",ipv4:"adresse IPv4",ipv6:"adresse IPv6",mac:"adresse MAC",cidrv4:"plage IPv4",cidrv6:"plage IPv6",base64:"chaîne encodée en base64",base64url:"chaîne encodée en base64url",json_string:"chaîne JSON",e164:"numéro E.164",credit_card:"numéro de carte de crédit",currency_code:"code de devise",iban:"IBAN",jwt:"JWT",template_literal:"entrée"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Entrée invalide : attendu instanceof ${t.expected}, reçu ${s}`:`Entrée invalide : attendu ${o}, reçu ${s}`}case"invalid_value":return t.values.length===1?`Entrée invalide : attendu ${P(t.values[0])}`:`Option invalide : attendu l'une des valeurs suivantes ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"≤":"<",a=r(t.origin);return a?`Trop grand : attendu que ${t.origin??"la valeur"} ait ${o}${t.maximum.toString()} ${a.unit}`:`Trop grand : attendu que ${t.origin??"la valeur"} soit ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?"≥":">",a=r(t.origin);return a?`Trop petit : attendu que ${t.origin} ait ${o}${t.minimum.toString()} ${a.unit}`:`Trop petit : attendu que ${t.origin} soit ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Chaîne invalide : doit commencer par "${o.prefix}"`:o.format==="ends_with"?`Chaîne invalide : doit se terminer par "${o.suffix}"`:o.format==="includes"?`Chaîne invalide : doit inclure "${o.includes}"`:o.format==="regex"?`Chaîne invalide : doit correspondre au motif ${o.pattern}`:`${n[o.format]??t.format} invalide`}case"not_multiple_of":return`Nombre invalide : doit être un multiple de ${t.divisor}`;case"unrecognized_keys":return`Clé${t.keys.length>1?"s":""} non reconnue${t.keys.length>1?"s":""} : ${I(t.keys,", ")}`;case"invalid_key":return`Clé invalide dans ${t.origin}`;case"invalid_union":return"Entrée invalide";case"invalid_element":return`Valeur invalide dans ${t.origin}`;default:return"Entrée invalide"}}};function pb(){return{localeError:IU()}}var kU=()=>{let e={string:{unit:"અક્ષર",verb:"હોવા જોઈએ"},file:{unit:"બાયટ",verb:"હોવા જોઈએ"},array:{unit:"આઇટમ",verb:"હોવા જોઈએ"},set:{unit:"આઇટમ",verb:"હોવા જોઈએ"},map:{unit:"એન્ટ્રી",verb:"હોવા જોઈએ"}};function r(t){return e[t]??null}let n={regex:"ઇનપુટ",email:"ઈમેઇલ એડ્રેસ",url:"URL",emoji:"ઇમોજી",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO તારીખ અને સમય",date:"ISO તારીખ",time:"ISO સમય",duration:"ISO અવધિ",ipv4:"IPv4 એડ્રેસ",ipv6:"IPv6 એડ્રેસ",mac:"MAC એડ્રેસ",cidrv4:"IPv4 શ્રેણી",cidrv6:"IPv6 શ્રેણી",base64:"base64-એન્કોડેડ સ્ટ્રિંગ",base64url:"base64url-એન્કોડેડ સ્ટ્રિંગ",json_string:"JSON સ્ટ્રિંગ",e164:"E.164 નંબર",credit_card:"ક્રેડિટ કાર્ડ નંબર",currency_code:"ચલણ કોડ",iban:"IBAN",jwt:"JWT",template_literal:"ઇનપુટ"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return`અમાન્ય ઇનપુટ: અપેક્ષિત ${o}, પ્રાપ્ત ${s}`}case"invalid_value":return t.values.length===1?`અમાન્ય ઇનપુટ: અપેક્ષિત ${P(t.values[0])}`:`અમાન્ય વિકલ્પ: ${I(t.values," | ")} માધ્યમથી એક અપેક્ષિત`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`ખૂબ મોટું: ${t.origin??"મૂલ્ય"} ${o}${t.maximum.toString()} ${a.unit??"એલિમેન્ટ"} હોવા જોઈએ`:`ખૂબ મોટું: ${t.origin??"મૂલ્ય"} ${o}${t.maximum.toString()} હોવું જોઈએ`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`ખૂબ નાનું: ${t.origin} ${o}${t.minimum.toString()} ${a.unit} હોવા જોઈએ`:`ખૂબ નાનું: ${t.origin} ${o}${t.minimum.toString()} હોવું જોઈએ`}case"invalid_format":{let o=t;return o.format==="starts_with"?`અમાન્ય સ્ટ્રિંગ: "${o.prefix}" થી શરૂ થવું જોઈએ`:o.format==="ends_with"?`અમાન્ય સ્ટ્રિંગ: "${o.suffix}" પર સમાપ્ત થવું જોઈએ`:o.format==="includes"?`અમાન્ય સ્ટ્રિંગ: "${o.includes}" શામેલ હોવું જોઈએ`:o.format==="regex"?`અમાન્ય સ્ટ્રિંગ: પેટર્ન ${o.pattern} સાથે મેળ ખાવું જોઈએ`:`અમાન્ય ${n[o.format]??t.format}`}case"not_multiple_of":return`અમાન્ય નંબર: ${t.divisor} નો ગુણાંક હોવો જોઈએ`;case"unrecognized_keys":return`ઓળખી શકાતા નહીં તે કી${t.keys.length>1?"ઓ":""}: ${I(t.keys,", ")}`;case"invalid_key":return`${t.origin} માં અમાન્ય કી`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`અમાન્ય ડિસ્ક્રિમિનેટર મૂલ્ય. અપેક્ષિત ${t.options.map(a=>`'${a}'`).join(" | ")}`:"અમાન્ય ઇનપુટ";case"invalid_element":return`${t.origin} માં અમાન્ય મૂલ્ય`;default:return"અમાન્ય ઇનપુટ"}}};function vb(){return{localeError:kU()}}var OU=()=>{let e={string:{label:"מחרוזת",gender:"f"},number:{label:"מספר",gender:"m"},boolean:{label:"ערך בוליאני",gender:"m"},bigint:{label:"BigInt",gender:"m"},date:{label:"תאריך",gender:"m"},array:{label:"מערך",gender:"m"},object:{label:"אובייקט",gender:"m"},null:{label:"ערך ריק (null)",gender:"m"},undefined:{label:"ערך לא מוגדר (undefined)",gender:"m"},symbol:{label:"סימבול (Symbol)",gender:"m"},function:{label:"פונקציה",gender:"f"},map:{label:"מפה (Map)",gender:"f"},set:{label:"קבוצה (Set)",gender:"f"},file:{label:"קובץ",gender:"m"},promise:{label:"Promise",gender:"m"},NaN:{label:"NaN",gender:"m"},unknown:{label:"ערך לא ידוע",gender:"m"},value:{label:"ערך",gender:"m"}},r={string:{unit:"תווים",shortLabel:"קצר",longLabel:"ארוך"},file:{unit:"בייטים",shortLabel:"קטן",longLabel:"גדול"},array:{unit:"פריטים",shortLabel:"קטן",longLabel:"גדול"},set:{unit:"פריטים",shortLabel:"קטן",longLabel:"גדול"},number:{unit:"",shortLabel:"קטן",longLabel:"גדול"}},n=c=>c?e[c]:void 0,i=c=>{let l=n(c);return l?l.label:c??e.unknown.label},t=c=>`ה${i(c)}`,o=c=>(n(c)?.gender??"m")==="f"?"צריכה להיות":"צריך להיות",a=c=>c?r[c]??null:null,s={regex:{label:"קלט",gender:"m"},email:{label:"כתובת אימייל",gender:"f"},url:{label:"כתובת רשת",gender:"f"},emoji:{label:"אימוג'י",gender:"m"},uuid:{label:"UUID",gender:"m"},uuidv4:{label:"UUIDv4",gender:"m"},uuidv6:{label:"UUIDv6",gender:"m"},nanoid:{label:"nanoid",gender:"m"},guid:{label:"GUID",gender:"m"},cuid:{label:"cuid",gender:"m"},cuid2:{label:"cuid2",gender:"m"},ulid:{label:"ULID",gender:"m"},xid:{label:"XID",gender:"m"},ksuid:{label:"KSUID",gender:"m"},datetime:{label:"תאריך וזמן ISO",gender:"m"},date:{label:"תאריך ISO",gender:"m"},time:{label:"זמן ISO",gender:"m"},duration:{label:"משך זמן ISO",gender:"m"},ipv4:{label:"כתובת IPv4",gender:"f"},ipv6:{label:"כתובת IPv6",gender:"f"},mac:{label:"כתובת MAC",gender:"f"},cidrv4:{label:"טווח IPv4",gender:"m"},cidrv6:{label:"טווח IPv6",gender:"m"},base64:{label:"מחרוזת בבסיס 64",gender:"f"},base64url:{label:"מחרוזת בבסיס 64 לכתובות רשת",gender:"f"},json_string:{label:"מחרוזת JSON",gender:"f"},e164:{label:"מספר E.164",gender:"m"},credit_card:{label:"מספר כרטיס אשראי",gender:"m"},currency_code:{label:"קוד מטבע",gender:"m"},iban:{label:"IBAN",gender:"m"},jwt:{label:"JWT",gender:"m"},template_literal:{label:"קלט",gender:"m"},ends_with:{label:"קלט",gender:"m"},includes:{label:"קלט",gender:"m"},lowercase:{label:"קלט",gender:"m"},starts_with:{label:"קלט",gender:"m"},uppercase:{label:"קלט",gender:"m"}},u={nan:"NaN"};return c=>{switch(c.code){case"invalid_type":{let l=c.expected,d=u[l??""]??i(l),f=x(c.input),m=u[f]??e[f]?.label??f;return/^[A-Z]/.test(c.expected)?`קלט לא תקין: צריך להיות instanceof ${c.expected}, התקבל ${m}`:`קלט לא תקין: צריך להיות ${d}, התקבל ${m}`}case"invalid_value":{if(c.values.length===1)return`ערך לא תקין: הערך חייב להיות ${P(c.values[0])}`;let l=c.values.map(m=>P(m));if(c.values.length===2)return`ערך לא תקין: האפשרויות המתאימות הן ${l[0]} או ${l[1]}`;let d=l[l.length-1];return`ערך לא תקין: האפשרויות המתאימות הן ${l.slice(0,-1).join(", ")} או ${d}`}case"too_big":{let l=a(c.origin),d=t(c.origin??"value");if(c.origin==="string")return`${l?.longLabel??"ארוך"} מדי: ${d} צריכה להכיל ${c.maximum.toString()} ${l?.unit??""} ${c.inclusive?"או פחות":"לכל היותר"}`.trim();if(c.origin==="number"){let v=c.inclusive?`קטן או שווה ל-${c.maximum}`:`קטן מ-${c.maximum}`;return`גדול מדי: ${d} צריך להיות ${v}`}if(c.origin==="array"||c.origin==="set"){let v=c.origin==="set"?"צריכה":"צריך",h=c.inclusive?`${c.maximum} ${l?.unit??""} או פחות`:`פחות מ-${c.maximum} ${l?.unit??""}`;return`גדול מדי: ${d} ${v} להכיל ${h}`.trim()}let f=c.inclusive?"<=":"<",m=o(c.origin??"value");return l?.unit?`${l.longLabel} מדי: ${d} ${m} ${f}${c.maximum.toString()} ${l.unit}`:`${l?.longLabel??"גדול"} מדי: ${d} ${m} ${f}${c.maximum.toString()}`}case"too_small":{let l=a(c.origin),d=t(c.origin??"value");if(c.origin==="string")return`${l?.shortLabel??"קצר"} מדי: ${d} צריכה להכיל ${c.minimum.toString()} ${l?.unit??""} ${c.inclusive?"או יותר":"לפחות"}`.trim();if(c.origin==="number"){let v=c.inclusive?`גדול או שווה ל-${c.minimum}`:`גדול מ-${c.minimum}`;return`קטן מדי: ${d} צריך להיות ${v}`}if(c.origin==="array"||c.origin==="set"){let v=c.origin==="set"?"צריכה":"צריך";if(c.minimum===1&&c.inclusive){let y=(c.origin==="set","לפחות פריט אחד");return`קטן מדי: ${d} ${v} להכיל ${y}`}let h=c.inclusive?`${c.minimum} ${l?.unit??""} או יותר`:`יותר מ-${c.minimum} ${l?.unit??""}`;return`קטן מדי: ${d} ${v} להכיל ${h}`.trim()}let f=c.inclusive?">=":">",m=o(c.origin??"value");return l?.unit?`${l.shortLabel} מדי: ${d} ${m} ${f}${c.minimum.toString()} ${l.unit}`:`${l?.shortLabel??"קטן"} מדי: ${d} ${m} ${f}${c.minimum.toString()}`}case"invalid_format":{let l=c;if(l.format==="starts_with")return`המחרוזת חייבת להתחיל ב "${l.prefix}"`;if(l.format==="ends_with")return`המחרוזת חייבת להסתיים ב "${l.suffix}"`;if(l.format==="includes")return`המחרוזת חייבת לכלול "${l.includes}"`;if(l.format==="regex")return`המחרוזת חייבת להתאים לתבנית ${l.pattern}`;let d=s[l.format],f=d?.label??l.format,v=(d?.gender??"m")==="f"?"תקינה":"תקין";return`${f} לא ${v}`}case"not_multiple_of":return`מספר לא תקין: חייב להיות מכפלה של ${c.divisor}`;case"unrecognized_keys":return`מפתח${c.keys.length>1?"ות":""} לא מזוה${c.keys.length>1?"ים":"ה"}: ${I(c.keys,", ")}`;case"invalid_key":return"שדה לא תקין באובייקט";case"invalid_union":return"קלט לא תקין";case"invalid_element":return`ערך לא תקין ב${t(c.origin??"array")}`;default:return"קלט לא תקין"}}};function gb(){return{localeError:OU()}}var NU=()=>{let e={string:{unit:"अक्षर",verb:"रखने के लिए"},file:{unit:"बाइट्स",verb:"रखने के लिए"},array:{unit:"तत्व",verb:"रखने के लिए"},set:{unit:"तत्व",verb:"रखने के लिए"},map:{unit:"प्रविष्टियाँ",verb:"रखने के लिए"}};function r(t){return e[t]??null}let n={regex:"इनपुट",email:"ईमेल पता",url:"URL",emoji:"इमोजी",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO तिथि और समय",date:"ISO तिथि",time:"ISO समय",duration:"ISO अवधि",ipv4:"IPv4 पता",ipv6:"IPv6 पता",mac:"MAC पता",cidrv4:"IPv4 श्रेणी",cidrv6:"IPv6 श्रेणी",base64:"Base64-एन्कोडेड स्ट्रिंग",base64url:"Base64URL-एन्कोडेड स्ट्रिंग",json_string:"JSON स्ट्रिंग",e164:"E.164 संख्या",credit_card:"क्रेडिट कार्ड संख्या",currency_code:"मुद्रा कोड",iban:"IBAN",jwt:"JWT",template_literal:"इनपुट"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return`अमान्य इनपुट: अपेक्षित ${o}, प्राप्त ${s}`}case"invalid_value":return t.values.length===1?`अमान्य इनपुट: अपेक्षित ${P(t.values[0])}`:`अमान्य विकल्प: अपेक्षित मानों में से एक ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`बहुत बड़ा: अपेक्षित था कि ${t.origin??"मान"} में ${o}${t.maximum} ${a.unit} हों`:`बहुत बड़ा: अपेक्षित था कि ${t.origin??"मान"} ${o}${t.maximum} हो`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`बहुत छोटा: अपेक्षित था कि ${t.origin} में ${o}${t.minimum} ${a.unit} हों`:`बहुत छोटा: अपेक्षित था कि ${t.origin} ${o}${t.minimum} हो`}case"invalid_format":{let o=t;return o.format==="starts_with"?`अमान्य स्ट्रिंग: "${o.prefix}" से शुरू होना चाहिए`:o.format==="ends_with"?`अमान्य स्ट्रिंग: "${o.suffix}" पर समाप्त होना चाहिए`:o.format==="includes"?`अमान्य स्ट्रिंग: इसमें "${o.includes}" शामिल होना चाहिए`:o.format==="regex"?`अमान्य स्ट्रिंग: पैटर्न ${o.pattern} से मेल खाना चाहिए`:`अमान्य ${n[o.format]??t.format}`}case"not_multiple_of":return`अमान्य संख्या: यह ${t.divisor} का गुणज होना चाहिए`;case"unrecognized_keys":return`अपरिचित कुंजी${t.keys.length>1?"याँ":""}: ${I(t.keys,", ")}`;case"invalid_key":return`अमान्य कुंजी: ${t.origin} में`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`अमान्य डिस्क्रिमिनेटर मान: अपेक्षित ${t.options.map(a=>`'${a}'`).join(" | ")}`:"अमान्य इनपुट";case"invalid_element":return`अमान्य मान: ${t.origin} में`;default:return"अमान्य इनपुट"}}};function hb(){return{localeError:NU()}}var AU=()=>{let e={string:{unit:"znakova",verb:"imati"},file:{unit:"bajtova",verb:"imati"},array:{unit:"stavki",verb:"imati"},set:{unit:"stavki",verb:"imati"}};function r(t){return e[t]??null}let n={regex:"unos",email:"email adresa",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO datum i vrijeme",date:"ISO datum",time:"ISO vrijeme",duration:"ISO trajanje",ipv4:"IPv4 adresa",ipv6:"IPv6 adresa",mac:"MAC adresa",cidrv4:"IPv4 raspon",cidrv6:"IPv6 raspon",base64:"base64 kodirani tekst",base64url:"base64url kodirani tekst",json_string:"JSON tekst",e164:"E.164 broj",credit_card:"broj kreditne kartice",currency_code:"kod valute",iban:"IBAN",jwt:"JWT",template_literal:"unos"},i={nan:"NaN",string:"tekst",number:"broj",boolean:"boolean",array:"niz",object:"objekt",set:"skup",file:"datoteka",date:"datum",bigint:"bigint",symbol:"simbol",undefined:"undefined",null:"null",function:"funkcija",map:"mapa"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Neispravan unos: očekuje se instanceof ${t.expected}, a primljeno je ${s}`:`Neispravan unos: očekuje se ${o}, a primljeno je ${s}`}case"invalid_value":return t.values.length===1?`Neispravna vrijednost: očekivano ${P(t.values[0])}`:`Neispravna opcija: očekivano jedno od ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin),s=i[t.origin]??t.origin;return a?`Preveliko: očekivano da ${s??"vrijednost"} ima ${o}${t.maximum.toString()} ${a.unit??"elemenata"}`:`Preveliko: očekivano da ${s??"vrijednost"} bude ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin),s=i[t.origin]??t.origin;return a?`Premalo: očekivano da ${s} ima ${o}${t.minimum.toString()} ${a.unit}`:`Premalo: očekivano da ${s} bude ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Neispravan tekst: mora započinjati s "${o.prefix}"`:o.format==="ends_with"?`Neispravan tekst: mora završavati s "${o.suffix}"`:o.format==="includes"?`Neispravan tekst: mora sadržavati "${o.includes}"`:o.format==="regex"?`Neispravan tekst: mora odgovarati uzorku ${o.pattern}`:`Neispravna ${n[o.format]??t.format}`}case"not_multiple_of":return`Neispravan broj: mora biti višekratnik od ${t.divisor}`;case"unrecognized_keys":return`Neprepoznat${t.keys.length>1?"i ključevi":" ključ"}: ${I(t.keys,", ")}`;case"invalid_key":return`Neispravan ključ u ${i[t.origin]??t.origin}`;case"invalid_union":return"Neispravan unos";case"invalid_element":return`Neispravna vrijednost u ${i[t.origin]??t.origin}`;default:return"Neispravan unos"}}};function yb(){return{localeError:AU()}}var PU=()=>{let e={string:{unit:"karakter",verb:"legyen"},file:{unit:"byte",verb:"legyen"},array:{unit:"elem",verb:"legyen"},set:{unit:"elem",verb:"legyen"},map:{unit:"elem",verb:"legyen"}};function r(t){return e[t]??null}let n={regex:"bemenet",email:"email cím",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO időbélyeg",date:"ISO dátum",time:"ISO idő",duration:"ISO időintervallum",ipv4:"IPv4 cím",ipv6:"IPv6 cím",mac:"MAC cím",cidrv4:"IPv4 tartomány",cidrv6:"IPv6 tartomány",base64:"base64-kódolt string",base64url:"base64url-kódolt string",json_string:"JSON string",e164:"E.164 szám",credit_card:"hitelkártyaszám",currency_code:"pénznemkód",iban:"IBAN",jwt:"JWT",template_literal:"bemenet"},i={nan:"NaN",number:"szám",array:"tömb"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Érvénytelen bemenet: a várt érték instanceof ${t.expected}, a kapott érték ${s}`:`Érvénytelen bemenet: a várt érték ${o}, a kapott érték ${s}`}case"invalid_value":return t.values.length===1?`Érvénytelen bemenet: a várt érték ${P(t.values[0])}`:`Érvénytelen opció: valamelyik érték várt ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Túl nagy: ${t.origin??"érték"} mérete túl nagy ${o}${t.maximum.toString()} ${a.unit??"elem"}`:`Túl nagy: a bemeneti érték ${t.origin??"érték"} túl nagy: ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Túl kicsi: a bemeneti érték ${t.origin} mérete túl kicsi ${o}${t.minimum.toString()} ${a.unit}`:`Túl kicsi: a bemeneti érték ${t.origin} túl kicsi ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Érvénytelen string: "${o.prefix}" értékkel kell kezdődnie`:o.format==="ends_with"?`Érvénytelen string: "${o.suffix}" értékkel kell végződnie`:o.format==="includes"?`Érvénytelen string: "${o.includes}" értéket kell tartalmaznia`:o.format==="regex"?`Érvénytelen string: ${o.pattern} mintának kell megfelelnie`:`Érvénytelen ${n[o.format]??t.format}`}case"not_multiple_of":return`Érvénytelen szám: ${t.divisor} többszörösének kell lennie`;case"unrecognized_keys":return`Ismeretlen kulcs${t.keys.length>1?"s":""}: ${I(t.keys,", ")}`;case"invalid_key":return`Érvénytelen kulcs ${t.origin}`;case"invalid_union":return"Érvénytelen bemenet";case"invalid_element":return`Érvénytelen érték: ${t.origin}`;default:return"Érvénytelen bemenet"}}};function bb(){return{localeError:PU()}}function $b(e,r,n){return Math.abs(e)===1?r:n}function ci(e){if(!e)return"";let r=["ա","ե","ը","ի","ո","ու","օ"],n=e[e.length-1];return e+(r.includes(n)?"ն":"ը")}var xU=()=>{let e={string:{unit:{one:"նշան",many:"նշաններ"},verb:"ունենալ"},file:{unit:{one:"բայթ",many:"բայթեր"},verb:"ունենալ"},array:{unit:{one:"տարր",many:"տարրեր"},verb:"ունենալ"},set:{unit:{one:"տարր",many:"տարրեր"},verb:"ունենալ"},map:{unit:{one:"տարր",many:"տարրեր"},verb:"ունենալ"}};function r(t){return e[t]??null}let n={regex:"մուտք",email:"էլ. հասցե",url:"URL",emoji:"էմոջի",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO ամսաթիվ և ժամ",date:"ISO ամսաթիվ",time:"ISO ժամ",duration:"ISO տևողություն",ipv4:"IPv4 հասցե",ipv6:"IPv6 հասցե",mac:"MAC հասցե",cidrv4:"IPv4 միջակայք",cidrv6:"IPv6 միջակայք",base64:"base64 ձևաչափով տող",base64url:"base64url ձևաչափով տող",json_string:"JSON տող",e164:"E.164 համար",credit_card:"կրեդիտ քարտի համար",currency_code:"արժույթի կոդ",iban:"IBAN",jwt:"JWT",template_literal:"մուտք"},i={nan:"NaN",number:"թիվ",array:"զանգված"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Սխալ մուտքագրում․ սպասվում էր instanceof ${t.expected}, ստացվել է ${s}`:`Սխալ մուտքագրում․ սպասվում էր ${o}, ստացվել է ${s}`}case"invalid_value":return t.values.length===1?`Սխալ մուտքագրում․ սպասվում էր ${P(t.values[1])}`:`Սխալ տարբերակ․ սպասվում էր հետևյալներից մեկը՝ ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);if(a){let s=Number(t.maximum),u=$b(s,a.unit.one,a.unit.many);return`Չափազանց մեծ արժեք․ սպասվում է, որ ${ci(t.origin??"արժեք")} կունենա ${o}${t.maximum.toString()} ${u}`}return`Չափազանց մեծ արժեք․ սպասվում է, որ ${ci(t.origin??"արժեք")} լինի ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);if(a){let s=Number(t.minimum),u=$b(s,a.unit.one,a.unit.many);return`Չափազանց փոքր արժեք․ սպասվում է, որ ${ci(t.origin)} կունենա ${o}${t.minimum.toString()} ${u}`}return`Չափազանց փոքր արժեք․ սպասվում է, որ ${ci(t.origin)} լինի ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Սխալ տող․ պետք է սկսվի "${o.prefix}"-ով`:o.format==="ends_with"?`Սխալ տող․ պետք է ավարտվի "${o.suffix}"-ով`:o.format==="includes"?`Սխալ տող․ պետք է պարունակի "${o.includes}"`:o.format==="regex"?`Սխալ տող․ պետք է համապատասխանի ${o.pattern} ձևաչափին`:`Սխալ ${n[o.format]??t.format}`}case"not_multiple_of":return`Սխալ թիվ․ պետք է բազմապատիկ լինի ${t.divisor}-ի`;case"unrecognized_keys":return`Չճանաչված բանալի${t.keys.length>1?"ներ":""}. ${I(t.keys,", ")}`;case"invalid_key":return`Սխալ բանալի ${ci(t.origin)}-ում`;case"invalid_union":return"Սխալ մուտքագրում";case"invalid_element":return`Սխալ արժեք ${ci(t.origin)}-ում`;default:return"Սխալ մուտքագրում"}}};function _b(){return{localeError:xU()}}var EU=()=>{let e={string:{unit:"karakter",verb:"memiliki"},file:{unit:"byte",verb:"memiliki"},array:{unit:"item",verb:"memiliki"},set:{unit:"item",verb:"memiliki"},map:{unit:"item",verb:"memiliki"}};function r(t){return e[t]??null}let n={regex:"input",email:"alamat email",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"tanggal dan waktu format ISO",date:"tanggal format ISO",time:"jam format ISO",duration:"durasi format ISO",ipv4:"alamat IPv4",ipv6:"alamat IPv6",mac:"alamat MAC",cidrv4:"rentang alamat IPv4",cidrv6:"rentang alamat IPv6",base64:"string dengan enkode base64",base64url:"string dengan enkode base64url",json_string:"string JSON",e164:"angka E.164",credit_card:"nomor kartu kredit",currency_code:"kode mata uang",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Input tidak valid: diharapkan instanceof ${t.expected}, diterima ${s}`:`Input tidak valid: diharapkan ${o}, diterima ${s}`}case"invalid_value":return t.values.length===1?`Input tidak valid: diharapkan ${P(t.values[0])}`:`Pilihan tidak valid: diharapkan salah satu dari ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Terlalu besar: diharapkan ${t.origin??"value"} memiliki ${o}${t.maximum.toString()} ${a.unit??"elemen"}`:`Terlalu besar: diharapkan ${t.origin??"value"} menjadi ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Terlalu kecil: diharapkan ${t.origin} memiliki ${o}${t.minimum.toString()} ${a.unit}`:`Terlalu kecil: diharapkan ${t.origin} menjadi ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`String tidak valid: harus dimulai dengan "${o.prefix}"`:o.format==="ends_with"?`String tidak valid: harus berakhir dengan "${o.suffix}"`:o.format==="includes"?`String tidak valid: harus menyertakan "${o.includes}"`:o.format==="regex"?`String tidak valid: harus sesuai pola ${o.pattern}`:`${n[o.format]??t.format} tidak valid`}case"not_multiple_of":return`Angka tidak valid: harus kelipatan dari ${t.divisor}`;case"unrecognized_keys":return`Kunci tidak dikenali ${t.keys.length>1?"s":""}: ${I(t.keys,", ")}`;case"invalid_key":return`Kunci tidak valid di ${t.origin}`;case"invalid_union":return"Input tidak valid";case"invalid_element":return`Nilai tidak valid di ${t.origin}`;default:return"Input tidak valid"}}};function wb(){return{localeError:EU()}}var DU=()=>{let e={string:{unit:"stafi",verb:"að hafa"},file:{unit:"bæti",verb:"að hafa"},array:{unit:"hluti",verb:"að hafa"},set:{unit:"hluti",verb:"að hafa"},map:{unit:"hluti",verb:"að hafa"}};function r(t){return e[t]??null}let n={regex:"gildi",email:"netfang",url:"vefslóð",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO dagsetning og tími",date:"ISO dagsetning",time:"ISO tími",duration:"ISO tímalengd",ipv4:"IPv4 address",ipv6:"IPv6 address",mac:"MAC address",cidrv4:"IPv4 range",cidrv6:"IPv6 range",base64:"base64-encoded strengur",base64url:"base64url-encoded strengur",json_string:"JSON strengur",e164:"E.164 tölugildi",credit_card:"kreditkortanúmer",currency_code:"gjaldmiðilskóði",iban:"IBAN",jwt:"JWT",template_literal:"gildi"},i={nan:"NaN",number:"númer",array:"fylki"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Rangt gildi: Þú slóst inn ${s} þar sem á að vera instanceof ${t.expected}`:`Rangt gildi: Þú slóst inn ${s} þar sem á að vera ${o}`}case"invalid_value":return t.values.length===1?`Rangt gildi: gert ráð fyrir ${P(t.values[0])}`:`Ógilt val: má vera eitt af eftirfarandi ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Of stórt: gert er ráð fyrir að ${t.origin??"gildi"} hafi ${o}${t.maximum.toString()} ${a.unit??"hluti"}`:`Of stórt: gert er ráð fyrir að ${t.origin??"gildi"} sé ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Of lítið: gert er ráð fyrir að ${t.origin} hafi ${o}${t.minimum.toString()} ${a.unit}`:`Of lítið: gert er ráð fyrir að ${t.origin} sé ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ógildur strengur: verður að byrja á "${o.prefix}"`:o.format==="ends_with"?`Ógildur strengur: verður að enda á "${o.suffix}"`:o.format==="includes"?`Ógildur strengur: verður að innihalda "${o.includes}"`:o.format==="regex"?`Ógildur strengur: verður að fylgja mynstri ${o.pattern}`:`Rangt ${n[o.format]??t.format}`}case"not_multiple_of":return`Röng tala: verður að vera margfeldi af ${t.divisor}`;case"unrecognized_keys":return`Óþekkt ${t.keys.length>1?"ir lyklar":"ur lykill"}: ${I(t.keys,", ")}`;case"invalid_key":return`Rangur lykill í ${t.origin}`;case"invalid_union":return"Rangt gildi";case"invalid_element":return`Rangt gildi í ${t.origin}`;default:return"Rangt gildi"}}};function Sb(){return{localeError:DU()}}var TU=()=>{let e={string:{unit:"caratteri",verb:"avere"},file:{unit:"byte",verb:"avere"},array:{unit:"elementi",verb:"avere"},set:{unit:"elementi",verb:"avere"},map:{unit:"elementi",verb:"avere"}};function r(t){return e[t]??null}let n={regex:"input",email:"indirizzo email",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"data e ora ISO",date:"data ISO",time:"ora ISO",duration:"durata ISO",ipv4:"indirizzo IPv4",ipv6:"indirizzo IPv6",mac:"indirizzo MAC",cidrv4:"intervallo IPv4",cidrv6:"intervallo IPv6",base64:"stringa codificata in base64",base64url:"URL codificata in base64",json_string:"stringa JSON",e164:"numero E.164",credit_card:"numero di carta di credito",currency_code:"codice valuta",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN",number:"numero",array:"vettore"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Input non valido: atteso instanceof ${t.expected}, ricevuto ${s}`:`Input non valido: atteso ${o}, ricevuto ${s}`}case"invalid_value":return t.values.length===1?`Input non valido: atteso ${P(t.values[0])}`:`Opzione non valida: atteso uno tra ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Troppo grande: ${t.origin??"valore"} deve avere ${o}${t.maximum.toString()} ${a.unit??"elementi"}`:`Troppo grande: ${t.origin??"valore"} deve essere ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Troppo piccolo: ${t.origin} deve avere ${o}${t.minimum.toString()} ${a.unit}`:`Troppo piccolo: ${t.origin} deve essere ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Stringa non valida: deve iniziare con "${o.prefix}"`:o.format==="ends_with"?`Stringa non valida: deve terminare con "${o.suffix}"`:o.format==="includes"?`Stringa non valida: deve includere "${o.includes}"`:o.format==="regex"?`Stringa non valida: deve corrispondere al pattern ${o.pattern}`:`Input non valido: ${n[o.format]??t.format}`}case"not_multiple_of":return`Numero non valido: deve essere un multiplo di ${t.divisor}`;case"unrecognized_keys":return`Chiav${t.keys.length>1?"i":"e"} non riconosciut${t.keys.length>1?"e":"a"}: ${I(t.keys,", ")}`;case"invalid_key":return`Chiave non valida in ${t.origin}`;case"invalid_union":return"Input non valido";case"invalid_element":return`Valore non valido in ${t.origin}`;default:return"Input non valido"}}};function Ib(){return{localeError:TU()}}var jU=()=>{let e={string:{unit:"文字",verb:"である"},file:{unit:"バイト",verb:"である"},array:{unit:"要素",verb:"である"},set:{unit:"要素",verb:"である"},map:{unit:"要素",verb:"である"}};function r(t){return e[t]??null}let n={regex:"入力値",email:"メールアドレス",url:"URL",emoji:"絵文字",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO日時",date:"ISO日付",time:"ISO時刻",duration:"ISO期間",ipv4:"IPv4アドレス",ipv6:"IPv6アドレス",mac:"MACアドレス",cidrv4:"IPv4範囲",cidrv6:"IPv6範囲",base64:"base64エンコード文字列",base64url:"base64urlエンコード文字列",json_string:"JSON文字列",e164:"E.164番号",credit_card:"クレジットカード番号",currency_code:"通貨コード",iban:"IBAN",jwt:"JWT",template_literal:"入力値"},i={nan:"NaN",number:"数値",array:"配列"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`無効な入力: instanceof ${t.expected}が期待されましたが、${s}が入力されました`:`無効な入力: ${o}が期待されましたが、${s}が入力されました`}case"invalid_value":return t.values.length===1?`無効な入力: ${P(t.values[0])}が期待されました`:`無効な選択: ${I(t.values,"、")}のいずれかである必要があります`;case"too_big":{let o=t.inclusive?"以下である":"より小さい",a=r(t.origin);return a?`大きすぎる値: ${t.origin??"値"}は${t.maximum.toString()}${a.unit??"要素"}${o}必要があります`:`大きすぎる値: ${t.origin??"値"}は${t.maximum.toString()}${o}必要があります`}case"too_small":{let o=t.inclusive?"以上である":"より大きい",a=r(t.origin);return a?`小さすぎる値: ${t.origin}は${t.minimum.toString()}${a.unit}${o}必要があります`:`小さすぎる値: ${t.origin}は${t.minimum.toString()}${o}必要があります`}case"invalid_format":{let o=t;return o.format==="starts_with"?`無効な文字列: "${o.prefix}"で始まる必要があります`:o.format==="ends_with"?`無効な文字列: "${o.suffix}"で終わる必要があります`:o.format==="includes"?`無効な文字列: "${o.includes}"を含む必要があります`:o.format==="regex"?`無効な文字列: パターン${o.pattern}に一致する必要があります`:`無効な${n[o.format]??t.format}`}case"not_multiple_of":return`無効な数値: ${t.divisor}の倍数である必要があります`;case"unrecognized_keys":return`認識されていないキー${t.keys.length>1?"群":""}: ${I(t.keys,"、")}`;case"invalid_key":return`${t.origin}内の無効なキー`;case"invalid_union":return"無効な入力";case"invalid_element":return`${t.origin}内の無効な値`;default:return"無効な入力"}}};function kb(){return{localeError:jU()}}var zU=()=>{let e={string:{unit:"სიმბოლო",verb:"უნდა შეიცავდეს"},file:{unit:"ბაიტი",verb:"უნდა შეიცავდეს"},array:{unit:"ელემენტი",verb:"უნდა შეიცავდეს"},set:{unit:"ელემენტი",verb:"უნდა შეიცავდეს"},map:{unit:"ელემენტი",verb:"უნდა შეიცავდეს"}};function r(t){return e[t]??null}let n={regex:"შეყვანა",email:"ელ-ფოსტის მისამართი",url:"URL",emoji:"ემოჯი",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"თარიღი-დრო",date:"თარიღი",time:"დრო",duration:"ხანგრძლივობა",ipv4:"IPv4 მისამართი",ipv6:"IPv6 მისამართი",mac:"MAC მისამართი",cidrv4:"IPv4 დიაპაზონი",cidrv6:"IPv6 დიაპაზონი",base64:"base64-კოდირებული ველი",base64url:"base64url-კოდირებული ველი",json_string:"JSON ველი",e164:"E.164 ნომერი",credit_card:"საკრედიტო ბარათის ნომერი",currency_code:"ვალუტის კოდი",iban:"IBAN",jwt:"JWT",template_literal:"შეყვანა"},i={nan:"NaN",number:"რიცხვი",string:"ველი",boolean:"ბულეანი",function:"ფუნქცია",array:"მასივი"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`არასწორი შეყვანა: მოსალოდნელი instanceof ${t.expected}, მიღებული ${s}`:`არასწორი შეყვანა: მოსალოდნელი ${o}, მიღებული ${s}`}case"invalid_value":return t.values.length===1?`არასწორი შეყვანა: მოსალოდნელი ${P(t.values[0])}`:`არასწორი ვარიანტი: მოსალოდნელია ერთ-ერთი ${I(t.values,"|")}-დან`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`ზედმეტად დიდი: მოსალოდნელი ${t.origin??"მნიშვნელობა"} ${a.verb} ${o}${t.maximum.toString()} ${a.unit}`:`ზედმეტად დიდი: მოსალოდნელი ${t.origin??"მნიშვნელობა"} იყოს ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`ზედმეტად პატარა: მოსალოდნელი ${t.origin} ${a.verb} ${o}${t.minimum.toString()} ${a.unit}`:`ზედმეტად პატარა: მოსალოდნელი ${t.origin} იყოს ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`არასწორი ველი: უნდა იწყებოდეს "${o.prefix}"-ით`:o.format==="ends_with"?`არასწორი ველი: უნდა მთავრდებოდეს "${o.suffix}"-ით`:o.format==="includes"?`არასწორი ველი: უნდა შეიცავდეს "${o.includes}"-ს`:o.format==="regex"?`არასწორი ველი: უნდა შეესაბამებოდეს შაბლონს ${o.pattern}`:`არასწორი ${n[o.format]??t.format}`}case"not_multiple_of":return`არასწორი რიცხვი: უნდა იყოს ${t.divisor}-ის ჯერადი`;case"unrecognized_keys":return`უცნობი გასაღებ${t.keys.length>1?"ები":"ი"}: ${I(t.keys,", ")}`;case"invalid_key":return`არასწორი გასაღები ${t.origin}-ში`;case"invalid_union":return"არასწორი შეყვანა";case"invalid_element":return`არასწორი მნიშვნელობა ${t.origin}-ში`;default:return"არასწორი შეყვანა"}}};function Ob(){return{localeError:zU()}}var CU=()=>{let e={string:{unit:"តួអក្សរ",verb:"គួរមាន"},file:{unit:"បៃ",verb:"គួរមាន"},array:{unit:"ធាតុ",verb:"គួរមាន"},set:{unit:"ធាតុ",verb:"គួរមាន"},map:{unit:"ធាតុ",verb:"គួរមាន"}};function r(t){return e[t]??null}let n={regex:"ទិន្នន័យបញ្ចូល",email:"អាសយដ្ឋានអ៊ីមែល",url:"URL",emoji:"សញ្ញាអារម្មណ៍",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"កាលបរិច្ឆេទ និងម៉ោង ISO",date:"កាលបរិច្ឆេទ ISO",time:"ម៉ោង ISO",duration:"រយៈពេល ISO",ipv4:"អាសយដ្ឋាន IPv4",ipv6:"អាសយដ្ឋាន IPv6",mac:"អាសយដ្ឋាន MAC",cidrv4:"ដែនអាសយដ្ឋាន IPv4",cidrv6:"ដែនអាសយដ្ឋាន IPv6",base64:"ខ្សែអក្សរអ៊ិកូដ base64",base64url:"ខ្សែអក្សរអ៊ិកូដ base64url",json_string:"ខ្សែអក្សរ JSON",e164:"លេខ E.164",credit_card:"លេខប័ណ្ណឥណទាន",currency_code:"កូដរូបិយប័ណ្ណ",iban:"IBAN",jwt:"JWT",template_literal:"ទិន្នន័យបញ្ចូល"},i={nan:"NaN",number:"លេខ",array:"អារេ (Array)",null:"គ្មានតម្លៃ (null)"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`ទិន្នន័យបញ្ចូលមិនត្រឹមត្រូវ៖ ត្រូវការ instanceof ${t.expected} ប៉ុន្តែទទួលបាន ${s}`:`ទិន្នន័យបញ្ចូលមិនត្រឹមត្រូវ៖ ត្រូវការ ${o} ប៉ុន្តែទទួលបាន ${s}`}case"invalid_value":return t.values.length===1?`ទិន្នន័យបញ្ចូលមិនត្រឹមត្រូវ៖ ត្រូវការ ${P(t.values[0])}`:`ជម្រើសមិនត្រឹមត្រូវ៖ ត្រូវជាមួយក្នុងចំណោម ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`ធំពេក៖ ត្រូវការ ${t.origin??"តម្លៃ"} ${o} ${t.maximum.toString()} ${a.unit??"ធាតុ"}`:`ធំពេក៖ ត្រូវការ ${t.origin??"តម្លៃ"} ${o} ${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`តូចពេក៖ ត្រូវការ ${t.origin} ${o} ${t.minimum.toString()} ${a.unit}`:`តូចពេក៖ ត្រូវការ ${t.origin} ${o} ${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`ខ្សែអក្សរមិនត្រឹមត្រូវ៖ ត្រូវចាប់ផ្តើមដោយ "${o.prefix}"`:o.format==="ends_with"?`ខ្សែអក្សរមិនត្រឹមត្រូវ៖ ត្រូវបញ្ចប់ដោយ "${o.suffix}"`:o.format==="includes"?`ខ្សែអក្សរមិនត្រឹមត្រូវ៖ ត្រូវមាន "${o.includes}"`:o.format==="regex"?`ខ្សែអក្សរមិនត្រឹមត្រូវ៖ ត្រូវតែផ្គូផ្គងនឹងទម្រង់ដែលបានកំណត់ ${o.pattern}`:`មិនត្រឹមត្រូវ៖ ${n[o.format]??t.format}`}case"not_multiple_of":return`លេខមិនត្រឹមត្រូវ៖ ត្រូវតែជាពហុគុណនៃ ${t.divisor}`;case"unrecognized_keys":return`រកឃើញសោមិនស្គាល់៖ ${I(t.keys,", ")}`;case"invalid_key":return`សោមិនត្រឹមត្រូវនៅក្នុង ${t.origin}`;case"invalid_union":return"ទិន្នន័យមិនត្រឹមត្រូវ";case"invalid_element":return`ទិន្នន័យមិនត្រឹមត្រូវនៅក្នុង ${t.origin}`;default:return"ទិន្នន័យមិនត្រឹមត្រូវ"}}};function eu(){return{localeError:CU()}}function Nb(){return eu()}var qU=()=>{let e={string:{unit:"ಅಕ್ಷರಗಳು",verb:"ಹೊಂದಲು"},file:{unit:"ಬೈಟ್‌ಗಳು",verb:"ಹೊಂದಲು"},array:{unit:"ವಸ್ತುಗಳು",verb:"ಹೊಂದಲು"},set:{unit:"ವಸ್ತುಗಳು",verb:"ಹೊಂದಲು"},map:{unit:"entries",verb:"ಹೊಂದಲು"}};function r(t){return e[t]??null}let n={regex:"ಇನ್ಪುಟ್",email:"email ವಿಳಾಸ",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO ದಿನಾಂಕದ ಸಮಯ",date:"ISO ದಿನಾಂಕ",time:"ISO ಸಮಯ",duration:"ISO ಅವಧಿ",ipv4:"IPv4 ವಿಳಾಸ",ipv6:"IPv6 ವಿಳಾಸ",mac:"MAC ವಿಳಾಸ",cidrv4:"IPv4 ವ್ಯಾಪ್ತಿಯ",cidrv6:"IPv6 ವ್ಯಾಪ್ತಿಯ",base64:"base64-encodedಸ್ಟ್ರಿಂಗ್",base64url:"base64url-encodedಸ್ಟ್ರಿಂಗ್",json_string:"JSONಸ್ಟ್ರಿಂಗ್",e164:"E.164 ಸಂಖ್ಯೆ",credit_card:"ಕ್ರೆಡಿಟ್ ಕಾರ್ಡ್ ಸಂಖ್ಯೆ",currency_code:"ಕರೆನ್ಸಿ ಕೋಡ್",iban:"IBAN",jwt:"JWT",template_literal:"ಇನ್ಪುಟ್"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return`ಅಮಾನ್ಯ ಇನ್‌ಪುಟ್: ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${o}, ಸ್ವೀಕರಿಸಿದನು ${s}`}case"invalid_value":return t.values.length===1?`ಅಮಾನ್ಯ ಇನ್‌ಪುಟ್: ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${P(t.values[0])}`:`ಅಮಾನ್ಯ ಆಯ್ಕೆ: ಇವುಗಳಲ್ಲಿ ಒಂದನ್ನು ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`ತುಂಬಾ ದೊಡ್ಡದು: ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${t.origin??"value"} ಹೊಂದಲು ${o}${t.maximum.toString()} ${a.unit??"ಅಂಶಗಳು"}`:`ತುಂಬಾ ದೊಡ್ಡದು: ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${t.origin??"value"} ಎಂದು ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`ತುಂಬಾ ಚಿಕ್ಕದು: ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${t.origin} ಹೊಂದಲು ${o}${t.minimum.toString()} ${a.unit}`:`ತುಂಬಾ ಚಿಕ್ಕದು: ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${t.origin} ಎಂದು ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`ಅಮಾನ್ಯವಾದ ಸ್ಟ್ರಿಂಗ್: ಇದರೊಂದಿಗೆ ಪ್ರಾರಂಭಿಸಬೇಕು "${o.prefix}"`:o.format==="ends_with"?`ಅಮಾನ್ಯವಾದ ಸ್ಟ್ರಿಂಗ್: ಇದರೊಂದಿಗೆ ಕೊನೆಗೊಳ್ಳಬೇಕು "${o.suffix}"`:o.format==="includes"?`ಅಮಾನ್ಯ ಸ್ಟ್ರಿಂಗ್: ಒಳಗೊಂಡಿರಬೇಕು "${o.includes}"`:o.format==="regex"?`ಅಮಾನ್ಯವಾದ ಸ್ಟ್ರಿಂಗ್: ಮಾದರಿಗೆ ಹೊಂದಿಕೆಯಾಗಬೇಕು ${o.pattern}`:`ಅಮಾನ್ಯ ${n[o.format]??t.format}`}case"not_multiple_of":return`ಅಮಾನ್ಯ ಸಂಖ್ಯೆ: ಬಹುಸಂಖ್ಯೆಯಾಗಿರಬೇಕು ${t.divisor}`;case"unrecognized_keys":return`ಗುರುತಿಸಲಾಗದ ಕೀ ${t.keys.length>1?"s":""}: ${I(t.keys,", ")}`;case"invalid_key":return`ಅಮಾನ್ಯವಾದ ಕೀ ಇನ್ ${t.origin}`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`ಅಮಾನ್ಯ ತಾರತಮ್ಯ ಮೌಲ್ಯ. ನಿರೀಕ್ಷಿಸಲಾಗಿದೆ ${t.options.map(a=>`'${a}'`).join(" | ")}`:"ಅಮಾನ್ಯ ಇನ್‌ಪುಟ್";case"invalid_element":return`ರಲ್ಲಿ ಅಮಾನ್ಯ ಮೌಲ್ಯ ${t.origin}`;default:return"ಅಮಾನ್ಯ ಇನ್‌ಪುಟ್"}}};function Ab(){return{localeError:qU()}}var RU=()=>{let e={string:{unit:"문자",verb:"to have"},file:{unit:"바이트",verb:"to have"},array:{unit:"개",verb:"to have"},set:{unit:"개",verb:"to have"},map:{unit:"개",verb:"to have"}};function r(t){return e[t]??null}let n={regex:"입력",email:"이메일 주소",url:"URL",emoji:"이모지",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO 날짜시간",date:"ISO 날짜",time:"ISO 시간",duration:"ISO 기간",ipv4:"IPv4 주소",ipv6:"IPv6 주소",mac:"MAC 주소",cidrv4:"IPv4 범위",cidrv6:"IPv6 범위",base64:"base64 인코딩 문자열",base64url:"base64url 인코딩 문자열",json_string:"JSON 문자열",e164:"E.164 번호",credit_card:"신용카드 번호",currency_code:"통화 코드",iban:"IBAN",jwt:"JWT",template_literal:"입력"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`잘못된 입력: 예상 타입은 instanceof ${t.expected}, 받은 타입은 ${s}입니다`:`잘못된 입력: 예상 타입은 ${o}, 받은 타입은 ${s}입니다`}case"invalid_value":return t.values.length===1?`잘못된 입력: 값은 ${P(t.values[0])} 이어야 합니다`:`잘못된 옵션: ${I(t.values,"또는 ")} 중 하나여야 합니다`;case"too_big":{let o=t.inclusive?"이하":"미만",a=o==="미만"?"이어야 합니다":"여야 합니다",s=r(t.origin),u=s?.unit??"요소";return s?`${t.origin??"값"}이 너무 큽니다: ${t.maximum.toString()}${u} ${o}${a}`:`${t.origin??"값"}이 너무 큽니다: ${t.maximum.toString()} ${o}${a}`}case"too_small":{let o=t.inclusive?"이상":"초과",a=o==="이상"?"이어야 합니다":"여야 합니다",s=r(t.origin),u=s?.unit??"요소";return s?`${t.origin??"값"}이 너무 작습니다: ${t.minimum.toString()}${u} ${o}${a}`:`${t.origin??"값"}이 너무 작습니다: ${t.minimum.toString()} ${o}${a}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`잘못된 문자열: "${o.prefix}"(으)로 시작해야 합니다`:o.format==="ends_with"?`잘못된 문자열: "${o.suffix}"(으)로 끝나야 합니다`:o.format==="includes"?`잘못된 문자열: "${o.includes}"을(를) 포함해야 합니다`:o.format==="regex"?`잘못된 문자열: 정규식 ${o.pattern} 패턴과 일치해야 합니다`:`잘못된 ${n[o.format]??t.format}`}case"not_multiple_of":return`잘못된 숫자: ${t.divisor}의 배수여야 합니다`;case"unrecognized_keys":return`인식할 수 없는 키: ${I(t.keys,", ")}`;case"invalid_key":return`잘못된 키: ${t.origin}`;case"invalid_union":return"잘못된 입력";case"invalid_element":return`잘못된 값: ${t.origin}`;default:return"잘못된 입력"}}};function Pb(){return{localeError:RU()}}var Vo=e=>e.charAt(0).toUpperCase()+e.slice(1);function xb(e){let r=Math.abs(e),n=r%10,i=r%100;return i>=11&&i<=19||n===0?"many":n===1?"one":"few"}var UU=()=>{let e={string:{unit:{one:"simbolis",few:"simboliai",many:"simbolių"},verb:{smaller:{inclusive:"turi būti ne ilgesnė kaip",notInclusive:"turi būti trumpesnė kaip"},bigger:{inclusive:"turi būti ne trumpesnė kaip",notInclusive:"turi būti ilgesnė kaip"}}},file:{unit:{one:"baitas",few:"baitai",many:"baitų"},verb:{smaller:{inclusive:"turi būti ne didesnis kaip",notInclusive:"turi būti mažesnis kaip"},bigger:{inclusive:"turi būti ne mažesnis kaip",notInclusive:"turi būti didesnis kaip"}}},array:{unit:{one:"elementą",few:"elementus",many:"elementų"},verb:{smaller:{inclusive:"turi turėti ne daugiau kaip",notInclusive:"turi turėti mažiau kaip"},bigger:{inclusive:"turi turėti ne mažiau kaip",notInclusive:"turi turėti daugiau kaip"}}},set:{unit:{one:"elementą",few:"elementus",many:"elementų"},verb:{smaller:{inclusive:"turi turėti ne daugiau kaip",notInclusive:"turi turėti mažiau kaip"},bigger:{inclusive:"turi turėti ne mažiau kaip",notInclusive:"turi turėti daugiau kaip"}}}};function r(t,o,a,s){let u=e[t]??null;return u===null?u:{unit:u.unit[o],verb:u.verb[s][a?"inclusive":"notInclusive"]}}let n={regex:"įvestis",email:"el. pašto adresas",url:"URL",emoji:"jaustukas",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO data ir laikas",date:"ISO data",time:"ISO laikas",duration:"ISO trukmė",ipv4:"IPv4 adresas",ipv6:"IPv6 adresas",mac:"MAC adresas",cidrv4:"IPv4 tinklo prefiksas (CIDR)",cidrv6:"IPv6 tinklo prefiksas (CIDR)",base64:"base64 užkoduota eilutė",base64url:"base64url užkoduota eilutė",json_string:"JSON eilutė",e164:"E.164 numeris",credit_card:"kredito kortelės numeris",currency_code:"valiutos kodas",iban:"IBAN",jwt:"JWT",template_literal:"įvestis"},i={nan:"NaN",number:"skaičius",bigint:"sveikasis skaičius",string:"eilutė",boolean:"loginė reikšmė",undefined:"neapibrėžta reikšmė",function:"funkcija",symbol:"simbolis",array:"masyvas",object:"objektas",null:"nulinė reikšmė"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Gautas tipas ${s}, o tikėtasi - instanceof ${t.expected}`:`Gautas tipas ${s}, o tikėtasi - ${o}`}case"invalid_value":return t.values.length===1?`Privalo būti ${P(t.values[0])}`:`Privalo būti vienas iš ${I(t.values,"|")} pasirinkimų`;case"too_big":{let o=i[t.origin]??t.origin,a=r(t.origin,xb(Number(t.maximum)),t.inclusive??!1,"smaller");if(a?.verb)return`${Vo(o??t.origin??"reikšmė")} ${a.verb} ${t.maximum.toString()} ${a.unit??"elementų"}`;let s=t.inclusive?"ne didesnis kaip":"mažesnis kaip";return`${Vo(o??t.origin??"reikšmė")} turi būti ${s} ${t.maximum.toString()} ${a?.unit}`}case"too_small":{let o=i[t.origin]??t.origin,a=r(t.origin,xb(Number(t.minimum)),t.inclusive??!1,"bigger");if(a?.verb)return`${Vo(o??t.origin??"reikšmė")} ${a.verb} ${t.minimum.toString()} ${a.unit??"elementų"}`;let s=t.inclusive?"ne mažesnis kaip":"didesnis kaip";return`${Vo(o??t.origin??"reikšmė")} turi būti ${s} ${t.minimum.toString()} ${a?.unit}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Eilutė privalo prasidėti "${o.prefix}"`:o.format==="ends_with"?`Eilutė privalo pasibaigti "${o.suffix}"`:o.format==="includes"?`Eilutė privalo įtraukti "${o.includes}"`:o.format==="regex"?`Eilutė privalo atitikti ${o.pattern}`:`Neteisingas ${n[o.format]??t.format}`}case"not_multiple_of":return`Skaičius privalo būti ${t.divisor} kartotinis.`;case"unrecognized_keys":return`Neatpažint${t.keys.length>1?"i":"as"} rakt${t.keys.length>1?"ai":"as"}: ${I(t.keys,", ")}`;case"invalid_key":return"Rastas klaidingas raktas";case"invalid_union":return"Klaidinga įvestis";case"invalid_element":{let o=i[t.origin]??t.origin;return`${Vo(o??t.origin??"reikšmė")} turi klaidingą įvestį`}default:return"Klaidinga įvestis"}}};function Eb(){return{localeError:UU()}}var FU=()=>{let e={string:{unit:"знаци",verb:"да имаат"},file:{unit:"бајти",verb:"да имаат"},array:{unit:"ставки",verb:"да имаат"},set:{unit:"ставки",verb:"да имаат"},map:{unit:"ставки",verb:"да имаат"}};function r(t){return e[t]??null}let n={regex:"внес",email:"адреса на е-пошта",url:"URL",emoji:"емоџи",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO датум и време",date:"ISO датум",time:"ISO време",duration:"ISO времетраење",ipv4:"IPv4 адреса",ipv6:"IPv6 адреса",mac:"MAC адреса",cidrv4:"IPv4 опсег",cidrv6:"IPv6 опсег",base64:"base64-енкодирана низа",base64url:"base64url-енкодирана низа",json_string:"JSON низа",e164:"E.164 број",credit_card:"број на кредитна картичка",currency_code:"код на валута",iban:"IBAN",jwt:"JWT",template_literal:"внес"},i={nan:"NaN",number:"број",array:"низа"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Грешен внес: се очекува instanceof ${t.expected}, примено ${s}`:`Грешен внес: се очекува ${o}, примено ${s}`}case"invalid_value":return t.values.length===1?`Invalid input: expected ${P(t.values[0])}`:`Грешана опција: се очекува една ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Премногу голем: се очекува ${t.origin??"вредноста"} да има ${o}${t.maximum.toString()} ${a.unit??"елементи"}`:`Премногу голем: се очекува ${t.origin??"вредноста"} да биде ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Премногу мал: се очекува ${t.origin} да има ${o}${t.minimum.toString()} ${a.unit}`:`Премногу мал: се очекува ${t.origin} да биде ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Неважечка низа: мора да започнува со "${o.prefix}"`:o.format==="ends_with"?`Неважечка низа: мора да завршува со "${o.suffix}"`:o.format==="includes"?`Неважечка низа: мора да вклучува "${o.includes}"`:o.format==="regex"?`Неважечка низа: мора да одгоара на патернот ${o.pattern}`:`Invalid ${n[o.format]??t.format}`}case"not_multiple_of":return`Грешен број: мора да биде делив со ${t.divisor}`;case"unrecognized_keys":return`${t.keys.length>1?"Непрепознаени клучеви":"Непрепознаен клуч"}: ${I(t.keys,", ")}`;case"invalid_key":return`Грешен клуч во ${t.origin}`;case"invalid_union":return"Грешен внес";case"invalid_element":return`Грешна вредност во ${t.origin}`;default:return"Грешен внес"}}};function Db(){return{localeError:FU()}}var MU=()=>{let e={string:{unit:"aksara",verb:"mempunyai"},file:{unit:"bait",verb:"mempunyai"},array:{unit:"elemen",verb:"mempunyai"},set:{unit:"elemen",verb:"mempunyai"},map:{unit:"elemen",verb:"mempunyai"}};function r(t){return e[t]??null}let n={regex:"input",email:"alamat e-mel",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"tarikh masa ISO",date:"tarikh ISO",time:"masa ISO",duration:"tempoh ISO",ipv4:"alamat IPv4",ipv6:"alamat IPv6",mac:"alamat MAC",cidrv4:"julat IPv4",cidrv6:"julat IPv6",base64:"string dikodkan base64",base64url:"string dikodkan base64url",json_string:"string JSON",e164:"nombor E.164",credit_card:"nombor kad kredit",currency_code:"kod mata wang",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN",number:"nombor"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Input tidak sah: dijangka instanceof ${t.expected}, diterima ${s}`:`Input tidak sah: dijangka ${o}, diterima ${s}`}case"invalid_value":return t.values.length===1?`Input tidak sah: dijangka ${P(t.values[0])}`:`Pilihan tidak sah: dijangka salah satu daripada ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Terlalu besar: dijangka ${t.origin??"nilai"} ${a.verb} ${o}${t.maximum.toString()} ${a.unit??"elemen"}`:`Terlalu besar: dijangka ${t.origin??"nilai"} adalah ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Terlalu kecil: dijangka ${t.origin} ${a.verb} ${o}${t.minimum.toString()} ${a.unit}`:`Terlalu kecil: dijangka ${t.origin} adalah ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`String tidak sah: mesti bermula dengan "${o.prefix}"`:o.format==="ends_with"?`String tidak sah: mesti berakhir dengan "${o.suffix}"`:o.format==="includes"?`String tidak sah: mesti mengandungi "${o.includes}"`:o.format==="regex"?`String tidak sah: mesti sepadan dengan corak ${o.pattern}`:`${n[o.format]??t.format} tidak sah`}case"not_multiple_of":return`Nombor tidak sah: perlu gandaan ${t.divisor}`;case"unrecognized_keys":return`Kunci tidak dikenali: ${I(t.keys,", ")}`;case"invalid_key":return`Kunci tidak sah dalam ${t.origin}`;case"invalid_union":return"Input tidak sah";case"invalid_element":return`Nilai tidak sah dalam ${t.origin}`;default:return"Input tidak sah"}}};function Tb(){return{localeError:MU()}}var LU=()=>{let e={string:{unit:"अक्षर",verb:"हुनुपर्छ"},file:{unit:"बाइट",verb:"हुनुपर्छ"},array:{unit:"तत्व",verb:"हुनुपर्छ"},set:{unit:"तत्व",verb:"हुनुपर्छ"},map:{unit:"प्रविष्टि",verb:"हुनुपर्छ"}};function r(t){return e[t]??null}let n={regex:"इनपुट",email:"इमेल ठेगाना",url:"URL",emoji:"इमोजी",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO मिति र समय",date:"ISO मिति",time:"ISO समय",duration:"ISO अवधि",ipv4:"IPv4 ठेगाना",ipv6:"IPv6 ठेगाना",mac:"MAC ठेगाना",cidrv4:"IPv4 दायरा",cidrv6:"IPv6 दायरा",base64:"base64-इन्कोड गरिएको स्ट्रिङ",base64url:"base64url-इन्कोड गरिएको स्ट्रिङ",json_string:"JSON स्ट्रिङ",e164:"E.164 नम्बर",credit_card:"क्रेडिट कार्ड नम्बर",currency_code:"मुद्रा कोड",iban:"IBAN",jwt:"JWT",template_literal:"इनपुट"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return`अमान्य इनपुट: अपेक्षित ${o}, प्राप्त ${s}`}case"invalid_value":return t.values.length===1?`अमान्य इनपुट: अपेक्षित ${P(t.values[0])}`:`अमान्य विकल्प: अपेक्षित मानहरू मध्ये एक ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`धेरै ठूलो: ${t.origin??"मान"} मा ${o}${t.maximum.toString()} ${a.unit} ${a.verb}`:`धेरै ठूलो: ${t.origin??"मान"} ${o}${t.maximum.toString()} हुनुपर्छ`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`धेरै सानो: ${t.origin} मा ${o}${t.minimum.toString()} ${a.unit} ${a.verb}`:`धेरै सानो: ${t.origin} ${o}${t.minimum.toString()} हुनुपर्छ`}case"invalid_format":{let o=t;return o.format==="starts_with"?`अमान्य स्ट्रिङ: "${o.prefix}" बाट सुरु हुनुपर्छ`:o.format==="ends_with"?`अमान्य स्ट्रिङ: "${o.suffix}" मा समाप्त हुनुपर्छ`:o.format==="includes"?`अमान्य स्ट्रिङ: "${o.includes}" समावेश हुनुपर्छ`:o.format==="regex"?`अमान्य स्ट्रिङ: ढाँचा ${o.pattern} सँग मेल खानुपर्छ`:`अमान्य ${n[o.format]??t.format}`}case"not_multiple_of":return`अमान्य संख्या: ${t.divisor} को गुणज हुनुपर्छ`;case"unrecognized_keys":return`अपरिचित कुञ्जी${t.keys.length>1?"हरू":""}: ${I(t.keys,", ")}`;case"invalid_key":return`अमान्य कुञ्जी: ${t.origin} मा`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`अमान्य डिस्क्रिमिनेटर मान: अपेक्षित ${t.options.map(a=>`'${a}'`).join(" | ")}`:"अमान्य इनपुट";case"invalid_element":return`अमान्य मान: ${t.origin} मा`;default:return"अमान्य इनपुट"}}};function jb(){return{localeError:LU()}}var ZU=()=>{let e={string:{unit:"tekens",verb:"heeft"},file:{unit:"bytes",verb:"heeft"},array:{unit:"elementen",verb:"heeft"},set:{unit:"elementen",verb:"heeft"},map:{unit:"elementen",verb:"heeft"}};function r(t){return e[t]??null}let n={regex:"invoer",email:"emailadres",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO datum en tijd",date:"ISO datum",time:"ISO tijd",duration:"ISO duur",ipv4:"IPv4-adres",ipv6:"IPv6-adres",mac:"MAC-adres",cidrv4:"IPv4-bereik",cidrv6:"IPv6-bereik",base64:"base64-gecodeerde tekst",base64url:"base64 URL-gecodeerde tekst",json_string:"JSON string",e164:"E.164-nummer",credit_card:"creditcardnummer",currency_code:"valutacode",iban:"IBAN",jwt:"JWT",template_literal:"invoer"},i={nan:"NaN",number:"getal"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ongeldige invoer: verwacht instanceof ${t.expected}, ontving ${s}`:`Ongeldige invoer: verwacht ${o}, ontving ${s}`}case"invalid_value":return t.values.length===1?`Ongeldige invoer: verwacht ${P(t.values[0])}`:`Ongeldige optie: verwacht één van ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin),s=t.origin==="date"?"laat":t.origin==="string"?"lang":"groot";return a?`Te ${s}: verwacht dat ${t.origin??"waarde"} ${o}${t.maximum.toString()} ${a.unit??"elementen"} ${a.verb}`:`Te ${s}: verwacht dat ${t.origin??"waarde"} ${o}${t.maximum.toString()} is`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin),s=t.origin==="date"?"vroeg":t.origin==="string"?"kort":"klein";return a?`Te ${s}: verwacht dat ${t.origin} ${o}${t.minimum.toString()} ${a.unit} ${a.verb}`:`Te ${s}: verwacht dat ${t.origin} ${o}${t.minimum.toString()} is`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ongeldige tekst: moet met "${o.prefix}" beginnen`:o.format==="ends_with"?`Ongeldige tekst: moet op "${o.suffix}" eindigen`:o.format==="includes"?`Ongeldige tekst: moet "${o.includes}" bevatten`:o.format==="regex"?`Ongeldige tekst: moet overeenkomen met patroon ${o.pattern}`:`Ongeldig: ${n[o.format]??t.format}`}case"not_multiple_of":return`Ongeldig getal: moet een veelvoud van ${t.divisor} zijn`;case"unrecognized_keys":return`Onbekende key${t.keys.length>1?"s":""}: ${I(t.keys,", ")}`;case"invalid_key":return`Ongeldige key in ${t.origin}`;case"invalid_union":return"Ongeldige invoer";case"invalid_element":return`Ongeldige waarde in ${t.origin}`;default:return"Ongeldige invoer"}}};function zb(){return{localeError:ZU()}}var VU=()=>{let e={string:{unit:"teikn",verb:"å ha"},file:{unit:"bytes",verb:"å ha"},array:{unit:"element",verb:"å innehalde"},set:{unit:"element",verb:"å innehalde"},map:{unit:"element",verb:"å innehalde"}};function r(t){return e[t]??null}let n={regex:"input",email:"e-postadresse",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO dato- og klokkeslett",date:"ISO-dato",time:"ISO-klokkeslett",duration:"ISO-varigheit",ipv4:"IPv4-adresse",ipv6:"IPv6-adresse",mac:"MAC-adresse",cidrv4:"IPv4-spekter",cidrv6:"IPv6-spekter",base64:"base64-enkoda streng",base64url:"base64url-enkoda streng",json_string:"JSON-streng",e164:"E.164-nummer",credit_card:"kredittkortnummer",currency_code:"valutakode",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN",number:"tal",array:"liste"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ugyldig input: forventa instanceof ${t.expected}, fekk ${s}`:`Ugyldig input: forventa ${o}, fekk ${s}`}case"invalid_value":return t.values.length===1?`Ugyldig verdi: forventa ${P(t.values[0])}`:`Ugyldig val: forventa eitt av ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`For stor(t): forventa ${t.origin??"value"} til å ha ${o}${t.maximum.toString()} ${a.unit??"element"}`:`For stor(t): forventa ${t.origin??"value"} til å ha ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`For lite(n): forventa ${t.origin} til å ha ${o}${t.minimum.toString()} ${a.unit}`:`For lite(n): forventa ${t.origin} til å ha ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ugyldig streng: må starte med "${o.prefix}"`:o.format==="ends_with"?`Ugyldig streng: må slutte med "${o.suffix}"`:o.format==="includes"?`Ugyldig streng: må innehalde "${o.includes}"`:o.format==="regex"?`Ugyldig streng: må matche mønsteret ${o.pattern}`:`Ugyldig ${n[o.format]??t.format}`}case"not_multiple_of":return`Ugyldig tal: må vere eit multiplum av ${t.divisor}`;case"unrecognized_keys":return`${t.keys.length>1?"Ukjende nøklar":"Ukjend nøkkel"}: ${I(t.keys,", ")}`;case"invalid_key":return`Ugyldig nøkkel i ${t.origin}`;case"invalid_union":return"Ugyldig input";case"invalid_element":return`Ugyldig verdi i ${t.origin}`;default:return"Ugyldig input"}}};function Cb(){return{localeError:VU()}}var BU=()=>{let e={string:{unit:"tegn",verb:"å ha"},file:{unit:"bytes",verb:"å ha"},array:{unit:"elementer",verb:"å inneholde"},set:{unit:"elementer",verb:"å inneholde"},map:{unit:"elementer",verb:"å inneholde"}};function r(t){return e[t]??null}let n={regex:"input",email:"e-postadresse",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO dato- og klokkeslett",date:"ISO-dato",time:"ISO-klokkeslett",duration:"ISO-varighet",ipv4:"IPv4-adresse",ipv6:"IPv6-adresse",mac:"MAC-adresse",cidrv4:"IPv4-spekter",cidrv6:"IPv6-spekter",base64:"base64-enkodet streng",base64url:"base64url-enkodet streng",json_string:"JSON-streng",e164:"E.164-nummer",credit_card:"kredittkortnummer",currency_code:"valutakode",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN",number:"tall",array:"liste"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ugyldig input: forventet instanceof ${t.expected}, fikk ${s}`:`Ugyldig input: forventet ${o}, fikk ${s}`}case"invalid_value":return t.values.length===1?`Ugyldig verdi: forventet ${P(t.values[0])}`:`Ugyldig valg: forventet en av ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`For stor(t): forventet ${t.origin??"value"} til å ha ${o}${t.maximum.toString()} ${a.unit??"elementer"}`:`For stor(t): forventet ${t.origin??"value"} til å ha ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`For lite(n): forventet ${t.origin} til å ha ${o}${t.minimum.toString()} ${a.unit}`:`For lite(n): forventet ${t.origin} til å ha ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ugyldig streng: må starte med "${o.prefix}"`:o.format==="ends_with"?`Ugyldig streng: må ende med "${o.suffix}"`:o.format==="includes"?`Ugyldig streng: må inneholde "${o.includes}"`:o.format==="regex"?`Ugyldig streng: må matche mønsteret ${o.pattern}`:`Ugyldig ${n[o.format]??t.format}`}case"not_multiple_of":return`Ugyldig tall: må være et multiplum av ${t.divisor}`;case"unrecognized_keys":return`${t.keys.length>1?"Ukjente nøkler":"Ukjent nøkkel"}: ${I(t.keys,", ")}`;case"invalid_key":return`Ugyldig nøkkel i ${t.origin}`;case"invalid_union":return"Ugyldig input";case"invalid_element":return`Ugyldig verdi i ${t.origin}`;default:return"Ugyldig input"}}};function qb(){return{localeError:BU()}}var WU=()=>{let e={string:{unit:"harf",verb:"olmalıdır"},file:{unit:"bayt",verb:"olmalıdır"},array:{unit:"unsur",verb:"olmalıdır"},set:{unit:"unsur",verb:"olmalıdır"},map:{unit:"unsur",verb:"olmalıdır"}};function r(t){return e[t]??null}let n={regex:"giren",email:"epostagâh",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO hengâmı",date:"ISO tarihi",time:"ISO zamanı",duration:"ISO müddeti",ipv4:"IPv4 nişânı",ipv6:"IPv6 nişânı",mac:"MAC nişânı",cidrv4:"IPv4 menzili",cidrv6:"IPv6 menzili",base64:"base64-şifreli metin",base64url:"base64url-şifreli metin",json_string:"JSON metin",e164:"E.164 sayısı",credit_card:"i'tibâr kartı numarası",currency_code:"para birimi kodu",iban:"IBAN",jwt:"JWT",template_literal:"giren"},i={nan:"NaN",number:"numara",array:"saf",null:"gayb"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Fâsit giren: umulan instanceof ${t.expected}, alınan ${s}`:`Fâsit giren: umulan ${o}, alınan ${s}`}case"invalid_value":return t.values.length===1?`Fâsit giren: umulan ${P(t.values[0])}`:`Fâsit tercih: mûteberler ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Fazla büyük: ${t.origin??"value"}, ${o}${t.maximum.toString()} ${a.unit??"elements"} sahip olmalıydı.`:`Fazla büyük: ${t.origin??"value"}, ${o}${t.maximum.toString()} olmalıydı.`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Fazla küçük: ${t.origin}, ${o}${t.minimum.toString()} ${a.unit} sahip olmalıydı.`:`Fazla küçük: ${t.origin}, ${o}${t.minimum.toString()} olmalıydı.`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Fâsit metin: "${o.prefix}" ile başlamalı.`:o.format==="ends_with"?`Fâsit metin: "${o.suffix}" ile bitmeli.`:o.format==="includes"?`Fâsit metin: "${o.includes}" ihtivâ etmeli.`:o.format==="regex"?`Fâsit metin: ${o.pattern} nakşına uymalı.`:`Fâsit ${n[o.format]??t.format}`}case"not_multiple_of":return`Fâsit sayı: ${t.divisor} katı olmalıydı.`;case"unrecognized_keys":return`Tanınmayan anahtar ${t.keys.length>1?"s":""}: ${I(t.keys,", ")}`;case"invalid_key":return`${t.origin} için tanınmayan anahtar var.`;case"invalid_union":return"Giren tanınamadı.";case"invalid_element":return`${t.origin} için tanınmayan kıymet var.`;default:return"Kıymet tanınamadı."}}};function Rb(){return{localeError:WU()}}var GU=()=>{let e={string:{unit:"توکي",verb:"ولري"},file:{unit:"بایټس",verb:"ولري"},array:{unit:"توکي",verb:"ولري"},set:{unit:"توکي",verb:"ولري"},map:{unit:"توکي",verb:"ولري"}};function r(t){return e[t]??null}let n={regex:"ورودي",email:"بریښنالیک",url:"یو آر ال",emoji:"ایموجي",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"نیټه او وخت",date:"نېټه",time:"وخت",duration:"موده",ipv4:"د IPv4 پته",ipv6:"د IPv6 پته",mac:"د MAC پته",cidrv4:"د IPv4 ساحه",cidrv6:"د IPv6 ساحه",base64:"base64-encoded متن",base64url:"base64url-encoded متن",json_string:"JSON متن",e164:"د E.164 شمېره",credit_card:"د کریډیټ کارت شمیره",currency_code:"د اسعارو کوډ",iban:"IBAN",jwt:"JWT",template_literal:"ورودي"},i={nan:"NaN",number:"عدد",array:"ارې"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`ناسم ورودي: باید instanceof ${t.expected} وای, مګر ${s} ترلاسه شو`:`ناسم ورودي: باید ${o} وای, مګر ${s} ترلاسه شو`}case"invalid_value":return t.values.length===1?`ناسم ورودي: باید ${P(t.values[0])} وای`:`ناسم انتخاب: باید یو له ${I(t.values,"|")} څخه وای`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`ډیر لوی: ${t.origin??"ارزښت"} باید ${o}${t.maximum.toString()} ${a.unit??"عنصرونه"} ولري`:`ډیر لوی: ${t.origin??"ارزښت"} باید ${o}${t.maximum.toString()} وي`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`ډیر کوچنی: ${t.origin} باید ${o}${t.minimum.toString()} ${a.unit} ولري`:`ډیر کوچنی: ${t.origin} باید ${o}${t.minimum.toString()} وي`}case"invalid_format":{let o=t;return o.format==="starts_with"?`ناسم متن: باید د "${o.prefix}" سره پیل شي`:o.format==="ends_with"?`ناسم متن: باید د "${o.suffix}" سره پای ته ورسيږي`:o.format==="includes"?`ناسم متن: باید "${o.includes}" ولري`:o.format==="regex"?`ناسم متن: باید د ${o.pattern} سره مطابقت ولري`:`${n[o.format]??t.format} ناسم دی`}case"not_multiple_of":return`ناسم عدد: باید د ${t.divisor} مضرب وي`;case"unrecognized_keys":return`ناسم ${t.keys.length>1?"کلیډونه":"کلیډ"}: ${I(t.keys,", ")}`;case"invalid_key":return`ناسم کلیډ په ${t.origin} کې`;case"invalid_union":return"ناسمه ورودي";case"invalid_element":return`ناسم عنصر په ${t.origin} کې`;default:return"ناسمه ورودي"}}};function Ub(){return{localeError:GU()}}var HU=()=>{let e={string:{unit:"znaków",verb:"mieć"},file:{unit:"bajtów",verb:"mieć"},array:{unit:"elementów",verb:"mieć"},set:{unit:"elementów",verb:"mieć"},map:{unit:"elementów",verb:"mieć"}};function r(t){return e[t]??null}let n={regex:"wyrażenie",email:"adres email",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"data i godzina w formacie ISO",date:"data w formacie ISO",time:"godzina w formacie ISO",duration:"czas trwania ISO",ipv4:"adres IPv4",ipv6:"adres IPv6",mac:"adres MAC",cidrv4:"zakres IPv4",cidrv6:"zakres IPv6",base64:"ciąg znaków zakodowany w formacie base64",base64url:"ciąg znaków zakodowany w formacie base64url",json_string:"ciąg znaków w formacie JSON",e164:"liczba E.164",credit_card:"numer karty kredytowej",currency_code:"kod waluty",iban:"IBAN",jwt:"JWT",template_literal:"wejście"},i={nan:"NaN",number:"liczba",array:"tablica"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Nieprawidłowe dane wejściowe: oczekiwano instanceof ${t.expected}, otrzymano ${s}`:`Nieprawidłowe dane wejściowe: oczekiwano ${o}, otrzymano ${s}`}case"invalid_value":return t.values.length===1?`Nieprawidłowe dane wejściowe: oczekiwano ${P(t.values[0])}`:`Nieprawidłowa opcja: oczekiwano jednej z wartości ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Za duża wartość: oczekiwano, że ${t.origin??"wartość"} będzie mieć ${o}${t.maximum.toString()} ${a.unit??"elementów"}`:`Zbyt duż(y/a/e): oczekiwano, że ${t.origin??"wartość"} będzie wynosić ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Za mała wartość: oczekiwano, że ${t.origin??"wartość"} będzie mieć ${o}${t.minimum.toString()} ${a.unit??"elementów"}`:`Zbyt mał(y/a/e): oczekiwano, że ${t.origin??"wartość"} będzie wynosić ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Nieprawidłowy ciąg znaków: musi zaczynać się od "${o.prefix}"`:o.format==="ends_with"?`Nieprawidłowy ciąg znaków: musi kończyć się na "${o.suffix}"`:o.format==="includes"?`Nieprawidłowy ciąg znaków: musi zawierać "${o.includes}"`:o.format==="regex"?`Nieprawidłowy ciąg znaków: musi odpowiadać wzorcowi ${o.pattern}`:`Nieprawidłow(y/a/e) ${n[o.format]??t.format}`}case"not_multiple_of":return`Nieprawidłowa liczba: musi być wielokrotnością ${t.divisor}`;case"unrecognized_keys":return`Nierozpoznane klucze${t.keys.length>1?"s":""}: ${I(t.keys,", ")}`;case"invalid_key":return`Nieprawidłowy klucz w ${t.origin}`;case"invalid_union":return"Nieprawidłowe dane wejściowe";case"invalid_element":return`Nieprawidłowa wartość w ${t.origin}`;default:return"Nieprawidłowe dane wejściowe"}}};function Fb(){return{localeError:HU()}}var JU=()=>{let e={string:{unit:"caracteres"},file:{unit:"bytes"},array:{unit:"elementos"},set:{unit:"elementos"},map:{unit:"entradas"}};function r(a){return e[a]??null}let n={regex:"a entrada",email:"o endereço de e-mail",url:"o URL",emoji:"o emoji",uuid:"o UUID",uuidv4:"o UUIDv4",uuidv6:"o UUIDv6",nanoid:"o nanoid",guid:"o GUID",cuid:"o cuid",cuid2:"o cuid2",ulid:"o ULID",xid:"o XID",ksuid:"o KSUID",datetime:"a data e hora ISO",date:"a data ISO",time:"a hora ISO",duration:"a duração ISO",ipv4:"o endereço IPv4",ipv6:"o endereço IPv6",mac:"o endereço MAC",cidrv4:"o intervalo de endereços IPv4",cidrv6:"o intervalo de endereços IPv6",base64:"o texto codificado em base64",base64url:"o texto codificado em base64url",json_string:"o texto JSON",e164:"o número E.164",credit_card:"o número de cartão de crédito",currency_code:"o código de moeda",iban:"o IBAN",jwt:"o JWT",template_literal:"a entrada"},i={masculine:{definite:"o",indefinite:"um"},feminine:{definite:"a",indefinite:"uma"}},t={string:{name:"texto",articles:i.masculine},number:{name:"número",articles:i.masculine},int:{name:"número inteiro",articles:i.masculine},boolean:{name:"valor booleano",articles:i.masculine},bigint:{name:"número bigint",articles:i.masculine},symbol:{name:"símbolo",articles:i.masculine},undefined:{name:'valor "undefined"',articles:i.masculine},null:{name:'valor "nulo"',articles:i.masculine},never:{name:'valor "never"',articles:i.masculine},void:{name:'valor "void"',articles:i.masculine},date:{name:"data",articles:i.feminine},array:{name:"vetor",articles:i.masculine},object:{name:"objeto",articles:i.masculine},tuple:{name:"tuplo",articles:i.masculine},record:{name:"registo",articles:i.masculine},map:{name:"mapa",articles:i.masculine},set:{name:"conjunto",articles:i.masculine},file:{name:"ficheiro",articles:i.masculine},nonoptional:{name:"valor não opcional",articles:i.masculine},nan:{name:'valor "NaN"',articles:i.masculine},function:{name:"função",articles:i.feminine}};function o(a,s){let u=t[a]??{name:`valor "${a}"`,articles:i.masculine};return`${u.articles[s]} ${u.name}`}return a=>{switch(a.code){case"invalid_type":{let s=o(a.expected,"indefinite"),u=x(a.input),c=o(u,"indefinite");return`Entrada inválida: esperava ${s}, recebeu ${c}`}case"invalid_value":return a.values.length===1?`Entrada inválida: esperava ${P(a.values[0])}`:`Opção inválida: esperava uma das seguintes opções: ${I(a.values,"|")}`;case"too_big":{let s=a.inclusive?"<=":"<",u=r(a.origin);return u?`Demasiado grande: esperava que ${o(a.origin,"definite")} tivesse ${s} ${a.maximum.toString()} ${u.unit??"elementos"}`:`Demasiado grande: esperava que ${o(a.origin,"definite")} fosse ${s} ${a.maximum.toString()}`}case"too_small":{let s=a.inclusive?">=":">",u=r(a.origin);return u?`Demasiado pequeno: esperava que ${o(a.origin,"definite")} tivesse ${s} ${a.minimum.toString()} ${u.unit??"elementos"}`:`Demasiado pequeno: esperava que ${o(a.origin,"definite")} fosse ${s} ${a.minimum.toString()}`}case"invalid_format":{let s=a;return s.format==="starts_with"?`Texto inválido: deve começar por "${s.prefix}"`:s.format==="ends_with"?`Texto inválido: deve terminar em "${s.suffix}"`:s.format==="includes"?`Texto inválido: deve incluir "${s.includes}"`:s.format==="regex"?`Texto inválido: deve corresponder ao padrão ${s.pattern}`:`Formato d${n[s.format]??a.format} inválido`}case"not_multiple_of":return`Número inválido: deve ser múltiplo de ${a.divisor}`;case"unrecognized_keys":{let s=a.keys.length>1?"s":"";return`Chave${s} inválida${s}: ${I(a.keys,", ")}`}case"invalid_key":return`Entrada inválida n${o(a.origin,"definite")}`;case"invalid_union":return a.options&&Array.isArray(a.options)&&a.options.length>0?`Valor de discriminação inválido. Esperava ${a.options.map(u=>`'${u}'`).join(" | ")}`:"Entrada inválida";case"invalid_element":return`Entrada inválida n${o(a.origin,"definite")}`;default:return"Entrada inválida"}}};function Mb(){return{localeError:JU()}}var KU=()=>{let e={string:{unit:"caracteres"},file:{unit:"bytes"},array:{unit:"elementos"},set:{unit:"elementos"},map:{unit:"entradas"}};function r(a){return e[a]??null}let n={regex:"a entrada",email:"o endereço de e-mail",url:"o URL",emoji:"o emoji",uuid:"o UUID",uuidv4:"o UUIDv4",uuidv6:"o UUIDv6",nanoid:"o nanoid",guid:"o GUID",cuid:"o cuid",cuid2:"o cuid2",ulid:"o ULID",xid:"o XID",ksuid:"o KSUID",datetime:"a data e hora ISO",date:"a data ISO",time:"a hora ISO",duration:"a duração ISO",ipv4:"o endereço IPv4",ipv6:"o endereço IPv6",mac:"o endereço MAC",cidrv4:"a faixa de endereços IPv4",cidrv6:"a faixa de endereços IPv6",base64:"o texto codificado em base64",base64url:"o texto codificado em base64url",json_string:"o texto JSON",e164:"o número E.164",credit_card:"o número de cartão de crédito",currency_code:"o código de moeda",iban:"o IBAN",jwt:"o JWT",template_literal:"a entrada"},i={masculine:{definite:"o",indefinite:"um"},feminine:{definite:"a",indefinite:"uma"}},t={string:{name:"texto",articles:i.masculine},number:{name:"número",articles:i.masculine},int:{name:"número inteiro",articles:i.masculine},boolean:{name:"valor booleano",articles:i.masculine},bigint:{name:"número bigint",articles:i.masculine},symbol:{name:"símbolo",articles:i.masculine},undefined:{name:'valor "undefined"',articles:i.masculine},null:{name:'valor "nulo"',articles:i.masculine},never:{name:'valor "never"',articles:i.masculine},void:{name:'valor "void"',articles:i.masculine},date:{name:"data",articles:i.feminine},array:{name:"vetor",articles:i.masculine},object:{name:"objeto",articles:i.masculine},tuple:{name:"tupla",articles:i.feminine},record:{name:"registro",articles:i.masculine},map:{name:"mapa",articles:i.masculine},set:{name:"conjunto",articles:i.masculine},file:{name:"arquivo",articles:i.masculine},nonoptional:{name:"valor não opcional",articles:i.masculine},nan:{name:'valor "NaN"',articles:i.masculine},function:{name:"função",articles:i.feminine}};function o(a,s){let u=t[a]??{name:`valor "${a}"`,articles:i.masculine};return`${u.articles[s]} ${u.name}`}return a=>{switch(a.code){case"invalid_type":{let s=o(a.expected,"indefinite"),u=x(a.input),c=o(u,"indefinite");return`Entrada inválida: esperava ${s}, recebeu ${c}`}case"invalid_value":return a.values.length===1?`Entrada inválida: esperava ${P(a.values[0])}`:`Opção inválida: esperava uma das seguintes opções: ${I(a.values,"|")}`;case"too_big":{let s=a.inclusive?"<=":"<",u=r(a.origin);return u?`Grande demais: esperava que ${o(a.origin,"definite")} tivesse ${s} ${a.maximum.toString()} ${u.unit??"elementos"}`:`Grande demais: esperava que ${o(a.origin,"definite")} fosse ${s} ${a.maximum.toString()}`}case"too_small":{let s=a.inclusive?">=":">",u=r(a.origin);return u?`Pequeno demais: esperava que ${o(a.origin,"definite")} tivesse ${s} ${a.minimum.toString()} ${u.unit??"elementos"}`:`Pequeno demais: esperava que ${o(a.origin,"definite")} fosse ${s} ${a.minimum.toString()}`}case"invalid_format":{let s=a;return s.format==="starts_with"?`Texto inválido: deve começar com "${s.prefix}"`:s.format==="ends_with"?`Texto inválido: deve terminar com "${s.suffix}"`:s.format==="includes"?`Texto inválido: deve incluir "${s.includes}"`:s.format==="regex"?`Texto inválido: deve corresponder ao padrão ${s.pattern}`:`Formato d${n[s.format]??a.format} inválido`}case"not_multiple_of":return`Número inválido: deve ser múltiplo de ${a.divisor}`;case"unrecognized_keys":{let s=a.keys.length>1?"s":"";return`Chave${s} inválida${s}: ${I(a.keys,", ")}`}case"invalid_key":return`Entrada inválida n${o(a.origin,"definite")}`;case"invalid_union":return a.options&&Array.isArray(a.options)&&a.options.length>0?`Valor de discriminação inválido. Esperava ${a.options.map(u=>`'${u}'`).join(" | ")}`:"Entrada inválida";case"invalid_element":return`Entrada inválida n${o(a.origin,"definite")}`;default:return"Entrada inválida"}}};function Lb(){return{localeError:KU()}}var XU=()=>{let e={string:{unit:"caractere",verb:"să aibă"},file:{unit:"octeți",verb:"să aibă"},array:{unit:"elemente",verb:"să aibă"},set:{unit:"elemente",verb:"să aibă"},map:{unit:"intrări",verb:"să aibă"}};function r(t){return e[t]??null}let n={regex:"intrare",email:"adresă de email",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"dată și oră ISO",date:"dată ISO",time:"oră ISO",duration:"durată ISO",ipv4:"adresă IPv4",ipv6:"adresă IPv6",mac:"adresă MAC",cidrv4:"interval IPv4",cidrv6:"interval IPv6",base64:"șir codat base64",base64url:"șir codat base64url",json_string:"șir JSON",e164:"număr E.164",credit_card:"număr de card de credit",currency_code:"cod valutar",iban:"IBAN",jwt:"JWT",template_literal:"intrare"},i={nan:"NaN",string:"șir",number:"număr",boolean:"boolean",function:"funcție",array:"matrice",object:"obiect",undefined:"nedefinit",symbol:"simbol",bigint:"număr mare",void:"void",never:"never",map:"hartă",set:"set"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return`Intrare invalidă: așteptat ${o}, primit ${s}`}case"invalid_value":return t.values.length===1?`Intrare invalidă: așteptat ${P(t.values[0])}`:`Opțiune invalidă: așteptat una dintre ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Prea mare: așteptat ca ${t.origin??"valoarea"} ${a.verb} ${o}${t.maximum.toString()} ${a.unit??"elemente"}`:`Prea mare: așteptat ca ${t.origin??"valoarea"} să fie ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Prea mic: așteptat ca ${t.origin} ${a.verb} ${o}${t.minimum.toString()} ${a.unit}`:`Prea mic: așteptat ca ${t.origin} să fie ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Șir invalid: trebuie să înceapă cu "${o.prefix}"`:o.format==="ends_with"?`Șir invalid: trebuie să se termine cu "${o.suffix}"`:o.format==="includes"?`Șir invalid: trebuie să includă "${o.includes}"`:o.format==="regex"?`Șir invalid: trebuie să se potrivească cu modelul ${o.pattern}`:`Format invalid: ${n[o.format]??t.format}`}case"not_multiple_of":return`Număr invalid: trebuie să fie multiplu de ${t.divisor}`;case"unrecognized_keys":return`Chei nerecunoscute: ${I(t.keys,", ")}`;case"invalid_key":return`Cheie invalidă în ${t.origin}`;case"invalid_union":return"Intrare invalidă";case"invalid_element":return`Valoare invalidă în ${t.origin}`;default:return"Intrare invalidă"}}};function Zb(){return{localeError:XU()}}function Vb(e,r,n,i){let t=Math.abs(e),o=t%10,a=t%100;return a>=11&&a<=19?i:o===1?r:o>=2&&o<=4?n:i}var QU=()=>{let e={string:{unit:{one:"символ",few:"символа",many:"символов"},verb:"иметь"},file:{unit:{one:"байт",few:"байта",many:"байт"},verb:"иметь"},array:{unit:{one:"элемент",few:"элемента",many:"элементов"},verb:"иметь"},set:{unit:{one:"элемент",few:"элемента",many:"элементов"},verb:"иметь"},map:{unit:{one:"элемент",few:"элемента",many:"элементов"},verb:"иметь"}};function r(t){return e[t]??null}let n={regex:"ввод",email:"email адрес",url:"URL",emoji:"эмодзи",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO дата и время",date:"ISO дата",time:"ISO время",duration:"ISO длительность",ipv4:"IPv4 адрес",ipv6:"IPv6 адрес",mac:"MAC адрес",cidrv4:"IPv4 диапазон",cidrv6:"IPv6 диапазон",base64:"строка в формате base64",base64url:"строка в формате base64url",json_string:"JSON строка",e164:"номер E.164",credit_card:"номер кредитной карты",currency_code:"код валюты",iban:"IBAN",jwt:"JWT",template_literal:"ввод"},i={nan:"NaN",number:"число",array:"массив"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Неверный ввод: ожидалось instanceof ${t.expected}, получено ${s}`:`Неверный ввод: ожидалось ${o}, получено ${s}`}case"invalid_value":return t.values.length===1?`Неверный ввод: ожидалось ${P(t.values[0])}`:`Неверный вариант: ожидалось одно из ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);if(a){let s=Number(t.maximum),u=Vb(s,a.unit.one,a.unit.few,a.unit.many);return`Слишком большое значение: ожидалось, что ${t.origin??"значение"} будет иметь ${o}${t.maximum.toString()} ${u}`}return`Слишком большое значение: ожидалось, что ${t.origin??"значение"} будет ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);if(a){let s=Number(t.minimum),u=Vb(s,a.unit.one,a.unit.few,a.unit.many);return`Слишком маленькое значение: ожидалось, что ${t.origin} будет иметь ${o}${t.minimum.toString()} ${u}`}return`Слишком маленькое значение: ожидалось, что ${t.origin} будет ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Неверная строка: должна начинаться с "${o.prefix}"`:o.format==="ends_with"?`Неверная строка: должна заканчиваться на "${o.suffix}"`:o.format==="includes"?`Неверная строка: должна содержать "${o.includes}"`:o.format==="regex"?`Неверная строка: должна соответствовать шаблону ${o.pattern}`:`Неверный ${n[o.format]??t.format}`}case"not_multiple_of":return`Неверное число: должно быть кратным ${t.divisor}`;case"unrecognized_keys":return`Нераспознанн${t.keys.length>1?"ые":"ый"} ключ${t.keys.length>1?"и":""}: ${I(t.keys,", ")}`;case"invalid_key":return`Неверный ключ в ${t.origin}`;case"invalid_union":return"Неверные входные данные";case"invalid_element":return`Неверное значение в ${t.origin}`;default:return"Неверные входные данные"}}};function Bb(){return{localeError:QU()}}var YU=()=>{let e={string:{unit:"znakov",verb:"mať"},file:{unit:"bajtov",verb:"mať"},array:{unit:"prvkov",verb:"mať"},set:{unit:"prvkov",verb:"mať"},map:{unit:"položiek",verb:"mať"}};function r(t){return e[t]??null}let n={regex:"regulárny výraz",email:"e-mailová adresa",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"dátum a čas vo formáte ISO",date:"dátum vo formáte ISO",time:"čas vo formáte ISO",duration:"doba trvania ISO",ipv4:"IPv4 adresa",ipv6:"IPv6 adresa",mac:"MAC adresa",cidrv4:"rozsah IPv4",cidrv6:"rozsah IPv6",base64:"reťazec zakódovaný vo formáte base64",base64url:"reťazec zakódovaný vo formáte base64url",json_string:"reťazec vo formáte JSON",e164:"číslo E.164",credit_card:"číslo kreditnej karty",currency_code:"kód meny",iban:"IBAN",jwt:"JWT",template_literal:"vstup"},i={nan:"NaN",number:"číslo",string:"reťazec",function:"funkcia",array:"pole"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Neplatný vstup: očakávané instanceof ${t.expected}, obdržané ${s}`:`Neplatný vstup: očakávané ${o}, obdržané ${s}`}case"invalid_value":return t.values.length===1?`Neplatný vstup: očakávané ${P(t.values[0])}`:`Neplatný vstup: očakávaná jedna z hodnôt ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Hodnota je príliš veľká: ${t.origin??"hodnota"} musí mať ${o}${t.maximum.toString()} ${a.unit??"prvkov"}`:`Hodnota je príliš veľká: ${t.origin??"hodnota"} musí byť ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Hodnota je príliš malá: ${t.origin??"hodnota"} musí mať ${o}${t.minimum.toString()} ${a.unit??"prvkov"}`:`Hodnota je príliš malá: ${t.origin??"hodnota"} musí byť ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Neplatný reťazec: musí začínať na "${o.prefix}"`:o.format==="ends_with"?`Neplatný reťazec: musí končiť na "${o.suffix}"`:o.format==="includes"?`Neplatný reťazec: musí obsahovať "${o.includes}"`:o.format==="regex"?`Neplatný reťazec: musí zodpovedať vzoru ${o.pattern}`:`Neplatný formát ${n[o.format]??t.format}`}case"not_multiple_of":return`Neplatné číslo: musí byť násobkom ${t.divisor}`;case"unrecognized_keys":return`Neznáme klúče: ${I(t.keys,", ")}`;case"invalid_key":return`Neplatný klúč v ${t.origin}`;case"invalid_union":return"Neplatný vstup";case"invalid_element":return`Neplatná hodnota v ${t.origin}`;default:return"Neplatný vstup"}}};function Wb(){return{localeError:YU()}}var eF=()=>{let e={string:{unit:"znakov",verb:"imeti"},file:{unit:"bajtov",verb:"imeti"},array:{unit:"elementov",verb:"imeti"},set:{unit:"elementov",verb:"imeti"},map:{unit:"elementov",verb:"imeti"}};function r(t){return e[t]??null}let n={regex:"vnos",email:"e-poštni naslov",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO datum in čas",date:"ISO datum",time:"ISO čas",duration:"ISO trajanje",ipv4:"IPv4 naslov",ipv6:"IPv6 naslov",mac:"MAC naslov",cidrv4:"obseg IPv4",cidrv6:"obseg IPv6",base64:"base64 kodiran niz",base64url:"base64url kodiran niz",json_string:"JSON niz",e164:"E.164 številka",credit_card:"številka kreditne kartice",currency_code:"koda valute",iban:"IBAN",jwt:"JWT",template_literal:"vnos"},i={nan:"NaN",number:"število",array:"tabela"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Neveljaven vnos: pričakovano instanceof ${t.expected}, prejeto ${s}`:`Neveljaven vnos: pričakovano ${o}, prejeto ${s}`}case"invalid_value":return t.values.length===1?`Neveljaven vnos: pričakovano ${P(t.values[0])}`:`Neveljavna možnost: pričakovano eno izmed ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Preveliko: pričakovano, da bo ${t.origin??"vrednost"} imelo ${o}${t.maximum.toString()} ${a.unit??"elementov"}`:`Preveliko: pričakovano, da bo ${t.origin??"vrednost"} ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Premajhno: pričakovano, da bo ${t.origin} imelo ${o}${t.minimum.toString()} ${a.unit}`:`Premajhno: pričakovano, da bo ${t.origin} ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Neveljaven niz: mora se začeti z "${o.prefix}"`:o.format==="ends_with"?`Neveljaven niz: mora se končati z "${o.suffix}"`:o.format==="includes"?`Neveljaven niz: mora vsebovati "${o.includes}"`:o.format==="regex"?`Neveljaven niz: mora ustrezati vzorcu ${o.pattern}`:`Neveljaven ${n[o.format]??t.format}`}case"not_multiple_of":return`Neveljavno število: mora biti večkratnik ${t.divisor}`;case"unrecognized_keys":return`Neprepoznan${t.keys.length>1?"i ključi":" ključ"}: ${I(t.keys,", ")}`;case"invalid_key":return`Neveljaven ključ v ${t.origin}`;case"invalid_union":return"Neveljaven vnos";case"invalid_element":return`Neveljavna vrednost v ${t.origin}`;default:return"Neveljaven vnos"}}};function Gb(){return{localeError:eF()}}var rF=()=>{let e={string:{unit:"tecken",verb:"att ha"},file:{unit:"bytes",verb:"att ha"},array:{unit:"objekt",verb:"att innehålla"},set:{unit:"objekt",verb:"att innehålla"},map:{unit:"objekt",verb:"att innehålla"}};function r(t){return e[t]??null}let n={regex:"reguljärt uttryck",email:"e-postadress",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO-datum och tid",date:"ISO-datum",time:"ISO-tid",duration:"ISO-varaktighet",ipv4:"IPv4-adress",ipv6:"IPv6-adress",mac:"MAC-adress",cidrv4:"IPv4-spektrum",cidrv6:"IPv6-spektrum",base64:"base64-kodad sträng",base64url:"base64url-kodad sträng",json_string:"JSON-sträng",e164:"E.164-nummer",credit_card:"kreditkortsnummer",currency_code:"valutakod",iban:"IBAN",jwt:"JWT",template_literal:"mall-literal"},i={nan:"NaN",number:"antal",array:"lista"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ogiltig inmatning: förväntat instanceof ${t.expected}, fick ${s}`:`Ogiltig inmatning: förväntat ${o}, fick ${s}`}case"invalid_value":return t.values.length===1?`Ogiltig inmatning: förväntat ${P(t.values[0])}`:`Ogiltigt val: förväntade en av ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`För stor(t): förväntade ${t.origin??"värdet"} att ha ${o}${t.maximum.toString()} ${a.unit??"element"}`:`För stor(t): förväntat ${t.origin??"värdet"} att ha ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`För lite(t): förväntade ${t.origin??"värdet"} att ha ${o}${t.minimum.toString()} ${a.unit}`:`För lite(t): förväntade ${t.origin??"värdet"} att ha ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ogiltig sträng: måste börja med "${o.prefix}"`:o.format==="ends_with"?`Ogiltig sträng: måste sluta med "${o.suffix}"`:o.format==="includes"?`Ogiltig sträng: måste innehålla "${o.includes}"`:o.format==="regex"?`Ogiltig sträng: måste matcha mönstret "${o.pattern}"`:`Ogiltig(t) ${n[o.format]??t.format}`}case"not_multiple_of":return`Ogiltigt tal: måste vara en multipel av ${t.divisor}`;case"unrecognized_keys":return`${t.keys.length>1?"Okända nycklar":"Okänd nyckel"}: ${I(t.keys,", ")}`;case"invalid_key":return`Ogiltig nyckel i ${t.origin??"värdet"}`;case"invalid_union":return"Ogiltig input";case"invalid_element":return`Ogiltigt värde i ${t.origin??"värdet"}`;default:return"Ogiltig input"}}};function Hb(){return{localeError:rF()}}var tF=()=>{let e={string:{unit:"எழுத்துக்கள்",verb:"கொண்டிருக்க வேண்டும்"},file:{unit:"பைட்டுகள்",verb:"கொண்டிருக்க வேண்டும்"},array:{unit:"உறுப்புகள்",verb:"கொண்டிருக்க வேண்டும்"},set:{unit:"உறுப்புகள்",verb:"கொண்டிருக்க வேண்டும்"},map:{unit:"உறுப்புகள்",verb:"கொண்டிருக்க வேண்டும்"}};function r(t){return e[t]??null}let n={regex:"உள்ளீடு",email:"மின்னஞ்சல் முகவரி",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO தேதி நேரம்",date:"ISO தேதி",time:"ISO நேரம்",duration:"ISO கால அளவு",ipv4:"IPv4 முகவரி",ipv6:"IPv6 முகவரி",mac:"MAC முகவரி",cidrv4:"IPv4 வரம்பு",cidrv6:"IPv6 வரம்பு",base64:"base64-encoded சரம்",base64url:"base64url-encoded சரம்",json_string:"JSON சரம்",e164:"E.164 எண்",credit_card:"கடன் அட்டை எண்",currency_code:"நாணயக் குறியீடு",iban:"IBAN",jwt:"JWT",template_literal:"input"},i={nan:"NaN",number:"எண்",array:"அணி",null:"வெறுமை"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`தவறான உள்ளீடு: எதிர்பார்க்கப்பட்டது instanceof ${t.expected}, பெறப்பட்டது ${s}`:`தவறான உள்ளீடு: எதிர்பார்க்கப்பட்டது ${o}, பெறப்பட்டது ${s}`}case"invalid_value":return t.values.length===1?`தவறான உள்ளீடு: எதிர்பார்க்கப்பட்டது ${P(t.values[0])}`:`தவறான விருப்பம்: எதிர்பார்க்கப்பட்டது ${I(t.values,"|")} இல் ஒன்று`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`மிக பெரியது: எதிர்பார்க்கப்பட்டது ${t.origin??"மதிப்பு"} ${o}${t.maximum.toString()} ${a.unit??"உறுப்புகள்"} ஆக இருக்க வேண்டும்`:`மிக பெரியது: எதிர்பார்க்கப்பட்டது ${t.origin??"மதிப்பு"} ${o}${t.maximum.toString()} ஆக இருக்க வேண்டும்`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`மிகச் சிறியது: எதிர்பார்க்கப்பட்டது ${t.origin} ${o}${t.minimum.toString()} ${a.unit} ஆக இருக்க வேண்டும்`:`மிகச் சிறியது: எதிர்பார்க்கப்பட்டது ${t.origin} ${o}${t.minimum.toString()} ஆக இருக்க வேண்டும்`}case"invalid_format":{let o=t;return o.format==="starts_with"?`தவறான சரம்: "${o.prefix}" இல் தொடங்க வேண்டும்`:o.format==="ends_with"?`தவறான சரம்: "${o.suffix}" இல் முடிவடைய வேண்டும்`:o.format==="includes"?`தவறான சரம்: "${o.includes}" ஐ உள்ளடக்க வேண்டும்`:o.format==="regex"?`தவறான சரம்: ${o.pattern} முறைபாட்டுடன் பொருந்த வேண்டும்`:`தவறான ${n[o.format]??t.format}`}case"not_multiple_of":return`தவறான எண்: ${t.divisor} இன் பலமாக இருக்க வேண்டும்`;case"unrecognized_keys":return`அடையாளம் தெரியாத விசை${t.keys.length>1?"கள்":""}: ${I(t.keys,", ")}`;case"invalid_key":return`${t.origin} இல் தவறான விசை`;case"invalid_union":return"தவறான உள்ளீடு";case"invalid_element":return`${t.origin} இல் தவறான மதிப்பு`;default:return"தவறான உள்ளீடு"}}};function Jb(){return{localeError:tF()}}var nF=()=>{let e={string:{unit:"аломат",verb:"дошта бошад"},file:{unit:"байт",verb:"дошта бошад"},array:{unit:"унсур",verb:"дошта бошад"},set:{unit:"унсур",verb:"дошта бошад"},map:{unit:"сабт",verb:"дошта бошад"}};function r(t){return e[t]??null}let n={regex:"вуруд",email:"суроғаи email",url:"URL",emoji:"эмоҷи",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"санаву вақти ISO",date:"санаи ISO",time:"вақти ISO",duration:"давомнокии ISO",ipv4:"суроғаи IPv4",ipv6:"суроғаи IPv6",mac:"суроғаи MAC",cidrv4:"маҳдудаи IPv4",cidrv6:"маҳдудаи IPv6",base64:"сатри дар формати base64",base64url:"сатри дар формати base64url",json_string:"сатри JSON",e164:"рақами E.164",credit_card:"рақами корти кредитӣ",currency_code:"рамзи асъор",iban:"IBAN",jwt:"JWT",template_literal:"вуруд"},i={nan:"NaN",number:"рақам",string:"сатр",array:"массив",object:"объект",date:"сана"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return`Вуруди нодуруст: ${o} интизор мерафт, ${s} гирифта шуд`}case"invalid_value":return t.values.length===1?`Вуруди нодуруст: ${P(t.values[0])} интизор мерафт`:`Интихоби нодуруст: яке аз ${I(t.values,"|")} интизор мерафт`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Хеле калон: ${t.origin??"қимат"} бояд ${o}${t.maximum.toString()} ${a.unit} ${a.verb}`:`Хеле калон: ${t.origin??"қимат"} бояд ${o}${t.maximum.toString()} бошад`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Хеле хурд: ${t.origin} бояд ${o}${t.minimum.toString()} ${a.unit} ${a.verb}`:`Хеле хурд: ${t.origin} бояд ${o}${t.minimum.toString()} бошад`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Сатри нодуруст: бояд бо "${o.prefix}" оғоз шавад`:o.format==="ends_with"?`Сатри нодуруст: бояд бо "${o.suffix}" анҷом ёбад`:o.format==="includes"?`Сатри нодуруст: бояд "${o.includes}"-ро дар бар гирад`:o.format==="regex"?`Сатри нодуруст: бояд ба намунаи ${o.pattern} мувофиқат кунад`:`${n[o.format]??t.format}-и нодуруст`}case"not_multiple_of":return`Рақами нодуруст: бояд ба ${t.divisor} бе бақия тақсим шавад`;case"unrecognized_keys":return`Калид${t.keys.length>1?"ҳои":"и"} номаълум: ${I(t.keys,", ")}`;case"invalid_key":return`Калиди нодуруст дар ${t.origin}`;case"invalid_union":return t.options&&Array.isArray(t.options)&&t.options.length>0?`Қимати нодурусти дискриминатор: ${t.options.map(a=>`'${a}'`).join(" | ")} интизор мерафт`:"Вуруди нодуруст";case"invalid_element":return`Қимати нодуруст дар ${t.origin}`;default:return"Вуруди нодуруст"}}};function Kb(){return{localeError:nF()}}var iF=()=>{let e={string:{unit:"ตัวอักษร",verb:"ควรมี"},file:{unit:"ไบต์",verb:"ควรมี"},array:{unit:"รายการ",verb:"ควรมี"},set:{unit:"รายการ",verb:"ควรมี"},map:{unit:"รายการ",verb:"ควรมี"}};function r(t){return e[t]??null}let n={regex:"ข้อมูลที่ป้อน",email:"ที่อยู่อีเมล",url:"URL",emoji:"อิโมจิ",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"วันที่เวลาแบบ ISO",date:"วันที่แบบ ISO",time:"เวลาแบบ ISO",duration:"ช่วงเวลาแบบ ISO",ipv4:"ที่อยู่ IPv4",ipv6:"ที่อยู่ IPv6",mac:"ที่อยู่ MAC",cidrv4:"ช่วง IP แบบ IPv4",cidrv6:"ช่วง IP แบบ IPv6",base64:"ข้อความแบบ Base64",base64url:"ข้อความแบบ Base64 สำหรับ URL",json_string:"ข้อความแบบ JSON",e164:"เบอร์โทรศัพท์ระหว่างประเทศ (E.164)",credit_card:"หมายเลขบัตรเครดิต",currency_code:"รหัสสกุลเงิน",iban:"IBAN",jwt:"โทเคน JWT",template_literal:"ข้อมูลที่ป้อน"},i={nan:"NaN",number:"ตัวเลข",array:"อาร์เรย์ (Array)",null:"ไม่มีค่า (null)"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`ประเภทข้อมูลไม่ถูกต้อง: ควรเป็น instanceof ${t.expected} แต่ได้รับ ${s}`:`ประเภทข้อมูลไม่ถูกต้อง: ควรเป็น ${o} แต่ได้รับ ${s}`}case"invalid_value":return t.values.length===1?`ค่าไม่ถูกต้อง: ควรเป็น ${P(t.values[0])}`:`ตัวเลือกไม่ถูกต้อง: ควรเป็นหนึ่งใน ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"ไม่เกิน":"น้อยกว่า",a=r(t.origin);return a?`เกินกำหนด: ${t.origin??"ค่า"} ควรมี${o} ${t.maximum.toString()} ${a.unit??"รายการ"}`:`เกินกำหนด: ${t.origin??"ค่า"} ควรมี${o} ${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?"อย่างน้อย":"มากกว่า",a=r(t.origin);return a?`น้อยกว่ากำหนด: ${t.origin} ควรมี${o} ${t.minimum.toString()} ${a.unit}`:`น้อยกว่ากำหนด: ${t.origin} ควรมี${o} ${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`รูปแบบไม่ถูกต้อง: ข้อความต้องขึ้นต้นด้วย "${o.prefix}"`:o.format==="ends_with"?`รูปแบบไม่ถูกต้อง: ข้อความต้องลงท้ายด้วย "${o.suffix}"`:o.format==="includes"?`รูปแบบไม่ถูกต้อง: ข้อความต้องมี "${o.includes}" อยู่ในข้อความ`:o.format==="regex"?`รูปแบบไม่ถูกต้อง: ต้องตรงกับรูปแบบที่กำหนด ${o.pattern}`:`รูปแบบไม่ถูกต้อง: ${n[o.format]??t.format}`}case"not_multiple_of":return`ตัวเลขไม่ถูกต้อง: ต้องเป็นจำนวนที่หารด้วย ${t.divisor} ได้ลงตัว`;case"unrecognized_keys":return`พบคีย์ที่ไม่รู้จัก: ${I(t.keys,", ")}`;case"invalid_key":return`คีย์ไม่ถูกต้องใน ${t.origin}`;case"invalid_union":return"ข้อมูลไม่ถูกต้อง: ไม่ตรงกับรูปแบบยูเนียนที่กำหนดไว้";case"invalid_element":return`ข้อมูลไม่ถูกต้องใน ${t.origin}`;default:return"ข้อมูลไม่ถูกต้อง"}}};function Xb(){return{localeError:iF()}}var oF=()=>{let e={string:{unit:"simwol",verb:"bolmaly"},file:{unit:"baýt",verb:"bolmaly"},array:{unit:"elementler",verb:"bolmaly"},set:{unit:"elementler",verb:"bolmaly"},map:{unit:"elementler",verb:"bolmaly"}};function r(t){return e[t]??null}let n={regex:"giriş",email:"e-poçta salgysy",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO sene we wagt",date:"ISO sene",time:"ISO wagt",duration:"ISO wagt aralygy",ipv4:"IPv4 salgysy",ipv6:"IPv6 salgysy",mac:"MAC salgysy",cidrv4:"IPv4 aralygy",cidrv6:"IPv6 aralygy",base64:"base64 bilen şifrlenen setir",base64url:"base64url bilen şifrlenen setir",json_string:"JSON setiri",e164:"E.164 nomeri",credit_card:"kredit kartynyň nomeri",currency_code:"walýuta kody",iban:"IBAN",jwt:"JWT",template_literal:"şablon"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return`Nädogry baha: garaşylan ${o} ýerine ${s} alyndy`}case"invalid_value":return t.values.length===1?`Nädogry baha: ${P(t.values[0])} bolmaly`:`Nädogry saýlaw: aşakdakylardan biri bolmaly: ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Has uly: garaşylýan ${t.origin??"baha"} ${o} ${t.maximum.toString()} ${a.unit??"element"}`:`Has uly: garaşylýan ${t.origin??"baha"} ${o} ${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Has kiçi: garaşylýan ${t.origin} ${o} ${t.minimum.toString()} ${a.unit}`:`Has kiçi: garaşylýan ${t.origin} ${o} ${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Nädogry setir: "${o.prefix}" bilen başlamaly`:o.format==="ends_with"?`Nädogry setir: "${o.suffix}" bilen gutarmaly`:o.format==="includes"?`Nädogry setir: "${o.includes}" saklamaly`:o.format==="regex"?`Nädogry setir: ${o.pattern} nusga laýyk bolmaly`:`Nädogry ${n[o.format]??t.format}`}case"not_multiple_of":return`Nädogry san: ${t.divisor} bilen galyndysyz bölünmeli`;case"unrecognized_keys":return`Tanalmaýan açar${t.keys.length>1?"lar":""}: ${I(t.keys,", ")}`;case"invalid_key":return`${t.origin} içinde nädogry açar`;case"invalid_union":return"Nädogry baha";case"invalid_element":return`${t.origin} içinde nädogry baha`;default:return"Nädogry baha"}}};function Qb(){return{localeError:oF()}}var aF=()=>{let e={string:{unit:"karakter",verb:"olmalı"},file:{unit:"bayt",verb:"olmalı"},array:{unit:"öğe",verb:"olmalı"},set:{unit:"öğe",verb:"olmalı"},map:{unit:"öğe",verb:"olmalı"}};function r(t){return e[t]??null}let n={regex:"girdi",email:"e-posta adresi",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO tarih ve saat",date:"ISO tarih",time:"ISO saat",duration:"ISO süre",ipv4:"IPv4 adresi",ipv6:"IPv6 adresi",mac:"MAC adresi",cidrv4:"IPv4 aralığı",cidrv6:"IPv6 aralığı",base64:"base64 ile şifrelenmiş metin",base64url:"base64url ile şifrelenmiş metin",json_string:"JSON dizesi",e164:"E.164 sayısı",credit_card:"kredi kartı numarası",currency_code:"para birimi kodu",iban:"IBAN",jwt:"JWT",template_literal:"Şablon dizesi"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Geçersiz değer: beklenen instanceof ${t.expected}, alınan ${s}`:`Geçersiz değer: beklenen ${o}, alınan ${s}`}case"invalid_value":return t.values.length===1?`Geçersiz değer: beklenen ${P(t.values[0])}`:`Geçersiz seçenek: aşağıdakilerden biri olmalı: ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Çok büyük: beklenen ${t.origin??"değer"} ${o}${t.maximum.toString()} ${a.unit??"öğe"}`:`Çok büyük: beklenen ${t.origin??"değer"} ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Çok küçük: beklenen ${t.origin} ${o}${t.minimum.toString()} ${a.unit}`:`Çok küçük: beklenen ${t.origin} ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Geçersiz metin: "${o.prefix}" ile başlamalı`:o.format==="ends_with"?`Geçersiz metin: "${o.suffix}" ile bitmeli`:o.format==="includes"?`Geçersiz metin: "${o.includes}" içermeli`:o.format==="regex"?`Geçersiz metin: ${o.pattern} desenine uymalı`:`Geçersiz ${n[o.format]??t.format}`}case"not_multiple_of":return`Geçersiz sayı: ${t.divisor} ile tam bölünebilmeli`;case"unrecognized_keys":return`Tanınmayan anahtar${t.keys.length>1?"lar":""}: ${I(t.keys,", ")}`;case"invalid_key":return`${t.origin} içinde geçersiz anahtar`;case"invalid_union":return"Geçersiz değer";case"invalid_element":return`${t.origin} içinde geçersiz değer`;default:return"Geçersiz değer"}}};function Yb(){return{localeError:aF()}}var sF=()=>{let e={string:{unit:"символів",verb:"матиме"},file:{unit:"байтів",verb:"матиме"},array:{unit:"елементів",verb:"матиме"},set:{unit:"елементів",verb:"матиме"},map:{unit:"елементів",verb:"матиме"}};function r(t){return e[t]??null}let n={regex:"вхідні дані",email:"адреса електронної пошти",url:"URL",emoji:"емодзі",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"дата та час ISO",date:"дата ISO",time:"час ISO",duration:"тривалість ISO",ipv4:"адреса IPv4",ipv6:"адреса IPv6",mac:"адреса MAC",cidrv4:"діапазон IPv4",cidrv6:"діапазон IPv6",base64:"рядок у кодуванні base64",base64url:"рядок у кодуванні base64url",json_string:"рядок JSON",e164:"номер E.164",credit_card:"номер кредитної картки",currency_code:"код валюти",iban:"IBAN",jwt:"JWT",template_literal:"вхідні дані"},i={nan:"NaN",number:"число",array:"масив"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Неправильні вхідні дані: очікується instanceof ${t.expected}, отримано ${s}`:`Неправильні вхідні дані: очікується ${o}, отримано ${s}`}case"invalid_value":return t.values.length===1?`Неправильні вхідні дані: очікується ${P(t.values[0])}`:`Неправильна опція: очікується одне з ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Занадто велике: очікується, що ${t.origin??"значення"} ${a.verb} ${o}${t.maximum.toString()} ${a.unit??"елементів"}`:`Занадто велике: очікується, що ${t.origin??"значення"} буде ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Занадто мале: очікується, що ${t.origin} ${a.verb} ${o}${t.minimum.toString()} ${a.unit}`:`Занадто мале: очікується, що ${t.origin} буде ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Неправильний рядок: повинен починатися з "${o.prefix}"`:o.format==="ends_with"?`Неправильний рядок: повинен закінчуватися на "${o.suffix}"`:o.format==="includes"?`Неправильний рядок: повинен містити "${o.includes}"`:o.format==="regex"?`Неправильний рядок: повинен відповідати шаблону ${o.pattern}`:`Неправильний ${n[o.format]??t.format}`}case"not_multiple_of":return`Неправильне число: повинно бути кратним ${t.divisor}`;case"unrecognized_keys":return`Нерозпізнаний ключ${t.keys.length>1?"і":""}: ${I(t.keys,", ")}`;case"invalid_key":return`Неправильний ключ у ${t.origin}`;case"invalid_union":return"Неправильні вхідні дані";case"invalid_element":return`Неправильне значення у ${t.origin}`;default:return"Неправильні вхідні дані"}}};function ru(){return{localeError:sF()}}function e6(){return ru()}var uF=()=>{let e={string:{unit:"حروف",verb:"ہونا"},file:{unit:"بائٹس",verb:"ہونا"},array:{unit:"آئٹمز",verb:"ہونا"},set:{unit:"آئٹمز",verb:"ہونا"},map:{unit:"آئٹمز",verb:"ہونا"}};function r(t){return e[t]??null}let n={regex:"ان پٹ",email:"ای میل ایڈریس",url:"یو آر ایل",emoji:"ایموجی",uuid:"یو یو آئی ڈی",uuidv4:"یو یو آئی ڈی وی 4",uuidv6:"یو یو آئی ڈی وی 6",nanoid:"نینو آئی ڈی",guid:"جی یو آئی ڈی",cuid:"سی یو آئی ڈی",cuid2:"سی یو آئی ڈی 2",ulid:"یو ایل آئی ڈی",xid:"ایکس آئی ڈی",ksuid:"کے ایس یو آئی ڈی",datetime:"آئی ایس او ڈیٹ ٹائم",date:"آئی ایس او تاریخ",time:"آئی ایس او وقت",duration:"آئی ایس او مدت",ipv4:"آئی پی وی 4 ایڈریس",ipv6:"آئی پی وی 6 ایڈریس",mac:"ایم اے سی ایڈریس",cidrv4:"آئی پی وی 4 رینج",cidrv6:"آئی پی وی 6 رینج",base64:"بیس 64 ان کوڈڈ سٹرنگ",base64url:"بیس 64 یو آر ایل ان کوڈڈ سٹرنگ",json_string:"جے ایس او این سٹرنگ",e164:"ای 164 نمبر",credit_card:"کریڈٹ کارڈ نمبر",currency_code:"کرنسی کوڈ",iban:"IBAN",jwt:"جے ڈبلیو ٹی",template_literal:"ان پٹ"},i={nan:"NaN",number:"نمبر",array:"آرے",null:"نل"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`غلط ان پٹ: instanceof ${t.expected} متوقع تھا، ${s} موصول ہوا`:`غلط ان پٹ: ${o} متوقع تھا، ${s} موصول ہوا`}case"invalid_value":return t.values.length===1?`غلط ان پٹ: ${P(t.values[0])} متوقع تھا`:`غلط آپشن: ${I(t.values,"|")} میں سے ایک متوقع تھا`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`بہت بڑا: ${t.origin??"ویلیو"} کے ${o}${t.maximum.toString()} ${a.unit??"عناصر"} ہونے متوقع تھے`:`بہت بڑا: ${t.origin??"ویلیو"} کا ${o}${t.maximum.toString()} ہونا متوقع تھا`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`بہت چھوٹا: ${t.origin} کے ${o}${t.minimum.toString()} ${a.unit} ہونے متوقع تھے`:`بہت چھوٹا: ${t.origin} کا ${o}${t.minimum.toString()} ہونا متوقع تھا`}case"invalid_format":{let o=t;return o.format==="starts_with"?`غلط سٹرنگ: "${o.prefix}" سے شروع ہونا چاہیے`:o.format==="ends_with"?`غلط سٹرنگ: "${o.suffix}" پر ختم ہونا چاہیے`:o.format==="includes"?`غلط سٹرنگ: "${o.includes}" شامل ہونا چاہیے`:o.format==="regex"?`غلط سٹرنگ: پیٹرن ${o.pattern} سے میچ ہونا چاہیے`:`غلط ${n[o.format]??t.format}`}case"not_multiple_of":return`غلط نمبر: ${t.divisor} کا مضاعف ہونا چاہیے`;case"unrecognized_keys":return`غیر تسلیم شدہ کی${t.keys.length>1?"ز":""}: ${I(t.keys,"، ")}`;case"invalid_key":return`${t.origin} میں غلط کی`;case"invalid_union":return"غلط ان پٹ";case"invalid_element":return`${t.origin} میں غلط ویلیو`;default:return"غلط ان پٹ"}}};function r6(){return{localeError:uF()}}var cF=()=>{let e={string:{unit:"belgi",verb:"bo‘lishi kerak"},file:{unit:"bayt",verb:"bo‘lishi kerak"},array:{unit:"element",verb:"bo‘lishi kerak"},set:{unit:"element",verb:"bo‘lishi kerak"},map:{unit:"yozuv",verb:"bo‘lishi kerak"}};function r(t){return e[t]??null}let n={regex:"kirish",email:"elektron pochta manzili",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO sana va vaqti",date:"ISO sana",time:"ISO vaqt",duration:"ISO davomiylik",ipv4:"IPv4 manzil",ipv6:"IPv6 manzil",mac:"MAC manzil",cidrv4:"IPv4 diapazon",cidrv6:"IPv6 diapazon",base64:"base64 kodlangan satr",base64url:"base64url kodlangan satr",json_string:"JSON satr",e164:"E.164 raqam",credit_card:"kredit karta raqami",currency_code:"valyuta kodi",iban:"IBAN",jwt:"JWT",template_literal:"kirish"},i={nan:"NaN",number:"raqam",array:"massiv"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Noto‘g‘ri kirish: kutilgan instanceof ${t.expected}, qabul qilingan ${s}`:`Noto‘g‘ri kirish: kutilgan ${o}, qabul qilingan ${s}`}case"invalid_value":return t.values.length===1?`Noto‘g‘ri kirish: kutilgan ${P(t.values[0])}`:`Noto‘g‘ri variant: quyidagilardan biri kutilgan ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Juda katta: kutilgan ${t.origin??"qiymat"} ${o}${t.maximum.toString()} ${a.unit} ${a.verb}`:`Juda katta: kutilgan ${t.origin??"qiymat"} ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Juda kichik: kutilgan ${t.origin} ${o}${t.minimum.toString()} ${a.unit} ${a.verb}`:`Juda kichik: kutilgan ${t.origin} ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Noto‘g‘ri satr: "${o.prefix}" bilan boshlanishi kerak`:o.format==="ends_with"?`Noto‘g‘ri satr: "${o.suffix}" bilan tugashi kerak`:o.format==="includes"?`Noto‘g‘ri satr: "${o.includes}" ni o‘z ichiga olishi kerak`:o.format==="regex"?`Noto‘g‘ri satr: ${o.pattern} shabloniga mos kelishi kerak`:`Noto‘g‘ri ${n[o.format]??t.format}`}case"not_multiple_of":return`Noto‘g‘ri raqam: ${t.divisor} ning karralisi bo‘lishi kerak`;case"unrecognized_keys":return`Noma’lum kalit${t.keys.length>1?"lar":""}: ${I(t.keys,", ")}`;case"invalid_key":return`${t.origin} dagi kalit noto‘g‘ri`;case"invalid_union":return"Noto‘g‘ri kirish";case"invalid_element":return`${t.origin} da noto‘g‘ri qiymat`;default:return"Noto‘g‘ri kirish"}}};function t6(){return{localeError:cF()}}var lF=()=>{let e={string:{unit:"ký tự",verb:"có"},file:{unit:"byte",verb:"có"},array:{unit:"phần tử",verb:"có"},set:{unit:"phần tử",verb:"có"},map:{unit:"phần tử",verb:"có"}};function r(t){return e[t]??null}let n={regex:"đầu vào",email:"địa chỉ email",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ngày giờ ISO",date:"ngày ISO",time:"giờ ISO",duration:"khoảng thời gian ISO",ipv4:"địa chỉ IPv4",ipv6:"địa chỉ IPv6",mac:"địa chỉ MAC",cidrv4:"dải IPv4",cidrv6:"dải IPv6",base64:"chuỗi mã hóa base64",base64url:"chuỗi mã hóa base64url",json_string:"chuỗi JSON",e164:"số E.164",credit_card:"số thẻ tín dụng",currency_code:"mã tiền tệ",iban:"IBAN",jwt:"JWT",template_literal:"đầu vào"},i={nan:"NaN",number:"số",array:"mảng"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Đầu vào không hợp lệ: mong đợi instanceof ${t.expected}, nhận được ${s}`:`Đầu vào không hợp lệ: mong đợi ${o}, nhận được ${s}`}case"invalid_value":return t.values.length===1?`Đầu vào không hợp lệ: mong đợi ${P(t.values[0])}`:`Tùy chọn không hợp lệ: mong đợi một trong các giá trị ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Quá lớn: mong đợi ${t.origin??"giá trị"} ${a.verb} ${o}${t.maximum.toString()} ${a.unit??"phần tử"}`:`Quá lớn: mong đợi ${t.origin??"giá trị"} ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Quá nhỏ: mong đợi ${t.origin} ${a.verb} ${o}${t.minimum.toString()} ${a.unit}`:`Quá nhỏ: mong đợi ${t.origin} ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Chuỗi không hợp lệ: phải bắt đầu bằng "${o.prefix}"`:o.format==="ends_with"?`Chuỗi không hợp lệ: phải kết thúc bằng "${o.suffix}"`:o.format==="includes"?`Chuỗi không hợp lệ: phải bao gồm "${o.includes}"`:o.format==="regex"?`Chuỗi không hợp lệ: phải khớp với mẫu ${o.pattern}`:`${n[o.format]??t.format} không hợp lệ`}case"not_multiple_of":return`Số không hợp lệ: phải là bội số của ${t.divisor}`;case"unrecognized_keys":return`Khóa không được nhận dạng: ${I(t.keys,", ")}`;case"invalid_key":return`Khóa không hợp lệ trong ${t.origin}`;case"invalid_union":return"Đầu vào không hợp lệ";case"invalid_element":return`Giá trị không hợp lệ trong ${t.origin}`;default:return"Đầu vào không hợp lệ"}}};function n6(){return{localeError:lF()}}var dF=()=>{let e={string:{unit:"字符",verb:"包含"},file:{unit:"字节",verb:"包含"},array:{unit:"项",verb:"包含"},set:{unit:"项",verb:"包含"},map:{unit:"项",verb:"包含"}};function r(t){return e[t]??null}let n={regex:"输入",email:"电子邮件",url:"URL",emoji:"表情符号",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO日期时间",date:"ISO日期",time:"ISO时间",duration:"ISO时长",ipv4:"IPv4地址",ipv6:"IPv6地址",mac:"MAC地址",cidrv4:"IPv4网段",cidrv6:"IPv6网段",base64:"base64编码字符串",base64url:"base64url编码字符串",json_string:"JSON字符串",e164:"E.164号码",credit_card:"信用卡号",currency_code:"货币代码",iban:"IBAN",jwt:"JWT",template_literal:"输入"},i={nan:"NaN",number:"数字",array:"数组",null:"空值(null)"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`无效输入：期望 instanceof ${t.expected}，实际接收 ${s}`:`无效输入：期望 ${o}，实际接收 ${s}`}case"invalid_value":return t.values.length===1?`无效输入：期望 ${P(t.values[0])}`:`无效选项：期望以下之一 ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`数值过大：期望 ${t.origin??"值"} ${o}${t.maximum.toString()} ${a.unit??"个元素"}`:`数值过大：期望 ${t.origin??"值"} ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`数值过小：期望 ${t.origin} ${o}${t.minimum.toString()} ${a.unit}`:`数值过小：期望 ${t.origin} ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`无效字符串：必须以 "${o.prefix}" 开头`:o.format==="ends_with"?`无效字符串：必须以 "${o.suffix}" 结尾`:o.format==="includes"?`无效字符串：必须包含 "${o.includes}"`:o.format==="regex"?`无效字符串：必须满足正则表达式 ${o.pattern}`:`无效${n[o.format]??t.format}`}case"not_multiple_of":return`无效数字：必须是 ${t.divisor} 的倍数`;case"unrecognized_keys":return`出现未知的键(key): ${I(t.keys,", ")}`;case"invalid_key":return`${t.origin} 中的键(key)无效`;case"invalid_union":return"无效输入";case"invalid_element":return`${t.origin} 中包含无效值(value)`;default:return"无效输入"}}};function i6(){return{localeError:dF()}}var fF=()=>{let e={string:{unit:"字元",verb:"擁有"},file:{unit:"位元組",verb:"擁有"},array:{unit:"項目",verb:"擁有"},set:{unit:"項目",verb:"擁有"},map:{unit:"項目",verb:"擁有"}};function r(t){return e[t]??null}let n={regex:"輸入",email:"郵件地址",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"ISO 日期時間",date:"ISO 日期",time:"ISO 時間",duration:"ISO 期間",ipv4:"IPv4 位址",ipv6:"IPv6 位址",mac:"MAC 位址",cidrv4:"IPv4 範圍",cidrv6:"IPv6 範圍",base64:"base64 編碼字串",base64url:"base64url 編碼字串",json_string:"JSON 字串",e164:"E.164 數值",credit_card:"信用卡號",currency_code:"貨幣代碼",iban:"IBAN",jwt:"JWT",template_literal:"輸入"},i={nan:"NaN"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`無效的輸入值：預期為 instanceof ${t.expected}，但收到 ${s}`:`無效的輸入值：預期為 ${o}，但收到 ${s}`}case"invalid_value":return t.values.length===1?`無效的輸入值：預期為 ${P(t.values[0])}`:`無效的選項：預期為以下其中之一 ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`數值過大：預期 ${t.origin??"值"} 應為 ${o}${t.maximum.toString()} ${a.unit??"個元素"}`:`數值過大：預期 ${t.origin??"值"} 應為 ${o}${t.maximum.toString()}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`數值過小：預期 ${t.origin} 應為 ${o}${t.minimum.toString()} ${a.unit}`:`數值過小：預期 ${t.origin} 應為 ${o}${t.minimum.toString()}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`無效的字串：必須以 "${o.prefix}" 開頭`:o.format==="ends_with"?`無效的字串：必須以 "${o.suffix}" 結尾`:o.format==="includes"?`無效的字串：必須包含 "${o.includes}"`:o.format==="regex"?`無效的字串：必須符合格式 ${o.pattern}`:`無效的 ${n[o.format]??t.format}`}case"not_multiple_of":return`無效的數字：必須為 ${t.divisor} 的倍數`;case"unrecognized_keys":return`無法識別的鍵值${t.keys.length>1?"們":""}：${I(t.keys,"、")}`;case"invalid_key":return`${t.origin} 中有無效的鍵值`;case"invalid_union":return"無效的輸入值";case"invalid_element":return`${t.origin} 中有無效的值`;default:return"無效的輸入值"}}};function o6(){return{localeError:fF()}}var mF=()=>{let e={string:{unit:"àmi",verb:"ní"},file:{unit:"bytes",verb:"ní"},array:{unit:"nkan",verb:"ní"},set:{unit:"nkan",verb:"ní"},map:{unit:"nkan",verb:"ní"}};function r(t){return e[t]??null}let n={regex:"ẹ̀rọ ìbáwọlé",email:"àdírẹ́sì ìmẹ́lì",url:"URL",emoji:"emoji",uuid:"UUID",uuidv4:"UUIDv4",uuidv6:"UUIDv6",nanoid:"nanoid",guid:"GUID",cuid:"cuid",cuid2:"cuid2",ulid:"ULID",xid:"XID",ksuid:"KSUID",datetime:"àkókò ISO",date:"ọjọ́ ISO",time:"àkókò ISO",duration:"àkókò tó pé ISO",ipv4:"àdírẹ́sì IPv4",ipv6:"àdírẹ́sì IPv6",mac:"àdírẹ́sì MAC",cidrv4:"àgbègbè IPv4",cidrv6:"àgbègbè IPv6",base64:"ọ̀rọ̀ tí a kọ́ ní base64",base64url:"ọ̀rọ̀ base64url",json_string:"ọ̀rọ̀ JSON",e164:"nọ́mbà E.164",credit_card:"nọmba kaadi gbese",currency_code:"koodu owó",iban:"IBAN",jwt:"JWT",template_literal:"ẹ̀rọ ìbáwọlé"},i={nan:"NaN",number:"nọ́mbà",array:"akopọ"};return t=>{switch(t.code){case"invalid_type":{let o=i[t.expected]??t.expected,a=x(t.input),s=i[a]??a;return/^[A-Z]/.test(t.expected)?`Ìbáwọlé aṣìṣe: a ní láti fi instanceof ${t.expected}, àmọ̀ a rí ${s}`:`Ìbáwọlé aṣìṣe: a ní láti fi ${o}, àmọ̀ a rí ${s}`}case"invalid_value":return t.values.length===1?`Ìbáwọlé aṣìṣe: a ní láti fi ${P(t.values[0])}`:`Àṣàyàn aṣìṣe: yan ọ̀kan lára ${I(t.values,"|")}`;case"too_big":{let o=t.inclusive?"<=":"<",a=r(t.origin);return a?`Tó pọ̀ jù: a ní láti jẹ́ pé ${t.origin??"iye"} ${a.verb} ${o}${t.maximum} ${a.unit}`:`Tó pọ̀ jù: a ní láti jẹ́ ${o}${t.maximum}`}case"too_small":{let o=t.inclusive?">=":">",a=r(t.origin);return a?`Kéré ju: a ní láti jẹ́ pé ${t.origin} ${a.verb} ${o}${t.minimum} ${a.unit}`:`Kéré ju: a ní láti jẹ́ ${o}${t.minimum}`}case"invalid_format":{let o=t;return o.format==="starts_with"?`Ọ̀rọ̀ aṣìṣe: gbọ́dọ̀ bẹ̀rẹ̀ pẹ̀lú "${o.prefix}"`:o.format==="ends_with"?`Ọ̀rọ̀ aṣìṣe: gbọ́dọ̀ parí pẹ̀lú "${o.suffix}"`:o.format==="includes"?`Ọ̀rọ̀ aṣìṣe: gbọ́dọ̀ ní "${o.includes}"`:o.format==="regex"?`Ọ̀rọ̀ aṣìṣe: gbọ́dọ̀ bá àpẹẹrẹ mu ${o.pattern}`:`Aṣìṣe: ${n[o.format]??t.format}`}case"not_multiple_of":return`Nọ́mbà aṣìṣe: gbọ́dọ̀ jẹ́ èyà pípín ti ${t.divisor}`;case"unrecognized_keys":return`Bọtìnì àìmọ̀: ${I(t.keys,", ")}`;case"invalid_key":return`Bọtìnì aṣìṣe nínú ${t.origin}`;case"invalid_union":return"Ìbáwọlé aṣìṣe";case"invalid_element":return`Iye aṣìṣe nínú ${t.origin}`;default:return"Ìbáwọlé aṣìṣe"}}};function a6(){return{localeError:mF()}}var s6,Xm=Symbol("ZodOutput"),Qm=Symbol("ZodInput"),tu=class{constructor(){this._map=new WeakMap,this._idmap=new Map}add(r,...n){let i=n[0];return this._map.set(r,i),i&&typeof i=="object"&&"id"in i&&this._idmap.set(i.id,r),this}clear(){return this._map=new WeakMap,this._idmap=new Map,this}remove(r){let n=this._map.get(r);return n&&typeof n=="object"&&"id"in n&&this._idmap.delete(n.id),this._map.delete(r),this}get(r){let n=r._zod.parent;if(n){let i={...this.get(n)??{}};delete i.id;let t={...i,...this._map.get(r)};return Object.keys(t).length?t:void 0}return this._map.get(r)}has(r){return this._map.has(r)}};function nu(){return new tu}(s6=globalThis).__zod_globalRegistry??(s6.__zod_globalRegistry=nu());var Me=globalThis.__zod_globalRegistry;var er=Symbol.for("zod.compile.invalid"),u6=Symbol.for("zod.compile.fallback"),Ir=class extends Error{constructor(r="z.compile does not support async refinements, transforms, or checks"){super(r),this.name="ZodCompileAsyncError"}},K=class extends Error{constructor(r,n=!0){super(`z.compile does not support ${r}; this schema must use the runtime parser`),this.name="ZodCompileUnsupportedError",this.islandable=n}};function vF(e,r){try{return ou(e,{assertOnly:!0})}catch{return r}}function t0(e,r){try{let n=ou(e),i=iu(e,n);return i._zod.bag.validator=vF(e,n),i}catch(n){if(r?.strict)throw n;return e}}function iu(e,r){if(Xs(e))throw new K("a schema whose subtree contains a reference cycle");let n=te(e),i=e._zod.run,t=i.__originalRun??i,o=(a,s)=>{if(s?.async||s?.direction==="backward"||s?.skipChecks||s?.[u6]||s&&Qs(s,a.value))return t(a,s);let u=r(a.value);return u!==er?(a.value=u,a):(s&&(s[u6]=!0),t(a,s))};return o.__originalRun=t,n._zod.bag.fallbackRun=t,n._zod.bag.validator=r,n._zod.run=o,i.__originalRun||gF(n,e,r),n}function gF(e,r,n){let i=e,t=r;if(typeof t.safeParse=="function"){let o=t.safeParse;i.safeParse=(a,s)=>{let u=n(a);return u!==er?{success:!0,data:u}:o(a,s)}}if(typeof t.parse=="function"){let o=t.parse;i.parse=(a,s)=>{let u=n(a);return u!==er?u:o(a,s)}}}function ou(e,r){let n=!0;try{n=Xs(e)}catch{}if(n)throw new K("a schema whose subtree contains a reference cycle");let i={constants:new Map,constantCounter:0,varCounter:0,definite:!0},t=new pn(["input"]),o=he(t,i,e,"input",!r?.assertOnly);t.write(o===null?"return true;":`return ${o};`);let a=["INVALID",...i.constants.keys()],s=[er,...i.constants.values()],u=t.content.join(`
`),c=r?.debug?a.length>0?`// Constants: ${a.join(", ")}
${u}`:u:"",l=Function,d=`return (input) => {
${u}
}`,f;try{f=new l(...a,d)(...s)}catch(m){throw new K(`this schema (generated code failed to evaluate: ${m.message})`)}return r?.debug&&(f.code=c),f.definite=i.definite,f}function Z(e,r){for(let[i,t]of e.constants)if(t===r)return i;let n=`c${e.constantCounter++}`;return e.constants.set(n,r),n}function hn(e,r){return e.definite=!1,Z(e,r)}function U(e){return`v${e.varCounter++}`}function hF(e,r){let n=e._zod.run({value:r,issues:[]},{});if(n&&typeof n.then=="function")return er;let i=n;return i.issues.length===0?i.value:er}function We(e,r,n,i,t=!0){let o=e.content.length,a=r.constants.size,s=r.constantCounter,u=r.varCounter;try{return he(e,r,n,i,t)}catch(c){if(!(c instanceof K)||!c.islandable)throw c;if(e.content.length=o,r.constants.size>a){let l=Array.from(r.constants.keys()).slice(a);for(let d of l)r.constants.delete(d)}return r.constantCounter=s,r.varCounter=u,yF(e,r,n,i)}}function yF(e,r,n,i){r.definite=!1;let t=Z(r,n),o=Z(r,hF),a=U(r);return e.write(`const ${a} = ${o}(${t}, ${i});`),e.write(`if (${a} === INVALID) return INVALID;`),a}var bF=new Set(["max_size","min_size","size_equals","max_length","min_length","length_equals"]);function $F(e,r,n,i){let t=n._zod.def.checks;if(!t||t.length===0)return i;let o=i;for(let a of t){let s=a._zod.def;if(s.when&&!bF.has(s.check))throw new K('check with a custom "when" condition');switch(s.check){case"greater_than":_F(e,r,s,o);break;case"less_than":wF(e,r,s,o);break;case"multiple_of":SF(e,r,s,o);break;case"number_format":p6(e,s,o);break;case"min_length":{let u=kt(s.minimum,"min_length"),c=Ym(e,r,o,`${o}.length >= ${u} && ${o}.length < ${s.minimum*2}`);e.write(`if (${c} < ${u}) return INVALID;`);break}case"max_length":{let u=kt(s.maximum,"max_length"),c=Ym(e,r,o,`${o}.length > ${u}`);e.write(`if (${c} > ${u}) return INVALID;`);break}case"length_equals":{let u=kt(s.length,"length_equals"),c=Ym(e,r,o,`${o}.length >= ${u} && ${o}.length <= ${s.length*2}`);e.write(`if (${c} !== ${u}) return INVALID;`);break}case"min_size":e.write(`if (${o}.size < ${kt(s.minimum,"min_size")}) return INVALID;`);break;case"max_size":e.write(`if (${o}.size > ${kt(s.maximum,"max_size")}) return INVALID;`);break;case"size_equals":e.write(`if (${o}.size !== ${kt(s.size,"size_equals")}) return INVALID;`);break;case"string_format":o=v6(e,r,s,o);break;case"custom":o=PF(e,r,a,o);break;case"bigint_format":IF(e,s,o);break;case"mime_type":kF(e,r,s,o);break;case"property":NF(e,r,s,o);break;case"properties":OF(e,r,s,o);break;case"overwrite":{let u=U(r);AF(e,r,a,o,u),o=u;break}default:throw new K(`check type ${s.check}`)}}return o}function Ym(e,r,n,i){let t=Z(r,fn),o=U(r);return e.write(`const ${o} = typeof ${n} === "string" && ${i} ? ${t}(${n}) : ${n}.length;`),o}function kt(e,r){if(typeof e!="number"||!Number.isFinite(e))throw new K(`${r} bound of type ${typeof e}`);return`${e}`}function m6(e,r){if(typeof r=="bigint")return`${r}n`;if(typeof r=="number"){if(Number.isNaN(r))throw new K("comparison check with NaN bound");return`${r}`}if(r instanceof Date){if(Number.isNaN(r.getTime()))throw new K("comparison check with Invalid Date bound");return Z(e,r)}throw new K(`comparison check bound of type ${typeof r}`)}function _F(e,r,n,i){let t=n.inclusive?"<":"<=";e.write(`if (${i} ${t} ${m6(r,n.value)}) return INVALID;`)}function wF(e,r,n,i){let t=n.inclusive?">":">=";e.write(`if (${i} ${t} ${m6(r,n.value)}) return INVALID;`)}function SF(e,r,n,i){if(typeof n.value=="bigint"){if(n.value===BigInt(0))throw new K("multiple_of check with a zero divisor");e.write(`if (${i} % ${n.value}n !== 0n) return INVALID;`)}else{let t=Z(r,vo);e.write(`if (${t}(${i}, ${kt(n.value,"multiple_of")}) !== 0) return INVALID;`)}}function p6(e,r,n){let i=r.format;switch(i){case"safeint":e.write(`if (!Number.isSafeInteger(${n})) return INVALID;`);break;case"int32":e.write(`if (!Number.isInteger(${n}) || ${n} < -2147483648 || ${n} > 2147483647) return INVALID;`);break;case"uint32":e.write(`if (!Number.isInteger(${n}) || ${n} < 0 || ${n} > 4294967295) return INVALID;`);break;case"float32":e.write(`if (!Number.isFinite(${n}) || ${n} < -3.4028234663852886e38 || ${n} > 3.4028234663852886e38) return INVALID;`);break;case"float64":e.write(`if (!Number.isFinite(${n})) return INVALID;`);break;default:throw new K(`number format ${i}`)}}function IF(e,r,n){let i=r.format;if(i)switch(i){case"int64":e.write(`if (${n} < -9223372036854775808n || ${n} > 9223372036854775807n) return INVALID;`);break;case"uint64":e.write(`if (${n} < 0n || ${n} > 18446744073709551615n) return INVALID;`);break;default:throw new K(`bigint format ${i}`)}}function kF(e,r,n,i){let t=n.mime;if(t&&t.length>0){let o=Z(r,new Set(t));e.write(`if (!${o}.has(${i}.type)) return INVALID;`)}}function OF(e,r,n,i){if(n.when)throw new K('check with a custom "when" condition');e.write(`if (${i} == null) return INVALID;`);let t=n.shape;for(let o of Reflect.ownKeys(t)){let a=typeof o=="symbol"?Z(r,o):Qe(o),s=U(r);e.write(`const ${s} = ${i}[${a}];`),We(e,r,t[o],s,!1)}}function NF(e,r,n,i){let t=`${i}[${JSON.stringify(n.property)}]`;he(e,r,n.schema,t)}function AF(e,r,n,i,t){let o=n._zod.def.tx;if(!o)throw new K("overwrite check without a transform function");if(yn(o))throw new Ir("z.compile: async overwrite transforms are not supported");let a=Z(r,o);e.write(`const ${t} = ${a}(${i});`)}function e0(){throw new ar}function n0(e){this.issues.push(e)}function PF(e,r,n,i){let t=n._zod.def;if(t.fn){if(yn(t.fn))throw new Ir("z.compile: async .refine() predicates are not supported");let o=hn(r,t.fn),a=Z(r,e0),s=U(r);return e.write(`const ${s} = ${o}(${i});`),e.write(`if (${s} instanceof Promise) ${a}();`),e.write(`if (!${s}) return INVALID;`),i}if(n._zod.check){if(yn(n._zod.check))throw new Ir("z.compile: async .superRefine() / check functions are not supported");let o=n._zod.check,s=hn(r,c=>{let l={value:c,issues:[],addIssue:n0};return o(l)instanceof Promise&&e0(),l.issues.length===0?l.value:er}),u=U(r);return e.write(`const ${u} = ${s}(${i});`),e.write(`if (${u} === INVALID) return INVALID;`),u}throw new K("custom check without a predicate or check function")}var xF=new Set(["cidrv4","cuid","cuid2","date","datetime","duration","e164","email","emoji","ends_with","guid","includes","ipv4","ksuid","lowercase","mac","nanoid","regex","starts_with","time","ulid","uppercase","uuid","xid"]);function v6(e,r,n,i,t=!0){let o=n.format;if(o==="base64"){let c=Z(r,zo);return e.write(`if (!${c}(${i})) return INVALID;`),i}if(o==="base64url"){let c=Z(r,Rs);return e.write(`if (!${c}(${i})) return INVALID;`),i}if(o==="jwt"){let c=Z(r,Ms),l=Z(r,n.alg??null);return e.write(`if (!${c}(${i}, ${l})) return INVALID;`),i}if(o==="ipv6"){let c=Z(r,jo);return e.write(`if (!${c}(${i})) return INVALID;`),i}if(o==="cidrv6"){let c=Z(r,Cs);return e.write(`if (!${c}(${i})) return INVALID;`),i}if(o==="credit_card"){let c=Z(r,Us);return e.write(`if (!${c}(${i})) return INVALID;`),i}if(o==="iban"){let c=Z(r,Fs);return e.write(`if (!${c}(${i})) return INVALID;`),i}let a=n;if(o==="url"||o==="httpurl"||a.normalize||a.hostname!==void 0||a.protocol!==void 0){let c=Z(r,Ts),l=Z(r,n),d=U(r),f=U(r);if(e.write(`const ${d} = ${i}.trim();`),e.write(`const ${f} = ${c}(${d}, ${l});`),e.write(`if (typeof ${f} === "number") return INVALID;`),a.hostname!==void 0){let h=Z(r,js);e.write(`if (!${h}(${f}, ${l}.hostname)) return INVALID;`)}if(a.protocol!==void 0){let h=Z(r,zs);e.write(`if (!${h}(${f}, ${l}.protocol)) return INVALID;`)}if(!t)return null;let m=U(r),v=a.normalize?`${f}.href`:`${Z(r,To)}(${d})`;return e.write(`const ${m} = ${v};`),m}let s=n.fn;if(s){if(yn(s))throw new K(`async string format ${o}`);let c=Z(r,s);return e.write(`if (!${c}(${i})) return INVALID;`),i}if(xF.has(o)&&n.pattern){let c=Z(r,n.pattern);return e.write(`${c}.lastIndex = 0;`),e.write(`if (!${c}.test(${i})) return INVALID;`),i}let u=n.format;switch(u){case"regex":throw new K("regex format without a pattern");case"lowercase":e.write(`if (${i} !== ${i}.toLowerCase()) return INVALID;`);break;case"uppercase":e.write(`if (${i} !== ${i}.toUpperCase()) return INVALID;`);break;case"includes":e.write(`if (!${i}.includes(${Qe(n.includes)})) return INVALID;`);break;case"starts_with":{let c=n.prefix;e.write(`if (${i}.slice(0, ${c.length}) !== ${Qe(c)}) return INVALID;`);break}case"ends_with":{let c=n.suffix;e.write(`if (${i}.slice(-${c.length}) !== ${Qe(c)}) return INVALID;`);break}default:throw new K(`string format ${u}`)}return i}function he(e,r,n,i,t=!0){let o=n._zod.def,a=o.type;if(o.coerce)throw new K(`coercion (z.coerce.${a}())`);let s=t||!!o.checks?.length,u;switch(a){case"string":u=EF(e,r,n,i,s);break;case"number":u=DF(e,n,i);break;case"boolean":u=TF(e,i);break;case"bigint":u=jF(e,n,i);break;case"symbol":u=zF(e,i);break;case"undefined":u=CF(e,i);break;case"null":u=qF(e,i);break;case"any":case"unknown":u=i;break;case"never":e.write("return INVALID;"),u=i;break;case"void":u=RF(e,i);break;case"nan":u=UF(e,i);break;case"date":u=FF(e,i);break;case"object":u=MF(e,r,n,i,s);break;case"optional":u=LF(e,r,n,i,s);break;case"nullable":u=BF(e,r,n,i,s);break;case"array":u=WF(e,r,n,i,s);break;case"literal":u=GF(e,r,n,i);break;case"enum":u=HF(e,r,n,i);break;case"readonly":{let c=l6(e,r,n,i),l=U(r);e.write(`const ${l} = Object.freeze(${c});`),u=l;break}case"success":l6(e,r,n,i),u="true";break;case"default":case"prefault":u=JF(e,r,n,i);break;case"nonoptional":u=KF(e,r,n,i);break;case"tuple":u=XF(e,r,n,i);break;case"union":u=QF(e,r,n,i);break;case"intersection":u=rM(e,r,n,i);break;case"record":u=tM(e,r,n,i);break;case"map":u=iM(e,r,n,i);break;case"set":u=oM(e,r,n,i);break;case"file":u=aM(e,i);break;case"template_literal":u=sM(e,r,n,i);break;case"lazy":u=uM(e,r,n,i);break;case"pipe":u=cM(e,r,n,i);break;case"custom":u=lM(e,r,n,i);break;case"transform":u=mM(e,r,n,i);break;case"catch":u=fM(e,r,n,i);break;default:throw new K(`schema type ${a}`)}return u===null?null:$F(e,r,n,u)}function EF(e,r,n,i,t=!0){e.write(`if (typeof ${i} !== "string") return INVALID;`);let o=n._zod.def;return o.format===void 0?i:v6(e,r,o,i,t)}function DF(e,r,n){e.write(`if (typeof ${n} !== "number" || !Number.isFinite(${n})) return INVALID;`);let i=r._zod.def;return i.check==="number_format"&&i.format&&p6(e,{format:i.format},n),n}function TF(e,r){return e.write(`if (typeof ${r} !== "boolean") return INVALID;`),r}function jF(e,r,n){e.write(`if (typeof ${n} !== "bigint") return INVALID;`);let i=r._zod.def;if(i.format)switch(i.format){case"int64":e.write(`if (${n} < -9223372036854775808n || ${n} > 9223372036854775807n) return INVALID;`);break;case"uint64":e.write(`if (${n} < 0n || ${n} > 18446744073709551615n) return INVALID;`);break}return n}function zF(e,r){return e.write(`if (typeof ${r} !== "symbol") return INVALID;`),r}function CF(e,r){return e.write(`if (${r} !== undefined) return INVALID;`),r}function qF(e,r){return e.write(`if (${r} !== null) return INVALID;`),r}function RF(e,r){return e.write(`if (${r} !== undefined) return INVALID;`),r}function UF(e,r){return e.write(`if (typeof ${r} !== "number" || !Number.isNaN(${r})) return INVALID;`),r}function FF(e,r){return e.write(`if (!(${r} instanceof Date) || Number.isNaN(${r}.getTime())) return INVALID;`),r}function MF(e,r,n,i,t=!0){let o=n._zod.def;e.write(`if (typeof ${i} !== "object" || ${i} === null || Array.isArray(${i})) return INVALID;`);let a=o.shape,s=Object.keys(a),u=Object.getOwnPropertySymbols(a),c=u.length?[...s,...u]:s,l=_=>typeof _=="symbol"?Z(r,_):Qe(_),d=_=>typeof _=="symbol"?`[${l(_)}]`:Qe(_),f=a;if(s.includes("__proto__"))throw new K('object shape key "__proto__"');let m=new Map;for(let _ of c){let $=f[_],N=l(_),w=U(r);if(e.write(`const ${w} = ${i}[${N}];`),$._zod.optin!==void 0){let O=U(r);e.write(`let ${O} = (() => {`),e.indented(k=>{let D=We(k,r,$,w);k.write(`return ${D};`)}),e.write("})();"),$._zod.optout==="optional"?(e.write(`if (${O} === INVALID) {`),e.indented(k=>{k.write(`if (${N} in ${i}) return INVALID;`),k.write(`${O} = undefined;`)}),e.write("}")):e.write(`if (${O} === INVALID) return INVALID;`),m.set(_,O)}else{VF($)&&e.write(`if (!(${N} in ${i})) return INVALID;`);let O=We(e,r,$,w,t);O!==null&&m.set(_,O)}}let v=o.catchall,h="none";if(v){let _=v._zod.def.type;if(_==="never"){let $=s.map(N=>`k !== ${Qe(N)}`).join(" && ")||"true";e.write(`for (const k in ${i}) {`),e.indented(N=>{N.write(`if (${$}) return INVALID;`)}),e.write("}")}else(_==="unknown"||_==="any")&&!v._zod.def.checks?.length?h="passthrough":h="schema"}let y=U(r),b=c.some(_=>c6(f[_])||r0(f[_]));if(!t){if(h==="schema"){let _=s.length>0?Z(r,new Set(s)):null;e.write(`for (const k in ${i}) {`),e.indented($=>{$.write('if (k === "__proto__") continue;'),_&&$.write(`if (${_}.has(k)) continue;`);let N=U(r);$.write(`const ${N} = ${i}[k];`),We($,r,v,N,!1)}),e.write("}")}return null}if(b){e.write(`const ${y} = {};`);for(let _ of c){let $=l(_),N=m.get(_);r0(f[_])?e.write(`if (${$} in ${i}) ${y}[${$}] = ${N};`):c6(f[_])?e.write(`if (${N} !== undefined || ${$} in ${i}) ${y}[${$}] = ${N};`):e.write(`${y}[${$}] = ${N};`)}}else{let _=c.map($=>`${d($)}: ${m.get($)}`).join(", ");e.write(`const ${y} = { ${_} };`)}if(h!=="none"){let _=s.length>0?Z(r,new Set(s)):null;e.write(`for (const k in ${i}) {`),e.indented($=>{if($.write('if (k === "__proto__") continue;'),_&&$.write(`if (${_}.has(k)) continue;`),h==="passthrough")$.write(`${y}[k] = ${i}[k];`);else{let N=U(r);$.write(`const ${N} = ${i}[k];`);let w=We($,r,v,N);$.write(`${y}[k] = ${w};`)}}),e.write("}")}return y}function LF(e,r,n,i,t=!0){let o=n._zod.def;if(ZF(n))return he(e,r,o.innerType,i,t);if(o.innerType._zod.optin==="defaulted"){let s=U(r),u=U(r);return e.write(`let ${s};`),e.write(`if (${i} === undefined) {`),e.indented(c=>{c.write(`const ${u} = (() => {`),c.indented(l=>{let d=he(l,r,o.innerType,i);l.write(`return ${d};`)}),c.write("})();"),c.write(`if (${u} !== INVALID) ${s} = ${u};`)}),e.write("} else {"),e.indented(c=>{let l=he(c,r,o.innerType,i);c.write(`${s} = ${l};`)}),e.write("}"),s}let a=t?U(r):null;return a&&e.write(`let ${a};`),e.write(`if (${i} !== undefined) {`),e.indented(s=>{let u=he(s,r,o.innerType,i,t);a&&u!==null&&s.write(`${a} = ${u};`)}),e.write("}"),a}function ZF(e){return e._zod.traits?.has("$ZodExactOptional")===!0}function VF(e){return e._zod.optin===void 0&&gn(e)}function gn(e){if(e._zod.def.coerce)return!0;let r=e._zod.def;switch(r.type){case"any":case"unknown":case"undefined":case"void":case"default":case"prefault":case"transform":case"custom":case"lazy":return!0;case"string":case"number":case"boolean":case"bigint":case"symbol":case"null":case"never":case"nan":case"date":case"object":case"array":case"tuple":case"record":case"map":case"set":case"file":case"template_literal":return!1;case"nonoptional":return r.innerType?gn(r.innerType):!1;case"literal":return!!r.values?.includes(void 0);case"enum":return!!e._zod.values?.has(void 0);case"optional":case"nullable":case"readonly":case"success":return r.innerType?gn(r.innerType):!0;case"catch":return!0;case"union":return r.options?r.options.some(gn):!0;case"intersection":return!r.left||!r.right?!0:gn(r.left)&&gn(r.right);case"pipe":return r.in?gn(r.in):!0;default:return!0}}function r0(e){return e._zod.optin==="optional"&&e._zod.optout==="optional"}function c6(e){return(e._zod.optin!=="defaulted"||e._zod.optout==="optional")&&li(e)}function li(e){let r=e._zod.def;switch(r.type){case"string":case"number":case"boolean":case"bigint":case"symbol":case"null":case"nan":case"date":case"object":case"array":case"tuple":case"record":case"map":case"set":case"file":case"template_literal":case"never":case"success":return!1;case"literal":return!!r.values?.includes(void 0);case"enum":return!!e._zod.values?.has(void 0);case"optional":return!0;case"nullable":case"readonly":case"nonoptional":return r.innerType?li(r.innerType):!0;case"union":return r.options?r.options.some(li):!0;case"intersection":return!r.left||!r.right||li(r.left)||li(r.right);case"pipe":return r.out?li(r.out):!0;default:return!0}}function BF(e,r,n,i,t=!0){let o=n._zod.def,a=t?U(r):null;return a&&e.write(`let ${a} = null;`),e.write(`if (${i} !== null) {`),e.indented(s=>{let u=he(s,r,o.innerType,i,t);a&&u!==null&&s.write(`${a} = ${u};`)}),e.write("}"),a}function i0(e,r,n){for(let[i,t]of ei(r._zod.def.checks))e.write(`if (${n} > ${kt(i,t._zod.def.check)}) return INVALID;`)}function WF(e,r,n,i,t=!0){let o=n._zod.def;e.write(`if (!Array.isArray(${i})) return INVALID;`),i0(e,n,`${i}.length`);let a=t?U(r):null,s=U(r),u=U(r);return a&&e.write(`const ${a} = new Array(${i}.length);`),e.write(`for (let ${s} = 0; ${s} < ${i}.length; ${s}++) {`),e.indented(c=>{c.write(`const ${u} = ${i}[${s}];`);let l=We(c,r,o.element,u,t);a&&l!==null&&c.write(`${a}[${s}] = ${l};`)}),e.write("}"),a}function GF(e,r,n,i){let o=n._zod.def.values;if(o.length!==1){let s=Z(r,new Set(o));return e.write(`if (!${s}.has(${i})) return INVALID;`),i}let a=o[0];if(typeof a=="number"&&Number.isNaN(a)){let s=Z(r,new Set(o));return e.write(`if (!${s}.has(${i})) return INVALID;`),i}if(typeof a=="string")e.write(`if (${i} !== ${Qe(a)}) return INVALID;`);else if(typeof a=="number"||typeof a=="boolean")e.write(`if (${i} !== ${a}) return INVALID;`);else if(a===null)e.write(`if (${i} !== null) return INVALID;`);else if(a===void 0)e.write(`if (${i} !== undefined) return INVALID;`);else if(typeof a=="bigint")e.write(`if (${i} !== ${a}n) return INVALID;`);else throw new K(`literal type ${typeof a}`);return i}function HF(e,r,n,i){let t=n._zod.values;if(!t)throw new K("enum schema without enumerated values");let o=Z(r,t);return e.write(`if (!${o}.has(${i})) return INVALID;`),i}function l6(e,r,n,i){let t=n._zod.def;return he(e,r,t.innerType,i)}function JF(e,r,n,i){let t=n._zod.def,a=Object.getOwnPropertyDescriptor(n._zod.def,"defaultValue")?()=>n._zod.def.defaultValue:void 0;if(n._zod.def.type==="prefault"){if(!a)return he(e,r,t.innerType,i);let u=Z(r,a),c=U(r);return e.write(`let ${c} = ${i};`),e.write(`if (${i} === undefined) ${c} = ${u}();`),he(e,r,t.innerType,c)}let s=U(r);if(a){let u=Z(r,a),c=Z(r,go);e.write(`let ${s};`),e.write(`if (${i} === undefined) {`),e.indented(l=>{l.write(`${s} = ${c}(${u}());`)}),e.write("} else {"),e.indented(l=>{let d=he(l,r,t.innerType,i);l.write(`${s} = ${d} === undefined ? ${c}(${u}()) : ${d};`)}),e.write("}")}else e.write(`let ${s};`),e.write(`if (${i} !== undefined) {`),e.indented(u=>{let c=he(u,r,t.innerType,i);u.write(`${s} = ${c};`)}),e.write("}");return s}function KF(e,r,n,i){let t=n._zod.def,o=he(e,r,t.innerType,i),a=U(r);return e.write(`const ${a} = ${o};`),e.write(`if (${a} === undefined) return INVALID;`),a}function XF(e,r,n,i){let t=n._zod.def,o=t.items,a=t.rest;e.write(`if (!Array.isArray(${i})) return INVALID;`);let s=d6(o,"optin"),u=d6(o,"optout");a?e.write(`if (${i}.length < ${s}) return INVALID;`):e.write(`if (${i}.length < ${s} || ${i}.length > ${o.length}) return INVALID;`);let c=U(r);e.write(`const ${c} = [];`);for(let l=0;l<o.length;l++){let d=o[l];if(l>=u)e.write(`if (${c}.length === ${l}) {`),e.indented(f=>{f.write(`if (${l} < ${i}.length) {`),f.indented(m=>{let v=U(r);m.write(`const ${v} = ${i}[${l}];`);let h=We(m,r,d,v);m.write(`${c}[${l}] = ${h};`)}),f.write("} else {"),f.indented(m=>{if(r0(d)){m.write(`${c}.length = ${l};`);return}let v=U(r),h=U(r);m.write(`const ${v} = undefined;`),m.write(`const ${h} = (() => {`),m.indented(y=>{let b=We(y,r,d,v);y.write(`return ${b};`)}),m.write("})();"),m.write(`if (${h} === INVALID || ${h} === undefined) ${c}.length = ${l};`),m.write(`else ${c}[${l}] = ${h};`)}),f.write("}")}),e.write("}");else{let f=U(r);e.write(`const ${f} = ${i}[${l}];`);let m=We(e,r,d,f);e.write(`${c}[${l}] = ${m};`)}}if(a){let l=U(r),d=U(r);e.write(`for (let ${l} = ${o.length}; ${l} < ${i}.length; ${l}++) {`),e.indented(f=>{f.write(`const ${d} = ${i}[${l}];`);let m=We(f,r,a,d);f.write(`${c}[${l}] = ${m};`)}),e.write("}")}return c}function d6(e,r){for(let n=e.length-1;n>=0;n--)if(!(r==="optin"?e[n]._zod.optin!==void 0:e[n]._zod.optout==="optional"))return n+1;return 0}function QF(e,r,n,i){let t=n._zod.def,o=t.options;if(t.discriminator)return YF(e,r,t,i);if(t.inclusive===!1)throw new K("exclusive unions (z.xor)");if(o.length===0)return e.write("return INVALID;"),i;if(o.length===1)return he(e,r,o[0],i);if(o.every(u=>u._zod.def.type==="literal"&&!u._zod.def.checks?.length)){let u=new Set(o.flatMap(l=>l._zod.def.values)),c=Z(r,u);return e.write(`if (!${c}.has(${i})) return INVALID;`),i}let s=U(r);e.write(`let ${s};`);for(let u=0;u<o.length;u++){let c=o[u];u===0?e.write(`${s} = (() => {`):e.write(`if (${s} === INVALID) ${s} = (() => {`),e.indented(l=>{let d=he(l,r,c,i);l.write(`return ${d};`)}),e.write("})();")}return e.write(`if (${s} === INVALID) return INVALID;`),s}function YF(e,r,n,i){if(n.unionFallback)throw new K("discriminated union with unionFallback");if(n.options.length===0)return e.write("return INVALID;"),i;let t=U(r),o=U(r);e.write(`const ${t} = ${i}?.[${Qe(n.discriminator)}];`),e.write(`let ${o};`);let a=!0,s=new Set;for(let u of n.options){let c=u._zod.propValues?.[n.discriminator];if(!c||c.size===0)throw new K("discriminated union option without static discriminator values");for(let f of c){if(s.has(f))throw new K(`duplicate discriminator value ${String(f)}`);s.add(f)}let l=Array.from(c,f=>eM(r,t,f)),d=a?"if":"else if";e.write(`${d} (${l.join(" || ")}) {`),e.indented(f=>{let m=he(f,r,u,i);f.write(`${o} = ${m};`)}),e.write("}"),a=!1}return e.write("else { return INVALID; }"),o}function eM(e,r,n){if(typeof n=="string")return`${r} === ${Qe(n)}`;if(typeof n=="number")return Number.isNaN(n)?`Number.isNaN(${r})`:`${r} === ${n}`;if(typeof n=="boolean")return`${r} === ${n}`;if(n===null)return`${r} === null`;if(n===void 0)return`${r} === undefined`;if(typeof n=="bigint")return`${r} === ${n}n`;if(typeof n=="symbol"){let i=Z(e,n);return`${r} === ${i}`}throw new K(`literal discriminator value ${String(n)}`)}function rM(e,r,n,i){let t=n._zod.def;r.definite=!1;let o=We(e,r,t.left,i),a=We(e,r,t.right,i),s=Z(r,si),u=U(r);return e.write(`const ${u} = ${s}(${o}, ${a});`),e.write(`if (!${u}.valid) return INVALID;`),`${u}.data`}function tM(e,r,n,i){let t=n._zod.def,o=Z(r,pr);e.write(`if (!${o}(${i})) return INVALID;`);let a=U(r),s=U(r),u=U(r);e.write(`const ${a} = {};`);let c=t,l=c.partial?void 0:t.keyType._zod.values;if(l){let m=[];for(let h of l){if(!(typeof h=="string"||typeof h=="number"||typeof h=="symbol"))throw new K(`record key value ${String(h)}`);let y=typeof h=="number"?h.toString():h;if(y==="__proto__")throw new K('record key "__proto__"');m.push(y);let b=Z(r,h),_=he(e,r,t.keyType,b),$=U(r);e.write(`const ${$} = ${i}[${nM(r,y)}];`);let N=We(e,r,t.valueType,$);e.write(`${a}[${_}] = ${N};`)}let v=Z(r,new Set(m));return e.write(`for (const ${s} in ${i}) {`),e.indented(h=>{h.write(`if (${v}.has(${s})) continue;`),c.mode==="loose"?h.write(`if (${s} !== "__proto__") ${a}[${s}] = ${i}[${s}];`):h.write("return INVALID;")}),e.write("}"),a}let d=t.keyType._zod.def;if(!(d.type==="string"&&d.format===void 0&&!d.coerce&&(d.checks?.length??0)===0)){let m=t.mode==="loose",v=ou(t.keyType);v.definite===!1&&(r.definite=!1);let h=Z(r,v),y=Z(r,tt),b=U(r);return f6(e,r,i,s,_=>{_.write(`let ${b} = ${h}(${s});`),_.write(`if (${b} === INVALID && typeof ${s} === "string" && ${y}.test(${s})) ${b} = ${h}(Number(${s}));`),m?_.write(`if (${b} === INVALID) { ${a}[${s}] = ${i}[${s}]; continue; }`):_.write(`if (${b} === INVALID) return INVALID;`),_.write(`if (${b} === "__proto__") continue;`);let $=U(r);_.write(`const ${$} = ${i}[${s}];`);let N=We(_,r,t.valueType,$);_.write(`${a}[${b}] = ${N};`)}),a}return f6(e,r,i,s,m=>{m.write(`const ${u} = ${i}[${s}];`);let v=We(m,r,t.valueType,u);m.write(`${a}[${s}] = ${v};`)},"return INVALID;"),a}function f6(e,r,n,i,t,o){let a=Z(r,Object.prototype.propertyIsEnumerable),s=U(r),u=U(r),c=U(r);e.write(`const ${s} = Object.getOwnPropertySymbols(${n});`),e.write(`const ${u} = Object.getOwnPropertyNames(${n});`),e.write(`for (let ${c} = 0; ${c} < ${u}.length; ${c}++) {`),e.indented(l=>{l.write(`const ${i} = ${u}[${c}];`),l.write(`if (${i} === "__proto__" || !${a}.call(${n}, ${i})) continue;`),t(l)}),e.write("}"),e.write(`for (let ${c} = 0; ${c} < ${s}.length; ${c}++) {`),e.indented(l=>{l.write(`const ${i} = ${s}[${c}];`),l.write(`if (!${a}.call(${n}, ${i})) continue;`),o?l.write(o):t(l)}),e.write("}")}function nM(e,r){return typeof r=="string"?Qe(r):Z(e,r)}function iM(e,r,n,i){let t=n._zod.def;e.write(`if (!(${i} instanceof Map)) return INVALID;`),i0(e,n,`${i}.size`);let o=U(r),a=U(r),s=U(r);return e.write(`const ${o} = new Map();`),e.write(`for (const [${a}, ${s}] of ${i}) {`),e.indented(u=>{let c=he(u,r,t.keyType,a),l=he(u,r,t.valueType,s);u.write(`${o}.set(${c}, ${l});`)}),e.write("}"),o}function oM(e,r,n,i){let t=n._zod.def;e.write(`if (!(${i} instanceof Set)) return INVALID;`),i0(e,n,`${i}.size`);let o=U(r),a=U(r);return e.write(`const ${o} = new Set();`),e.write(`for (const ${a} of ${i}) {`),e.indented(s=>{let u=he(s,r,t.valueType,a);s.write(`${o}.add(${u});`)}),e.write("}"),o}function aM(e,r){return e.write(`if (!(${r} instanceof File)) return INVALID;`),r}function sM(e,r,n,i){e.write(`if (typeof ${i} !== "string") return INVALID;`);let t=n._zod.pattern;if(t){let o=Z(r,t);e.write(`${o}.lastIndex = 0;`),e.write(`if (!${o}.test(${i})) return INVALID;`)}return i}function uM(e,r,n,i){let t=n._zod.def,o=hn(r,t.getter),a=Z(r,{parser:null});e.write(`if (!${a}.parser) {`),e.indented(u=>{u.write(`const inner = ${o}();`),u.write(`${a}.parser = function(input) {`),u.indented(c=>{c.write("const result = inner._zod.run({ value: input, issues: [] }, {});"),c.write("return result.issues.length === 0 ? result.value : INVALID;")}),u.write("};")}),e.write("}");let s=U(r);return e.write(`const ${s} = ${a}.parser(${i});`),e.write(`if (${s} === INVALID) return INVALID;`),s}function cM(e,r,n,i){let t=n._zod.def,o=he(e,r,t.in,i);if(t.transform){if(yn(t.transform))throw new Ir("z.compile: async transforms in pipes are not supported");let a=t.transform,u=hn(r,l=>{let d={value:l,issues:[],addIssue:n0},f=a(l,d);return f instanceof Promise?er:d.issues.length===0?f:er}),c=U(r);return e.write(`const ${c} = ${u}(${o});`),e.write(`if (${c} === INVALID) return INVALID;`),he(e,r,t.out,c)}else return he(e,r,t.out,o)}function yn(e){return typeof e=="function"&&(e.constructor.name==="AsyncFunction"||e[Symbol.toStringTag]==="AsyncFunction")}function lM(e,r,n,i){let t=n._zod.def;if(t.fn){if(yn(t.fn))throw new Ir("z.compile: async custom predicates are not supported");let o=hn(r,t.fn),a=Z(r,e0),s=U(r);e.write(`const ${s} = ${o}(${i});`),e.write(`if (${s} instanceof Promise) ${a}();`),e.write(`if (!${s}) return INVALID;`)}else throw new K("custom schema without a predicate function");return i}function dM(e,r,n){let i=e._zod.run({value:n,issues:[]},{});if(i&&typeof i.then=="function")return er;let t=i;return t.issues.length===0?t.value:r()}function fM(e,r,n,i){let t=n._zod.def;if(!t.catchValue[ls])throw new K("catch with a callback (only a constant catch value compiles)",!1);let o=U(r);e.write(`let ${o} = (() => {`),e.indented(c=>{let l=We(c,r,t.innerType,i);c.write(`return ${l};`)}),e.write("})();");let a=Z(r,t.innerType),s=hn(r,t.catchValue),u=Z(r,dM);return e.write(`if (${o} === INVALID) {`),e.indented(c=>{c.write(`${o} = ${u}(${a}, ${s}, ${i});`),c.write(`if (${o} === INVALID) return INVALID;`)}),e.write("}"),o}function mM(e,r,n,i){let t=n._zod.def;if(t.transform){if(yn(t.transform))throw new Ir("z.compile: async transforms are not supported");let o=t.transform,s=hn(r,c=>{let l={value:c,issues:[],addIssue:n0},d=o(c,l);return d instanceof Promise?er:l.issues.length===0?d:er}),u=U(r);return e.write(`const ${u} = ${s}(${i});`),e.write(`if (${u} === INVALID) return INVALID;`),u}return i}function au(e){return e.checks&&(e.checks=[...e.checks]),e}function o0(e,r){return new e(au({type:"string",...j(r)}))}function a0(e,r){return new e(au({type:"string",coerce:!0,...j(r)}))}function su(e,r){return new e({type:"string",format:"email",check:"string_format",abort:!1,...j(r)})}function uu(e,r){return new e({type:"string",format:"guid",check:"string_format",abort:!1,...j(r)})}function cu(e,r){return new e({type:"string",format:"uuid",check:"string_format",abort:!1,...j(r)})}function lu(e,r){return new e({type:"string",format:"uuid",check:"string_format",abort:!1,version:"v4",...j(r)})}function du(e,r){return new e({type:"string",format:"uuid",check:"string_format",abort:!1,version:"v6",...j(r)})}function fu(e,r){return new e({type:"string",format:"uuid",check:"string_format",abort:!1,version:"v7",...j(r)})}function Wo(e,r){return new e({type:"string",format:"url",check:"string_format",abort:!1,...j(r)})}function mu(e,r){return new e({type:"string",format:"emoji",check:"string_format",abort:!1,...j(r)})}function pu(e,r){return new e({type:"string",format:"nanoid",check:"string_format",abort:!1,...j(r)})}function vu(e,r){return new e({type:"string",format:"cuid",check:"string_format",abort:!1,...j(r)})}function gu(e,r){return new e({type:"string",format:"cuid2",check:"string_format",abort:!1,...j(r)})}function hu(e,r){return new e({type:"string",format:"ulid",check:"string_format",abort:!1,...j(r)})}function yu(e,r){return new e({type:"string",format:"xid",check:"string_format",abort:!1,...j(r)})}function bu(e,r){return new e({type:"string",format:"ksuid",check:"string_format",abort:!1,...j(r)})}function $u(e,r){return new e({type:"string",format:"ipv4",check:"string_format",abort:!1,...j(r)})}function _u(e,r){return new e({type:"string",format:"ipv6",check:"string_format",abort:!1,...j(r)})}function s0(e,r){return new e({type:"string",format:"mac",check:"string_format",abort:!1,...j(r)})}function wu(e,r){return new e({type:"string",format:"cidrv4",check:"string_format",abort:!1,...j(r)})}function Su(e,r){return new e({type:"string",format:"cidrv6",check:"string_format",abort:!1,...j(r)})}function Iu(e,r){return new e({type:"string",format:"base64",check:"string_format",abort:!1,...j(r)})}function ku(e,r){return new e({type:"string",format:"base64url",check:"string_format",abort:!1,...j(r)})}function Ou(e,r){return new e({type:"string",format:"e164",check:"string_format",abort:!1,...j(r)})}function u0(e,r){return new e({type:"string",format:"credit_card",check:"string_format",abort:!1,...j(r)})}function c0(e,r){return new e({type:"string",format:"iban",check:"string_format",abort:!1,...j(r)})}function Nu(e,r){return new e({type:"string",format:"jwt",check:"string_format",abort:!1,...j(r)})}var l0={Any:null,Minute:-1,Second:0,Millisecond:3,Microsecond:6};function Go(e,r){return new e({type:"string",format:"datetime",check:"string_format",offset:!1,local:!1,precision:null,...j(r)})}function Ho(e,r){return new e({type:"string",format:"date",check:"string_format",...j(r)})}function Jo(e,r){return new e({type:"string",format:"time",check:"string_format",precision:null,...j(r)})}function Ko(e,r){return new e({type:"string",format:"duration",check:"string_format",...j(r)})}function d0(e,r){return new e(au({type:"number",checks:[],...j(r)}))}function f0(e,r){return new e(au({type:"number",coerce:!0,checks:[],...j(r)}))}function m0(e,r){return new e({type:"number",check:"number_format",abort:!1,format:"safeint",...j(r)})}function p0(e,r){return new e({type:"number",check:"number_format",abort:!1,format:"float32",...j(r)})}function v0(e,r){return new e({type:"number",check:"number_format",abort:!1,format:"float64",...j(r)})}function g0(e,r){return new e({type:"number",check:"number_format",abort:!1,format:"int32",...j(r)})}function h0(e,r){return new e({type:"number",check:"number_format",abort:!1,format:"uint32",...j(r)})}function y0(e,r){return new e({type:"boolean",...j(r)})}function b0(e,r){return new e({type:"boolean",coerce:!0,...j(r)})}function $0(e,r){return new e({type:"bigint",...j(r)})}function _0(e,r){return new e({type:"bigint",coerce:!0,...j(r)})}function w0(e,r){return new e({type:"bigint",check:"bigint_format",abort:!1,format:"int64",...j(r)})}function S0(e,r){return new e({type:"bigint",check:"bigint_format",abort:!1,format:"uint64",...j(r)})}function I0(e,r){return new e({type:"symbol",...j(r)})}function k0(e,r){return new e({type:"undefined",...j(r)})}function O0(e,r){return new e({type:"null",...j(r)})}function N0(e){return new e({type:"any"})}function A0(e){return new e({type:"unknown"})}function P0(e,r){return new e({type:"never",...j(r)})}function x0(e,r){return new e({type:"void",...j(r)})}function E0(e,r){return new e({type:"date",...j(r)})}function D0(e,r){return new e({type:"date",coerce:!0,...j(r)})}function T0(e,r){return new e({type:"nan",...j(r)})}function jr(e,r){return new Os({check:"less_than",...j(r),value:e,inclusive:!1})}function lr(e,r){return new Os({check:"less_than",...j(r),value:e,inclusive:!0})}function zr(e,r){return new Ns({check:"greater_than",...j(r),value:e,inclusive:!1})}function dr(e,r){return new Ns({check:"greater_than",...j(r),value:e,inclusive:!0})}function Au(e){return zr(0,e)}function Pu(e){return jr(0,e)}function xu(e){return lr(0,e)}function Eu(e){return dr(0,e)}function Ot(e,r){return new vf({check:"multiple_of",...j(r),value:e})}function Nt(e,r){return new yf({check:"max_size",...j(r),maximum:e})}function Cr(e,r){return new bf({check:"min_size",...j(r),minimum:e})}function bn(e,r){return new $f({check:"size_equals",...j(r),size:e})}function $n(e,r){return new _f({check:"max_length",...j(r),maximum:e})}function nt(e,r){return new wf({check:"min_length",...j(r),minimum:e})}function _n(e,r){return new Sf({check:"length_equals",...j(r),length:e})}function di(e,r){return new If({check:"string_format",format:"regex",...j(r),pattern:e})}function fi(e){return new kf({check:"string_format",format:"lowercase",...j(e)})}function mi(e){return new Of({check:"string_format",format:"uppercase",...j(e)})}function pi(e,r){return new Nf({check:"string_format",format:"includes",...j(r),includes:e})}function vi(e,r){return new Af({check:"string_format",format:"starts_with",...j(r),prefix:e})}function gi(e,r){return new Pf({check:"string_format",format:"ends_with",...j(r),suffix:e})}function Du(e,r,n){return new xf({check:"property",property:e,schema:r,...j(n)})}function hi(e,r){return new Ef({check:"properties",shape:e,...j(r)})}function yi(e,r){return new Df({check:"mime_type",mime:e,...j(r)})}function kr(e){return new Tf({check:"overwrite",tx:e})}function bi(e){return kr(r=>r.normalize(e))}function $i(){return kr(e=>e.trim())}function _i(){return kr(e=>e.toLowerCase())}function wi(){return kr(e=>e.toUpperCase())}function Si(){return kr(e=>gd(e))}function j0(e,r,n){return new e({type:"array",element:r,...j(n)})}function pM(e,r,n){return new e({type:"union",options:r,...j(n)})}function vM(e,r,n){return new e({type:"union",options:r,inclusive:!1,...j(n)})}function gM(e,r,n,i){return new e({type:"union",options:n,discriminator:r,...j(i)})}function hM(e,r,n){return new e({type:"intersection",left:r,right:n})}function yM(e,r,n,i){let t=n instanceof B,o=t?i:n,a=t?n:null;return new e({type:"tuple",items:r,rest:a,...j(o)})}function bM(e,r,n,i){return new e({type:"record",keyType:r,valueType:n,...j(i)})}function $M(e,r,n,i){return new e({type:"map",keyType:r,valueType:n,...j(i)})}function _M(e,r,n){return new e({type:"set",valueType:r,...j(n)})}function wM(e,r,n){let i=Array.isArray(r)?Object.fromEntries(r.map(t=>[t,t])):r;return new e({type:"enum",entries:i,...j(n)})}function SM(e,r,n){return new e({type:"enum",entries:r,...j(n)})}function IM(e,r,n){return new e({type:"literal",values:Array.isArray(r)?r:[r],...j(n)})}function z0(e,r){return new e({type:"file",...j(r)})}function kM(e,r){return new e({type:"transform",transform:r})}function OM(e,r){return new e({type:"optional",innerType:r})}function NM(e,r){return new e({type:"nullable",innerType:r})}function AM(e,r,n){return new e({type:"default",innerType:r,get defaultValue(){return typeof n=="function"?n():go(n)}})}function PM(e,r,n){return new e({type:"nonoptional",innerType:r,...j(n)})}function xM(e,r){return new e({type:"success",innerType:r})}function EM(e,r,n){return new e({type:"catch",innerType:r,catchValue:typeof n=="function"?n:wd(n)})}function DM(e,r,n){return new e({type:"pipe",in:r,out:n})}function TM(e,r){return new e({type:"readonly",innerType:r})}function jM(e,r,n){return new e({type:"template_literal",parts:r,...j(n)})}function zM(e,r){return new e({type:"lazy",getter:r})}function CM(e,r){return new e({type:"promise",innerType:r})}function C0(e,r,n){let i=j(n);return i.abort??(i.abort=!0),new e({type:"custom",check:"custom",fn:r,...i})}function q0(e,r,n){return new e({type:"custom",check:"custom",fn:r,...j(n)})}function R0(e,r){let n=g6(i=>(i.addIssue=t=>{if(typeof t=="string")i.issues.push(ri(t,i.value,n._zod.def));else{let o=t;o.fatal&&(o.continue=!1),o.code??(o.code="custom"),"input"in o||(o.input=i.value),o.inst??(o.inst=n),o.continue??(o.continue=!n._zod.def.abort),i.issues.push(ri(o))}},e(i.value,i)),r);return n}function g6(e,r){let n=new le({check:"custom",...j(r)});return n._zod.check=e,n}function U0(e){let r=new le({check:"describe"});return r._zod.onattach=[n=>{let i=Me.get(n)??{};Me.add(n,{...i,description:e})}],r._zod.check=()=>{},r}function F0(e){let r=new le({check:"meta"});return r._zod.onattach=[n=>{let i=Me.get(n)??{};Me.add(n,{...i,...e})}],r._zod.check=()=>{},r}function M0(e,r){let n=j(r),i=n.truthy??["true","1","yes","on","y","enabled"],t=n.falsy??["false","0","no","off","n","disabled"];n.case!=="sensitive"&&(i=i.map(m=>typeof m=="string"?m.toLowerCase():m),t=t.map(m=>typeof m=="string"?m.toLowerCase():m));let o=new Set(i),a=new Set(t),s=e.Codec??Uo,u=e.Boolean??qo,c=e.String??vn,l=new c({type:"string",error:n.error}),d=new u({type:"boolean",error:n.error}),f=new s({type:"pipe",in:l,out:d,transform:((m,v)=>{let h=m;return n.case!=="sensitive"&&(h=h.toLowerCase()),o.has(h)?!0:a.has(h)?!1:(v.issues.push({code:"invalid_value",expected:"stringbool",values:[...o,...a],input:v.value,inst:f,continue:!1}),{})}),reverseTransform:((m,v)=>m===!0?i[0]||"true":t[0]||"false"),error:n.error});return f._zod.bag.truthy=i,f._zod.bag.falsy=t,f._zod.bag.case=n.case??"insensitive",f}function wn(e,r,n,i={}){let t=j(i),o={check:"string_format",type:"string",format:r,fn:typeof n=="function"?n:s=>n.test(s),...t};return n instanceof RegExp&&(o.pattern=n),new e(o)}function Xo(e,...r){for(let n of r)for(let i of Reflect.ownKeys(n))Object.prototype.propertyIsEnumerable.call(n,i)&&Fe(e,i,n[i]);return e}function At(e){let r=e?.target??"draft-2020-12";return r==="draft-4"&&(r="draft-04"),r==="draft-7"&&(r="draft-07"),{processors:e.processors??{},metadataRegistry:e?.metadata??Me,target:r,unrepresentable:e?.unrepresentable??"throw",override:e?.override??(()=>{}),io:e?.io??"output",counter:0,seen:new Map,sharedDefsExtractedFor:void 0,sharedEmitDoneFor:void 0,cycles:e?.cycles??"ref",reused:e?.reused??"inline",intersections:[],deferred:[],external:e?.external??void 0}}function Ee(e,r,n,i,t){let o=typeof r.unrepresentable=="function"?r.unrepresentable({zodSchema:e,path:i.path,message:t}):r.unrepresentable;if(o==="any")return!1;if(o===void 0||o==="throw")throw new Error(t);return Object.assign(n,o),!0}function ie(e,r,n={path:[],schemaPath:[]}){var i;let t=e._zod.def,o=r.seen.get(e);if(o)return o.count++,n.schemaPath.includes(e)&&(o.cycle=n.path),o.schema;let a={schema:{},count:1,cycle:void 0,path:n.path};r.seen.set(e,a),r.sharedDefsExtractedFor=void 0,r.sharedEmitDoneFor=void 0;let s=e._zod.toJSONSchema?.();if(s)a.schema=s;else{let l={...n,schemaPath:[...n.schemaPath,e],path:n.path};if(e._zod.processJSONSchema)e._zod.processJSONSchema(r,a.schema,l);else{let f=a.schema,m=r.processors[t.type];if(!m)throw new Error(`[toJSONSchema]: Non-representable type encountered: ${t.type}`);m(e,r,f,l)}let d=e._zod.parent;d&&(a.ref||(a.ref=d),ie(d,r,l),r.seen.get(d).isParent=!0)}let u=r.metadataRegistry.get(e);return u&&Xo(a.schema,u),r.io==="input"&&rr(e)&&(delete a.schema.examples,delete a.schema.default),r.io==="input"&&"_prefault"in a.schema&&((i=a.schema).default??(i.default=a.schema._prefault)),delete a.schema._prefault,r.seen.get(e).schema}function h6(e){return e.replace(/~/g,"~0").replace(/\//g,"~1")}function Pt(e,r){let n=e.seen.get(r);if(!n)throw new Error("Unprocessed schema. This is a bug in Zod.");if(e.external&&e.sharedDefsExtractedFor===e.external)return;let i=new Map;for(let a of e.seen.entries()){let s=e.metadataRegistry.get(a[0])?.id;if(s){let u=i.get(s);if(u&&u!==a[0])throw new Error(`Duplicate schema id "${s}" detected during JSON Schema conversion. Two different schemas cannot share the same id when converted together.`);i.set(s,a[0])}}let t=a=>{let s=e.target==="draft-2020-12"?"$defs":"definitions";if(e.external){let d=e.external.registry.get(a[0])?.id,f=e.external.uri??(v=>v);if(d)return{ref:f(d)};let m=a[1].defId??a[1].schema.id??`schema${e.counter++}`;return a[1].defId=m,{defId:m,ref:`${f("__shared")}#/${s}/${h6(m)}`}}let u="#",c=`${u}/${s}/`;if(a[1]===n&&!a[1].schema.id)return{ref:u};let l=a[1].schema.id??`__schema${e.counter++}`;return{defId:l,ref:c+h6(l)}},o=a=>{if(a[1].schema.$ref)return;let s=a[1],{ref:u,defId:c}=t(a);s.def={...s.schema},c&&(s.defId=c);let l=s.schema;for(let d in l)delete l[d];l.$ref=u};if(e.cycles==="throw")for(let a of e.seen.entries()){let s=a[1];if(s.cycle)throw new Error(`Cycle detected: #/${s.cycle?.join("/")}/<root>

Set the \`cycles\` parameter to \`"ref"\` to resolve cyclical schemas with defs.`)}for(let a of e.seen.entries()){let s=a[1];if(r===a[0]){o(a);continue}if(e.external){let c=e.external.registry.get(a[0])?.id;if(r!==a[0]&&c){o(a);continue}}if(e.metadataRegistry.get(a[0])?.id){o(a);continue}if(s.cycle){o(a);continue}s.count>1&&e.reused==="ref"&&o(a)}e.external&&(e.sharedDefsExtractedFor=e.external)}function $6(e){let r=e.anyOf;if(!Array.isArray(r)||r.length===0||e.type!==void 0)return;let n=[];for(let i of r){if(!i||typeof i!="object")return;$6(i);let t=Object.keys(i);if(t.length!==1||t[0]!=="type")return;let o=i.type;for(let a of Array.isArray(o)?o:[o]){if(typeof a!="string")return;n.includes(a)||n.push(a)}}delete e.anyOf,e.type=n.length===1?n[0]:n}var _6=new Set(["type","properties","required","additionalProperties"]),y6=["oneOf","anyOf"];function b6(e){let r=e.additionalProperties;return r===void 0||r===!1||typeof r!="object"||r===null?null:Object.keys(r).length?r:null}function L0(e){let r=[];for(let o of e){if(typeof o!="object"||o.type!=="object")return null;for(let a in o)if(!_6.has(a))return null;r.push(o)}let n={},i=new Set;for(let o of r){for(let a in o.properties){if(Object.prototype.hasOwnProperty.call(n,a))continue;let s=[];for(let c of r){let l=c.properties?.[a]??b6(c);l!=null&&(s.some(d=>JSON.stringify(d)===JSON.stringify(l))||s.push(l))}let u=s.length===1?s[0]:L0(s)??{allOf:s};Fe(n,a,u)}for(let a of o.required??[])i.add(a)}let t={type:"object",properties:n};if(i.size&&(t.required=[...i]),r.every(o=>o.additionalProperties===!1))t.additionalProperties=!1;else{let o=[];for(let a of r){let s=b6(a);s&&!o.some(u=>JSON.stringify(u)===JSON.stringify(s))&&o.push(s)}o.length===1?t.additionalProperties=o[0]:o.length>1&&(t.additionalProperties={allOf:o})}return t}function qM(e){let r=e.allOf;if(!Array.isArray(r)||r.length<2)return;for(let t of _6)if(t in e)return;let n=r.filter(t=>y6.some(o=>Array.isArray(t[o]))),i=null;if(!n.length)i=L0(r);else{let t=n[0],o=y6.find(u=>Array.isArray(t[u]));if(Object.keys(t).length!==1)return;let a=r.filter(u=>u!==t),s=t[o].map(u=>L0([...a,u]));if(s.some(u=>!u))return;i={[o]:s}}i&&(delete e.allOf,Xo(e,i))}function xt(e,r){let n=e.seen.get(r);if(!n)throw new Error("Unprocessed schema. This is a bug in Zod.");let i=s=>{let u=e.seen.get(s);if(u.ref===null)return;let c=u.def??u.schema,l={...c},d=u.ref;if(u.ref=null,d){i(d);let m=e.seen.get(d),v=m.schema;if(v.$ref&&(e.target==="draft-07"||e.target==="draft-04"||e.target==="openapi-3.0")?(c.allOf=c.allOf??[],c.allOf.push(v)):Xo(c,v),Xo(c,l),s._zod.parent===d)for(let y in c)y==="$ref"||y==="allOf"||y in l||delete c[y];if(v.$ref&&m.def)for(let y in c)y==="$ref"||y==="allOf"||y in m.def&&JSON.stringify(c[y])===JSON.stringify(m.def[y])&&delete c[y]}let f=s._zod.parent;if(f&&f!==d){i(f);let m=e.seen.get(f);if(m?.schema.$ref&&(c.$ref=m.schema.$ref,m.def))for(let v in c)v==="$ref"||v==="allOf"||v in m.def&&JSON.stringify(c[v])===JSON.stringify(m.def[v])&&delete c[v]}e.override({zodSchema:s,jsonSchema:c,path:u.path??[]})};if(!e.external||e.sharedEmitDoneFor!==e.external){for(let s of[...e.seen.entries()].reverse())i(s[0]);if(e.target!=="openapi-3.0")for(let s of e.seen.entries())$6(s[1].def??s[1].schema);for(let s of e.deferred)s();if(e.intersections.length){let s=new Map;for(let u of e.seen.values())for(let c of[u.schema,u.def]){let l=c?.allOf;if(!Array.isArray(l))continue;let d=s.get(l);d?d.push(c):s.set(l,[c])}for(let u of e.intersections)for(let c of s.get(u)??[])qM(c)}}let t={};if(e.target==="draft-2020-12"?t.$schema="https://json-schema.org/draft/2020-12/schema":e.target==="draft-07"?t.$schema="http://json-schema.org/draft-07/schema#":e.target==="draft-04"?t.$schema="http://json-schema.org/draft-04/schema#":e.target,e.external?.uri){let s=e.external.registry.get(r)?.id;if(!s)throw new Error("Schema is missing an `id` property");t.$id=e.external.uri(s)}Xo(t,n.defId?n.schema:n.def??n.schema);let o=e.metadataRegistry.get(r)?.id;o!==void 0&&t.id===o&&delete t.id;let a=e.external?.defs??{};if(!e.external||e.sharedEmitDoneFor!==e.external)for(let s of e.seen.entries()){let u=s[1];u.def&&u.defId&&(u.def.id===u.defId&&delete u.def.id,Fe(a,u.defId,u.def))}e.external&&(e.sharedEmitDoneFor=e.external),e.external||Object.keys(a).length>0&&(e.target==="draft-2020-12"?t.$defs=a:t.definitions=a);try{let s=JSON.parse(JSON.stringify(t));return Object.defineProperty(s,"~standard",{value:{...r["~standard"],jsonSchema:{input:Ii(r,"input",e.processors),output:Ii(r,"output",e.processors)}},enumerable:!1,writable:!1}),s}catch{throw new Error("Error converting schema to JSON.")}}function rr(e,r){let n=r??{seen:new Set};if(n.seen.has(e))return!1;n.seen.add(e);let i=e._zod.def;if(i.type==="transform")return!0;if(i.type==="array")return rr(i.element,n);if(i.type==="set")return rr(i.valueType,n);if(i.type==="lazy")return rr(i.getter(),n);if(i.type==="promise"||i.type==="optional"||i.type==="nonoptional"||i.type==="nullable"||i.type==="readonly"||i.type==="default"||i.type==="prefault"||i.type==="catch")return rr(i.innerType,n);if(i.type==="intersection")return rr(i.left,n)||rr(i.right,n);if(i.type==="record"||i.type==="map")return rr(i.keyType,n)||rr(i.valueType,n);if(i.type==="pipe")return e._zod.traits.has("$ZodCodec")?!0:rr(i.in,n)||rr(i.out,n);if(i.type==="object"){for(let t in i.shape)if(rr(i.shape[t],n))return!0;return!1}if(i.type==="union"){for(let t of i.options)if(rr(t,n))return!0;return!1}if(i.type==="tuple"){for(let t of i.items)if(rr(t,n))return!0;return!!(i.rest&&rr(i.rest,n))}return!1}var Z0=(e,r={})=>n=>{let i=At({...n,processors:r});return ie(e,i),Pt(i,e),xt(i,e)},Ii=(e,r,n={})=>i=>{let{libraryOptions:t,target:o}=i??{},a=At({...t??{},target:o,io:r,processors:n});return ie(e,a),Pt(a,e),xt(a,e)};var ki=(e,r,n)=>{(e[r]===void 0||n>e[r])&&(e[r]=n)},Oi=(e,r,n)=>{(e[r]===void 0||n<e[r])&&(e[r]=n)},w6=(e,r)=>{ki(e,"minimum",r),Oi(e,"maximum",r)},O6=(e,r)=>{e.multipleOf??(e.multipleOf=[]),e.multipleOf.includes(r)||e.multipleOf.push(r)},N6=(e,r)=>{e.patterns??(e.patterns=new Set),e.patterns.add(r)},A6=(e,r)=>{e.mime=e.mime?e.mime.filter(n=>r.includes(n)):[...r]},P6=(e,r)=>{e.format=r,r.includes("int")&&(e.isInt=!0)},S6=(e,r)=>ki(e,"minimum",r.minimum),I6=(e,r)=>Oi(e,"maximum",r.maximum),k6=e=>(r,n)=>{P6(r,n.format);let[i,t]=e[n.format];ki(r,"minimum",i),Oi(r,"maximum",t)},RM={greater_than:(e,r)=>ki(e,r.inclusive?"minimum":"exclusiveMinimum",r.value),less_than:(e,r)=>Oi(e,r.inclusive?"maximum":"exclusiveMaximum",r.value),multiple_of:(e,r)=>O6(e,r.value),number_format:k6(yo),bigint_format:k6(bo),min_length:S6,max_length:I6,length_equals:(e,r)=>w6(e,r.length),min_size:S6,max_size:I6,size_equals:(e,r)=>w6(e,r.size),string_format:(e,r)=>{P6(e,r.format),r.pattern&&N6(e,r.pattern),(r.format==="base64"||r.format==="base64url")&&(e.contentEncoding=r.format),(r.local||r.precision===-1)&&(e.laxFormat=!0)},mime_type:(e,r)=>A6(e,r.mime)};function De(e){let r={},n=e._zod.def,i=e._zod.traits.has("$ZodCheck")?[e,...n.checks??[]]:n.checks??[];for(let o of i)RM[o._zod.def.check]?.(r,o._zod.def);let t=e._zod.bag;t.minimum!==void 0&&ki(r,"minimum",t.minimum),t.exclusiveMinimum!==void 0&&ki(r,"exclusiveMinimum",t.exclusiveMinimum),t.maximum!==void 0&&Oi(r,"maximum",t.maximum),t.exclusiveMaximum!==void 0&&Oi(r,"exclusiveMaximum",t.exclusiveMaximum),t.multipleOf!==void 0&&O6(r,t.multipleOf),t.format!==void 0&&(r.format??(r.format=t.format),t.format.includes("int")&&(r.isInt=!0)),t.mime&&A6(r,t.mime);for(let o of t.patterns??[])N6(r,o);return r}var UM={guid:"uuid",url:"uri",datetime:"date-time",json_string:"json-string",regex:""},FM=new Map([[qs,Hd],[Co,Jd]]),x6=e=>FM.get(e)??e,W0=(e,r,n,i)=>{let t=n;t.type="string";let{minimum:o,maximum:a,format:s,patterns:u,contentEncoding:c,laxFormat:l}=De(e);if(typeof o=="number"&&(t.minLength=o),typeof a=="number"&&(t.maxLength=a),s&&(t.format=UM[s]??s,t.format===""&&delete t.format,(s==="time"||l)&&delete t.format),c&&(t.contentEncoding=c),u&&u.size>0){let d=[...u].map(x6);d.length===1?t.pattern=d[0].source:d.length>1&&(t.allOf=[...d.map(f=>({...r.target==="draft-07"||r.target==="draft-04"||r.target==="openapi-3.0"?{type:"string"}:{},pattern:f.source}))])}},G0=(e,r,n,i)=>{let t=n,{minimum:o,maximum:a,multipleOf:s,exclusiveMaximum:u,exclusiveMinimum:c,isInt:l}=De(e);t.type=l?"integer":"number";let d=typeof c=="number"&&c>=(o??Number.NEGATIVE_INFINITY),f=typeof u=="number"&&u<=(a??Number.POSITIVE_INFINITY),m=r.target==="draft-04"||r.target==="openapi-3.0";if(d?m?(t.minimum=c,t.exclusiveMinimum=!0):t.exclusiveMinimum=c:typeof o=="number"&&(t.minimum=o),f?m?(t.maximum=u,t.exclusiveMaximum=!0):t.exclusiveMaximum=u:typeof a=="number"&&(t.maximum=a),s){let v=new Set;for(let b of s)Number.isFinite(b)&&b!==0?v.add(Math.abs(b)):Ee(e,r,t,i,`A multipleOf divisor of ${b} cannot be represented in JSON Schema`);let[h,...y]=v;h!==void 0&&(t.multipleOf=h),y.length&&(t.allOf=[...t.allOf??[],...y.map(b=>({multipleOf:b}))])}},H0=(e,r,n,i)=>{n.type="boolean"},J0=(e,r,n,i)=>{Ee(e,r,n,i,"BigInt cannot be represented in JSON Schema")},K0=(e,r,n,i)=>{Ee(e,r,n,i,"Symbols cannot be represented in JSON Schema")},X0=(e,r,n,i)=>{r.target==="openapi-3.0"?(n.type="string",n.nullable=!0,n.enum=[null]):n.type="null"},Q0=(e,r,n,i)=>{Ee(e,r,n,i,"Undefined cannot be represented in JSON Schema")},Y0=(e,r,n,i)=>{Ee(e,r,n,i,"Void cannot be represented in JSON Schema")},ep=(e,r,n,i)=>{n.not={}},rp=(e,r,n,i)=>{},tp=(e,r,n,i)=>{},np=(e,r,n,i)=>{Ee(e,r,n,i,"Date cannot be represented in JSON Schema")},ip=(e,r,n,i)=>{let t=e._zod.def,o=Kn(t.entries);if(o.length===0){n.not={};return}o.every(a=>typeof a=="number")&&(n.type="number"),o.every(a=>typeof a=="string")&&(n.type="string"),n.enum=o},op=(e,r,n,i)=>{let t=e._zod.def;if(t.values.length===0){n.not={};return}let o=[];for(let a of t.values)if(a===void 0){if(Ee(e,r,n,i,"Literal `undefined` cannot be represented in JSON Schema"))return}else if(typeof a=="bigint"){if(Ee(e,r,n,i,"BigInt literals cannot be represented in JSON Schema"))return;o.push(Number(a))}else o.push(a);if(o.length!==0)if(o.length===1){let a=o[0];n.type=a===null?"null":typeof a,r.target==="draft-04"||r.target==="openapi-3.0"?n.enum=[a]:n.const=a}else o.every(a=>typeof a=="number")&&(n.type="number"),o.every(a=>typeof a=="string")&&(n.type="string"),o.every(a=>typeof a=="boolean")&&(n.type="boolean"),o.every(a=>a===null)&&(n.type="null"),n.enum=o},ap=(e,r,n,i)=>{Ee(e,r,n,i,"NaN cannot be represented in JSON Schema")},sp=(e,r,n,i)=>{let t=n,o=e._zod.pattern;if(!o)throw new Error("Pattern not found in template literal");t.type="string",t.pattern=o.source},up=(e,r,n,i)=>{let t=n;t.type="string",t.format="binary",t.contentEncoding="binary";let{minimum:o,maximum:a,mime:s}=De(e);o!==void 0&&(t.minLength=o),a!==void 0&&(t.maxLength=a),s&&(s.length===0?t.not={}:s.length===1?t.contentMediaType=s[0]:t.anyOf=s.map(u=>({contentMediaType:u})))},cp=(e,r,n,i)=>{n.type="boolean"},lp=(e,r,n,i)=>{Ee(e,r,n,i,"Custom types cannot be represented in JSON Schema")},dp=(e,r,n,i)=>{Ee(e,r,n,i,"Function types cannot be represented in JSON Schema")},fp=(e,r,n,i)=>{Ee(e,r,n,i,"Transforms cannot be represented in JSON Schema")},mp=(e,r,n,i)=>{Ee(e,r,n,i,"Map cannot be represented in JSON Schema")},pp=(e,r,n,i)=>{Ee(e,r,n,i,"Set cannot be represented in JSON Schema")},vp=(e,r,n,i)=>{let t=n,o=e._zod.def,{minimum:a,maximum:s}=De(e);typeof a=="number"&&(t.minItems=a),typeof s=="number"&&(t.maxItems=s),t.type="array",t.items=ie(o.element,r,{...i,path:[...i.path,"items"]})};function Qo(e){let r=e._zod.def;return r.type==="pipe"&&r.in._zod.traits.has("$ZodTransform")?Qo(r.out):r.type==="catch"?Qo(r.innerType):e._zod.optin}var gp=(e,r,n,i)=>{let t=n,o=e._zod.def,a=o.shape;if(Object.getOwnPropertySymbols(a).length&&Ee(e,r,t,i,"Symbol keys cannot be represented in JSON Schema"))return;t.type="object",t.properties={};for(let c in a)Fe(t.properties,c,ie(a[c],r,{...i,path:[...i.path,"properties",c]}));let u=[];for(let c of Object.keys(a)){let l=o.shape[c];(r.io==="input"?Qo(l)===void 0:l._zod.optout===void 0)&&u.push(c)}u.length>0&&(t.required=u),o.catchall?._zod.def.type==="never"?t.additionalProperties=!1:o.catchall?o.catchall&&(t.additionalProperties=ie(o.catchall,r,{...i,path:[...i.path,"additionalProperties"]})):r.io==="output"&&(t.additionalProperties=!1)},ju=(e,r,n,i)=>{let t=e._zod.def,o=t.inclusive===!1,a=t.options.map((s,u)=>ie(s,r,{...i,path:[...i.path,o?"oneOf":"anyOf",u]}));o?n.oneOf=a:n.anyOf=a},hp=(e,r,n,i)=>{let t=e._zod.def,o=ie(t.left,r,{...i,path:[...i.path,"allOf",0]}),a=ie(t.right,r,{...i,path:[...i.path,"allOf",1]}),s=c=>"allOf"in c&&Object.keys(c).length===1,u=[...s(o)?o.allOf:[o],...s(a)?a.allOf:[a]];n.allOf=u,r.intersections.push(u)},yp=(e,r,n,i)=>{let t=n,o=e._zod.def;t.type="array";let a=r.target==="draft-2020-12"?"prefixItems":"items",s=r.target==="draft-2020-12"||r.target==="openapi-3.0"?"items":"additionalItems",u=o.items.map((h,y)=>ie(h,r,{...i,path:[...i.path,a,y]})),c=o.rest?ie(o.rest,r,{...i,path:[...i.path,s,...r.target==="openapi-3.0"?[o.items.length]:[]]}):null,l=o.items.length;for(;l>0;){let h=o.items[l-1];if(!(r.io==="input"?Qo(h)!==void 0:h._zod.optout==="optional"))break;l--}let d=o.items.length,f=!o.rest;r.target==="draft-2020-12"?(t.prefixItems=u,f?t.items=!1:c&&(t.items=c),l>0&&(t.minItems=l),f&&(t.maxItems=d)):r.target==="openapi-3.0"?(t.items={anyOf:u},c&&t.items.anyOf.push(c),l>0&&(t.minItems=l),f&&(t.maxItems=d)):(t.items=u,f?t.additionalItems=!1:c&&(t.additionalItems=c),l>0&&(t.minItems=l),f&&(t.maxItems=d));let{minimum:m,maximum:v}=De(e);typeof m=="number"&&(t.minItems=m),typeof v=="number"&&(t.maxItems=v)};function V0(e,r,n){if(r.$ref){if(n.has(r))return r;n.add(r);let v=e.get(r)?.def;if(!v)return r;let h=V0(e,v,n);return h===v?r:h}for(let v of["anyOf","oneOf"]){let h=r[v];if(!Array.isArray(h))continue;let y=h.map(b=>V0(e,b,n));y.some((b,_)=>b!==h[_])&&(r={...r,[v]:y})}let i=Array.isArray(r.type)?r.type:[r.type],t=!i.includes("string")&&i.some(v=>v==="number"||v==="integer"),o=r.enum??(r.const!==void 0?[r.const]:void 0);if(!t&&!o?.some(v=>typeof v=="number"))return r;let{minimum:a,maximum:s,exclusiveMinimum:u,exclusiveMaximum:c,multipleOf:l,format:d,id:f,...m}=r;return m.enum?m.enum=m.enum.map(v=>typeof v=="number"?String(v):v):typeof m.const=="number"&&(m.const=String(m.const)),t&&(m.type="string",o||(m.pattern=(i.includes("number")?tt:Po).source)),m}var B0=new WeakMap;function MM(e){let r=new Map;for(let i of e.seen.values())i.def&&!r.has(i.schema)&&r.set(i.schema,i);let n=new Map;for(let i of B0.get(e)??[]){let t=e.seen.get(i),o=(t?.def??t?.schema)?.propertyNames;if(!o||o===!0||n.has(o))continue;let a=V0(r,o,new Set);a!==o&&n.set(o,a)}if(n.size)for(let i of e.seen.values())for(let t of[i.schema,i.def]){let o=t&&n.get(t.propertyNames);o&&(t.propertyNames=o)}}var bp=(e,r,n,i)=>{let t=n,o=e._zod.def;t.type="object";let a=o.keyType,s=De(a).patterns;if(o.mode==="loose"&&s&&s.size>0){let l=ie(o.valueType,r,{...i,path:[...i.path,"patternProperties","*"]});t.patternProperties={};for(let d of s)Fe(t.patternProperties,x6(d).source,l)}else{if(r.target==="draft-07"||r.target==="draft-2020-12"){t.propertyNames=ie(o.keyType,r,{...i,path:[...i.path,"propertyNames"]});let l=B0.get(r);l||(l=[],B0.set(r,l),r.deferred.push(()=>MM(r))),l.push(e)}t.additionalProperties=ie(o.valueType,r,{...i,path:[...i.path,"additionalProperties"]})}let u=a._zod.values,c=r.io==="input"&&Qo(o.valueType)!==void 0;if(u&&!o.partial&&!c){let l=[...u].filter(d=>typeof d=="string"||typeof d=="number");l.length>0&&(t.required=l.map(String))}},$p=(e,r,n,i)=>{let t=e._zod.def,o=ie(t.innerType,r,i),a=r.seen.get(e);r.target==="openapi-3.0"?(a.ref=t.innerType,n.nullable=!0):n.anyOf=[o,{type:"null"}]},_p=(e,r,n,i)=>{let t=e._zod.def;ie(t.innerType,r,i);let o=r.seen.get(e);o.ref=t.innerType},wp=Symbol();function E6(e,r,n,i,t){let o=!1,a=JSON.stringify(e,(s,u)=>typeof u!="bigint"?u:(o=!0,null));return o?(Ee(r,n,i,t,"BigInt defaults cannot be represented in JSON Schema"),wp):JSON.parse(a)}var Sp=(e,r,n,i)=>{let t=e._zod.def;ie(t.innerType,r,i);let o=r.seen.get(e);o.ref=t.innerType;let a=E6(t.defaultValue,e,r,n,i);a!==wp&&(n.default=a)},Ip=(e,r,n,i)=>{let t=e._zod.def;ie(t.innerType,r,i);let o=r.seen.get(e);if(o.ref=t.innerType,r.io!=="input")return;let a=E6(t.defaultValue,e,r,n,i);a!==wp&&(n._prefault=a)},kp=(e,r,n,i)=>{let t=e._zod.def;ie(t.innerType,r,i);let o=r.seen.get(e);o.ref=t.innerType;let a;try{a=t.catchValue(void 0)}catch{Ee(e,r,n,i,"Dynamic catch values are not supported in JSON Schema");return}n.default=a},Op=(e,r,n,i)=>{let t=e._zod.def,o=t.in._zod.traits.has("$ZodTransform"),a=r.io==="input"?o?t.out:t.in:t.out;ie(a,r,i);let s=r.seen.get(e);s.ref=a},Np=(e,r,n,i)=>{let t=e._zod.def;ie(t.innerType,r,i);let o=r.seen.get(e);o.ref=t.innerType,n.readOnly=!0},Ap=(e,r,n,i)=>{let t=e._zod.def;ie(t.innerType,r,i);let o=r.seen.get(e);o.ref=t.innerType},zu=(e,r,n,i)=>{let t=e._zod.def;ie(t.innerType,r,i);let o=r.seen.get(e);o.ref=t.innerType},Pp=(e,r,n,i)=>{let t=e._zod.innerType;ie(t,r,i);let o=r.seen.get(e);o.ref=t},Tu={string:W0,number:G0,boolean:H0,bigint:J0,symbol:K0,null:X0,undefined:Q0,void:Y0,never:ep,any:rp,unknown:tp,date:np,enum:ip,literal:op,nan:ap,template_literal:sp,file:up,success:cp,custom:lp,function:dp,transform:fp,map:mp,set:pp,array:vp,object:gp,union:ju,intersection:hp,tuple:yp,record:bp,nullable:$p,nonoptional:_p,default:Sp,prefault:Ip,catch:kp,pipe:Op,readonly:Np,promise:Ap,optional:zu,lazy:Pp};function Cu(e,r){if("_idmap"in e){let i=e,t=At({...r,processors:Tu}),o={};for(let u of i._idmap.entries()){let[c,l]=u;ie(l,t)}let a={},s={registry:i,uri:r?.uri,defs:o};t.external=s;for(let u of i._idmap.entries()){let[c,l]=u;Pt(t,l),Fe(a,c,xt(t,l))}if(Object.keys(o).length>0){let u=t.target==="draft-2020-12"?"$defs":"definitions";a.__shared={[u]:o}}return{schemas:a}}let n=At({...r,processors:Tu});return ie(e,n),Pt(n,e),xt(n,e)}var qu=class{get metadataRegistry(){return this.ctx.metadataRegistry}get target(){return this.ctx.target}get unrepresentable(){return this.ctx.unrepresentable}get override(){return this.ctx.override}get io(){return this.ctx.io}get counter(){return this.ctx.counter}set counter(r){this.ctx.counter=r}get seen(){return this.ctx.seen}constructor(r){let n=r?.target??"draft-2020-12";n==="draft-4"&&(n="draft-04"),n==="draft-7"&&(n="draft-07"),this.ctx=At({processors:Tu,target:n,...r?.metadata&&{metadata:r.metadata},...r?.unrepresentable&&{unrepresentable:r.unrepresentable},...r?.override&&{override:r.override},...r?.io&&{io:r.io}})}process(r,n={path:[],schemaPath:[]}){return ie(r,this.ctx,n)}emit(r,n){n&&(n.cycles&&(this.ctx.cycles=n.cycles),n.reused&&(this.ctx.reused=n.reused),n.external&&(this.ctx.external=n.external)),this.ctx.sharedDefsExtractedFor=void 0,this.ctx.sharedEmitDoneFor=void 0,Pt(this.ctx,r);let i=xt(this.ctx,r),{"~standard":t,...o}=i;return o}};var D6={};var ji={};Xr(ji,{ZodAny:()=>Xp,ZodArray:()=>rv,ZodBase64:()=>tc,ZodBase64URL:()=>nc,ZodBigInt:()=>Di,ZodBigIntFormat:()=>ac,ZodBoolean:()=>Ei,ZodCIDRv4:()=>ec,ZodCIDRv6:()=>rc,ZodCUID:()=>Gu,ZodCUID2:()=>Hu,ZodCatch:()=>wv,ZodCodec:()=>ua,ZodCreditCard:()=>Zp,ZodCustom:()=>ca,ZodCustomStringFormat:()=>On,ZodDate:()=>ta,ZodDefault:()=>gv,ZodDiscriminatedUnion:()=>nv,ZodE164:()=>ic,ZodEmail:()=>Zu,ZodEmoji:()=>Bu,ZodEnum:()=>Ai,ZodExactOptional:()=>lc,ZodFile:()=>fv,ZodFunction:()=>Dv,ZodGUID:()=>Vu,ZodIBAN:()=>Vp,ZodIPv4:()=>Qu,ZodIPv6:()=>Yu,ZodISODate:()=>Dt,ZodISODateTime:()=>Et,ZodISODuration:()=>jt,ZodISOTime:()=>Tt,ZodInstanceOf:()=>zv,ZodIntersection:()=>iv,ZodJWT:()=>oc,ZodKSUID:()=>Xu,ZodLazy:()=>Pv,ZodLiteral:()=>dv,ZodMAC:()=>Lp,ZodMap:()=>cv,ZodNaN:()=>Iv,ZodNanoID:()=>Wu,ZodNever:()=>Yp,ZodNonOptional:()=>dc,ZodNull:()=>Jp,ZodNullable:()=>vv,ZodNumber:()=>xi,ZodNumberFormat:()=>Nn,ZodObject:()=>ia,ZodOptional:()=>aa,ZodPipe:()=>sa,ZodPrefault:()=>yv,ZodPreprocess:()=>kv,ZodPromise:()=>Ev,ZodReadonly:()=>Ov,ZodRecord:()=>Ni,ZodSet:()=>lv,ZodString:()=>Pi,ZodStringFormat:()=>ue,ZodSuccess:()=>_v,ZodSymbol:()=>Gp,ZodTemplateLiteral:()=>Av,ZodTransform:()=>mv,ZodTuple:()=>av,ZodType:()=>G,ZodULID:()=>Ju,ZodURL:()=>ra,ZodUUID:()=>qr,ZodUndefined:()=>Hp,ZodUnion:()=>oa,ZodUnknown:()=>Qp,ZodVoid:()=>ev,ZodXID:()=>Ku,ZodXor:()=>tv,_ZodString:()=>Lu,_default:()=>hv,_function:()=>V4,any:()=>_4,array:()=>na,base64:()=>r4,base64url:()=>t4,bigint:()=>g4,boolean:()=>Wp,catch:()=>Sv,check:()=>B4,cidrv4:()=>Y6,cidrv6:()=>e4,codec:()=>F4,creditCard:()=>i4,cuid:()=>B6,cuid2:()=>W6,currencyCode:()=>l4,custom:()=>W4,date:()=>S4,describe:()=>G4,discriminatedUnion:()=>P4,e164:()=>n4,email:()=>z6,emoji:()=>Z6,enum:()=>uc,exactOptional:()=>pv,file:()=>C4,float32:()=>f4,float64:()=>m4,function:()=>V4,guid:()=>C6,hash:()=>d4,hex:()=>c4,hostname:()=>u4,httpUrl:()=>L6,iban:()=>o4,instanceof:()=>J4,int:()=>Fu,int32:()=>p4,int64:()=>h4,intersection:()=>ov,invertCodec:()=>M4,ipv4:()=>K6,ipv6:()=>Q6,json:()=>X4,jwt:()=>a4,keyof:()=>I4,ksuid:()=>J6,lazy:()=>xv,literal:()=>z4,looseObject:()=>N4,looseRecord:()=>E4,mac:()=>X6,map:()=>D4,meta:()=>H4,nan:()=>U4,nanoid:()=>V6,nativeEnum:()=>j4,never:()=>sc,nonoptional:()=>$v,null:()=>Kp,nullable:()=>ea,nullish:()=>q4,number:()=>Bp,object:()=>k4,optional:()=>In,partialRecord:()=>x4,pipe:()=>Mu,prefault:()=>bv,preprocess:()=>Q4,promise:()=>Z4,readonly:()=>Nv,record:()=>uv,refine:()=>Tv,set:()=>T4,strictObject:()=>O4,string:()=>Yo,stringFormat:()=>s4,stringbool:()=>K4,success:()=>R4,superRefine:()=>jv,symbol:()=>b4,templateLiteral:()=>L4,transform:()=>cc,tuple:()=>sv,uint32:()=>v4,uint64:()=>y4,ulid:()=>G6,undefined:()=>$4,union:()=>Ti,unknown:()=>Sn,url:()=>M6,uuid:()=>q6,uuidv4:()=>R6,uuidv6:()=>U6,uuidv7:()=>F6,void:()=>w4,xid:()=>H6,xor:()=>A4});var Ru={};Xr(Ru,{endsWith:()=>gi,gt:()=>zr,gte:()=>dr,includes:()=>pi,length:()=>_n,lowercase:()=>fi,lt:()=>jr,lte:()=>lr,maxLength:()=>$n,maxSize:()=>Nt,mime:()=>yi,minLength:()=>nt,minSize:()=>Cr,multipleOf:()=>Ot,negative:()=>Pu,nonnegative:()=>Eu,nonpositive:()=>xu,normalize:()=>bi,overwrite:()=>kr,positive:()=>Au,properties:()=>hi,property:()=>Du,regex:()=>di,size:()=>bn,slugify:()=>Si,startsWith:()=>vi,toLowerCase:()=>_i,toUpperCase:()=>wi,trim:()=>$i,uppercase:()=>mi});var T6=new WeakSet([Object.prototype,Error.prototype]);function Uu(e,r,n){Object.defineProperty(e,r,{configurable:!0,enumerable:!1,get(){let i=n(this);return Object.defineProperty(this,r,{value:i,configurable:!0,writable:!0}),i},set(i){Object.defineProperty(this,r,{value:i,configurable:!0,writable:!0})}})}var j6=(e,r)=>{Ad.init(e,r),e.name="ZodError";let n=Object.getPrototypeOf(e);T6.has(n)||(T6.add(n),Uu(n,"format",i=>t=>ko(i,t)),Uu(n,"flatten",i=>t=>Io(i,t)),Uu(n,"addIssue",i=>t=>{i.issues.push(t),i.message=JSON.stringify(i.issues,Xn,2)}),Uu(n,"addIssues",i=>t=>{i.issues.push(...t),i.message=JSON.stringify(i.issues,Xn,2)}),Object.defineProperty(n,"isEmpty",{configurable:!0,enumerable:!1,get(){return this.issues.length===0}}))},ZM=S("ZodError",j6),ur=S("ZodError",j6,void 0,{Parent:Error});var xp=ti(ur),Ep=ni(ur),Dp=ii(ur),Tp=oi(ur),jp=ps(ur),zp=vs(ur),Cp=gs(ur),qp=hs(ur),Rp=ys(ur),Up=bs(ur),Fp=$s(ur),Mp=_s(ur);function BM(){Ce.localeError||ke(Ys())}function kn(){Ce.memoizer||ke({memoizer:Zo()})}var G=S("ZodType",(e,r)=>(BM(),B.init(e,r),e.def=r,e.type=r.type,e),{check(...e){let r=this.def;return this.clone(A.mergeDefs(r,{checks:[...r.checks??[],...e.map(n=>typeof n=="function"?{_zod:{check:n,def:{check:"custom"},onattach:[]}}:n)]}),{parent:!0})},with(...e){return this.check(...e)},clone(e,r){return te(this,e,r)},brand(){return this},register(e,r){return e.add(this,r),this},refine(e,r){return this.check(Tv(e,r))},superRefine(e,r){return this.check(jv(e,r))},overwrite(e){return this.check(kr(e))},optional(){return In(this)},exactOptional(){return pv(this)},nullable(){return ea(this)},nullish(){return In(ea(this))},nonoptional(e){return $v(this,e)},array(){return na(this)},or(e){return Ti([this,e])},and(e){return ov(this,e)},transform(e){return Mu(this,cc(e))},default(e){return hv(this,e)},prefault(e){return bv(this,e)},catch(e){return Sv(this,e)},pipe(e){return Mu(this,e)},readonly(){return Nv(this)},describe(e){let r=this.clone();return Me.add(r,{description:e}),r},meta(...e){if(e.length===0)return Me.get(this);let r=this.clone();return Me.add(r,e[0]),r},isOptional(){return this.safeParse(void 0).success},isNullable(){return this.safeParse(null).success},apply(e,...r){return r.length===0?e(this):e(this,...r)},get"~standard"(){return A.hide(this,"~standard",{...Ds(this),jsonSchema:{input:Ii(this,"input"),output:Ii(this,"output")}})},set"~standard"(e){A.own(this,"~standard",e)},parse:function e(r,n){return xp(this,r,n,{callee:e})},parseAsync:async function e(r,n){return await Ep(this,r,n,{callee:e})},safeParse(e,r){return Dp(this,e,r)},async safeParseAsync(e,r){return Tp(this,e,r)},get spa(){return this?.safeParseAsync},set spa(e){A.own(this,"spa",e)},validate(e,r){return Oo(this,e,r)},validateAsync(e,r){return No(this,e,r)},encode:function e(r,n){return jp(this,r,n,{callee:e})},decode:function e(r,n){return zp(this,r,n,{callee:e})},encodeAsync:async function e(r,n){return await Cp(this,r,n,{callee:e})},decodeAsync:async function e(r,n){return await qp(this,r,n,{callee:e})},safeEncode(e,r){return Rp(this,e,r)},safeDecode(e,r){return Up(this,e,r)},async safeEncodeAsync(e,r){return Fp(this,e,r)},async safeDecodeAsync(e,r){return Mp(this,e,r)},toJSONSchema(e){return Z0(this,{})(e)},get description(){return Me.get(this)?.description},get _def(){return this._zod.def}}),Lu=S("_ZodString",(e,r)=>{vn.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>W0(e,n,i,t)},A.derived({format:e=>De(e).format??null,minLength:e=>De(e).minimum??null,maxLength:e=>De(e).maximum??null},{regex(...e){return this.check(di(...e))},includes(...e){return this.check(pi(...e))},startsWith(...e){return this.check(vi(...e))},endsWith(...e){return this.check(gi(...e))},min(...e){return this.check(nt(...e))},max(...e){return this.check($n(...e))},length(...e){return this.check(_n(...e))},nonempty(...e){return this.check(nt(1,...e))},lowercase(e){return this.check(fi(e))},uppercase(e){return this.check(mi(e))},trim(){return this.check($i())},normalize(...e){return this.check(bi(...e))},toLowerCase(){return this.check(_i())},toUpperCase(){return this.check(wi())},slugify(){return this.check(Si())}})),Pi=S("ZodString",(e,r)=>{vn.init(e,r),Lu.init(e,r)},{email(e){return this.check(su(Zu,e))},url(e){return this.check(Wo(ra,e))},jwt(e){return this.check(Nu(oc,e))},emoji(e){return this.check(mu(Bu,e))},guid(e){return this.check(uu(Vu,e))},uuid(e){return this.check(cu(qr,e))},uuidv4(e){return this.check(lu(qr,e))},uuidv6(e){return this.check(du(qr,e))},uuidv7(e){return this.check(fu(qr,e))},nanoid(e){return this.check(pu(Wu,e))},cuid(e){return this.check(vu(Gu,e))},cuid2(e){return this.check(gu(Hu,e))},ulid(e){return this.check(hu(Ju,e))},base64(e){return this.check(Iu(tc,e))},base64url(e){return this.check(ku(nc,e))},xid(e){return this.check(yu(Ku,e))},ksuid(e){return this.check(bu(Xu,e))},ipv4(e){return this.check($u(Qu,e))},ipv6(e){return this.check(_u(Yu,e))},cidrv4(e){return this.check(wu(ec,e))},cidrv6(e){return this.check(Su(rc,e))},e164(e){return this.check(Ou(ic,e))},datetime(e){return this.check(Go(Et,e))},date(e){return this.check(Ho(Dt,e))},time(e){return this.check(Jo(Tt,e))},duration(e){return this.check(Ko(jt,e))}});function Yo(e){return o0(Pi,e)}var ue=S("ZodStringFormat",(e,r)=>{ne.init(e,r),Lu.init(e,r)}),Et=S("ZodISODateTime",(e,r)=>{Jf.init(e,r),ue.init(e,r)}),Dt=S("ZodISODate",(e,r)=>{Kf.init(e,r),ue.init(e,r)}),Tt=S("ZodISOTime",(e,r)=>{Xf.init(e,r),ue.init(e,r)}),jt=S("ZodISODuration",(e,r)=>{Qf.init(e,r),ue.init(e,r)}),Zu=S("ZodEmail",(e,r)=>{Rf.init(e,r),ue.init(e,r)});function z6(e){return su(Zu,e)}var Vu=S("ZodGUID",(e,r)=>{Cf.init(e,r),ue.init(e,r)});function C6(e){return uu(Vu,e)}var qr=S("ZodUUID",(e,r)=>{qf.init(e,r),ue.init(e,r)});function q6(e){return cu(qr,e)}function R6(e){return lu(qr,e)}function U6(e){return du(qr,e)}function F6(e){return fu(qr,e)}var ra=S("ZodURL",(e,r)=>{Mf.init(e,r),ue.init(e,r)});function M6(e){return Wo(ra,e)}function L6(e){return Wo(ra,{protocol:Ao,hostname:Xd,...A.normalizeParams(e)})}var Bu=S("ZodEmoji",(e,r)=>{Lf.init(e,r),ue.init(e,r)});function Z6(e){return mu(Bu,e)}var Wu=S("ZodNanoID",(e,r)=>{Zf.init(e,r),ue.init(e,r)});function V6(e){return pu(Wu,e)}var Gu=S("ZodCUID",(e,r)=>{Vf.init(e,r),ue.init(e,r)});function B6(e){return vu(Gu,e)}var Hu=S("ZodCUID2",(e,r)=>{Bf.init(e,r),ue.init(e,r)});function W6(e){return gu(Hu,e)}var Ju=S("ZodULID",(e,r)=>{Wf.init(e,r),ue.init(e,r)});function G6(e){return hu(Ju,e)}var Ku=S("ZodXID",(e,r)=>{Gf.init(e,r),ue.init(e,r)});function H6(e){return yu(Ku,e)}var Xu=S("ZodKSUID",(e,r)=>{Hf.init(e,r),ue.init(e,r)});function J6(e){return bu(Xu,e)}var Qu=S("ZodIPv4",(e,r)=>{Yf.init(e,r),ue.init(e,r)});function K6(e){return $u(Qu,e)}var Lp=S("ZodMAC",(e,r)=>{rm.init(e,r),ue.init(e,r)});function X6(e){return s0(Lp,e)}var Yu=S("ZodIPv6",(e,r)=>{em.init(e,r),ue.init(e,r)});function Q6(e){return _u(Yu,e)}var ec=S("ZodCIDRv4",(e,r)=>{tm.init(e,r),ue.init(e,r)});function Y6(e){return wu(ec,e)}var rc=S("ZodCIDRv6",(e,r)=>{nm.init(e,r),ue.init(e,r)});function e4(e){return Su(rc,e)}var tc=S("ZodBase64",(e,r)=>{im.init(e,r),ue.init(e,r)});function r4(e){return Iu(tc,e)}var nc=S("ZodBase64URL",(e,r)=>{om.init(e,r),ue.init(e,r)});function t4(e){return ku(nc,e)}var ic=S("ZodE164",(e,r)=>{am.init(e,r),ue.init(e,r)});function n4(e){return Ou(ic,e)}var Zp=S("ZodCreditCard",(e,r)=>{sm.init(e,r),ue.init(e,r)});function i4(e){return u0(Zp,e)}var Vp=S("ZodIBAN",(e,r)=>{um.init(e,r),ue.init(e,r)});function o4(e){return c0(Vp,e)}var oc=S("ZodJWT",(e,r)=>{cm.init(e,r),ue.init(e,r)});function a4(e){return Nu(oc,e)}var On=S("ZodCustomStringFormat",(e,r)=>{lm.init(e,r),ue.init(e,r)});function s4(e,r,n={}){return wn(On,e,r,n)}function u4(e){return wn(On,"hostname",Kd,e)}function c4(e){return wn(On,"hex",ff,e)}function l4(e){return wn(On,"currency_code",Yd,e)}function d4(e,r){let n=r?.enc??"hex",i=`${e}_${n}`,t=gr[i];if(!t)throw new Error(`Unrecognized hash format: ${i}`);return wn(On,i,t,r)}var xi=S("ZodNumber",(e,r)=>{Ls.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>G0(e,n,i,t),e.isFinite=!0},A.derived({minValue:e=>{let{minimum:r,exclusiveMinimum:n}=De(e);return Math.max(r??Number.NEGATIVE_INFINITY,n??Number.NEGATIVE_INFINITY)},maxValue:e=>{let{maximum:r,exclusiveMaximum:n}=De(e);return Math.min(r??Number.POSITIVE_INFINITY,n??Number.POSITIVE_INFINITY)},isInt:e=>{let{isInt:r,multipleOf:n}=De(e);return!!r||!!n?.some(Number.isSafeInteger)},format:e=>De(e).format??null},{gt(e,r){return this.check(zr(e,r))},gte(e,r){return this.check(dr(e,r))},min(e,r){return this.check(dr(e,r))},lt(e,r){return this.check(jr(e,r))},lte(e,r){return this.check(lr(e,r))},max(e,r){return this.check(lr(e,r))},int(e){return this.check(Fu(e))},safe(e){return this.check(Fu(e))},positive(e){return this.check(zr(0,e))},nonnegative(e){return this.check(dr(0,e))},negative(e){return this.check(jr(0,e))},nonpositive(e){return this.check(lr(0,e))},multipleOf(e,r){return this.check(Ot(e,r))},step(e,r){return this.check(Ot(e,r))},finite(){return this}}));function Bp(e){return d0(xi,e)}var Nn=S("ZodNumberFormat",(e,r)=>{dm.init(e,r),xi.init(e,r)});function Fu(e){return m0(Nn,e)}function f4(e){return p0(Nn,e)}function m4(e){return v0(Nn,e)}function p4(e){return g0(Nn,e)}function v4(e){return h0(Nn,e)}var Ei=S("ZodBoolean",(e,r)=>{qo.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>H0(e,n,i,t)});function Wp(e){return y0(Ei,e)}var Di=S("ZodBigInt",(e,r)=>{Zs.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>J0(e,n,i,t)},A.derived({minValue:e=>De(e).minimum??null,maxValue:e=>De(e).maximum??null,format:e=>De(e).format??null},{gte(e,r){return this.check(dr(e,r))},min(e,r){return this.check(dr(e,r))},gt(e,r){return this.check(zr(e,r))},lt(e,r){return this.check(jr(e,r))},lte(e,r){return this.check(lr(e,r))},max(e,r){return this.check(lr(e,r))},positive(e){return this.check(zr(BigInt(0),e))},negative(e){return this.check(jr(BigInt(0),e))},nonpositive(e){return this.check(lr(BigInt(0),e))},nonnegative(e){return this.check(dr(BigInt(0),e))},multipleOf(e,r){return this.check(Ot(e,r))}}));function g4(e){return $0(Di,e)}var ac=S("ZodBigIntFormat",(e,r)=>{fm.init(e,r),Di.init(e,r)});function h4(e){return w0(ac,e)}function y4(e){return S0(ac,e)}var Gp=S("ZodSymbol",(e,r)=>{mm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>K0(e,n,i,t)});function b4(e){return I0(Gp,e)}var Hp=S("ZodUndefined",(e,r)=>{pm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>Q0(e,n,i,t)});function $4(e){return k0(Hp,e)}var Jp=S("ZodNull",(e,r)=>{vm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>X0(e,n,i,t)});function Kp(e){return O0(Jp,e)}var Xp=S("ZodAny",(e,r)=>{gm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>rp(e,n,i,t)});function _4(){return N0(Xp)}var Qp=S("ZodUnknown",(e,r)=>{hm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>tp(e,n,i,t)});function Sn(){return A0(Qp)}var Yp=S("ZodNever",(e,r)=>{ym.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>ep(e,n,i,t)});function sc(e){return P0(Yp,e)}var ev=S("ZodVoid",(e,r)=>{bm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>Y0(e,n,i,t)});function w4(e){return x0(ev,e)}var ta=S("ZodDate",(e,r)=>{$m.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>np(e,n,i,t),e.min=(n,i)=>e.check(dr(n,i)),e.max=(n,i)=>e.check(lr(n,i))},A.derived({minDate:e=>{let{minimum:r}=De(e);return r?new Date(r):null},maxDate:e=>{let{maximum:r}=De(e);return r?new Date(r):null}},{}));function S4(e){return E0(ta,e)}var rv=S("ZodArray",(e,r)=>{kn(),wm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>vp(e,n,i,t),e.element=r.element},{min(e,r){return this.check(nt(e,r))},nonempty(e){return this.check(nt(1,e))},max(e,r){return this.check($n(e,r))},length(e,r){return this.check(_n(e,r))},unwrap(){return this.element}});function na(e,r){return j0(rv,e,r)}function I4(e){let r=e._zod.def.shape;return uc(Object.keys(r))}var ia=S("ZodObject",(e,r)=>{kn(),Sm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>gp(e,n,i,t),A.installLazyProp(e,"shape",n=>n._zod.def.shape,!1)},{keyof(){return uc(Object.keys(this._zod.def.shape))},catchall(e){return this.clone(A.mergeDefs(this._zod.def,{catchall:e}))},passthrough(){return this.clone(A.mergeDefs(this._zod.def,{catchall:Sn()}))},loose(){return this.clone(A.mergeDefs(this._zod.def,{catchall:Sn()}))},strict(){return this.clone(A.mergeDefs(this._zod.def,{catchall:sc()}))},strip(){return this.clone(A.mergeDefs(this._zod.def,{catchall:void 0}))},extend(e){return A.extend(this,e)},safeExtend(e){return A.safeExtend(this,e)},merge(e){return A.merge(this,e)},pick(e){return A.pick(this,e)},omit(e){return A.omit(this,e)},partial(...e){return A.partial(aa,this,e[0])},exactPartial(...e){return A.partial(lc,this,e[0],"exactPartial")},required(...e){return A.required(dc,this,e[0])}});function k4(e,r){let n={type:"object",shape:e??{},...A.normalizeParams(r)};return new ia(n)}function O4(e,r){return new ia({type:"object",shape:e,catchall:sc(),...A.normalizeParams(r)})}function N4(e,r){return new ia({type:"object",shape:e,catchall:Sn(),...A.normalizeParams(r)})}var oa=S("ZodUnion",(e,r)=>{Ro.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>ju(e,n,i,t),e.options=r.options});function Ti(e,r){return new oa({type:"union",options:e,...A.normalizeParams(r)})}var tv=S("ZodXor",(e,r)=>{oa.init(e,r),Im.init(e,r),e._zod.processJSONSchema=(n,i,t)=>ju(e,n,i,t),e.options=r.options});function A4(e,r){return new tv({type:"union",options:e,inclusive:!1,...A.normalizeParams(r)})}var nv=S("ZodDiscriminatedUnion",(e,r)=>{oa.init(e,r),Om.init(e,r)});function P4(e,r,n){return new nv({type:"union",options:r,discriminator:e,...A.normalizeParams(n)})}var iv=S("ZodIntersection",(e,r)=>{Nm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>hp(e,n,i,t)});function ov(e,r){return new iv({type:"intersection",left:e,right:r})}var av=S("ZodTuple",(e,r)=>{kn(),Vs.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>yp(e,n,i,t)},{rest(e){return this.clone({...this._zod.def,rest:e})},partial(){let e=this._zod.def;if(e.checks?.length)throw new Error(".partial() cannot be used on tuple schemas containing refinements");return this.clone({...e,items:e.items.map(r=>new aa({type:"optional",innerType:r}))})}});function sv(e,r,n){let i=r instanceof B,t=i?n:r,o=i?r:null;return new av({type:"tuple",items:e,rest:o,...A.normalizeParams(t)})}var Ni=S("ZodRecord",(e,r)=>{kn(),Am.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>bp(e,n,i,t),e.keyType=r.keyType,e.valueType=r.valueType});function uv(e,r,n){return!r||!r._zod?new Ni({type:"record",keyType:Yo(),valueType:e,...A.normalizeParams(r)}):new Ni({type:"record",keyType:e,valueType:r,...A.normalizeParams(n)})}function x4(e,r,n){return new Ni({type:"record",keyType:e,valueType:r,...A.normalizeParams(n),partial:!0})}function E4(e,r,n){return new Ni({type:"record",keyType:e,valueType:r,mode:"loose",...A.normalizeParams(n)})}var cv=S("ZodMap",(e,r)=>{kn(),Pm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>mp(e,n,i,t),e.keyType=r.keyType,e.valueType=r.valueType,e.min=(...n)=>e.check(Cr(...n)),e.nonempty=n=>e.check(Cr(1,n)),e.max=(...n)=>e.check(Nt(...n)),e.size=(...n)=>e.check(bn(...n))});function D4(e,r,n){return new cv({type:"map",keyType:e,valueType:r,...A.normalizeParams(n)})}var lv=S("ZodSet",(e,r)=>{kn(),xm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>pp(e,n,i,t),e.min=(...n)=>e.check(Cr(...n)),e.nonempty=n=>e.check(Cr(1,n)),e.max=(...n)=>e.check(Nt(...n)),e.size=(...n)=>e.check(bn(...n))});function T4(e,r){return new lv({type:"set",valueType:e,...A.normalizeParams(r)})}var Ai=S("ZodEnum",(e,r)=>{Em.init(e,r),G.init(e,r),e._zod.processJSONSchema=(i,t,o)=>ip(e,i,t,o),e.enum=r.entries,e.options=[...e._zod.values];let n=new Set(Object.keys(r.entries));e.extract=(i,t)=>{let o={};for(let a of i)if(n.has(a))o[a]=r.entries[a];else throw new Error(`Key ${a} not found in enum`);return new Ai({...r,checks:[],...A.normalizeParams(t),entries:o})},e.exclude=(i,t)=>{let o={...r.entries};for(let a of i)if(n.has(a))delete o[a];else throw new Error(`Key ${a} not found in enum`);return new Ai({...r,checks:[],...A.normalizeParams(t),entries:o})}});function uc(e,r){let n=Array.isArray(e)?Object.fromEntries(e.map(i=>[i,i])):e;return new Ai({type:"enum",entries:n,...A.normalizeParams(r)})}function j4(e,r){return new Ai({type:"enum",entries:e,...A.normalizeParams(r)})}var dv=S("ZodLiteral",(e,r)=>{Dm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>op(e,n,i,t),e.values=new Set(r.values),Object.defineProperty(e,"value",{get(){if(r.values.length>1)throw new Error("This schema contains multiple valid literal values. Use `.values` instead.");return r.values[0]}})});function z4(e,r){return new dv({type:"literal",values:Array.isArray(e)?e:[e],...A.normalizeParams(r)})}var fv=S("ZodFile",(e,r)=>{Tm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>up(e,n,i,t),e.min=(n,i)=>e.check(Cr(n,i)),e.max=(n,i)=>e.check(Nt(n,i)),e.mime=(n,i)=>e.check(yi(Array.isArray(n)?n:[n],i))});function C4(e){return z0(fv,e)}var mv=S("ZodTransform",(e,r)=>{kn(),jm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>fp(e,n,i,t),e._zod.parse=(n,i)=>{if(i.direction==="backward")throw new It(e.constructor.name);n.addIssue=o=>{if(typeof o=="string")n.issues.push(A.issue(o,n.value,r));else{let a=o;a.fatal&&(a.continue=!1),a.code??(a.code="custom"),"input"in a||(a.input=n.value),a.inst??(a.inst=e),n.issues.push(A.issue(a))}};let t=r.transform(n.value,n);return t instanceof Promise?t.then(o=>(n.value=o,n)):(n.value=t,n)}});function cc(e){return new mv({type:"transform",transform:e})}var aa=S("ZodOptional",(e,r)=>{Bs.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>zu(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function In(e){return new aa({type:"optional",innerType:e})}var lc=S("ZodExactOptional",(e,r)=>{zm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>zu(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function pv(e){return new lc({type:"optional",innerType:e})}var vv=S("ZodNullable",(e,r)=>{Cm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>$p(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function ea(e){return new vv({type:"nullable",innerType:e})}function q4(e){return In(ea(e))}var gv=S("ZodDefault",(e,r)=>{qm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>Sp(e,n,i,t),e.unwrap=()=>e._zod.def.innerType,e.removeDefault=e.unwrap});function hv(e,r){return new gv({type:"default",innerType:e,get defaultValue(){return typeof r=="function"?r():A.shallowClone(r)}})}var yv=S("ZodPrefault",(e,r)=>{Rm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>Ip(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function bv(e,r){return new yv({type:"prefault",innerType:e,get defaultValue(){return typeof r=="function"?r():A.shallowClone(r)}})}var dc=S("ZodNonOptional",(e,r)=>{Um.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>_p(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function $v(e,r){return new dc({type:"nonoptional",innerType:e,...A.normalizeParams(r)})}var _v=S("ZodSuccess",(e,r)=>{Fm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>cp(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function R4(e){return new _v({type:"success",innerType:e})}var wv=S("ZodCatch",(e,r)=>{Mm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>kp(e,n,i,t),e.unwrap=()=>e._zod.def.innerType,e.removeCatch=e.unwrap});function Sv(e,r){return new wv({type:"catch",innerType:e,catchValue:typeof r=="function"?r:A.constantCatch(r)})}var Iv=S("ZodNaN",(e,r)=>{Lm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>ap(e,n,i,t)});function U4(e){return T0(Iv,e)}var sa=S("ZodPipe",(e,r)=>{Ws.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>Op(e,n,i,t),e.in=r.in,e.out=r.out});function Mu(e,r){return new sa({type:"pipe",in:e,out:r})}var ua=S("ZodCodec",(e,r)=>{sa.init(e,r),Uo.init(e,r)});function F4(e,r,n){return new ua({type:"pipe",in:e,out:r,transform:n.decode,reverseTransform:n.encode})}function M4(e){let r=e._zod.def;return new ua({type:"pipe",in:r.out,out:r.in,transform:r.reverseTransform,reverseTransform:r.transform})}var kv=S("ZodPreprocess",(e,r)=>{sa.init(e,r),Zm.init(e,r)}),Ov=S("ZodReadonly",(e,r)=>{Vm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>Np(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function Nv(e){return new Ov({type:"readonly",innerType:e})}var Av=S("ZodTemplateLiteral",(e,r)=>{Bm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>sp(e,n,i,t)});function L4(e,r){return new Av({type:"template_literal",parts:e,...A.normalizeParams(r)})}var Pv=S("ZodLazy",(e,r)=>{Fo.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>Pp(e,n,i,t),e.unwrap=()=>e._zod.def.getter()});function xv(e){return new Pv({type:"lazy",getter:e})}var Ev=S("ZodPromise",(e,r)=>{Gm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>Ap(e,n,i,t),e.unwrap=()=>e._zod.def.innerType});function Z4(e){return new Ev({type:"promise",innerType:e})}var Dv=S("ZodFunction",(e,r)=>{Wm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>dp(e,n,i,t)});function V4(e){return new Dv({type:"function",input:Array.isArray(e?.input)?sv(e?.input):e?.input??na(Sn()),output:e?.output??Sn()})}var ca=S("ZodCustom",(e,r)=>{Hm.init(e,r),G.init(e,r),e._zod.processJSONSchema=(n,i,t)=>lp(e,n,i,t)});function B4(e){let r=new le({check:"custom"});return r._zod.check=e,r}function W4(e,r){return C0(ca,e??(()=>!0),r)}function Tv(e,r={}){return q0(ca,e,r)}function jv(e,r){return R0(e,r)}var G4=U0,H4=F0,zv=S("ZodInstanceOf",(e,r)=>{ca.init(e,r)},{properties(e,r){return this.check(hi(e,r))}});function J4(e,r={}){let n=new zv({type:"custom",check:"custom",fn:i=>i instanceof e,abort:!0,...A.normalizeParams(r)});return n._zod.bag.Class=e,n._zod.check=i=>{i.value instanceof e||i.issues.push({code:"invalid_type",expected:e.name,input:i.value,inst:n,path:[...n._zod.def.path??[]]})},n}var K4=(...e)=>M0({Codec:ua,Boolean:Ei,String:Pi},...e);function X4(e){let r=xv(()=>Ti([Yo(e),Bp(),Wp(),Kp(),na(r),uv(Yo(),r)]));return r}function Q4(e,r){return new kv({type:"pipe",in:cc(e),out:r})}var WM={invalid_type:"invalid_type",too_big:"too_big",too_small:"too_small",invalid_format:"invalid_format",not_multiple_of:"not_multiple_of",unrecognized_keys:"unrecognized_keys",invalid_union:"invalid_union",invalid_key:"invalid_key",invalid_element:"invalid_element",invalid_value:"invalid_value",custom:"custom"};function GM(e){ke({customError:e})}function HM(){return ke().customError}var Cv;Cv||(Cv={});var la={};Xr(la,{ZodISODate:()=>Dt,ZodISODateTime:()=>Et,ZodISODuration:()=>jt,ZodISOTime:()=>Tt,date:()=>KM,datetime:()=>JM,duration:()=>QM,time:()=>XM});function JM(e){return Go(Et,e)}function KM(e){return Ho(Dt,e)}function XM(e){return Jo(Tt,e)}function QM(e){return Ko(jt,e)}var C={...ji,...Ru,iso:la},YM=new Set(["$schema","$ref","$defs","definitions","$id","id","$comment","$anchor","$vocabulary","$dynamicRef","$dynamicAnchor","type","enum","const","anyOf","oneOf","allOf","not","properties","required","additionalProperties","patternProperties","propertyNames","minProperties","maxProperties","items","prefixItems","additionalItems","minItems","maxItems","uniqueItems","contains","minContains","maxContains","minLength","maxLength","pattern","format","minimum","maximum","exclusiveMinimum","exclusiveMaximum","multipleOf","description","default","contentEncoding","contentMediaType","contentSchema","unevaluatedItems","unevaluatedProperties","if","then","else","dependentSchemas","dependentRequired","nullable","readOnly"]);function eL(e,r){let n=e.$schema;return n==="https://json-schema.org/draft/2020-12/schema"?"draft-2020-12":n==="http://json-schema.org/draft-07/schema#"?"draft-7":n==="http://json-schema.org/draft-04/schema#"?"draft-4":r??"draft-2020-12"}function Y4(e,r){return e.map((n,i)=>i<r?n:n.optional())}function rL(e){return e.replace(/~1/g,"/").replace(/~0/g,"~")}function tL(e,r){if(!e.startsWith("#"))throw new Error("External $ref is not supported, only local refs (#/...) are allowed");let n=e.slice(1).split("/").filter(Boolean);if(n.length===0)return r.rootSchema;let i=r.version==="draft-2020-12"?"$defs":"definitions";if(n[0]===i){let t=n[1]===void 0?void 0:rL(n[1]);if(!t||!r.defs[t])throw new Error(`Reference not found: ${e}`);return r.defs[t]}throw new Error(`Reference not found: ${e}`)}function nL(e,r){return C.transform(i=>i).check(i=>{let t=i.value;if(typeof t!="object"||t===null||Array.isArray(t))return;let o=Object.getOwnPropertyNames(t);if(r.minProperties!==void 0&&o.length<r.minProperties&&i.issues.push({origin:"object",code:"too_small",minimum:r.minProperties,inclusive:!0,message:`Too small: expected object to have >=${r.minProperties} properties`,input:t,inst:e,continue:!0}),r.maxProperties!==void 0&&o.length>r.maxProperties&&i.issues.push({origin:"object",code:"too_big",maximum:r.maxProperties,inclusive:!0,message:`Too big: expected object to have <=${r.maxProperties} properties`,input:t,inst:e,continue:!0}),r.keySchema)for(let a of o){let s=r.keySchema.safeParse(a);s.success||i.issues.push({code:"invalid_key",origin:"record",issues:s.error.issues,input:a,path:[a],continue:!0})}}).pipe(e)}function qv(e,r){if(e===null)return"z";let n=typeof e;if(n!=="object"){if(n==="number"&&Number.isNaN(e))return null;let i=String(e);return`${n[0]}${i.length}:${i}`}if(r.has(e))return null;r.add(e);try{if(Array.isArray(e)){let o=[];for(let a of e){let s=qv(a,r);if(s===null)return null;o.push(s)}return`a${o.length}:[${o.join(",")}]`}let i=Object.keys(e).sort(),t=[];for(let o of i){let a=qv(e[o],r);if(a===null)return null;t.push(`${o.length}:${o}=${a}`)}return`o${t.length}:{${t.join(",")}}`}finally{r.delete(e)}}var iL=new Set(["items","prefixItems","additionalItems","additionalProperties","contains","propertyNames","not","if","then","else","allOf","anyOf","oneOf","unevaluatedItems","unevaluatedProperties","contentSchema"]),oL=new Set(["properties","patternProperties","dependentSchemas","dependencies","$defs","definitions"]);function da(e){return typeof e!="object"||e===null?!1:Array.isArray(e)?e.some(da):typeof e.$ref=="string"?!0:Object.entries(e).some(([r,n])=>iL.has(r)?da(n):!oL.has(r)||typeof n!="object"||n===null?!1:Object.values(n).some(da))}function e2(e){return e===1?"element":"elements"}function aL(e,r){return C.transform(i=>i).check(i=>{let t=i.value;if(Array.isArray(t)){if(r.uniqueItems===!0){let o=new Map;for(let a=0;a<t.length;a++){let s=qv(t[a],new Set);if(s===null)continue;let u=o.get(s);if(u===void 0){o.set(s,a);continue}i.issues.push({code:"custom",message:`Array items must be unique: element at index ${a} duplicates the one at index ${u}`,input:t,path:[a],continue:!0})}}if(r.containsSchema){let o=r.minContains??1,a=r.maxContains!==void 0?r.maxContains+1:Number.POSITIVE_INFINITY,s=0;for(let u of t)if(r.containsSchema.safeParse(u).success&&++s>=a)break;s<o&&i.issues.push({code:"custom",message:`Array must contain at least ${o} matching ${e2(o)}; found ${s}`,input:t,continue:!0}),r.maxContains!==void 0&&s>r.maxContains&&i.issues.push({code:"custom",message:`Array must contain at most ${r.maxContains} matching ${e2(r.maxContains)}`,input:t,continue:!0})}}}).pipe(e)}function r2(e,r){if(e!==!1)return e===void 0||e===!0?C.any():tr(e,r)}var sL=/^(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:\.\d+)?(?:Z|[+-](?:[01]\d|2[0-3]):[0-5]\d)$/;function t2(e,r){if(e.not!==void 0){if(typeof e.not=="object"&&Object.keys(e.not).length===0)return C.never();throw new Error("not is not supported in Zod (except { not: {} } for never)")}if(e.unevaluatedItems!==void 0)throw new Error("unevaluatedItems is not supported");if(e.unevaluatedProperties!==void 0)throw new Error("unevaluatedProperties is not supported");if(e.if!==void 0||e.then!==void 0||e.else!==void 0)throw new Error("Conditional schemas (if/then/else) are not supported");if(e.dependentSchemas!==void 0||e.dependentRequired!==void 0)throw new Error("dependentSchemas and dependentRequired are not supported");if(e.$ref){let t=e.$ref;if(r.refs.has(t))return r.refs.get(t);if(r.processing.has(t))return C.lazy(()=>{if(!r.refs.has(t))throw new Error(`Circular reference not resolved: ${t}`);return r.refs.get(t)});r.processing.add(t);let o=tL(t,r),a=tr(o,r);return r.refs.set(t,a),r.processing.delete(t),a}if(e.enum!==void 0){let t=e.enum;if(r.version==="openapi-3.0"&&e.nullable===!0&&t.length===1&&t[0]===null)return C.null();if(t.length===0)return C.never();if(t.length===1)return C.literal(t[0]);if(t.every(a=>typeof a=="string"))return C.enum(t);let o=t.map(a=>C.literal(a));return o.length<2?o[0]:C.union([o[0],o[1],...o.slice(2)])}if(e.const!==void 0)return C.literal(e.const);let n=e.type;if(Array.isArray(n)){let t=n.map(o=>{let a={...e,type:o};return t2(a,r)});return t.length===0?C.never():t.length===1?t[0]:C.union(t)}if(!n)return C.any();let i;switch(n){case"string":{let t=C.string();if(e.format){let o=e.format;o==="email"?t=t.check(C.email()):o==="uri"||o==="uri-reference"?t=t.check(C.url()):o==="uuid"||o==="guid"?t=t.check(C.uuid()):o==="date-time"?t=t.check(C.iso.datetime({offset:!0})):o==="date"?t=t.check(C.iso.date()):o==="time"?t=t.check(C.regex(sL)):o==="duration"?t=t.check(C.iso.duration()):o==="hostname"?t=t.check(C.hostname()):o==="ipv4"?t=t.check(C.ipv4()):o==="ipv6"?t=t.check(C.ipv6()):o==="mac"?t=t.check(C.mac()):o==="cidr"?t=t.check(C.cidrv4()):o==="cidr-v6"?t=t.check(C.cidrv6()):o==="base64"?t=t.check(C.base64()):o==="base64url"?t=t.check(C.base64url()):o==="e164"?t=t.check(C.e164()):o==="credit_card"?t=t.check(C.creditCard()):o==="iban"?t=t.check(C.iban()):o==="jwt"?t=t.check(C.jwt()):o==="emoji"?t=t.check(C.emoji()):o==="nanoid"?t=t.check(C.nanoid()):o==="cuid"?t=t.check(C.cuid()):o==="cuid2"?t=t.check(C.cuid2()):o==="ulid"?t=t.check(C.ulid()):o==="xid"?t=t.check(C.xid()):o==="ksuid"&&(t=t.check(C.ksuid()))}typeof e.minLength=="number"&&(t=t.min(e.minLength)),typeof e.maxLength=="number"&&(t=t.max(e.maxLength)),e.pattern&&(t=t.regex(new RegExp(e.pattern))),i=t;break}case"number":case"integer":{let t=n==="integer"?C.number().int():C.number();typeof e.minimum=="number"&&e.exclusiveMinimum!==!0&&(t=t.min(e.minimum)),typeof e.maximum=="number"&&e.exclusiveMaximum!==!0&&(t=t.max(e.maximum)),typeof e.exclusiveMinimum=="number"?t=t.gt(e.exclusiveMinimum):e.exclusiveMinimum===!0&&typeof e.minimum=="number"&&(t=t.gt(e.minimum)),typeof e.exclusiveMaximum=="number"?t=t.lt(e.exclusiveMaximum):e.exclusiveMaximum===!0&&typeof e.maximum=="number"&&(t=t.lt(e.maximum)),typeof e.multipleOf=="number"&&(t=t.multipleOf(e.multipleOf)),i=t;break}case"boolean":{i=C.boolean();break}case"null":{i=C.null();break}case"object":{let t={},o=e.properties||{},a=new Set(e.required||[]),s=typeof e.additionalProperties=="object"?tr(e.additionalProperties,r):void 0;for(let[d,f]of Object.entries(o)){let m=tr(f,r);Fe(t,d,a.has(d)?m:m.optional())}if(e.patternProperties){let d=e.patternProperties,f=Object.keys(d),m=[];for(let h of f){let y=tr(d[h],r),b=C.string().regex(new RegExp(h));m.push(C.looseRecord(b,y))}let v=[];if(Object.keys(t).length>0&&v.push(C.object(t).passthrough()),v.push(...m),v.length===0)i=C.object({}).passthrough();else if(v.length===1)i=v[0];else{let h=C.intersection(v[0],v[1]);for(let y=2;y<v.length;y++)h=C.intersection(h,v[y]);i=h}if(e.additionalProperties===!1){let h=Object.keys(t),y=f.map(_=>new RegExp(_)),b=i;i=i.check(_=>{if(!pr(_.value))return;let $=[];for(let N of Object.keys(_.value))h.includes(N)||y.some(w=>w.test(N))||$.push(N);$.length&&_.issues.push({code:"unrecognized_keys",keys:$,input:_.value,inst:b})})}}else{let d=C.object(t);e.additionalProperties===!1?i=d.strict():s?i=d.catchall(s):i=d.passthrough()}let u=e.propertyNames!==void 0&&e.propertyNames!==!0,c=typeof e.minProperties=="number"?e.minProperties:void 0,l=typeof e.maxProperties=="number"?e.maxProperties:void 0;if(u||c!==void 0||l!==void 0){let d;if(u){let f=typeof e.propertyNames=="object"&&e.propertyNames.type===void 0?{type:"string",...e.propertyNames}:e.propertyNames;d=tr(f,r)}i=nL(i,{keySchema:d,minProperties:c,maxProperties:l})}break}case"array":{let t=e.prefixItems,o=e.items;if(t&&Array.isArray(t)){let a=typeof e.minItems=="number"?e.minItems:0,s=t.map(d=>tr(d,r)),u=Y4(s,a),c=Array.isArray(o)?void 0:r2(o,r),l=C.tuple(u);i=c?l.rest(c):l,typeof e.minItems=="number"&&(i=i.check(C.minLength(e.minItems))),typeof e.maxItems=="number"&&(i=i.check(C.maxLength(e.maxItems)))}else if(Array.isArray(o)){let a=typeof e.minItems=="number"?e.minItems:0,s=o.map(d=>tr(d,r)),u=Y4(s,a),c=r2(e.additionalItems,r),l=C.tuple(u);i=c?l.rest(c):l,typeof e.minItems=="number"&&(i=i.check(C.minLength(e.minItems))),typeof e.maxItems=="number"&&(i=i.check(C.maxLength(e.maxItems)))}else if(o!==void 0){let a=tr(o,r),s=C.array(a);typeof e.minItems=="number"&&(s=s.min(e.minItems)),typeof e.maxItems=="number"&&(s=s.max(e.maxItems)),i=s}else i=C.array(C.any());(e.uniqueItems===!0||e.contains!==void 0)&&(i=aL(i,{uniqueItems:e.uniqueItems===!0,containsSchema:e.contains!==void 0?tr(e.contains,r):void 0,minContains:typeof e.minContains=="number"?e.minContains:void 0,maxContains:typeof e.maxContains=="number"?e.maxContains:void 0}));break}default:throw new Error(`Unsupported type: ${n}`)}return i}function tr(e,r){if(typeof e=="boolean")return e?C.any():C.never();let n=t2(e,r),i=e.type||e.enum!==void 0||e.const!==void 0;if(e.anyOf&&Array.isArray(e.anyOf)){let s=e.anyOf.map(c=>tr(c,r)),u=C.union(s);n=i?C.intersection(n,u):u}if(e.oneOf&&Array.isArray(e.oneOf)){let s=e.oneOf.map(c=>tr(c,r)),u=C.xor(s);n=i?C.intersection(n,u):u}if(e.allOf&&Array.isArray(e.allOf))if(e.allOf.length===0)n=i?n:C.any();else{let s=i?n:tr(e.allOf[0],r),u=i?0:1;for(let c=u;c<e.allOf.length;c++)s=C.intersection(s,tr(e.allOf[c],r));n=s}e.nullable===!0&&r.version==="openapi-3.0"&&(n=C.nullable(n)),e.readOnly===!0&&(n=C.readonly(n)),e.default!==void 0&&(n=n.default(e.default));let t={},o=["$id","id","$comment","$anchor","$vocabulary","$dynamicRef","$dynamicAnchor"];for(let s of o)s in e&&(t[s]=e[s]);let a=["contentEncoding","contentMediaType","contentSchema"];for(let s of a)s in e&&(t[s]=e[s]);if(e.type==="object"&&e.$ref===void 0){e.propertyNames!==void 0&&!da(e.propertyNames)&&(t.propertyNames=e.propertyNames);for(let s of["minProperties","maxProperties"])e[s]!==void 0&&(t[s]=e[s])}if(e.type==="array"&&e.$ref===void 0){e.contains!==void 0&&!da(e.contains)&&(t.contains=e.contains);for(let s of["uniqueItems","minContains","maxContains"])e[s]!==void 0&&(t[s]=e[s])}for(let s of Object.keys(e))YM.has(s)||Fe(t,s,e[s]);return Object.keys(t).length>0&&r.registry.add(n,t),e.description&&(n=n.describe(e.description)),n}function n2(e,r){if(typeof e=="boolean")return e?C.any():C.never();let n;try{n=JSON.parse(JSON.stringify(e))}catch{throw new Error("fromJSONSchema input is not valid JSON (possibly cyclic); use $defs/$ref for recursive schemas")}let i=eL(n,r?.defaultTarget),t=n.$defs||n.definitions||{},o={version:i,defs:t,refs:new Map,processing:new Set,rootSchema:n,registry:r?.registry??Me};return tr(n,o)}var i2=Symbol("z.visit/resolving");function fa(e,r){let n=typeof r=="function"?r:(a,s)=>{let u=r[a._zod.def.type];return u?u(a,s):a},i=new Map;function t(a){let s=i.get(a);if(s===i2)return new Fo({type:"lazy",getter:()=>i.get(a)});if(s!==void 0)return s;i.set(a,i2);let u=o(a),c=n(u,u!==a);return i.set(a,c),c}function o(a){let s=a._zod.def,u=s.type;switch(u){case"object":{let c=s.shape,l=Object.keys(c),d=!1,f={};for(let v of l){let h=t(c[v]);h!==c[v]&&(d=!0),f[v]=h}let m=s.catchall;return s.catchall&&(m=t(s.catchall),m!==s.catchall&&(d=!0)),d?te(a,{...s,shape:f,catchall:m}):a}case"array":{let c=t(s.element);return c===s.element?a:te(a,{...s,element:c})}case"tuple":{let c=s.items,l=!1,d=[];for(let m of c){let v=t(m);v!==m&&(l=!0),d.push(v)}let f=s.rest;return s.rest&&(f=t(s.rest),f!==s.rest&&(l=!0)),l?te(a,{...s,items:d,rest:f}):a}case"record":case"map":{let c=t(s.keyType),l=t(s.valueType);return c===s.keyType&&l===s.valueType?a:te(a,{...s,keyType:c,valueType:l})}case"set":{let c=t(s.valueType);return c===s.valueType?a:te(a,{...s,valueType:c})}case"union":{let c=s.options,l=!1,d=[];for(let f of c){let m=t(f);m!==f&&(l=!0),d.push(m)}return l?te(a,{...s,options:d}):a}case"intersection":{let c=t(s.left),l=t(s.right);return c===s.left&&l===s.right?a:te(a,{...s,left:c,right:l})}case"optional":case"nullable":case"default":case"prefault":case"catch":case"readonly":case"nonoptional":case"promise":case"success":{let c=t(s.innerType);return c===s.innerType?a:te(a,{...s,innerType:c})}case"pipe":{let c=t(s.in),l=t(s.out);return c===s.in&&l===s.out?a:te(a,{...s,in:c,out:l})}case"function":{let c=t(s.input),l=t(s.output);return c===s.input&&l===s.output?a:te(a,{...s,input:c,output:l})}case"lazy":{let c=s.getter,{_cachedInner:l,...d}=s;return te(a,{...d,getter:()=>t(c())})}case"template_literal":case"string":case"number":case"int":case"boolean":case"bigint":case"symbol":case"undefined":case"null":case"void":case"never":case"any":case"unknown":case"date":case"nan":case"enum":case"literal":case"file":case"transform":case"custom":return a;default:return a}}return t(e)}function o2(e){return fa(e,{object:r=>r.partial(),union:r=>{let n=r._zod.def;return n.discriminator===void 0?r:Ti(n.options)}})}function uL(e,r){if(!r?.length)return e;let n=e._zod.def;return te(e,Sr(n,{checks:[...n.checks??[],...r]}),{parent:!0})}function a2(e){return uL(e.out,e.checks)}function cL(e){return e.in._zod.traits.has("$ZodTransform")?a2(e):e.in}function s2(e){return fa(e,{pipe:r=>cL(r._zod.def),default:(r,n)=>n?In(r._zod.def.innerType):r,catch:(r,n)=>n?r._zod.def.innerType:r})}function u2(e){return fa(e,{pipe:r=>a2(r._zod.def),prefault:(r,n)=>n?r._zod.def.innerType:r})}var Rv={};Xr(Rv,{bigint:()=>mL,boolean:()=>fL,date:()=>pL,number:()=>dL,string:()=>lL});function lL(e){return a0(Pi,e)}function dL(e){return f0(xi,e)}function fL(e){return b0(Ei,e)}function mL(e){return _0(Di,e)}function pL(e){return D0(ta,e)}var fc=p.strictObject({on:p.iso.date().describe("When"),reason:p.string().describe("Why"),variants:p.array(p.string()).describe("Further entries, by slug"),methods:p.array(p.strictObject({slug:p.string(),number:p.int()})).describe("Method versions pinned besides"),closesOn:p.strictObject({before:p.iso.date(),after:p.iso.date()}).nullable().describe("The closing day that was planned, and the later one")}).describe("What an open edition took besides, with the reason");var c2=["braided","fused","hollowCore","twisted","monofilament"];var Uv=p.strictObject({materials:p.array(p.string().trim().min(1).max(60)).max(50).describe("Materials that it takes, as the catalogue spells them; empty for any"),constructions:p.array(p.enum(c2)).max(20).describe("Constructions that it takes; empty for any")}).describe("Which lines a division takes: those of one of its materials and one of its constructions");var ot=p.string().regex(/^-?\d+(\.\d+)?$/),l2=p.strictObject({digest:p.string().regex(/^[0-9a-f]{64}$/).describe("SHA-256 of the file as handed in"),over:p.enum(["extension","time"]).describe("What the force was recorded over"),samples:p.int().describe("Samples in the file"),figures:p.strictObject({peakForceN:ot.describe("Highest force [N]"),atPeak:ot.describe("Extension [mm] or time [s] at the highest force"),elongationPercent:ot.nullable().describe("Elongation at the highest force, without the toe [%]"),stiffnessNPerMm:ot.nullable().describe("Slope between 10 and 50 % of the highest force [N/mm]"),initialModulusMPa:ot.nullable().describe("Initial modulus [MPa]"),workToBreakJ:ot.nullable().describe("Work up to the highest force [J]"),slips:p.array(p.strictObject({at:ot,fromForceN:ot,toForceN:ot})).describe("Drops of more than 5 % before the highest force")}),points:p.array(p.tuple([p.number(),p.number()])).max(64).describe("Its course: extension [mm] or time [s], and force [N]; lowest and highest of each stretch")}).describe("Force over extension or time of one specimen");var zt=2,Fv=p.literal([1,zt]).describe("Version of this document format; since 2 methods state their series and quantities are named by them"),oe=p.string().regex(/^-?\d+(\.\d+)?$/).describe("A decimal number as text, rounded half-even to the places its method or scheme states"),M=p.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/).describe("Readable identifier; never changes"),Mv=p.string().describe("What was measured, as a code: the quantity, its method and series, e.g. retention/fg-knot/knotted. A fixed name in format 1"),d2=p.string().optional().describe('The same in words, e.g. "Knot retention, FG"; not told by format 1'),at=p.iso.date().describe("Calendar date, ISO 8601"),f2=p.strictObject({unit:p.string().describe("Trade unit symbol"),value:oe,low:oe.nullable().describe("Lower end of the 95 % interval"),high:oe.nullable().describe("Upper end of the 95 % interval")}).describe("The same figure in the unit that the trade uses"),mc=p.strictObject({quantity:Mv,name:d2,unit:p.string().describe("SI unit symbol"),value:oe,low:oe.nullable().describe("Lower end of the 95 % interval; null when it cannot be stated"),high:oe.nullable().describe("Upper end of the 95 % interval; null when it cannot be stated"),trade:f2.nullable(),specimens:p.int().describe("Valid specimens behind the figure"),submissions:p.int().describe("Accepted submissions behind the figure"),testers:p.int().describe("Testers behind the figure"),rigs:p.int().describe("Rigs behind the figure"),note:p.string().nullable().describe("What a reader must know about this figure")}).describe("A published figure with its 95 % interval and the evidence behind it"),An=p.strictObject({slug:M,maker:p.strictObject({slug:M,name:p.string().describe("Name of the maker")}).describe("Maker"),line:p.strictObject({slug:M,name:p.string().describe("Name of the line")}).describe("Line"),size:p.string().describe("Size as on the label"),colour:p.string().describe("Colour as on the label"),material:p.string().describe("Material, e.g. UHMWPE"),construction:p.enum(["braided","fused","hollowCore","twisted","monofilament"]).describe("How the line is made"),carriers:p.int().nullable().describe("Ends braided; null where the line is not braided"),peNumber:oe.nullable().describe("PE number on the label"),ratedStrength:p.strictObject({value:oe,unit:p.string().describe("Unit as printed")}).nullable().describe("Rated strength as printed")}).describe("What a variant is called"),vL=p.strictObject({kind:p.enum(["moved","unchanged","new","returned","notComparable"]).describe("Against the edition before"),places:p.int().nullable().describe("Places gained (positive) or lost (negative)"),runAtTop:p.int().describe("Editions in a row in first place, this one included")}).describe("Movement against the edition before"),gL=p.strictObject({low:p.int(),high:p.int()}).describe("Places that the evidence allows, simultaneous over the table at 95 %"),m2={variant:An,place:p.int().nullable().describe("Competition place (1-2-2-4); null when not placed"),placeIfIncluded:p.int().nullable().describe("Place it would have had, shown in brackets, for a row shown unplaced"),isTied:p.boolean().describe("Shares its place with another"),group:p.int().nullable().describe("Too-close-to-call group, 1 is the top group"),placeInterval:gL.nullable(),couldBeFirst:p.boolean().nullable().optional().describe("Whether it belongs to the set that holds the best of the table with 95 % (comparison with the best); not told by format 1"),movement:vL,chanceOfFirstPercent:oe.nullable().describe("Chance of being first under the model"),chanceOfFirstFivePercent:oe.nullable().describe("Chance of being among the first five under the model"),chanceAheadOfNextPercent:oe.nullable().describe("Chance that this row and the next placed one are in the right order")},p2=p.strictObject({...m2,score:oe.describe("Score under the scheme, e.g. the sum of places"),categoryPlaces:p.record(p.string(),p.int()).describe("Category code → place counted in the score")}).describe("A row of the overall standings"),v2=p.strictObject({...m2,figure:mc,change:p.strictObject({kind:p.enum(["changed","withinNoise","notComparable","first"]).describe("Whether the measured value changed beyond noise; of the changes that a table names at most one in twenty is noise (Benjamini–Hochberg)"),percent:oe.nullable().describe("Change of the measured value against the edition before")}).describe("Change of the measured value")}).describe("A row of a category"),Lv=p.strictObject({code:M,name:p.string().describe("Name on the page"),quantity:Mv,quantityName:d2,unit:p.string().describe("SI unit"),tradeUnit:p.string().nullable().describe("Trade unit"),direction:p.enum(["more","less"]).describe("Whether more or less is better"),weight:oe.describe("Weight in the scheme"),method:M.describe("Method"),methodVersion:p.int().describe("Version of the method"),series:M.optional().describe("Series of the method; not told by format 1"),section:p.strictObject({method:M,series:M}).nullable().optional().describe("Method and series of the diameters that a stress is taken over; null of other quantities, not told by format 1"),conditions:p.string().describe("Conditions that define the category"),comparability:p.enum(["same","changed","notComparable","first"]).describe("Against the edition before")}).describe("What is ranked"),g2=p.strictObject({variant:An,reasonCode:p.enum(["notObtainable","labelInDoubt","duplicate","makersRequestRefused","interest"]).describe("Why"),words:p.string().describe("Why, in words"),effect:p.enum(["closedUp","shownUnplaced"]).describe("Whether the others move up"),placeIfIncluded:p.int().nullable().describe("Overall place it would have had")}).describe("A variant left out, with the reason"),Zv=p.strictObject({reasonCode:p.enum(["withdrawal","reidentification","methodError","catalogueError"]).describe("Why"),words:p.string().describe("What changed and why"),expected:p.array(p.strictObject({where:p.string(),before:p.string()})).describe("What the correction took for published, and found"),changes:p.array(p.strictObject({where:p.string().describe("Document and row"),before:p.string().nullable(),after:p.string().nullable()})).describe("Changed cells"),consequences:p.string().describe('Computed consequences, e.g. "3 values changed, 2 places"')}).describe("What a later revision changed"),hL=p.strictObject({slug:M,name:p.string().describe("Name of the division")}).describe("The division of an edition that a document is of; none of one that is of the whole edition, or of an edition with one division"),Ct={formatVersion:Fv,house:p.string().describe("Who publishes"),isDemo:p.boolean().describe("Whether the figures are invented for demonstration"),edition:p.strictObject({slug:M,name:p.string().describe("Name"),openedOn:at,closedOn:at}).describe("The edition"),division:hL.optional(),revision:p.int().describe("Revision of the release"),publishedAt:p.iso.datetime().describe("When it was published, UTC")},yL=p.strictObject({leftOut:p.array(p.strictObject({kind:p.enum(["category","tester","rig","entry"]).describe("What is left out"),name:p.string().describe("Code, display name or slug of what is left out"),first:p.array(M).describe("Variants in first place then"),swappedPairs:p.int().describe("Pairs of variants whose order turns round"),swaps:p.array(p.strictObject({ahead:M,behind:M})).describe("The first of these pairs: who is then ahead of whom"),dropped:p.array(M).describe("Variants that are then no longer placed")})).describe("The overall order without each category, tester and rig, and without each entry that turns a pair round"),weights:p.strictObject({firstPlaces:p.array(p.strictObject({variant:M,percent:oe})).describe("Share of all weights, drawn evenly, under which a variant is first"),smallestChange:p.strictObject({variant:M,weightMovedPercent:oe}).nullable().describe("Smallest part of the weight that, moved to other categories, brings another variant to the first score")}).nullable().describe("What first place owes to the weights; null where the scheme knows none")}).describe("What the overall order hangs on"),h2=p.strictObject({entries:p.int(),submissions:p.int(),specimens:p.int(),testers:p.int(),rigs:p.int(),setAside:p.int()}).describe("Evidence behind it"),y2=p.array(fc).optional().describe("What it took besides while it was open, with the reason; none where it took nothing"),bL=p.strictObject({...Ct,takes:Uv.optional(),overruled:p.array(p.strictObject({variant:M,reason:p.string().describe("Why, in the words of the editor")})).optional().describe("Entries that an editor put into this division against the rule; none where there is one division"),previousEdition:M.nullable(),scheme:p.strictObject({slug:M,name:p.string().describe("Name"),version:p.int().describe("Version"),words:p.string().describe("The scheme in words"),combine:p.enum(["sumOfPlaces","weightedSumOfPlaces","meanStandardScore","pairwiseWins"]).describe("How places are combined"),countPlaces:p.enum(["beforeExclusions","afterExclusions"]).describe("When category places are counted"),tieBreak:p.enum(["none","mostFirsts"]).describe("Tie-break"),categories:p.array(Lv).describe("Categories in order")}).describe("Scheme"),counts:h2,overall:p.array(p2).describe("Overall standings, best first"),incomplete:p.array(p.strictObject({variant:An,missing:p.array(M).describe("Categories without a result that counts"),needs:p.array(p.string()).describe("What it lacks, in words")})).describe("Entries not placed overall"),excluded:p.array(g2).describe("Entries left out"),amendments:y2,categoryTops:p.array(p.strictObject({category:M,variants:p.array(An)})).describe("Top group of each category"),sensitivity:yL.nullable().describe("Null where an uncertainty is not known"),erratum:Zv.nullable()}).describe("An edition as published"),$L=p.strictObject({...Ct,previousEdition:M.nullable(),divisions:p.array(p.strictObject({slug:M,name:p.string().describe("Name of the division"),takes:Uv,variants:p.array(M).describe("Its entries, placed or not, by slug")})).min(2).describe("Divisions in the order of the editor; places never run across them"),counts:h2,amendments:y2,erratum:Zv.nullable()}).describe("An edition with several divisions, as published"),Q1e=p.union([$L,bL]),Y1e=p.strictObject({...Ct,category:Lv,spread:p.strictObject({specimenPercent:oe.nullable().describe("What a specimen scatters by in general, coefficient of variation; null when too few tell"),betweenSubmissionsPercent:oe.describe("What submissions of one variant differ by beyond that, relative standard deviation"),degreesOfFreedom:p.int().describe("Degrees of freedom of the latter"),specimensToTell:p.int().nullable().describe("Specimens of each of two variants that tell 3 % apart with a power of 80 %")}).describe("How the readings of this category scatter"),rows:p.array(v2).describe("Standings, best first")}).describe("The standings of one category"),b2=p.strictObject({reference:p.string().describe("Reference of the submission"),variant:M,method:M,tester:p.string().describe("Display name of the tester"),benchDay:at,withdrawnOn:at.describe("When it left the results"),reason:p.string().describe("Why"),citation:p.string().describe("How to cite that it was withdrawn")}).describe("A result that was accepted and withdrawn: it counts for nothing, and is not forgotten"),eye=p.strictObject({...Ct,items:p.array(b2).describe("By reference")}).describe("Results of the edition that were withdrawn"),rye=p.strictObject({...Ct,records:p.array(p.strictObject({category:M,strengthFromN:p.int().describe("Class of measured breaking force, from this on [N]"),strengthBelowN:p.int().nullable().describe("And below this [N]; null without an end"),value:oe.describe("Best value ever published"),unit:p.string().describe("SI unit"),variant:M,edition:M,equalled:p.array(p.strictObject({variant:M,edition:M})).describe("Later results of the same printed value"),isNew:p.boolean().describe("Set in this edition"),since:M.describe("First edition that compares: the method last changed beyond comparison before it")})).describe("By category and class of strength"),runs:p.array(p.strictObject({table:M.describe('"overall" or a category'),variant:M,editions:p.array(M).describe("Editions in a row in first place, oldest first"),isGoingOn:p.boolean().describe("Still there in this edition")})).describe("Runs at the top, longest first in each table")}).describe("What stands over the years, as known when this edition was published"),tye=p.strictObject({...Ct,variants:p.array(M).describe("Placed variants, best first; empty where no chances are stated"),aheadPercent:p.array(p.array(p.int().min(0).max(100))).describe("Chance that the variant of the row is ahead of that of the column overall, whole per cent; a shared place counts half")}).describe("Chances of every pair under the model"),_L=p.strictObject({role:p.string().describe("What was read"),station:p.int().nullable().describe("Station along the specimen"),entered:p.strictObject({text:p.string().describe("As typed"),unit:p.string().describe("Unit as entered")}).describe("As entered"),value:oe.describe("In SI, exact"),unit:p.string().describe("SI unit")}).describe("One reading"),wL=p.strictObject({number:p.int().describe("Number within the submission"),condition:p.enum(["untreated","treated"]).describe("Whether knotted or abraded"),state:p.enum(["valid","invalid","setAside"]).describe("Only valid specimens count"),reason:p.string().nullable().describe("Why it does not count"),readings:p.array(_L).describe("Readings"),trace:l2.optional()}).describe("One specimen"),SL=p.strictObject({reference:p.string().describe("Reference of the submission"),revision:p.int().describe("Revision that was accepted"),method:M,methodVersion:p.int().describe("Version"),tester:p.string().describe("Display name of the tester"),reviewer:p.string().describe("Display name of the second person"),rig:p.string().describe("Code of the force or diameter instrument"),instruments:p.array(p.strictObject({code:p.string(),calibration:p.string().nullable().describe("Certificate valid on the bench day")})).describe("Instruments used"),spool:p.string().describe("Blind code"),benchDay:at,isBlind:p.boolean().optional().describe("False where its tester had seen the label or read what tells of the spool; not told in format 1"),figures:p.array(mc).describe("Figures of this submission"),findings:p.array(p.strictObject({code:p.string(),message:p.string(),resolution:p.string().nullable().describe("What the reviewer wrote")})).describe("What the checks found"),specimens:p.array(wL).describe("Every specimen, counted or not")}).describe("One accepted submission"),IL=p.strictObject({quantity:p.enum(["breakingForce","diameter","linearDensity","peNumber"]).describe("Claimed quantity"),basis:p.enum(["average","minimum","maximum","class","notStated"]).describe("Basis"),printed:p.strictObject({text:p.string(),unit:p.string()}).describe("As printed"),value:oe.describe("In SI"),unit:p.string().describe("SI unit"),seenOn:at,source:p.string().describe("Where it was seen"),measured:mc.nullable(),ratioPercent:oe.nullable().describe("100 × measured / claimed"),decision:p.enum(["meets","probablyMeets","cannotSay","probablyFallsShort","fallsShort"]).nullable().describe("Decision after JCGM 106")}).describe("What the label says, beside what was measured"),kL=p.strictObject({edition:M,division:M.optional().describe("Division that it was in; none where the edition had one"),revision:p.int(),overallPlace:p.int().nullable(),outcome:p.enum(["placed","incomplete","excluded"]).describe("How the variant fared"),categories:p.array(p.strictObject({code:M,place:p.int().nullable(),value:oe,low:oe.nullable(),high:oe.nullable(),unit:p.string(),trade:f2.nullable(),methodVersion:p.int(),isBreak:p.boolean().describe("A method change breaks comparison with the point before"),isCorrected:p.boolean().optional().describe("An erratum of the edition changed the value; not told by the first releases")})).describe("By category")}).describe("One edition in the history of a variant"),nye=p.strictObject({...Ct,variant:An,overruled:p.string().optional().describe("Why an editor put it into its division against the rule; none where the rule holds"),outcome:p.enum(["placed","incomplete","excluded"]).describe("How the variant fared in this edition"),exclusion:g2.omit({variant:!0}).nullable(),missing:p.array(M).describe("Categories without an accepted result"),overall:p2.omit({variant:!0}).nullable(),categories:p.array(p.strictObject({category:Lv,row:v2.omit({variant:!0})})).describe("By category"),figures:p.array(mc).describe("Every figure measured, ranked or not"),claims:p.array(IL).describe("Claims"),evidence:p.array(p.strictObject({quantity:Mv,submissions:p.array(p.string()).describe("References")})).optional().describe("Which submissions each figure was computed from"),submissions:p.array(SL).describe("Accepted submissions"),withdrawn:p.array(b2).describe("Results that were withdrawn"),spools:p.array(p.strictObject({code:p.string(),source:p.enum(["bought","makerSupplied","lent"]),obtainedOn:at,place:p.string(),lot:p.string().nullable(),reidentified:p.string().nullable()})).describe("Spools tested and how they were obtained"),budgets:p.array(p.strictObject({category:M,standardUncertaintyPercent:oe.describe("Combined standard uncertainty, relative to the value"),degreesOfFreedom:p.int().nullable().describe("Effective degrees of freedom; null for more than a thousand"),lines:p.array(p.strictObject({component:p.enum(["repeatability","submission","tester","rig","certificate","spreads"]),of:p.string().nullable().describe("Whose or which; null for repeatability"),sharePercent:oe.describe("Share of the variance")})).describe("Largest first")})).describe("Uncertainty budget of each category (JCGM 100)"),history:p.array(kL).describe("Editions, oldest first, this one last"),siblings:p.array(An).describe("Other variants of the line in this edition")}).describe("One variant in one edition"),OL=p.discriminatedUnion("kind",[p.strictObject({code:M,kind:p.literal("breakingForce"),treatment:p.strictObject({kind:p.enum(["knot","abrasion"]),name:p.string(),words:p.string()}).nullable().describe("What a specimen goes through before it is pulled; null for nothing")}),p.strictObject({code:M,kind:p.literal("diameterAlongStations"),stations:p.int().describe("Least number on each specimen")}),p.strictObject({code:M,kind:p.literal("linearDensity")})]).describe("One row of readings that a method yields"),iye=p.strictObject({formatVersion:Fv,slug:M,name:p.string(),number:p.int(),effectiveFrom:at,effectiveUntil:at.nullable(),purpose:p.string(),apparatus:p.array(p.string()),steps:p.array(p.string()),series:p.array(OL).optional().describe("What the method yields; not told by format 1"),parameters:p.array(p.strictObject({name:p.string(),value:p.string(),unit:p.string()})),formulae:p.array(p.strictObject({figure:p.string(),formula:p.string(),where:p.string()})),limits:p.array(p.strictObject({name:p.string(),value:p.string(),unit:p.string()})),checks:p.array(p.string()).describe("Codes of the checks applied"),checkSettings:p.array(p.strictObject({check:p.string(),severity:p.string().nullable(),limits:p.array(p.strictObject({name:p.string(),value:p.number()}))})).optional().describe("What this version sets of its checks"),cautions:p.array(p.string()),sources:p.array(p.string()),changes:p.string().describe("What changed against the version before"),isComparableWithPrevious:p.boolean()}).describe("One immutable version of a method"),NL=p.strictObject({code:p.string(),title:p.string(),severity:p.enum(["blocks","held","note"]),explains:p.string(),limit:p.string(),severities:p.array(p.enum(["blocks","held","note"])).optional().describe("Severities that a method version may give it"),limits:p.array(p.strictObject({name:p.string(),words:p.string(),value:oe,unit:p.string(),atLeast:oe.describe("A method version may set it from here"),atMost:oe.describe("to here")})).optional().describe("Numbers that a method version may set"),source:p.string().optional().describe("Where rule and limits come from"),example:p.string().optional().describe("A submission that triggers it")}).describe("One automatic check"),oye=p.strictObject({...Ct,makers:p.array(p.strictObject({slug:M,name:p.string(),lines:p.array(p.strictObject({slug:M,name:p.string(),material:p.string(),construction:p.string(),carriers:p.int().nullable(),variants:p.array(An)}))})).describe("Makers, their lines and variants in this edition"),methods:p.array(p.strictObject({slug:M,number:p.int()})).describe("Method versions in this release"),checks:p.array(NL).describe("Checks pinned by this edition")}).describe("Names in a release"),aye=p.strictObject({formatVersion:Fv,edition:M,revision:p.int(),publishedAt:p.iso.datetime(),softwareVersion:p.string(),previousDigest:p.string().nullable().describe("SHA-256 of the manifest of the release before, the chain"),files:p.array(p.strictObject({path:p.string(),mediaType:p.string(),sizeBytes:p.int(),sha256:p.string().regex(/^[0-9a-f]{64}$/)})).describe("Every file with its digest")}).describe("Manifest of a release; its SHA-256 is the digest of the release"),sye=p.strictObject({formatVersion:p.literal(1),algorithm:p.literal("Ed25519").describe("RFC 8032"),signed:p.literal("manifest.json").describe("File whose bytes are signed"),publicKey:p.string().describe("SubjectPublicKeyInfo (RFC 8410), DER, base64"),signature:p.string().describe("base64")}).describe("Signature of a release"),uye=p.strictObject({publicKey:p.string().describe("SubjectPublicKeyInfo (RFC 8410), DER, base64"),fingerprint:p.string().describe("SHA-256 of the key, hex"),firstUsedAt:p.iso.datetime().describe("Publication of the first release that it signed")}).describe("A key that releases are signed with"),cye=p.strictObject({edition:M,editionName:p.string(),revision:p.int(),status:p.enum(["published","superseded"]),digest:p.string().describe("SHA-256 of the manifest"),publishedAt:p.iso.datetime(),erratum:Zv.nullable()}).describe("A release in the list");function AL(e){for(let r=0;r<e.length;r++){let n=e.charCodeAt(r);if(n>=55296&&n<=56319){if(r===e.length-1)return!0;let i=e.charCodeAt(r+1);if(!(i>=56320&&i<=57343))return!0;r++}else if(n>=56320&&n<=57343)return!0}return!1}function Pn(e,r=new Set){if(typeof e=="number"&&isNaN(e))throw new Error("NaN is not allowed");if(typeof e=="number"&&!isFinite(e))throw new Error("Infinity is not allowed");if(typeof e=="string"&&AL(e))throw new Error("Lone surrogate is not allowed");if(e===null||typeof e!="object")return JSON.stringify(e);if(typeof e.toJSON=="function"){if(r.has(e))throw new Error("Circular reference detected");r.add(e);let i=Pn(e.toJSON(),r);return r.delete(e),i}if(r.has(e))throw new Error("Circular reference detected");r.add(e);let n;if(Array.isArray(e))n=`[${e.map(t=>Pn(t===void 0||typeof t=="symbol"?null:t,r)).join(",")}]`;else{let i=[];for(let t of Object.keys(e).sort())e[t]===void 0||typeof e[t]=="symbol"||i.push(`${Pn(t)}:${Pn(e[t],r)}`);n=`{${i.join(",")}}`}return r.delete(e),n}function st(e){let r=Pn(e);if(r===void 0)throw new TypeError("A release holds JSON only; found undefined or a function.");return r}/*!
 *  decimal.js v10.6.0
 *  An arbitrary-precision Decimal type for JavaScript.
 *  https://github.com/MikeMcl/decimal.js
 *  Copyright (c) 2025 Michael Mclaughlin <M8ch88l@gmail.com>
 *  MIT Licence
 */var zi=9e15,Ft=1e9,Vv="0123456789abcdef",gc="2.3025850929940456840179914546843642076011014886287729760333279009675726096773524802359972050895982983419677840422862486334095254650828067566662873690987816894829072083255546808437998948262331985283935053089653777326288461633662222876982198867465436674744042432743651550489343149393914796194044002221051017141748003688084012647080685567743216228355220114804663715659121373450747856947683463616792101806445070648000277502684916746550586856935673420670581136429224554405758925724208241314695689016758940256776311356919292033376587141660230105703089634572075440370847469940168269282808481184289314848524948644871927809676271275775397027668605952496716674183485704422507197965004714951050492214776567636938662976979522110718264549734772662425709429322582798502585509785265383207606726317164309505995087807523710333101197857547331541421808427543863591778117054309827482385045648019095610299291824318237525357709750539565187697510374970888692180205189339507238539205144634197265287286965110862571492198849978748873771345686209167058",hc="3.1415926535897932384626433832795028841971693993751058209749445923078164062862089986280348253421170679821480865132823066470938446095505822317253594081284811174502841027019385211055596446229489549303819644288109756659334461284756482337867831652712019091456485669234603486104543266482133936072602491412737245870066063155881748815209209628292540917153643678925903600113305305488204665213841469519415116094330572703657595919530921861173819326117931051185480744623799627495673518857527248912279381830119491298336733624406566430860213949463952247371907021798609437027705392171762931767523846748184676694051320005681271452635608277857713427577896091736371787214684409012249534301465495853710507922796892589235420199561121290219608640344181598136297747713099605187072113499999983729780499510597317328160963185950244594553469083026425223082533446850352619311881710100031378387528865875332083814206171776691473035982534904287554687311595628638823537875937519577818577805321712268066130019278766111959092164201989380952572010654858632789",Bv={precision:20,rounding:4,modulo:1,toExpNeg:-7,toExpPos:21,minE:-zi,maxE:zi,crypto:!1},S2,ut,W=!0,bc="[DecimalError] ",Ut=bc+"Invalid argument: ",I2=bc+"Precision limit exceeded",k2=bc+"crypto unavailable",O2="[object Decimal]",Ge=Math.floor,Te=Math.pow,PL=/^0b([01]+(\.[01]*)?|\.[01]+)(p[+-]?\d+)?$/i,xL=/^0x([0-9a-f]+(\.[0-9a-f]*)?|\.[0-9a-f]+)(p[+-]?\d+)?$/i,EL=/^0o([0-7]+(\.[0-7]*)?|\.[0-7]+)(p[+-]?\d+)?$/i,N2=/^(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i,Or=1e7,L=7,DL=9007199254740991,TL=gc.length-1,Wv=hc.length-1,E={toStringTag:O2};E.absoluteValue=E.abs=function(){var e=new this.constructor(this);return e.s<0&&(e.s=1),R(e)};E.ceil=function(){return R(new this.constructor(this),this.e+1,2)};E.clampedTo=E.clamp=function(e,r){var n,i=this,t=i.constructor;if(e=new t(e),r=new t(r),!e.s||!r.s)return new t(NaN);if(e.gt(r))throw Error(Ut+r);return n=i.cmp(e),n<0?e:i.cmp(r)>0?r:new t(i)};E.comparedTo=E.cmp=function(e){var r,n,i,t,o=this,a=o.d,s=(e=new o.constructor(e)).d,u=o.s,c=e.s;if(!a||!s)return!u||!c?NaN:u!==c?u:a===s?0:!a^u<0?1:-1;if(!a[0]||!s[0])return a[0]?u:s[0]?-c:0;if(u!==c)return u;if(o.e!==e.e)return o.e>e.e^u<0?1:-1;for(i=a.length,t=s.length,r=0,n=i<t?i:t;r<n;++r)if(a[r]!==s[r])return a[r]>s[r]^u<0?1:-1;return i===t?0:i>t^u<0?1:-1};E.cosine=E.cos=function(){var e,r,n=this,i=n.constructor;return n.d?n.d[0]?(e=i.precision,r=i.rounding,i.precision=e+Math.max(n.e,n.sd())+L,i.rounding=1,n=jL(i,D2(i,n)),i.precision=e,i.rounding=r,R(ut==2||ut==3?n.neg():n,e,r,!0)):new i(1):new i(NaN)};E.cubeRoot=E.cbrt=function(){var e,r,n,i,t,o,a,s,u,c,l=this,d=l.constructor;if(!l.isFinite()||l.isZero())return new d(l);for(W=!1,o=l.s*Te(l.s*l,1/3),!o||Math.abs(o)==1/0?(n=Le(l.d),e=l.e,(o=(e-n.length+1)%3)&&(n+=o==1||o==-2?"0":"00"),o=Te(n,1/3),e=Ge((e+1)/3)-(e%3==(e<0?-1:2)),o==1/0?n="5e"+e:(n=o.toExponential(),n=n.slice(0,n.indexOf("e")+1)+e),i=new d(n),i.s=l.s):i=new d(o.toString()),a=(e=d.precision)+3;;)if(s=i,u=s.times(s).times(s),c=u.plus(l),i=fe(c.plus(l).times(s),c.plus(u),a+2,1),Le(s.d).slice(0,a)===(n=Le(i.d)).slice(0,a))if(n=n.slice(a-3,a+1),n=="9999"||!t&&n=="4999"){if(!t&&(R(s,e+1,0),s.times(s).times(s).eq(l))){i=s;break}a+=4,t=1}else{(!+n||!+n.slice(1)&&n.charAt(0)=="5")&&(R(i,e+1,1),r=!i.times(i).times(i).eq(l));break}return W=!0,R(i,e,d.rounding,r)};E.decimalPlaces=E.dp=function(){var e,r=this.d,n=NaN;if(r){if(e=r.length-1,n=(e-Ge(this.e/L))*L,e=r[e],e)for(;e%10==0;e/=10)n--;n<0&&(n=0)}return n};E.dividedBy=E.div=function(e){return fe(this,new this.constructor(e))};E.dividedToIntegerBy=E.divToInt=function(e){var r=this,n=r.constructor;return R(fe(r,new n(e),0,1,1),n.precision,n.rounding)};E.equals=E.eq=function(e){return this.cmp(e)===0};E.floor=function(){return R(new this.constructor(this),this.e+1,3)};E.greaterThan=E.gt=function(e){return this.cmp(e)>0};E.greaterThanOrEqualTo=E.gte=function(e){var r=this.cmp(e);return r==1||r===0};E.hyperbolicCosine=E.cosh=function(){var e,r,n,i,t,o=this,a=o.constructor,s=new a(1);if(!o.isFinite())return new a(o.s?1/0:NaN);if(o.isZero())return s;n=a.precision,i=a.rounding,a.precision=n+Math.max(o.e,o.sd())+4,a.rounding=1,t=o.d.length,t<32?(e=Math.ceil(t/3),r=(1/_c(4,e)).toString()):(e=16,r="2.3283064365386962890625e-10"),o=Ci(a,1,o.times(r),new a(1),!0);for(var u,c=e,l=new a(8);c--;)u=o.times(o),o=s.minus(u.times(l.minus(u.times(l))));return R(o,a.precision=n,a.rounding=i,!0)};E.hyperbolicSine=E.sinh=function(){var e,r,n,i,t=this,o=t.constructor;if(!t.isFinite()||t.isZero())return new o(t);if(r=o.precision,n=o.rounding,o.precision=r+Math.max(t.e,t.sd())+4,o.rounding=1,i=t.d.length,i<3)t=Ci(o,2,t,t,!0);else{e=1.4*Math.sqrt(i),e=e>16?16:e|0,t=t.times(1/_c(5,e)),t=Ci(o,2,t,t,!0);for(var a,s=new o(5),u=new o(16),c=new o(20);e--;)a=t.times(t),t=t.times(s.plus(a.times(u.times(a).plus(c))))}return o.precision=r,o.rounding=n,R(t,r,n,!0)};E.hyperbolicTangent=E.tanh=function(){var e,r,n=this,i=n.constructor;return n.isFinite()?n.isZero()?new i(n):(e=i.precision,r=i.rounding,i.precision=e+7,i.rounding=1,fe(n.sinh(),n.cosh(),i.precision=e,i.rounding=r)):new i(n.s)};E.inverseCosine=E.acos=function(){var e=this,r=e.constructor,n=e.abs().cmp(1),i=r.precision,t=r.rounding;return n!==-1?n===0?e.isNeg()?Rr(r,i,t):new r(0):new r(NaN):e.isZero()?Rr(r,i+4,t).times(.5):(r.precision=i+6,r.rounding=1,e=new r(1).minus(e).div(e.plus(1)).sqrt().atan(),r.precision=i,r.rounding=t,e.times(2))};E.inverseHyperbolicCosine=E.acosh=function(){var e,r,n=this,i=n.constructor;return n.lte(1)?new i(n.eq(1)?0:NaN):n.isFinite()?(e=i.precision,r=i.rounding,i.precision=e+Math.max(Math.abs(n.e),n.sd())+4,i.rounding=1,W=!1,n=n.times(n).minus(1).sqrt().plus(n),W=!0,i.precision=e,i.rounding=r,n.ln()):new i(n)};E.inverseHyperbolicSine=E.asinh=function(){var e,r,n=this,i=n.constructor;return!n.isFinite()||n.isZero()?new i(n):(e=i.precision,r=i.rounding,i.precision=e+2*Math.max(Math.abs(n.e),n.sd())+6,i.rounding=1,W=!1,n=n.times(n).plus(1).sqrt().plus(n),W=!0,i.precision=e,i.rounding=r,n.ln())};E.inverseHyperbolicTangent=E.atanh=function(){var e,r,n,i,t=this,o=t.constructor;return t.isFinite()?t.e>=0?new o(t.abs().eq(1)?t.s/0:t.isZero()?t:NaN):(e=o.precision,r=o.rounding,i=t.sd(),Math.max(i,e)<2*-t.e-1?R(new o(t),e,r,!0):(o.precision=n=i-t.e,t=fe(t.plus(1),new o(1).minus(t),n+e,1),o.precision=e+4,o.rounding=1,t=t.ln(),o.precision=e,o.rounding=r,t.times(.5))):new o(NaN)};E.inverseSine=E.asin=function(){var e,r,n,i,t=this,o=t.constructor;return t.isZero()?new o(t):(r=t.abs().cmp(1),n=o.precision,i=o.rounding,r!==-1?r===0?(e=Rr(o,n+4,i).times(.5),e.s=t.s,e):new o(NaN):(o.precision=n+6,o.rounding=1,t=t.div(new o(1).minus(t.times(t)).sqrt().plus(1)).atan(),o.precision=n,o.rounding=i,t.times(2)))};E.inverseTangent=E.atan=function(){var e,r,n,i,t,o,a,s,u,c=this,l=c.constructor,d=l.precision,f=l.rounding;if(c.isFinite()){if(c.isZero())return new l(c);if(c.abs().eq(1)&&d+4<=Wv)return a=Rr(l,d+4,f).times(.25),a.s=c.s,a}else{if(!c.s)return new l(NaN);if(d+4<=Wv)return a=Rr(l,d+4,f).times(.5),a.s=c.s,a}for(l.precision=s=d+10,l.rounding=1,n=Math.min(28,s/L+2|0),e=n;e;--e)c=c.div(c.times(c).plus(1).sqrt().plus(1));for(W=!1,r=Math.ceil(s/L),i=1,u=c.times(c),a=new l(c),t=c;e!==-1;)if(t=t.times(u),o=a.minus(t.div(i+=2)),t=t.times(u),a=o.plus(t.div(i+=2)),a.d[r]!==void 0)for(e=r;a.d[e]===o.d[e]&&e--;);return n&&(a=a.times(2<<n-1)),W=!0,R(a,l.precision=d,l.rounding=f,!0)};E.isFinite=function(){return!!this.d};E.isInteger=E.isInt=function(){return!!this.d&&Ge(this.e/L)>this.d.length-2};E.isNaN=function(){return!this.s};E.isNegative=E.isNeg=function(){return this.s<0};E.isPositive=E.isPos=function(){return this.s>0};E.isZero=function(){return!!this.d&&this.d[0]===0};E.lessThan=E.lt=function(e){return this.cmp(e)<0};E.lessThanOrEqualTo=E.lte=function(e){return this.cmp(e)<1};E.logarithm=E.log=function(e){var r,n,i,t,o,a,s,u,c=this,l=c.constructor,d=l.precision,f=l.rounding,m=5;if(e==null)e=new l(10),r=!0;else{if(e=new l(e),n=e.d,e.s<0||!n||!n[0]||e.eq(1))return new l(NaN);r=e.eq(10)}if(n=c.d,c.s<0||!n||!n[0]||c.eq(1))return new l(n&&!n[0]?-1/0:c.s!=1?NaN:n?0:1/0);if(r)if(n.length>1)o=!0;else{for(t=n[0];t%10===0;)t/=10;o=t!==1}if(W=!1,s=d+m,a=Rt(c,s),i=r?yc(l,s+10):Rt(e,s),u=fe(a,i,s,1),ma(u.d,t=d,f))do if(s+=10,a=Rt(c,s),i=r?yc(l,s+10):Rt(e,s),u=fe(a,i,s,1),!o){+Le(u.d).slice(t+1,t+15)+1==1e14&&(u=R(u,d+1,0));break}while(ma(u.d,t+=10,f));return W=!0,R(u,d,f)};E.minus=E.sub=function(e){var r,n,i,t,o,a,s,u,c,l,d,f,m=this,v=m.constructor;if(e=new v(e),!m.d||!e.d)return!m.s||!e.s?e=new v(NaN):m.d?e.s=-e.s:e=new v(e.d||m.s!==e.s?m:NaN),e;if(m.s!=e.s)return e.s=-e.s,m.plus(e);if(c=m.d,f=e.d,s=v.precision,u=v.rounding,!c[0]||!f[0]){if(f[0])e.s=-e.s;else if(c[0])e=new v(m);else return new v(u===3?-0:0);return W?R(e,s,u):e}if(n=Ge(e.e/L),l=Ge(m.e/L),c=c.slice(),o=l-n,o){for(d=o<0,d?(r=c,o=-o,a=f.length):(r=f,n=l,a=c.length),i=Math.max(Math.ceil(s/L),a)+2,o>i&&(o=i,r.length=1),r.reverse(),i=o;i--;)r.push(0);r.reverse()}else{for(i=c.length,a=f.length,d=i<a,d&&(a=i),i=0;i<a;i++)if(c[i]!=f[i]){d=c[i]<f[i];break}o=0}for(d&&(r=c,c=f,f=r,e.s=-e.s),a=c.length,i=f.length-a;i>0;--i)c[a++]=0;for(i=f.length;i>o;){if(c[--i]<f[i]){for(t=i;t&&c[--t]===0;)c[t]=Or-1;--c[t],c[i]+=Or}c[i]-=f[i]}for(;c[--a]===0;)c.pop();for(;c[0]===0;c.shift())--n;return c[0]?(e.d=c,e.e=$c(c,n),W?R(e,s,u):e):new v(u===3?-0:0)};E.modulo=E.mod=function(e){var r,n=this,i=n.constructor;return e=new i(e),!n.d||!e.s||e.d&&!e.d[0]?new i(NaN):!e.d||n.d&&!n.d[0]?R(new i(n),i.precision,i.rounding):(W=!1,i.modulo==9?(r=fe(n,e.abs(),0,3,1),r.s*=e.s):r=fe(n,e,0,i.modulo,1),r=r.times(e),W=!0,n.minus(r))};E.naturalExponential=E.exp=function(){return Gv(this)};E.naturalLogarithm=E.ln=function(){return Rt(this)};E.negated=E.neg=function(){var e=new this.constructor(this);return e.s=-e.s,R(e)};E.plus=E.add=function(e){var r,n,i,t,o,a,s,u,c,l,d=this,f=d.constructor;if(e=new f(e),!d.d||!e.d)return!d.s||!e.s?e=new f(NaN):d.d||(e=new f(e.d||d.s===e.s?d:NaN)),e;if(d.s!=e.s)return e.s=-e.s,d.minus(e);if(c=d.d,l=e.d,s=f.precision,u=f.rounding,!c[0]||!l[0])return l[0]||(e=new f(d)),W?R(e,s,u):e;if(o=Ge(d.e/L),i=Ge(e.e/L),c=c.slice(),t=o-i,t){for(t<0?(n=c,t=-t,a=l.length):(n=l,i=o,a=c.length),o=Math.ceil(s/L),a=o>a?o+1:a+1,t>a&&(t=a,n.length=1),n.reverse();t--;)n.push(0);n.reverse()}for(a=c.length,t=l.length,a-t<0&&(t=a,n=l,l=c,c=n),r=0;t;)r=(c[--t]=c[t]+l[t]+r)/Or|0,c[t]%=Or;for(r&&(c.unshift(r),++i),a=c.length;c[--a]==0;)c.pop();return e.d=c,e.e=$c(c,i),W?R(e,s,u):e};E.precision=E.sd=function(e){var r,n=this;if(e!==void 0&&e!==!!e&&e!==1&&e!==0)throw Error(Ut+e);return n.d?(r=A2(n.d),e&&n.e+1>r&&(r=n.e+1)):r=NaN,r};E.round=function(){var e=this,r=e.constructor;return R(new r(e),e.e+1,r.rounding)};E.sine=E.sin=function(){var e,r,n=this,i=n.constructor;return n.isFinite()?n.isZero()?new i(n):(e=i.precision,r=i.rounding,i.precision=e+Math.max(n.e,n.sd())+L,i.rounding=1,n=CL(i,D2(i,n)),i.precision=e,i.rounding=r,R(ut>2?n.neg():n,e,r,!0)):new i(NaN)};E.squareRoot=E.sqrt=function(){var e,r,n,i,t,o,a=this,s=a.d,u=a.e,c=a.s,l=a.constructor;if(c!==1||!s||!s[0])return new l(!c||c<0&&(!s||s[0])?NaN:s?a:1/0);for(W=!1,c=Math.sqrt(+a),c==0||c==1/0?(r=Le(s),(r.length+u)%2==0&&(r+="0"),c=Math.sqrt(r),u=Ge((u+1)/2)-(u<0||u%2),c==1/0?r="5e"+u:(r=c.toExponential(),r=r.slice(0,r.indexOf("e")+1)+u),i=new l(r)):i=new l(c.toString()),n=(u=l.precision)+3;;)if(o=i,i=o.plus(fe(a,o,n+2,1)).times(.5),Le(o.d).slice(0,n)===(r=Le(i.d)).slice(0,n))if(r=r.slice(n-3,n+1),r=="9999"||!t&&r=="4999"){if(!t&&(R(o,u+1,0),o.times(o).eq(a))){i=o;break}n+=4,t=1}else{(!+r||!+r.slice(1)&&r.charAt(0)=="5")&&(R(i,u+1,1),e=!i.times(i).eq(a));break}return W=!0,R(i,u,l.rounding,e)};E.tangent=E.tan=function(){var e,r,n=this,i=n.constructor;return n.isFinite()?n.isZero()?new i(n):(e=i.precision,r=i.rounding,i.precision=e+10,i.rounding=1,n=n.sin(),n.s=1,n=fe(n,new i(1).minus(n.times(n)).sqrt(),e+10,0),i.precision=e,i.rounding=r,R(ut==2||ut==4?n.neg():n,e,r,!0)):new i(NaN)};E.times=E.mul=function(e){var r,n,i,t,o,a,s,u,c,l=this,d=l.constructor,f=l.d,m=(e=new d(e)).d;if(e.s*=l.s,!f||!f[0]||!m||!m[0])return new d(!e.s||f&&!f[0]&&!m||m&&!m[0]&&!f?NaN:!f||!m?e.s/0:e.s*0);for(n=Ge(l.e/L)+Ge(e.e/L),u=f.length,c=m.length,u<c&&(o=f,f=m,m=o,a=u,u=c,c=a),o=[],a=u+c,i=a;i--;)o.push(0);for(i=c;--i>=0;){for(r=0,t=u+i;t>i;)s=o[t]+m[i]*f[t-i-1]+r,o[t--]=s%Or|0,r=s/Or|0;o[t]=(o[t]+r)%Or|0}for(;!o[--a];)o.pop();return r?++n:o.shift(),e.d=o,e.e=$c(o,n),W?R(e,d.precision,d.rounding):e};E.toBinary=function(e,r){return Hv(this,2,e,r)};E.toDecimalPlaces=E.toDP=function(e,r){var n=this,i=n.constructor;return n=new i(n),e===void 0?n:(cr(e,0,Ft),r===void 0?r=i.rounding:cr(r,0,8),R(n,e+n.e+1,r))};E.toExponential=function(e,r){var n,i=this,t=i.constructor;return e===void 0?n=Ur(i,!0):(cr(e,0,Ft),r===void 0?r=t.rounding:cr(r,0,8),i=R(new t(i),e+1,r),n=Ur(i,!0,e+1)),i.isNeg()&&!i.isZero()?"-"+n:n};E.toFixed=function(e,r){var n,i,t=this,o=t.constructor;return e===void 0?n=Ur(t):(cr(e,0,Ft),r===void 0?r=o.rounding:cr(r,0,8),i=R(new o(t),e+t.e+1,r),n=Ur(i,!1,e+i.e+1)),t.isNeg()&&!t.isZero()?"-"+n:n};E.toFraction=function(e){var r,n,i,t,o,a,s,u,c,l,d,f,m=this,v=m.d,h=m.constructor;if(!v)return new h(m);if(c=n=new h(1),i=u=new h(0),r=new h(i),o=r.e=A2(v)-m.e-1,a=o%L,r.d[0]=Te(10,a<0?L+a:a),e==null)e=o>0?r:c;else{if(s=new h(e),!s.isInt()||s.lt(c))throw Error(Ut+s);e=s.gt(r)?o>0?r:c:s}for(W=!1,s=new h(Le(v)),l=h.precision,h.precision=o=v.length*L*2;d=fe(s,r,0,1,1),t=n.plus(d.times(i)),t.cmp(e)!=1;)n=i,i=t,t=c,c=u.plus(d.times(t)),u=t,t=r,r=s.minus(d.times(t)),s=t;return t=fe(e.minus(n),i,0,1,1),u=u.plus(t.times(c)),n=n.plus(t.times(i)),u.s=c.s=m.s,f=fe(c,i,o,1).minus(m).abs().cmp(fe(u,n,o,1).minus(m).abs())<1?[c,i]:[u,n],h.precision=l,W=!0,f};E.toHexadecimal=E.toHex=function(e,r){return Hv(this,16,e,r)};E.toNearest=function(e,r){var n=this,i=n.constructor;if(n=new i(n),e==null){if(!n.d)return n;e=new i(1),r=i.rounding}else{if(e=new i(e),r===void 0?r=i.rounding:cr(r,0,8),!n.d)return e.s?n:e;if(!e.d)return e.s&&(e.s=n.s),e}return e.d[0]?(W=!1,n=fe(n,e,0,r,1).times(e),W=!0,R(n)):(e.s=n.s,n=e),n};E.toNumber=function(){return+this};E.toOctal=function(e,r){return Hv(this,8,e,r)};E.toPower=E.pow=function(e){var r,n,i,t,o,a,s=this,u=s.constructor,c=+(e=new u(e));if(!s.d||!e.d||!s.d[0]||!e.d[0])return new u(Te(+s,c));if(s=new u(s),s.eq(1))return s;if(i=u.precision,o=u.rounding,e.eq(1))return R(s,i,o);if(r=Ge(e.e/L),r>=e.d.length-1&&(n=c<0?-c:c)<=DL)return t=P2(u,s,n,i),e.s<0?new u(1).div(t):R(t,i,o);if(a=s.s,a<0){if(r<e.d.length-1)return new u(NaN);if((e.d[r]&1)==0&&(a=1),s.e==0&&s.d[0]==1&&s.d.length==1)return s.s=a,s}return n=Te(+s,c),r=n==0||!isFinite(n)?Ge(c*(Math.log("0."+Le(s.d))/Math.LN10+s.e+1)):new u(n+"").e,r>u.maxE+1||r<u.minE-1?new u(r>0?a/0:0):(W=!1,u.rounding=s.s=1,n=Math.min(12,(r+"").length),t=Gv(e.times(Rt(s,i+n)),i),t.d&&(t=R(t,i+5,1),ma(t.d,i,o)&&(r=i+10,t=R(Gv(e.times(Rt(s,r+n)),r),r+5,1),+Le(t.d).slice(i+1,i+15)+1==1e14&&(t=R(t,i+1,0)))),t.s=a,W=!0,u.rounding=o,R(t,i,o))};E.toPrecision=function(e,r){var n,i=this,t=i.constructor;return e===void 0?n=Ur(i,i.e<=t.toExpNeg||i.e>=t.toExpPos):(cr(e,1,Ft),r===void 0?r=t.rounding:cr(r,0,8),i=R(new t(i),e,r),n=Ur(i,e<=i.e||i.e<=t.toExpNeg,e)),i.isNeg()&&!i.isZero()?"-"+n:n};E.toSignificantDigits=E.toSD=function(e,r){var n=this,i=n.constructor;return e===void 0?(e=i.precision,r=i.rounding):(cr(e,1,Ft),r===void 0?r=i.rounding:cr(r,0,8)),R(new i(n),e,r)};E.toString=function(){var e=this,r=e.constructor,n=Ur(e,e.e<=r.toExpNeg||e.e>=r.toExpPos);return e.isNeg()&&!e.isZero()?"-"+n:n};E.truncated=E.trunc=function(){return R(new this.constructor(this),this.e+1,1)};E.valueOf=E.toJSON=function(){var e=this,r=e.constructor,n=Ur(e,e.e<=r.toExpNeg||e.e>=r.toExpPos);return e.isNeg()?"-"+n:n};function Le(e){var r,n,i,t=e.length-1,o="",a=e[0];if(t>0){for(o+=a,r=1;r<t;r++)i=e[r]+"",n=L-i.length,n&&(o+=qt(n)),o+=i;a=e[r],i=a+"",n=L-i.length,n&&(o+=qt(n))}else if(a===0)return"0";for(;a%10===0;)a/=10;return o+a}function cr(e,r,n){if(e!==~~e||e<r||e>n)throw Error(Ut+e)}function ma(e,r,n,i){var t,o,a,s;for(o=e[0];o>=10;o/=10)--r;return--r<0?(r+=L,t=0):(t=Math.ceil((r+1)/L),r%=L),o=Te(10,L-r),s=e[t]%o|0,i==null?r<3?(r==0?s=s/100|0:r==1&&(s=s/10|0),a=n<4&&s==99999||n>3&&s==49999||s==5e4||s==0):a=(n<4&&s+1==o||n>3&&s+1==o/2)&&(e[t+1]/o/100|0)==Te(10,r-2)-1||(s==o/2||s==0)&&(e[t+1]/o/100|0)==0:r<4?(r==0?s=s/1e3|0:r==1?s=s/100|0:r==2&&(s=s/10|0),a=(i||n<4)&&s==9999||!i&&n>3&&s==4999):a=((i||n<4)&&s+1==o||!i&&n>3&&s+1==o/2)&&(e[t+1]/o/1e3|0)==Te(10,r-3)-1,a}function pc(e,r,n){for(var i,t=[0],o,a=0,s=e.length;a<s;){for(o=t.length;o--;)t[o]*=r;for(t[0]+=Vv.indexOf(e.charAt(a++)),i=0;i<t.length;i++)t[i]>n-1&&(t[i+1]===void 0&&(t[i+1]=0),t[i+1]+=t[i]/n|0,t[i]%=n)}return t.reverse()}function jL(e,r){var n,i,t;if(r.isZero())return r;i=r.d.length,i<32?(n=Math.ceil(i/3),t=(1/_c(4,n)).toString()):(n=16,t="2.3283064365386962890625e-10"),e.precision+=n,r=Ci(e,1,r.times(t),new e(1));for(var o=n;o--;){var a=r.times(r);r=a.times(a).minus(a).times(8).plus(1)}return e.precision-=n,r}var fe=(function(){function e(i,t,o){var a,s=0,u=i.length;for(i=i.slice();u--;)a=i[u]*t+s,i[u]=a%o|0,s=a/o|0;return s&&i.unshift(s),i}function r(i,t,o,a){var s,u;if(o!=a)u=o>a?1:-1;else for(s=u=0;s<o;s++)if(i[s]!=t[s]){u=i[s]>t[s]?1:-1;break}return u}function n(i,t,o,a){for(var s=0;o--;)i[o]-=s,s=i[o]<t[o]?1:0,i[o]=s*a+i[o]-t[o];for(;!i[0]&&i.length>1;)i.shift()}return function(i,t,o,a,s,u){var c,l,d,f,m,v,h,y,b,_,$,N,w,O,k,D,F,re,se,me,we=i.constructor,ze=i.s==t.s?1:-1,T=i.d,q=t.d;if(!T||!T[0]||!q||!q[0])return new we(!i.s||!t.s||(T?q&&T[0]==q[0]:!q)?NaN:T&&T[0]==0||!q?ze*0:ze/0);for(u?(m=1,l=i.e-t.e):(u=Or,m=L,l=Ge(i.e/m)-Ge(t.e/m)),se=q.length,F=T.length,b=new we(ze),_=b.d=[],d=0;q[d]==(T[d]||0);d++);if(q[d]>(T[d]||0)&&l--,o==null?(O=o=we.precision,a=we.rounding):s?O=o+(i.e-t.e)+1:O=o,O<0)_.push(1),v=!0;else{if(O=O/m+2|0,d=0,se==1){for(f=0,q=q[0],O++;(d<F||f)&&O--;d++)k=f*u+(T[d]||0),_[d]=k/q|0,f=k%q|0;v=f||d<F}else{for(f=u/(q[0]+1)|0,f>1&&(q=e(q,f,u),T=e(T,f,u),se=q.length,F=T.length),D=se,$=T.slice(0,se),N=$.length;N<se;)$[N++]=0;me=q.slice(),me.unshift(0),re=q[0],q[1]>=u/2&&++re;do f=0,c=r(q,$,se,N),c<0?(w=$[0],se!=N&&(w=w*u+($[1]||0)),f=w/re|0,f>1?(f>=u&&(f=u-1),h=e(q,f,u),y=h.length,N=$.length,c=r(h,$,y,N),c==1&&(f--,n(h,se<y?me:q,y,u))):(f==0&&(c=f=1),h=q.slice()),y=h.length,y<N&&h.unshift(0),n($,h,N,u),c==-1&&(N=$.length,c=r(q,$,se,N),c<1&&(f++,n($,se<N?me:q,N,u))),N=$.length):c===0&&(f++,$=[0]),_[d++]=f,c&&$[0]?$[N++]=T[D]||0:($=[T[D]],N=1);while((D++<F||$[0]!==void 0)&&O--);v=$[0]!==void 0}_[0]||_.shift()}if(m==1)b.e=l,S2=v;else{for(d=1,f=_[0];f>=10;f/=10)d++;b.e=d+l*m-1,R(b,s?o+b.e+1:o,a,v)}return b}})();function R(e,r,n,i){var t,o,a,s,u,c,l,d,f,m=e.constructor;e:if(r!=null){if(d=e.d,!d)return e;for(t=1,s=d[0];s>=10;s/=10)t++;if(o=r-t,o<0)o+=L,a=r,l=d[f=0],u=l/Te(10,t-a-1)%10|0;else if(f=Math.ceil((o+1)/L),s=d.length,f>=s)if(i){for(;s++<=f;)d.push(0);l=u=0,t=1,o%=L,a=o-L+1}else break e;else{for(l=s=d[f],t=1;s>=10;s/=10)t++;o%=L,a=o-L+t,u=a<0?0:l/Te(10,t-a-1)%10|0}if(i=i||r<0||d[f+1]!==void 0||(a<0?l:l%Te(10,t-a-1)),c=n<4?(u||i)&&(n==0||n==(e.s<0?3:2)):u>5||u==5&&(n==4||i||n==6&&(o>0?a>0?l/Te(10,t-a):0:d[f-1])%10&1||n==(e.s<0?8:7)),r<1||!d[0])return d.length=0,c?(r-=e.e+1,d[0]=Te(10,(L-r%L)%L),e.e=-r||0):d[0]=e.e=0,e;if(o==0?(d.length=f,s=1,f--):(d.length=f+1,s=Te(10,L-o),d[f]=a>0?(l/Te(10,t-a)%Te(10,a)|0)*s:0),c)for(;;)if(f==0){for(o=1,a=d[0];a>=10;a/=10)o++;for(a=d[0]+=s,s=1;a>=10;a/=10)s++;o!=s&&(e.e++,d[0]==Or&&(d[0]=1));break}else{if(d[f]+=s,d[f]!=Or)break;d[f--]=0,s=1}for(o=d.length;d[--o]===0;)d.pop()}return W&&(e.e>m.maxE?(e.d=null,e.e=NaN):e.e<m.minE&&(e.e=0,e.d=[0])),e}function Ur(e,r,n){if(!e.isFinite())return E2(e);var i,t=e.e,o=Le(e.d),a=o.length;return r?(n&&(i=n-a)>0?o=o.charAt(0)+"."+o.slice(1)+qt(i):a>1&&(o=o.charAt(0)+"."+o.slice(1)),o=o+(e.e<0?"e":"e+")+e.e):t<0?(o="0."+qt(-t-1)+o,n&&(i=n-a)>0&&(o+=qt(i))):t>=a?(o+=qt(t+1-a),n&&(i=n-t-1)>0&&(o=o+"."+qt(i))):((i=t+1)<a&&(o=o.slice(0,i)+"."+o.slice(i)),n&&(i=n-a)>0&&(t+1===a&&(o+="."),o+=qt(i))),o}function $c(e,r){var n=e[0];for(r*=L;n>=10;n/=10)r++;return r}function yc(e,r,n){if(r>TL)throw W=!0,n&&(e.precision=n),Error(I2);return R(new e(gc),r,1,!0)}function Rr(e,r,n){if(r>Wv)throw Error(I2);return R(new e(hc),r,n,!0)}function A2(e){var r=e.length-1,n=r*L+1;if(r=e[r],r){for(;r%10==0;r/=10)n--;for(r=e[0];r>=10;r/=10)n++}return n}function qt(e){for(var r="";e--;)r+="0";return r}function P2(e,r,n,i){var t,o=new e(1),a=Math.ceil(i/L+4);for(W=!1;;){if(n%2&&(o=o.times(r),_2(o.d,a)&&(t=!0)),n=Ge(n/2),n===0){n=o.d.length-1,t&&o.d[n]===0&&++o.d[n];break}r=r.times(r),_2(r.d,a)}return W=!0,o}function $2(e){return e.d[e.d.length-1]&1}function x2(e,r,n){for(var i,t,o=new e(r[0]),a=0;++a<r.length;){if(t=new e(r[a]),!t.s){o=t;break}i=o.cmp(t),(i===n||i===0&&o.s===n)&&(o=t)}return o}function Gv(e,r){var n,i,t,o,a,s,u,c=0,l=0,d=0,f=e.constructor,m=f.rounding,v=f.precision;if(!e.d||!e.d[0]||e.e>17)return new f(e.d?e.d[0]?e.s<0?0:1/0:1:e.s?e.s<0?0:e:NaN);for(r==null?(W=!1,u=v):u=r,s=new f(.03125);e.e>-2;)e=e.times(s),d+=5;for(i=Math.log(Te(2,d))/Math.LN10*2+5|0,u+=i,n=o=a=new f(1),f.precision=u;;){if(o=R(o.times(e),u,1),n=n.times(++l),s=a.plus(fe(o,n,u,1)),Le(s.d).slice(0,u)===Le(a.d).slice(0,u)){for(t=d;t--;)a=R(a.times(a),u,1);if(r==null)if(c<3&&ma(a.d,u-i,m,c))f.precision=u+=10,n=o=s=new f(1),l=0,c++;else return R(a,f.precision=v,m,W=!0);else return f.precision=v,a}a=s}}function Rt(e,r){var n,i,t,o,a,s,u,c,l,d,f,m=1,v=10,h=e,y=h.d,b=h.constructor,_=b.rounding,$=b.precision;if(h.s<0||!y||!y[0]||!h.e&&y[0]==1&&y.length==1)return new b(y&&!y[0]?-1/0:h.s!=1?NaN:y?0:h);if(r==null?(W=!1,l=$):l=r,b.precision=l+=v,n=Le(y),i=n.charAt(0),Math.abs(o=h.e)<15e14){for(;i<7&&i!=1||i==1&&n.charAt(1)>3;)h=h.times(e),n=Le(h.d),i=n.charAt(0),m++;o=h.e,i>1?(h=new b("0."+n),o++):h=new b(i+"."+n.slice(1))}else return c=yc(b,l+2,$).times(o+""),h=Rt(new b(i+"."+n.slice(1)),l-v).plus(c),b.precision=$,r==null?R(h,$,_,W=!0):h;for(d=h,u=a=h=fe(h.minus(1),h.plus(1),l,1),f=R(h.times(h),l,1),t=3;;){if(a=R(a.times(f),l,1),c=u.plus(fe(a,new b(t),l,1)),Le(c.d).slice(0,l)===Le(u.d).slice(0,l))if(u=u.times(2),o!==0&&(u=u.plus(yc(b,l+2,$).times(o+""))),u=fe(u,new b(m),l,1),r==null)if(ma(u.d,l-v,_,s))b.precision=l+=v,c=a=h=fe(d.minus(1),d.plus(1),l,1),f=R(h.times(h),l,1),t=s=1;else return R(u,b.precision=$,_,W=!0);else return b.precision=$,u;u=c,t+=2}}function E2(e){return String(e.s*e.s/0)}function vc(e,r){var n,i,t;for((n=r.indexOf("."))>-1&&(r=r.replace(".","")),(i=r.search(/e/i))>0?(n<0&&(n=i),n+=+r.slice(i+1),r=r.substring(0,i)):n<0&&(n=r.length),i=0;r.charCodeAt(i)===48;i++);for(t=r.length;r.charCodeAt(t-1)===48;--t);if(r=r.slice(i,t),r){if(t-=i,e.e=n=n-i-1,e.d=[],i=(n+1)%L,n<0&&(i+=L),i<t){for(i&&e.d.push(+r.slice(0,i)),t-=L;i<t;)e.d.push(+r.slice(i,i+=L));r=r.slice(i),i=L-r.length}else i-=t;for(;i--;)r+="0";e.d.push(+r),W&&(e.e>e.constructor.maxE?(e.d=null,e.e=NaN):e.e<e.constructor.minE&&(e.e=0,e.d=[0]))}else e.e=0,e.d=[0];return e}function zL(e,r){var n,i,t,o,a,s,u,c,l;if(r.indexOf("_")>-1){if(r=r.replace(/(\d)_(?=\d)/g,"$1"),N2.test(r))return vc(e,r)}else if(r==="Infinity"||r==="NaN")return+r||(e.s=NaN),e.e=NaN,e.d=null,e;if(xL.test(r))n=16,r=r.toLowerCase();else if(PL.test(r))n=2;else if(EL.test(r))n=8;else throw Error(Ut+r);for(o=r.search(/p/i),o>0?(u=+r.slice(o+1),r=r.substring(2,o)):r=r.slice(2),o=r.indexOf("."),a=o>=0,i=e.constructor,a&&(r=r.replace(".",""),s=r.length,o=s-o,t=P2(i,new i(n),o,o*2)),c=pc(r,n,Or),l=c.length-1,o=l;c[o]===0;--o)c.pop();return o<0?new i(e.s*0):(e.e=$c(c,l),e.d=c,W=!1,a&&(e=fe(e,t,s*4)),u&&(e=e.times(Math.abs(u)<54?Te(2,u):Ne.pow(2,u))),W=!0,e)}function CL(e,r){var n,i=r.d.length;if(i<3)return r.isZero()?r:Ci(e,2,r,r);n=1.4*Math.sqrt(i),n=n>16?16:n|0,r=r.times(1/_c(5,n)),r=Ci(e,2,r,r);for(var t,o=new e(5),a=new e(16),s=new e(20);n--;)t=r.times(r),r=r.times(o.plus(t.times(a.times(t).minus(s))));return r}function Ci(e,r,n,i,t){var o,a,s,u,c=1,l=e.precision,d=Math.ceil(l/L);for(W=!1,u=n.times(n),s=new e(i);;){if(a=fe(s.times(u),new e(r++*r++),l,1),s=t?i.plus(a):i.minus(a),i=fe(a.times(u),new e(r++*r++),l,1),a=s.plus(i),a.d[d]!==void 0){for(o=d;a.d[o]===s.d[o]&&o--;);if(o==-1)break}o=s,s=i,i=a,a=o,c++}return W=!0,a.d.length=d+1,a}function _c(e,r){for(var n=e;--r;)n*=e;return n}function D2(e,r){var n,i=r.s<0,t=Rr(e,e.precision,1),o=t.times(.5);if(r=r.abs(),r.lte(o))return ut=i?4:1,r;if(n=r.divToInt(t),n.isZero())ut=i?3:2;else{if(r=r.minus(n.times(t)),r.lte(o))return ut=$2(n)?i?2:3:i?4:1,r;ut=$2(n)?i?1:4:i?3:2}return r.minus(t).abs()}function Hv(e,r,n,i){var t,o,a,s,u,c,l,d,f,m=e.constructor,v=n!==void 0;if(v?(cr(n,1,Ft),i===void 0?i=m.rounding:cr(i,0,8)):(n=m.precision,i=m.rounding),!e.isFinite())l=E2(e);else{for(l=Ur(e),a=l.indexOf("."),v?(t=2,r==16?n=n*4-3:r==8&&(n=n*3-2)):t=r,a>=0&&(l=l.replace(".",""),f=new m(1),f.e=l.length-a,f.d=pc(Ur(f),10,t),f.e=f.d.length),d=pc(l,10,t),o=u=d.length;d[--u]==0;)d.pop();if(!d[0])l=v?"0p+0":"0";else{if(a<0?o--:(e=new m(e),e.d=d,e.e=o,e=fe(e,f,n,i,0,t),d=e.d,o=e.e,c=S2),a=d[n],s=t/2,c=c||d[n+1]!==void 0,c=i<4?(a!==void 0||c)&&(i===0||i===(e.s<0?3:2)):a>s||a===s&&(i===4||c||i===6&&d[n-1]&1||i===(e.s<0?8:7)),d.length=n,c)for(;++d[--n]>t-1;)d[n]=0,n||(++o,d.unshift(1));for(u=d.length;!d[u-1];--u);for(a=0,l="";a<u;a++)l+=Vv.charAt(d[a]);if(v){if(u>1)if(r==16||r==8){for(a=r==16?4:3,--u;u%a;u++)l+="0";for(d=pc(l,t,r),u=d.length;!d[u-1];--u);for(a=1,l="1.";a<u;a++)l+=Vv.charAt(d[a])}else l=l.charAt(0)+"."+l.slice(1);l=l+(o<0?"p":"p+")+o}else if(o<0){for(;++o;)l="0"+l;l="0."+l}else if(++o>u)for(o-=u;o--;)l+="0";else o<u&&(l=l.slice(0,o)+"."+l.slice(o))}l=(r==16?"0x":r==2?"0b":r==8?"0o":"")+l}return e.s<0?"-"+l:l}function _2(e,r){if(e.length>r)return e.length=r,!0}function qL(e){return new this(e).abs()}function RL(e){return new this(e).acos()}function UL(e){return new this(e).acosh()}function FL(e,r){return new this(e).plus(r)}function ML(e){return new this(e).asin()}function LL(e){return new this(e).asinh()}function ZL(e){return new this(e).atan()}function VL(e){return new this(e).atanh()}function BL(e,r){e=new this(e),r=new this(r);var n,i=this.precision,t=this.rounding,o=i+4;return!e.s||!r.s?n=new this(NaN):!e.d&&!r.d?(n=Rr(this,o,1).times(r.s>0?.25:.75),n.s=e.s):!r.d||e.isZero()?(n=r.s<0?Rr(this,i,t):new this(0),n.s=e.s):!e.d||r.isZero()?(n=Rr(this,o,1).times(.5),n.s=e.s):r.s<0?(this.precision=o,this.rounding=1,n=this.atan(fe(e,r,o,1)),r=Rr(this,o,1),this.precision=i,this.rounding=t,n=e.s<0?n.minus(r):n.plus(r)):n=this.atan(fe(e,r,o,1)),n}function WL(e){return new this(e).cbrt()}function GL(e){return R(e=new this(e),e.e+1,2)}function HL(e,r,n){return new this(e).clamp(r,n)}function JL(e){if(!e||typeof e!="object")throw Error(bc+"Object expected");var r,n,i,t=e.defaults===!0,o=["precision",1,Ft,"rounding",0,8,"toExpNeg",-zi,0,"toExpPos",0,zi,"maxE",0,zi,"minE",-zi,0,"modulo",0,9];for(r=0;r<o.length;r+=3)if(n=o[r],t&&(this[n]=Bv[n]),(i=e[n])!==void 0)if(Ge(i)===i&&i>=o[r+1]&&i<=o[r+2])this[n]=i;else throw Error(Ut+n+": "+i);if(n="crypto",t&&(this[n]=Bv[n]),(i=e[n])!==void 0)if(i===!0||i===!1||i===0||i===1)if(i)if(typeof crypto<"u"&&crypto&&(crypto.getRandomValues||crypto.randomBytes))this[n]=!0;else throw Error(k2);else this[n]=!1;else throw Error(Ut+n+": "+i);return this}function KL(e){return new this(e).cos()}function XL(e){return new this(e).cosh()}function T2(e){var r,n,i;function t(o){var a,s,u,c=this;if(!(c instanceof t))return new t(o);if(c.constructor=t,w2(o)){c.s=o.s,W?!o.d||o.e>t.maxE?(c.e=NaN,c.d=null):o.e<t.minE?(c.e=0,c.d=[0]):(c.e=o.e,c.d=o.d.slice()):(c.e=o.e,c.d=o.d?o.d.slice():o.d);return}if(u=typeof o,u==="number"){if(o===0){c.s=1/o<0?-1:1,c.e=0,c.d=[0];return}if(o<0?(o=-o,c.s=-1):c.s=1,o===~~o&&o<1e7){for(a=0,s=o;s>=10;s/=10)a++;W?a>t.maxE?(c.e=NaN,c.d=null):a<t.minE?(c.e=0,c.d=[0]):(c.e=a,c.d=[o]):(c.e=a,c.d=[o]);return}if(o*0!==0){o||(c.s=NaN),c.e=NaN,c.d=null;return}return vc(c,o.toString())}if(u==="string")return(s=o.charCodeAt(0))===45?(o=o.slice(1),c.s=-1):(s===43&&(o=o.slice(1)),c.s=1),N2.test(o)?vc(c,o):zL(c,o);if(u==="bigint")return o<0?(o=-o,c.s=-1):c.s=1,vc(c,o.toString());throw Error(Ut+o)}if(t.prototype=E,t.ROUND_UP=0,t.ROUND_DOWN=1,t.ROUND_CEIL=2,t.ROUND_FLOOR=3,t.ROUND_HALF_UP=4,t.ROUND_HALF_DOWN=5,t.ROUND_HALF_EVEN=6,t.ROUND_HALF_CEIL=7,t.ROUND_HALF_FLOOR=8,t.EUCLID=9,t.config=t.set=JL,t.clone=T2,t.isDecimal=w2,t.abs=qL,t.acos=RL,t.acosh=UL,t.add=FL,t.asin=ML,t.asinh=LL,t.atan=ZL,t.atanh=VL,t.atan2=BL,t.cbrt=WL,t.ceil=GL,t.clamp=HL,t.cos=KL,t.cosh=XL,t.div=QL,t.exp=YL,t.floor=eZ,t.hypot=rZ,t.ln=tZ,t.log=nZ,t.log10=oZ,t.log2=iZ,t.max=aZ,t.min=sZ,t.mod=uZ,t.mul=cZ,t.pow=lZ,t.random=dZ,t.round=fZ,t.sign=mZ,t.sin=pZ,t.sinh=vZ,t.sqrt=gZ,t.sub=hZ,t.sum=yZ,t.tan=bZ,t.tanh=$Z,t.trunc=_Z,e===void 0&&(e={}),e&&e.defaults!==!0)for(i=["precision","rounding","toExpNeg","toExpPos","maxE","minE","modulo","crypto"],r=0;r<i.length;)e.hasOwnProperty(n=i[r++])||(e[n]=this[n]);return t.config(e),t}function QL(e,r){return new this(e).div(r)}function YL(e){return new this(e).exp()}function eZ(e){return R(e=new this(e),e.e+1,3)}function rZ(){var e,r,n=new this(0);for(W=!1,e=0;e<arguments.length;)if(r=new this(arguments[e++]),r.d)n.d&&(n=n.plus(r.times(r)));else{if(r.s)return W=!0,new this(1/0);n=r}return W=!0,n.sqrt()}function w2(e){return e instanceof Ne||e&&e.toStringTag===O2||!1}function tZ(e){return new this(e).ln()}function nZ(e,r){return new this(e).log(r)}function iZ(e){return new this(e).log(2)}function oZ(e){return new this(e).log(10)}function aZ(){return x2(this,arguments,-1)}function sZ(){return x2(this,arguments,1)}function uZ(e,r){return new this(e).mod(r)}function cZ(e,r){return new this(e).mul(r)}function lZ(e,r){return new this(e).pow(r)}function dZ(e){var r,n,i,t,o=0,a=new this(1),s=[];if(e===void 0?e=this.precision:cr(e,1,Ft),i=Math.ceil(e/L),this.crypto)if(crypto.getRandomValues)for(r=crypto.getRandomValues(new Uint32Array(i));o<i;)t=r[o],t>=429e7?r[o]=crypto.getRandomValues(new Uint32Array(1))[0]:s[o++]=t%1e7;else if(crypto.randomBytes){for(r=crypto.randomBytes(i*=4);o<i;)t=r[o]+(r[o+1]<<8)+(r[o+2]<<16)+((r[o+3]&127)<<24),t>=214e7?crypto.randomBytes(4).copy(r,o):(s.push(t%1e7),o+=4);o=i/4}else throw Error(k2);else for(;o<i;)s[o++]=Math.random()*1e7|0;for(i=s[--o],e%=L,i&&e&&(t=Te(10,L-e),s[o]=(i/t|0)*t);s[o]===0;o--)s.pop();if(o<0)n=0,s=[0];else{for(n=-1;s[0]===0;n-=L)s.shift();for(i=1,t=s[0];t>=10;t/=10)i++;i<L&&(n-=L-i)}return a.e=n,a.d=s,a}function fZ(e){return R(e=new this(e),e.e+1,this.rounding)}function mZ(e){return e=new this(e),e.d?e.d[0]?e.s:0*e.s:e.s||NaN}function pZ(e){return new this(e).sin()}function vZ(e){return new this(e).sinh()}function gZ(e){return new this(e).sqrt()}function hZ(e,r){return new this(e).sub(r)}function yZ(){var e=0,r=arguments,n=new this(r[e]);for(W=!1;n.s&&++e<r.length;)n=n.plus(r[e]);return W=!0,R(n,this.precision,this.rounding)}function bZ(e){return new this(e).tan()}function $Z(e){return new this(e).tanh()}function _Z(e){return R(e=new this(e),e.e+1,1)}E[Symbol.for("nodejs.util.inspect.custom")]=E.toString;E[Symbol.toStringTag]="Decimal";var Ne=E.constructor=T2(Bv);gc=new Ne(gc);hc=new Ne(hc);var wZ=12,pa=e=>new Ne(e).toSignificantDigits(wZ).toFixed();var j2=4656612873077393e-25;function Jv(e,r){let n,i;do{n=(e.nextUint32()+.5)*j2-1;let o=(e.nextUint32()+.5)*j2-1;i=n*n+o*o}while(i>1);let t=r===1/0?-2*Math.log(i):r*Math.expm1(-2*Math.log(i)/r);return n*Math.sqrt(t/i)}var dA=_t(uO(),1),fA=_t(lA(),1);var z=class extends Error{code;constructor(r,n){super(n),this.name="MeasurementError",this.code=r}};function je(e,r){if(!(e>0&&e<1))throw new z("distributions/out-of-domain",`${r}: p is ${e}, expected 0 < p < 1. Give a probability, not a percentage.`)}function Xi(e,r){if(!(e>0))throw new z("distributions/out-of-domain",`${r}: degrees of freedom are ${e}, expected a number above 0 or Infinity. Check the number of readings.`)}function Ua(e,r){if(Xi(e,r),e===1/0)throw new z("distributions/out-of-domain",`${r}: degrees of freedom are infinite, expected a finite number. Give the number of readings less one.`)}function vt(e,r){if(Number.isNaN(e))throw new z("distributions/out-of-domain",`${r}: x is NaN, expected a number. Check the step before this one.`)}function Nh(e,r){return vt(e,"chiSquareCdf"),Ua(r,"chiSquareCdf"),e<=0?0:e===1/0?1:(0,dA.default)(e,r)}function Xt(e,r){return je(e,"chiSquareQuantile"),Ua(r,"chiSquareQuantile"),(0,fA.default)(e,r)}function Qi(e,r){return Float64Array.from(e.columns,({kind:n,knownSd:i})=>n==="certificate"?i:r[n])}function Ah(e,r,n,i,t){let{m:o,q:a,squares:s,logDeterminant:u}=e,c=r.length,[l,d]=[0,0];for(let f=0;f<c;f++){let m=r[f]*a[f];for(let v=0;v<=f;v++){let h=(f===v?1:0)+r[f]*r[v]*o[f*c+v];for(let y=0;y<v;y++)h-=n[f*c+y]*n[v*c+y];n[f*c+v]=f===v?Math.sqrt(Math.max(h,Number.MIN_VALUE)):h/n[v*c+v]}for(let v=0;v<f;v++)m-=n[f*c+v]*i[v];i[f]=m/n[f*c+f],d+=i[f]*i[f],l+=2*Math.log(n[f*c+f])}return-.5*(t*Math.log(2*Math.PI)+u+l+s-d)}function Yc(e,r,n){let i=r.length,t=new Float64Array(i*i),o=new Float64Array(i),a=Ah(e,r,t,o,n),s=new Float64Array(i*i);for(let c=0;c<i;c++)for(let l=c;l>=0;l--){let d=l===c?1:0;for(let f=l+1;f<=c;f++)d-=t[f*i+l]*s[f*i+c];s[l*i+c]=d/t[l*i+l]}let u=new Float64Array(i);for(let c=0;c<i;c++){let l=0;for(let d=c;d<i;d++)l+=s[c*i+d]*o[d],s[c*i+d]=s[c*i+d]*r[c];u[c]=r[c]*l}return{effects:u,factor:s,logLikelihood:a}}var mA=["rig","tester","submission"];var pA=4,Doe=.01,vA={rig:{scale:1.5,chanceOfNone:.4},tester:{scale:1.5,chanceOfNone:.4},submission:{scale:2,chanceOfNone:.2}},Toe=4/3;function el(e,r){return vA[r].scale*(e??Doe)}function gA(e,r){let{chanceOfNone:n}=vA[r];return n/(1-n)*el(e,r)*Toe}function hA(e,{reproducibility:r,told:n}){let i=0;for(let t of mA)i-=(pA+1)/2*Math.log1p((e[t]/el(r,t))**2/pA);for(let{cause:t,relativeSd:o,degreesOfFreedom:a}of n){let s=e[t]**2;if(s===0&&o>0)return-1/0;s>0&&(i-=a/2*(Math.log(s)+o**2/s))}return i}function Yi(e,r,n){let{variants:i,starts:t,y:o,repeatability:a,columns:s}=e,u=s.length,c=new Float64Array(o.length),l=new Float64Array(i.length),d=new Float64Array(i.length),f=new Float64Array(u*u),m=new Float64Array(u),v=new Float64Array(u),[h,y]=[0,0];for(let b=0;b<i.length;b++){let[_,$]=[t[b],t[b+1]],[N,w,O]=[0,0,0];for(let k=_;k<$;k++){let D=1/(r*r+a[k]);c[k]=D,N+=D,w+=D*o[k],O-=Math.log(D)}l[b]=1/N,d[b]=w/N,n[b]===0&&(y+=O+Math.log(N),h+=joe(e,c,d[b],_,$,f,m,v),zoe(f,v,N,e,_,$));for(let k=_;k<$;k++)c[k]=c[k]/N}return{submissionSd:r,shares:c,ownVariance:l,means:d,m:f,q:m,squares:h,logDeterminant:y}}function joe(e,r,n,i,t,o,a,s){let{y:u,columnStarts:c,columnOf:l}=e,d=s.length,f=0;s.fill(0);for(let m=i;m<t;m++){let v=r[m],h=u[m]-n;f+=v*h*h;for(let y=c[m];y<c[m+1];y++){let b=l[y];a[b]=a[b]+v*h,s[b]=s[b]+v;for(let _=c[m];_<c[m+1];_++)o[b*d+l[_]]=o[b*d+l[_]]+v}}return f}function zoe(e,r,n,i,t,o){let a=r.length,s=[...new Set(i.columnOf.subarray(i.columnStarts[t],i.columnStarts[o]))];for(let u of s)for(let c of s)e[u*a+c]=e[u*a+c]-r[u]*r[c]/n}var Coe=[0,.1,.2,.35,.55,.8,1.15,1.65,2.5,4],yA=10,bA=.002,Ph=200;function xh(e,r,n){let i=$A(e,a=>qoe(e,r,a)),t=_A(e,r,n,i),o=$A(e,a=>Roe(t,i[a],a));return Foe(_A(e,r,n,o))}function $A({columns:e},r){let n=t=>t==="submission"||e.some(({kind:o})=>o===t),i=t=>n(t)?r(t):[0];return{submission:i("submission"),rig:i("rig"),tester:i("tester")}}function qoe({y:e},{reproducibility:r,told:n},i){let t=el(r,i),o=Coe.map(s=>s*t),a=Math.max(...e.map(Math.abs),...n.filter(s=>s.cause===i).map(({relativeSd:s})=>3*s));for(;o.at(-1)<3*a;)o.push(1.5*o.at(-1));return o}function Roe(e,r,n){if(r.length===1)return[...r];let i=r.map(u=>e.reduce((c,{spreads:l,weight:d})=>l[n]===u?c+d:c,0)),[t,o]=[0,r.length-1];for(let u=i[t];u<bA;u+=i[t])t+=1;for(let u=i[o];u<bA;u+=i[o])o-=1;let a=r[Math.max(0,t-1)],s=r[Math.min(r.length-1,o+1)];return Array.from({length:yA},(u,c)=>a+(s-a)*c/(yA-1))}function Uoe(e,r){return e.length===1?[1]:e.map((n,i)=>(e[Math.min(i+1,e.length-1)]-e[Math.max(i-1,0)])/2+(n===0?r:0))}function _A(e,r,n,i){let t=e.columns.length,[o,a]=[new Float64Array(t*t),new Float64Array(t)],s=y=>Uoe(i[y],gA(r.reproducibility,y)),[u,c,l]=[s("submission"),s("rig"),s("tester")],d=[],f=[];i.submission.forEach((y,b)=>{let _=Yi(e,y,n);i.rig.forEach(($,N)=>i.tester.forEach((w,O)=>{let k={submission:y,rig:$,tester:w},D=hA(k,r)+Math.log(u[b]*c[N]*l[O]);d.push(D===-1/0?D:D+Ah(_,Qi(e,k),o,a,0)),f.push(k)}))});let m=d.reduce((y,b)=>Math.max(y,b),-1/0),v=d.map(y=>Math.exp(y-m)),h=v.reduce((y,b)=>y+b,0);return f.map((y,b)=>({spreads:y,weight:v[b]/h}))}function Foe(e){let r=[],n=0;for(let{spreads:i,weight:t}of e)for(n+=t;r.length<Ph&&(r.length+.5)/Ph<=n;)r.push(i);for(;r.length<Ph;)r.push(e.at(-1).spreads);return r}var Moe=.002,Loe=.25;function SA(e,r){let n=new Uint8Array(e.variants.length),i=e.variants.flatMap((a,s)=>e.starts[s+1]-e.starts[s]>1?[s]:[]),t=Math.floor(Loe*i.length),o=xh(e,r,n);for(let a=0;a<t;a++){let s=i.filter(f=>n[f]===0),u=wA(e,o,n,s),c=s[u.indexOf(Math.min(...u))];n[c]=1;let l=xh(e,r,n),[d=1]=wA(e,l,n,[c]);if(d<Moe/i.length){o=l;continue}n[c]=0;break}return{isApart:n,spreads:o}}function wA(e,r,n,i){let t=new Float64Array(i.length),o=new Map,[a,s]=[null,[]];for(let u of r){if(u!==a){let c=o.get(u.submission)??Yi(e,u.submission,n);o.set(u.submission,c);let{effects:l}=Yc(c,Qi(e,u),0);s=i.map(d=>1-Nh(Eh(e,c,l,d),e.starts[d+1]-e.starts[d]-1)),a=u}s.forEach((c,l)=>t[l]=t[l]+c)}return[...t].map(u=>u/r.length)}function Eh(e,r,n,i){let{starts:t,y:o,columnStarts:a,columnOf:s}=e,[u,c]=[0,0];for(let l=t[i];l<t[i+1];l++){let d=o[l];for(let f=a[l];f<a[l+1];f++)d-=n[s[f]];u+=r.shares[l]*d,c+=r.shares[l]*d*d}return Math.max(0,c-u*u)/r.ownVariance[i]}var IA=4;function Qt(e,{level:r,effects:n}){let{design:i,isApart:t}=e,{starts:o,repeatability:a,degreesOfFreedom:s}=i,u=Float64Array.from(r.ownVariance),c=new Float64Array(u.length);for(let l=0;l<u.length;l++){if(t[l]===1){let f=IA+o[l+1]-o[l]-1;u[l]=u[l]*(IA+Eh(i,r,n,l))/f,c[l]=f;continue}let d=0;for(let f=o[l];f<o[l+1];f++)d+=(r.shares[f]**2*a[f])**2/s[f];c[l]=d===0?1/0:u[l]**2/d}return{variance:u,degreesOfFreedom:c}}function kA(e,r,n){let i=e.means.length,t=new Float64Array(r*i),o=Zoe(e,r,n);return e.atoms.forEach((a,s)=>{let u=o[s];u.length>0&&Voe(e,a,u,t,n)}),t}function Zoe({atoms:e,atomCount:r},n,i){let t=e.flatMap(({count:a},s)=>Array.from({length:a},()=>s)),o=e.map(()=>[]);for(let a=0;a<n;a++)o[t[Math.floor(i.nextUniform()*r)]].push(a);return o}function Voe(e,r,n,i,t){let{starts:o,columns:a,columnStarts:s,columnOf:u}=e.design,{factor:c}=r,{shares:l}=r.level,[d,f]=[e.means.length,a.length],{sds:m,degreesOfFreedom:v}=Boe(Qt(e,r)),h=new Float64Array(f),y=new Float64Array(f),b=r.means.map(($,N)=>$-e.means[N]),_=e.means.map($=>1/(1+$));for(let $ of n){for(let w=0;w<f;w++)h[w]=Jv(t,1/0);for(let w=0;w<f;w++){let O=0;for(let k=w;k<f;k++)O+=c[w*f+k]*h[k];y[w]=O}let N=$*d;for(let w=0;w<d;w++){let O=b[w]+m[w]*Jv(t,v[w]);for(let k=o[w];k<o[w+1];k++){let D=0;for(let F=s[k];F<s[k+1];F++)D+=y[u[F]];O-=l[k]*D}i[N+w]=O*_[w]}}}var Boe=({variance:e,degreesOfFreedom:r})=>({sds:e.map(Math.sqrt),degreesOfFreedom:r});var Woe=.9999999999999999;function OA(e){return new Dh(e)}var Dh=class{s0;s1;s2;s3;constructor([r,n,i,t]){[this.s0,this.s1,this.s2,this.s3]=[r|0,n|0,i|0,t|0]}nextUint32(){let r=Math.imul(this.s1,5),n=this.s1<<9;return this.s2^=this.s0,this.s3^=this.s1,this.s1^=this.s2,this.s0^=this.s3,this.s2^=n,this.s3=this.s3<<11|this.s3>>>21,Math.imul(r<<7|r>>>25,9)>>>0}nextUniform(){let r=this.nextUint32()>>>5,n=this.nextUint32()>>>6;return Math.min((r*67108864+n+.5)/9007199254740992,Woe)}};function NA(e){let r=/^[0-9a-f]{64}$/i.test(e)?(e.match(/.{8}/g)??[]).map(i=>Number.parseInt(i,16)):[],n=[0,1,2,3].map(i=>((r[i]??0)^(r[i+4]??0))>>>0);if(n.every(i=>i===0))throw new z("random/not-a-digest",`seedFromDigest: found "${e}", expected 64 hexadecimal digits whose halves differ. Give the SHA-256 digest of the inputs.`);return n}function rl(e){let r=new Float64Array(e),n=new Uint32Array(r.buffer),i=4095;return{keys:r,writePlaces(t,o){for(let s=0;s<e;s++)r[s]=r[s]+0,n[2*s]=n[2*s]&~i|s;r.sort();let a=0;for(let s=0;s<e;s++)s>0&&n[2*s+1]===n[2*s-1]&&((n[2*s]^n[2*s-2])&~i)===0||(a=s+1),t[o+(n[2*s]&i)]=a}}}function Yt(e,r){let n=e.length,i=new Uint16Array(r.length),t=rl(n);for(let o=0;o<r.length;o+=n){for(let a=0;a<n;a++)t.keys[a]=-(e[a]+r[o+a]);t.writePlaces(i,o)}return i}function AA(e,r){let n=e.length/r;return Array.from({length:r},(i,t)=>{let[o,a]=[0,0];for(let s=t;s<e.length;s+=r)e[s]===1&&(o+=1),e[s]<=5&&(a+=1);return{ofFirst:o/n,ofFirstFive:a/n}})}function PA(e,r,n,i){let t=0;for(let o=0;o<e.length;o+=r){let[a,s]=[e[o+n],e[o+i]];t+=a<s?2:a===s?1:0}return t/2/(e.length/r)}function xA(e,r,n){let i=new Float64Array(r*r);for(let o=0;o<e.length;o+=r)for(let a=0;a<r;a++){let s=e[o+n[a]];for(let u=a+1;u<r;u++){let c=e[o+n[u]];i[a*r+u]=i[a*r+u]+(s<c?1:s===c?.5:0)}}let t=e.length/r;for(let o=0;o<r;o++){i[o*r+o]=.5;for(let a=o+1;a<r;a++)i[o*r+a]=i[o*r+a]/t,i[a*r+o]=1-i[o*r+a]}return i}var Fa=30,EA=40,en=Ne.clone({precision:60,rounding:Ne.ROUND_HALF_EVEN,toExpNeg:-60,toExpPos:80,minE:-9e15,maxE:9e15,defaults:!0});function tl(e,r){if(!(typeof e=="number"?Number.isFinite(e):/^[+-]?\d+(\.\d+)?([eE][+-]?\d+)?$/.test(e.trim())))throw new z("units/not-a-number",`${r}: found "${String(e).slice(0,40)}", expected a finite number. Check the step before this one.`);return new en(typeof e=="number"?e:e.trim())}var Goe=14;function eo(e,r){let n=tl(e,r);return typeof e=="number"?n.toSignificantDigits(Goe):n}var DA=40;function J(e,r){if(!Number.isInteger(r)||r<0||r>DA)throw new z("units/bad-places",`roundHalfEven: found ${r} places, expected a whole number from 0 to ${DA}.`);let n=eo(e,"roundHalfEven").toDecimalPlaces(r);return(n.isZero()?n.abs():n).toFixed(r)}function nl(e,r,n,i){let t=new Uint16Array(e.length),o=rl(n);for(let a=0;a<e.length;a+=n){for(let s=0;s<n;s++)o.keys[s]=e[a+s];o.writePlaces(t,a),i==="mostFirsts"&&Hoe(t,r,n,a)}return t}function Hoe(e,r,n,i){let t=new Map;for(let o=0;o<n;o++)t.set(e[i+o],[...t.get(e[i+o])??[],o]);for(let[o,a]of t){if(a.length<2)continue;let s=a.map(u=>r.map(c=>c.places[i+u]).sort((c,l)=>c-l));a.forEach((u,c)=>{e[i+u]=o+s.filter(l=>Joe(l,s[c])).length})}}function Joe(e,r){let n=e.findIndex((i,t)=>i!==r[t]);return n!==-1&&e[n]<r[n]}function Ln(e,r,n){let i=new Float64Array(e[0]?.places.length??0);if(n==="pairwiseWins"){for(let t=0;t<i.length;t+=r)Xoe(i,e,r,t);return i}for(let{weight:t,places:o,goodness:a}of e)if(n==="meanStandardScore")for(let s=0;s<i.length;s+=r)Koe(i,a,t,r,s);else{let s=n==="sumOfPlaces"?1:t;for(let u=0;u<i.length;u++)i[u]=i[u]+s*o[u]}return i}function Koe(e,r,n,i,t){let o=0;for(let l=0;l<i;l++)o+=r[t+l];let a=o/i,s=0,u=!0;for(let l=0;l<i;l++)s+=(r[t+l]-a)**2,u&&=r[t+l]===r[t];if(u)return;let c=n/Math.sqrt(s/(i-1));for(let l=0;l<i;l++)e[t+l]=e[t+l]-c*(r[t+l]-a)}function Xoe(e,r,n,i){for(let t=1;t<n;t++)for(let o=0;o<t;o++){let a=0;for(let{places:u}of r)a+=Math.sign(u[i+o]-u[i+t]);let s=(1+Math.sign(a))/2;e[i+t]=e[i+t]-s,e[i+o]=e[i+o]-(1-s)}}var Qoe=3,Th=1e6;function Ma(e){let{entries:r,combine:n,countPlaces:i,tieBreak:t}=e,o=(c,l)=>!Number.isNaN(l[c]),a=r.flatMap(({isExcluded:c},l)=>!c&&e.categories.every(({goodness:d})=>o(l,d))?[l]:[]),s=e.categories.map(({weight:c,goodness:l})=>{let d=r.flatMap(({isExcluded:h},y)=>(!h||i==="beforeExclusions")&&o(y,l)?[y]:[]),f=Float64Array.from(d,h=>l[h]),m=Yt(f,new Float64Array(f.length)),v=new Map(d.map((h,y)=>[h,m[y]]));return{weight:c,places:Uint16Array.from(a,h=>v.get(h)),goodness:Float64Array.from(a,h=>l[h])}}),u=Ln(s,a.length,n);return{ranked:a,categories:s,scores:u,places:nl(Yoe(u,e),s,a.length,t)}}function Yoe(e,{combine:r,categories:n}){if(r==="sumOfPlaces"||r==="pairwiseWins")return e;let i=n.reduce((o,{weight:a})=>o+a,0),t=r==="weightedSumOfPlaces"?Th:Math.max(1,i);return e.map(o=>Number(J(o/t,Qoe)))}var TA=1e4;function jA(e,r,n,i){let t=e.categories.map(u=>Ln([{...u,weight:1}],r.length,n==="meanStandardScore"?n:"sumOfPlaces")),o=e.categories.map(({weight:u})=>n==="sumOfPlaces"?1:u),a=o.reduce((u,c)=>u+c,0),s=o.map(u=>a===0?1/o.length:u/a);return{firstPlaces:[...eae(t,r.length,i)].map((u,c)=>({id:r[c],share:u})).filter(({share:u})=>u>0).sort((u,c)=>c.share-u.share||(u.id<c.id?-1:1)),smallestChange:rae(t,s,r,e.places)}}function eae(e,r,n){let i=new Float64Array(r),t=new Float64Array(e.length),o=new Float64Array(r);for(let a=0;a<TA;a++){for(let c=0;c<t.length;c++)t[c]=-Math.log(n.nextUniform());o.fill(0),e.forEach((c,l)=>{for(let d=0;d<r;d++)o[d]=o[d]+t[l]*c[d]});let s=1/0;for(let c=0;c<r;c++)o[c]<s&&(s=o[c]);let u=0;for(let c=0;c<r;c++)o[c]===s&&(u+=1);for(let c=0;c<r;c++)o[c]===s&&(i[c]=i[c]+1/u)}return i.map(a=>a/TA)}function rae(e,r,n,i){let t=i.indexOf(1),o=null;return n.forEach((a,s)=>{if(s===t)return;let u=i[s]===1?0:tae(e.map(c=>c[s]-c[t]),r);u!==null&&(o===null||u<o.weightMoved)&&(o={weightMoved:u,id:a})}),o}function tae(e,r){let n=e.reduce((o,a,s)=>o+r[s]*a,0);if(n<=0)return 0;let i=Math.min(...e);if(i>0)return null;let t=0;for(let o of e.map((a,s)=>s).sort((a,s)=>e[s]-e[a])){let a=e[o]-i;if(a<=0)break;if(r[o]*a>=n)return t+n/a;t+=r[o],n-=r[o]*a}return t}var nae=50;function zA(e,r,n){let i=Ma(e),t=(u,c,l)=>({kind:u,name:c,...oae(e,i,l,Ma(l),u==="entry"?c:null)}),a=[...(e.categories.length<2?[]:e.categories).map(({code:u})=>t("category",u,{...e,categories:e.categories.filter(c=>c.code!==u)})),...r.map(u=>t("party",u.name,u.table)),...e.entries.flatMap(({id:u,isExcluded:c},l)=>c?[]:[t("entry",u,iae(e,l))]).filter(({swappedPairs:u})=>u>0)],s=e.combine!=="pairwiseWins"&&i.ranked.length>0&&e.categories.length>0;return{leftOut:a,weights:s?jA(i,i.ranked.map(u=>e.entries[u].id),e.combine,n):null}}function iae(e,r){return{...e,entries:e.entries.filter((n,i)=>i!==r),categories:e.categories.map(n=>({...n,goodness:n.goodness.filter((i,t)=>t!==r)}))}}function oae(e,r,n,i,t){let o=new Map(i.ranked.map((c,l)=>[n.entries[c].id,i.places[l]])),a=r.ranked.flatMap((c,l)=>{let d=e.entries[c].id,f=o.get(d);return f===void 0?[]:[{id:d,before:r.places[l],now:f}]}),s=0,u=[];for(let c of a)for(let l of a)c.before>l.before&&c.now<l.now&&(s+=1,u.length<nae&&u.push([c.id,l.id]));return{first:[...o].flatMap(([c,l])=>l===1?[c]:[]),swappedPairs:s,swaps:u,dropped:r.ranked.map(c=>e.entries[c].id).filter(c=>!o.has(c)&&c!==t)}}function La(e,r,n){if(n.length===r&&n.every((a,s)=>a===s))return e;let i=r===0?0:e.length/r,t=e instanceof Float64Array?new Float64Array(i*n.length):new Uint16Array(i*n.length),o=0;for(let a=0;a<i;a++)for(let s of n)t[o++]=e[a*r+s];return t}function il(e,r){let n=r.length,i={variance:new Float64Array(n*n),fourth:new Float64Array(n*n),welch:new Float64Array(n*n)};for(let t of e.atoms)aae(e,t,r,i);for(let t=0;t<n;t++)for(let o=0;o<=t;o++){let a=t*n+o,s=o*n+t;i.fourth[a]=i.fourth[s]=Math.max(0,i.fourth[a]-3*i.variance[a]**2),i.variance[s]=i.variance[a],i.welch[s]=i.welch[a]}return i}function aae(e,r,n,{variance:i,fourth:t,welch:o}){let a=n.length,s=e.design.columns.length,u=r.count/e.atomCount,c=Qt(e,r),l=jh(e,r,n),d=Float64Array.from(n,v=>c.variance[v]/(1+e.means[v])**2),f=Float64Array.from(n,(v,h)=>d[h]**2/c.degreesOfFreedom[v]),m=Float64Array.from(n,v=>(r.means[v]-e.means[v])/(1+e.means[v]));for(let v=0;v<a;v++)for(let h=0;h<=v;h++){let y=v!==h,b=y?d[v]+d[h]:d[v];for(let w=0;w<s;w++){let O=y?l[v*s+w]-l[h*s+w]:l[v*s+w];b+=O*O}let _=y?m[v]-m[h]:m[v],$=_*_,N=v*a+h;i[N]=i[N]+u*(b+$),t[N]=t[N]+u*(3*b*b+6*b*$+$*$),o[N]=o[N]+u*(y?f[v]+f[h]:f[v])}}function jh(e,r,n){let{design:i,means:t}=e,{level:o,factor:a}=r,{starts:s,columns:u,columnStarts:c,columnOf:l}=i,d=u.length,f=new Float64Array(n.length*d);return n.forEach((m,v)=>{let h=1/(1+t[m]);for(let y=s[m];y<s[m+1];y++)for(let b=c[y];b<c[y+1];b++){let _=l[b]*d;for(let $=l[b];$<d;$++)f[v*d+$]=f[v*d+$]+h*o.shares[y]*a[_+$]}}),f}function rn(e,r,n){if(!(e>0))return{standardUncertainty:0,degreesOfFreedom:1/0};let i=e*e,t=Math.max(0,r/i),o=4+6/t,a=t===0?1:(o-2)/o,s=(t===0?0:1/o)+n/i;return{standardUncertainty:Math.sqrt(e*a),degreesOfFreedom:s===0?1/0:1/s}}function ol(e,r){let n=e.length,[i,t,o]=[new Float64Array(n*n),new Float64Array(n*n),new Float64Array(n*n)];for(let{fit:u,power:c,positions:l}of al(e,r)){let d=il(u,l);for(let f=0;f<n*n;f++)i[f]=i[f]+c**2*d.variance[f],t[f]=t[f]+c**4*d.fourth[f],o[f]=o[f]+c**4*d.welch[f]}let a=new Float64Array(n*n);return{standardUncertainty:i.map((u,c)=>{let l=rn(u,t[c],o[c]);return a[c]=l.degreesOfFreedom,l.standardUncertainty}),degreesOfFreedom:a}}function qA(e,r,n,i){let t=e.length,o=new Float64Array(i*t);for(let{key:a,power:s,positions:u,fit:c}of al(e,r)){let l=n.get(a),d=c.means.length;for(let f=0;f<i;f++)for(let m=0;m<t;m++)o[f*t+m]=o[f*t+m]+s*l[f*d+u[m]]}return o}function al(e,r){return(e[0]?.factors??[]).map(({series:n,power:i},t)=>{let o=Object.hasOwn(r,n)?r[n]:void 0;if(o?.kind!=="fitted")throw CA(n,Object.keys(r));let a=new Map(o.design.variants.map((u,c)=>[u,c])),s=e.map(({factors:u})=>{let c=u[t];if(c?.series!==n||c.power!==i||u.length!==e[0].factors.length)throw sae(n);let l=a.get(c.variant);if(l===void 0)throw CA(`${n} of ${c.variant}`,o.design.variants);return l});return{fit:o,key:n,power:i,positions:s}})}var CA=(e,r)=>new z("ranking/unknown-source",`productTails: found "${e}", expected one of: ${r.join(", ")||"none"}. Fit that series first.`),sae=e=>new z("ranking/bad-evidence",`productTails: found entries that are not all made of ${e} with one power, expected one recipe for a category. Split the category.`);function zh(e){return Math.round(Number(e.weight)*Th)}function Ch(e,r){return Number(J(r,e.places))}function ro(e,r){if(r>uae)return e;let n=(8*r+1)/(8*r+3)*Math.sqrt(r*Math.log1p(e*e/r));return e<0?-n:n}var uae=1e6;function Za(e,{n:r,precision:n,degreesOfFreedom:i},t){let o=e.length/r,a=new qh(Math.max(1,o-Math.ceil(t*(o+1))+1)),[s,u]=cae(n,r),c=new Uint16Array(r),l=new Uint16Array(r);for(let d=0;d<e.length;d+=r){let[f,m]=[1/0,-1/0];for(let _=d;_<d+r;_++){let $=e[_];$<f&&(f=$),$>m&&(m=$)}let v=a.smallest,[h,y]=[0,0];for(let _=0;_<r;_++)(e[d+_]-f)*s[_]>v&&(c[h++]=_),(m-e[d+_])*u[_]>v&&(l[y++]=_);let b=v;for(let _=0;_<h;_++){let $=c[_],N=e[d+$];if(!((N-f)*s[$]<=b))for(let w=0;w<y;w++){let O=$*r+l[w],k=(N-e[d+l[w]])*n[O];if(k<=b)continue;let D=ro(k,i[O]);D>b&&(b=D)}}a.add(b)}return a.smallest}function cae(e,r){let n=new Float64Array(r),i=new Float64Array(r);for(let t=0;t<r;t++)for(let o=0;o<r;o++){let a=e[t*r+o];a>n[t]&&(n[t]=a),a>i[o]&&(i[o]=a)}return[n,i]}var qh=class{heap;constructor(r){this.heap=new Float64Array(r)}get smallest(){return this.heap[0]}add(r){let{heap:n}=this;if(r<=n[0])return;let i=0;for(;;){let t=2*i+1;if(t>=n.length||(t+1<n.length&&n[t+1]<n[t]&&(t+=1),n[t]>=r))break;n[i]=n[t],i=t}n[i]=r}};function RA(e,r){let{goodness:n,errors:i,differenceUncertainty:t,degreesOfFreedom:o}=e,a=n.length,s=new Uint8Array(a*a),u={n:a,precision:new Float64Array(a*a),degreesOfFreedom:o},c=0;for(let d=0;d<a;d++)for(let f=0;f<a;f++){let m=t[d*a+f];d!==f&&(m>0?(u.precision[d*a+f]=1/m,c+=1):n[d]>n[f]&&(s[d*a+f]=1))}if(c===0)return{isAhead:s,firstCritical:null,criticalValue:null};let l=Za(i,u,r);for(let d=l;;){let f=lae(n,u,s,d);if(f===0||f===c)return{isAhead:s,firstCritical:l,criticalValue:d};c-=f,d=Za(i,u,r)}}function lae(e,{n:r,precision:n,degreesOfFreedom:i},t,o){let a=0;for(let s=0;s<r;s++)for(let u=0;u<r;u++){let c=s*r+u;n[c]!==0&&(ro((e[s]-e[u])*n[c],i[c])<=o||(t[c]=1,n[c]=n[u*r+s]=0,a+=2))}return a}var pP=_t(BA(),1),vP=_t(mP(),1);function gP(e){return vt(e,"normalCdf"),(0,pP.default)(e,0,1)}function Va(e){return je(e,"normalQuantile"),(0,vP.default)(e,0,1)}function hP(e,{firstCritical:r,isAhead:n},i){let{goodness:t,differenceUncertainty:o,degreesOfFreedom:a,errors:s}=e,u=t.length,c=new Uint8Array(u),l=Va(i);for(let d=0;d<u;d++){let[f,m]=[0,!1];for(let h=0;h<u;h++){let y=o[h*u+d];h!==d&&(y===0?m||=n[h*u+d]===1:f=Math.max(f,ro((t[h]-t[d])/y,a[h*u+d])))}if(m)continue;let v=f>l&&f<=(r??0);(f<=l||v&&f<=Xae(d,s,o,a,i))&&(c[d]=1)}return c}function Xae(e,r,n,i,t){let o=Math.sqrt(n.length),a=new Float64Array(o*o);for(let s=0;s<o;s++){let u=n[s*o+e];u>0&&(a[s*o+e]=1/u)}return Za(r,{n:o,precision:a,degreesOfFreedom:i},t)}function yP(e,r){let n=r.length,i=new Uint16Array(n),t=Qae(e,n),o=r.map((a,s)=>s).sort((a,s)=>t[a]-t[s]);for(let a of o){let s=1;for(let u=0;u<n;u++)e[u*n+a]===1&&i[u]>=s&&(s=i[u]+1);i[a]=s}return r.map((a,s)=>{let u=0;for(let c=0;c<n;c++)u+=e[s*n+c];return{low:Math.min(a,1+t[s]),high:n-u,group:i[s]}})}function Qae(e,r){let n=new Uint16Array(r);for(let i=0;i<r;i++)for(let t=0;t<r;t++)n[t]=n[t]+e[i*r+t];return n}var Yae=150;function sl(e){let{ids:r,published:n,goodness:i,errors:t,places:o,differenceUncertainty:a,level:s,hasPairs:u=!1}=e,c=r.length,l=[...e.brokenPlaces??Yt(n,new Float64Array(c))],d=e.degreesOfFreedom??new Float64Array(c*c).fill(1/0),f={goodness:i,errors:t,differenceUncertainty:a,degreesOfFreedom:d},m=RA(f,s),{isAhead:v,criticalValue:h}=m,y=hP(f,m,s),b=yP(v,l),_=AA(o,c),$=r.map((w,O)=>O).sort((w,O)=>l[w]-l[O]||(r[w]<r[O]?-1:1)),N=$.map((w,O)=>{let k=$[O+1];return{id:r[w],place:l[w],...b[w],couldBeFirst:y[w]===1,chanceOfFirst:_[w].ofFirst,chanceOfFirstFive:_[w].ofFirstFive,chanceAheadOfNext:k===void 0?null:PA(o,c,w,k)}});return{criticalValue:h,rows:N,pairChances:u&&c<=Yae?xA(o,c,$):null}}var ese=2e3;function bP(e,r,n,i,t){let o=e.length;if(o===0||n.length===0)return{criticalValue:null,rows:[],pairChances:null};let a=n.map(d=>d.found),s=nl(Ln(a,o,i.combine),a,o,i.tieBreak),u=n.map(d=>d.settled),c=rse(Ln(u,o,i.combine),o),l=r.scores.map(d=>-d);return sl({hasPairs:!0,ids:e,published:l,goodness:l,errors:c,places:s,differenceUncertainty:tse(c,o),level:t,brokenPlaces:r.places})}function rse(e,r){let n=e.length/r,i=new Float64Array(e.length);for(let t=0;t<r;t++){let o=0;for(let s=t;s<e.length;s+=r)o+=e[s];let a=o/n;for(let s=t;s<e.length;s+=r)i[s]=a-e[s]}return i}function tse(e,r){let n=Math.min(ese,e.length/r),i=Array.from({length:r},(o,a)=>Float64Array.from({length:n},(s,u)=>e[u*r+a])),t=new Float64Array(r*r);for(let o=0;o<r;o++)for(let a=0;a<o;a++){let[s,u]=[i[o],i[a]],c=0;for(let l=0;l<n;l++)c+=(s[l]-u[l])**2;t[o*r+a]=t[a*r+o]=Math.sqrt(c/n)}return t}function ve(e,r,n){if(!(e>0&&e<1/0))throw new z("figures/not-positive",`${n}: ${r} is ${e}, expected a finite number above 0. Correct the reading.`)}function gt(e,r,n){if(!(e>=0&&e<1/0))throw new z("figures/negative",`${n}: ${r} is ${e}, expected a finite number of 0 or more. Correct the reading.`)}function Dr(e,r,n){if(!Number.isFinite(e))throw new z("measurement/not-a-number",`${n}: ${r} is ${e}, expected a finite number. Check the step before this one.`)}function Ae(e){let r=0,n=0;for(let i of e){let t=r+i;n+=Math.abs(r)>=Math.abs(i)?r-t+i:i-t+r,r=t}return r+n}function ye(e,r,n){if(e.length<r)throw new z("measurement/too-few-readings",`${n}: found ${e.length} readings, expected at least ${r}. Add readings or leave this figure out.`);let i=e.findIndex(t=>!Number.isFinite(t));if(i>=0)throw new z("measurement/not-a-number",`${n}: reading ${i+1} is ${String(e[i])}, expected a finite number. Correct or invalidate that reading.`)}function X(e){ye(e,1,"mean");let r=Ae(e)/e.length,n=r+Ae(e.map(i=>i-r))/e.length;if(!Number.isFinite(n))throw new z("measurement/not-a-number","mean: the sum leaves the number range. Check the unit of the readings.");return n}var nse=.99;function $P(e,r){let n=e.length;if(n<2)return e;let i=0;for(let u of r)i+=u*u;if(i===0)return e;Dr(i,"uncertainty of the differences","settledValues");let t=X([...e]),o=0;for(let u of e)o+=(u-t)**2;let a=Xt(nse,n-1)/(n-1)*(i/(2*n)),s=o===0?0:Math.max(0,1-a/o);return e.map(u=>t+Math.sqrt(s)*(u-t))}var Zh=1e4,_P={kind:"unplaced",reason:"nothing-known-of-effects"};function wP(e){let{draws:r=Zh,level:n=.95}=e;fse(e,r);let i=OA(NA(e.digest)),t={...e,entries:[...e.entries].sort((f,m)=>f.id<m.id?-1:1),categories:[...e.categories].sort((f,m)=>f.code<m.code?-1:1)},o=ise(e.series,r,i),a=SP(t),s=Ma(a),u=s.ranked.map(f=>a.entries[f].id),c=t.categories.map(f=>({code:f.code,...ose(f,t,{drawn:o,draws:r,level:n,rankedIds:u})})),l=c.flatMap(f=>f.forOverall??[]),d=l.length===c.length;return{draws:r,level:n,categories:Object.fromEntries(c.map(({code:f,certainty:m})=>[f,m])),overall:d?{kind:"placed",...bP(u,s,l,e,n)}:_P,sensitivity:zA(a,dse(t),i)}}function ise(e,r,n){let i=new Map;for(let t of Object.keys(e).sort()){let o=e[t];o.kind==="fitted"&&i.set(t,kA(o,r,n))}return i}function ose(e,{entries:r,series:n,countPlaces:i,combine:t},{drawn:o,draws:a,level:s,rankedIds:u}){let c=r.filter(({isExcluded:D})=>!D||i==="beforeExclusions").flatMap(({id:D,isExcluded:F,results:re})=>re[e.code]?[{id:D,isExcluded:F,evidence:re[e.code]}]:[]),l=c.map(D=>D.evidence);if(l.some(D=>ase(D,n)))return{certainty:_P,forOverall:null};let d=c.length,f=e.direction==="more"?1:-1,m=qA(l,n,o,a);if(f<0)for(let D=0;D<m.length;D++)m[D]=-m[D];let v=Float64Array.from(l,({value:D})=>f*Math.log(D)),h=Yt(v,m),y=ol(l,n),b=c.flatMap(({isExcluded:D},F)=>D?[]:[F]),_=D=>b.length===d?D:use(D,d,b),$=b.length===d?{goodness:v,errors:m,places:h}:sse(v,m,d,b),N=sl({ids:b.map(D=>c[D].id),published:Float64Array.from(b,D=>f*Ch(e,l[D].value)),...$,differenceUncertainty:_(y.standardUncertainty),degreesOfFreedom:_(y.degreesOfFreedom),level:s}),w=u.map(D=>c.findIndex(F=>F.id===D)),O=$P(v,cse(y.standardUncertainty,d)),k=(D,F)=>({weight:zh(e),places:La(F,d,w),goodness:t==="meanStandardScore"?La(lse(D,m,f),d,w):new Float64Array(0)});return{certainty:{kind:"placed",...N},forOverall:{found:k(v,h),settled:k(O,Yt(O,m))}}}var ase=({factors:e},r)=>e.some(n=>r[n.series]?.kind==="values-only");function sse(e,r,n,i){let t={goodness:La(e,n,i),errors:La(r,n,i)};return{...t,places:Yt(t.goodness,t.errors)}}var use=(e,r,n)=>Float64Array.from(n.flatMap(i=>n.map(t=>e[i*r+t])));function cse(e,r){let n=Float64Array.from(e);for(let i=0;i<r;i++)n[i*r+i]=0;return n}var lse=(e,r,n)=>r.map((i,t)=>n*Math.exp(n*(i+e[t%e.length])));function SP({entries:e,categories:r,combine:n,countPlaces:i,tieBreak:t},o=({value:a})=>a){let a=s=>Float64Array.from(e,({results:u})=>{let c=u[s.code],l=c?o(c):null;return l===null?NaN:(s.direction==="more"?1:-1)*Ch(s,l)});return{combine:n,countPlaces:i,tieBreak:t,entries:e.map(({id:s,isExcluded:u})=>({id:s,isExcluded:u})),categories:r.map(s=>({code:s.code,weight:zh(s),goodness:a(s)}))}}function dse(e){return[...new Set(e.entries.flatMap(({results:n})=>Object.values(n).flatMap(i=>Object.keys(i?.without??{}))))].sort().map(n=>({name:n,table:SP(e,({value:i,without:t})=>{let o=t[n];return o===void 0?i:o})}))}function fse({entries:e},r){if(!(Number.isInteger(r)&&r>=Zh))throw new z("ranking/too-few-draws",`rankByModel: found ${r} draws, expected at least ${Zh}. Draw more.`);for(let{id:n,results:i}of e){let t=Object.entries(i).find(([,o])=>o&&!(o.value>0&&o.value<1/0));if(t)throw new z("ranking/bad-evidence",`rankByModel: entry ${n} in category ${t[0]} is ${t[1].value}, expected above 0. Leave the entry out of the category.`)}}var mse={breakingForce:["breakingForce"],diameterAlongStations:["wideDiameter","narrowDiameter"],linearDensity:["mass","length"]},pse=e=>({condition:e.kind==="breakingForce"&&e.treatment?"treated":"untreated",roles:mse[e.kind],stations:e.kind==="diameterAlongStations"?e.stations:1}),tn=e=>pse(e).condition==="treated",ul=e=>e.find(r=>r.kind==="breakingForce"&&!tn(r));var cl=["places","values","intervals","chances","movement","claims","evidence"],Vh={place:"places",score:"places",value:"values",interval:"intervals",group:"chances",chance:"chances",movement:"movement",claim:"claims",specimens:"evidence",submissions:"evidence",testers:"evidence",rigs:"evidence"},IP=Object.keys(Vh),Bh=e=>{let r=e.split(", ").at(-1)??"";return r in Vh?r:"claim"},ll=e=>Vh[Bh(e)]??"claims";var kP=p.strictObject({code:p.string().describe("Stable code"),what:p.string().describe("What it is, in words"),count:p.int().describe("How many"),references:p.array(p.string()).describe("Which, by reference or slug"),remedy:p.string().describe("What to do, and where")});var Ie=p.string().max(60).regex(/^[a-z0-9]+(-[a-z0-9]+)*$/,"Use lower-case letters, digits and single hyphens").describe("Readable identifier; never changes"),Zn=p.string().trim().min(1).max(2e3),vse=p.int().describe("Number in the ETag"),fl=["breakingForce","diameter","outOfRoundness","linearDensity","apparentStress","retention","strengthHonesty"],OP={breakingForce:"N",diameter:"mm",outOfRoundness:"%",linearDensity:"tex",apparentStress:"MPa",retention:"%",strengthHonesty:"%"},gse=p.strictObject({code:Ie,name:Zn.describe("Name on the page"),quantity:p.enum(fl).describe("Quantity that is ranked"),method:Ie.describe("Method whose readings are ranked"),series:Ie.describe("Code of its series: the treated one of a retention, the force of a stress or an honesty"),section:p.strictObject({method:Ie.describe("Method that measures the diameter"),series:Ie.describe("Code of its series")}).nullable().default(null).describe("Diameters that a stress is taken over; null of every other quantity"),unit:p.string().describe("SI unit"),places:p.int().min(0).max(6).describe("Decimal places of the published value"),tradeUnit:p.string().nullable().describe("Trade unit"),tradePlaces:p.int().min(0).max(6).nullable().describe("Decimal places in the trade unit"),direction:p.enum(["more","less"]).describe("Whether more or less is better"),weight:p.string().regex(/^\d+(\.\d+)?$/).describe("Weight, a decimal"),conditions:Zn.describe("Conditions that define the category"),minimum:p.strictObject({specimens:p.int().min(1).max(1e3).describe("Valid specimens"),testers:p.int().min(1).max(100).describe("Testers"),rigs:p.int().min(1).max(100).describe("Rigs")}).default({specimens:1,testers:1,rigs:1}).describe("Least evidence of a result that counts")}),AP=p.strictObject({combine:p.enum(["sumOfPlaces","weightedSumOfPlaces","meanStandardScore","pairwiseWins"]).describe("How category results become a score"),countPlaces:p.enum(["beforeExclusions","afterExclusions"]).describe("When category places are counted"),tieBreak:p.enum(["none","mostFirsts"]).describe("Tie-break"),categories:p.array(gse).min(1).describe("Categories in order")}).describe("Rules of the scheme"),hse=AP.superRefine(({categories:e},r)=>{e.forEach(({code:n,quantity:i,section:t,unit:o},a)=>{let s=(u,c)=>{r.addIssue({code:"custom",path:["categories",a,u],message:c})};e.findIndex(u=>u.code===n)<a&&s("code",`Category "${n}" is there twice; give each its own code.`),i==="apparentStress"!=(t!==null)&&s("section","A stress names the method and series of the diameters that it is taken over; no other quantity does."),o!==OP[i]&&s("unit",`Found "${o}", expected ${OP[i]}: ${i} is computed in it.`)})}),o7e=p.strictObject({slug:Ie,number:p.int().min(1),name:Zn,words:Zn,rules:hse}),yse=p.strictObject({slug:Ie,number:p.int(),name:p.string(),words:p.string(),rules:AP}),a7e=p.strictObject({items:p.array(yse),nextCursor:p.string().nullable()}),dl=p.strictObject({slug:Ie,number:p.int().min(1)}),PP={name:Zn,scheme:dl,opensOn:p.iso.date(),closesOn:p.iso.date(),previous:Ie.nullable().describe("Edition that movement is told against"),methods:p.array(dl).min(1).max(100).describe("Method versions to pin")},s7e=p.strictObject({slug:Ie,...PP}).refine(e=>e.closesOn>=e.opensOn,{message:"The edition closes before it opens",path:["closesOn"]}),u7e=p.strictObject(PP).partial().refine(e=>Object.keys(e).length>0,{message:"Nothing to change; send at least one field."}),xP=p.array(Ie).min(1).max(2e3),c7e=p.strictObject({variants:xP}),l7e=p.strictObject({reason:Zn.describe("Why, in words that readers see"),variants:xP.optional().describe("Further entries"),methods:p.array(dl).min(1).max(100).optional().describe("Versions of methods that were forgotten"),closesOn:p.iso.date().optional().describe("A later closing day")}).refine(({reason:e,...r})=>Object.keys(r).length>0,{message:"Nothing to amend; send variants, methods or closesOn."}),bse=p.strictObject({variant:Ie,reasonCode:p.enum(["notObtainable","labelInDoubt","duplicate","makersRequestRefused","interest"]).describe("Why"),words:Zn.describe("Why, in words that readers see"),effect:p.enum(["closedUp","shownUnplaced"]).describe("Whether the others move up")}),$se=p.strictObject({slug:Ie,name:p.string(),state:p.enum(["planned","open","closed","published"]),scheme:p.strictObject({slug:Ie,number:p.int()}),opensOn:p.iso.date(),closesOn:p.iso.date(),previous:Ie.nullable(),blindKeyDigest:p.string().nullable().describe("SHA-256 of the key of blind codes, fixed at opening"),closedOn:p.iso.date().nullable().describe("When it was closed"),entries:p.int().describe("Number of entries"),methods:p.array(dl).describe("Method versions that are pinned, by slug"),amendments:p.array(fc).describe("What it took besides while it was open, oldest first"),version:vse}),d7e=p.strictObject({items:p.array($se),nextCursor:p.string().nullable()}),f7e=p.strictObject({edition:Ie,state:p.string(),submissions:p.record(p.string(),p.int()).describe("State → count"),inDoubt:p.int().describe("Accepted submissions with a held finding that nobody has answered"),standsInTheWay:p.array(kP).describe("Everything that stands in the way of the next step: of a planned edition its opening, of an open one its closing"),entries:p.array(p.strictObject({variant:Ie,missing:p.array(p.string()).describe("Categories without a result that counts"),needs:p.array(p.string()).describe('What it lacks, in words: "one more rig in knot-retention"'),evidence:p.array(p.strictObject({category:Ie,specimens:p.int(),submissions:p.int(),testers:p.int(),rigs:p.int()})).describe("What is there in each category"),exclusion:bse.omit({variant:!0}).nullable()}))}),_se=p.strictObject({variant:Ie,place:p.int().nullable(),score:p.string()}),wse=p.strictObject({about:p.enum(cl).describe("What the cell is about"),where:p.string().describe('Cell, as an erratum names it in expects: "overall, <variant>, place"'),before:p.string().nullable().describe("What an erratum expects there; null where there was no such cell"),after:p.string().nullable()}),NP=p.array(wse).describe("Cells that changed since, what readers care about first"),m7e=p.strictObject({edition:Ie,overall:p.array(_se),categories:p.record(p.string(),p.array(p.strictObject({variant:Ie,place:p.int().nullable(),value:p.string()}))),incomplete:p.array(p.strictObject({variant:Ie,missing:p.array(p.string())})),excluded:p.array(Ie),since:p.strictObject({at:p.iso.datetime().describe("The look before"),changes:NP}).nullable().describe("Against the look before; null for the first"),published:p.strictObject({revision:p.int().describe("Revision that readers have"),changes:NP}).nullable().describe("Against what is published; null where nothing is")}),p7e=p.strictObject({items:p.array(p.strictObject({openedOn:p.iso.date().describe("Day from which it holds"),blindKeyDigest:p.string().describe("SHA-256 of the key of blind codes; the key comes with the release")})),nextCursor:p.string().nullable()});var be=({quantity:e,method:r,series:n,section:i})=>[e,r,n,...i?[i.method,i.series]:[]].join("/"),Ba=({method:e,series:r})=>({quantity:"breakingForce",method:e,series:r,section:null}),Wh=({section:e})=>e&&{quantity:"diameter",...e,section:null},EP=["apparentStress","strengthHonesty"];function DP(e,r){let n=e.flatMap(o=>{let{quantity:a,method:s,series:u,section:c}=o,l=EP.includes(a)?[Ba(o),Wh(o)??[]].flat():[];return[{quantity:a,method:s,series:u,section:c},...l]});return[...Map.groupBy([...n,...r.flatMap(Sse)],be).values()].flatMap(o=>o.slice(0,1)).flatMap(o=>CP(o,r)).sort((o,a)=>fl.indexOf(o.quantity)-fl.indexOf(a.quantity))}var TP=e=>e.series.flatMap(r=>zP(r,e).flatMap(n=>CP(jP(n,e,r),[e])));function Sse(e){let r=e.series.some(tn);return e.series.filter(i=>!(r&&i===ul(e.series))).flatMap(i=>zP(i,e).map(t=>jP(t,e,i)))}var jP=(e,{slug:r},{code:n})=>({quantity:e,method:r,series:n,section:null});function zP(e,r){return e.kind==="diameterAlongStations"?["diameter","outOfRoundness"]:e.kind==="linearDensity"?["linearDensity"]:tn(e)&&ul(r.series)?["retention"]:["breakingForce"]}function CP(e,r){let n=r.find(({slug:s})=>s===e.method),i=n?.series??[],t=n?.reproducibilityPercent??null,o=i.find(({code:s})=>s===e.series),a=o&&Ise(e,o,i);return a?[{...e,key:be(e),name:Nse(e.quantity,o),parts:a,reproducibility:t===null?null:t/100}]:[]}function Ise({quantity:e,method:r},n,i){if(EP.includes(e))return[];let t={method:r,series:n,figure:e==="outOfRoundness"?"outOfRoundness":"mean"};if(e!=="retention")return[t];let o=ul(i);return o&&tn(n)?[{...t,series:o},t]:null}var kse={breakingForce:"Breaking force",diameter:"Diameter",outOfRoundness:"Out-of-roundness",linearDensity:"Linear density",apparentStress:"Apparent breaking stress",retention:"Retention",strengthHonesty:"Measured of claimed strength"},Ose={knot:"Knot retention",abrasion:"Abrasion retention"};function Nse(e,r){let n=r.kind==="breakingForce"?r.treatment:null,i=e==="retention"&&n?Ose[n.kind]:kse[e];return n?`${i}, ${n.name}`:i}var ml=(e,r)=>e.find(({quantity:n,parts:i})=>n===r&&!i.some(({series:t})=>tn(t)));var Ase=["specimens","testers","rigs"];function to(e,r,n){let{code:i,minimum:t}=e,o=n.get(r)?.get(be(e));return Ase.map(a=>({category:i,what:a,has:o?.[a]??0,needs:t[a]})).filter(({has:a,needs:s})=>a<s)}var Pse={specimens:["specimen","specimens"],testers:["tester","testers"],rigs:["rig","rigs"]},xse=["no","one","two","three","four","five","six","seven","eight","nine","ten"];function qP({category:e,what:r,has:n,needs:i}){let t=i-n,[o,a]=Pse[r];return`${xse[t]??String(t)} ${n===0?"":"more "}${t===1?o:a} in ${e}`}var Ese={categories:new Map,overall:new Map,sensitivity:null,pairs:null};function RP({edition:e,results:r,fits:n},i){let{categories:t,combine:o,countPlaces:a,tieBreak:s}=e.scheme.rules,u=e.entries.map(({variant:m,exclusion:v})=>({id:m,isExcluded:v!==null,found:t.map(h=>{let y=to(h,m,r).length===0;return[h.code,y?r.get(m)?.get(be(h))??null:null]})}));if(u.some(({found:m})=>m.some(([,v])=>v&&!v.evidence)))return Ese;let{categories:c,overall:l,sensitivity:d}=wP({digest:i,categories:t,combine:o,countPlaces:a,tieBreak:s,series:n,entries:u.map(({found:m,...v})=>({...v,results:Object.fromEntries(m.map(([h,y])=>[h,y?.evidence??null]))}))}),f=m=>new Map(m.kind==="placed"?m.rows.map(v=>[v.id,v]):[]);return{categories:new Map(Object.entries(c).map(([m,v])=>[m,f(v)])),overall:f(l),sensitivity:d,pairs:l.kind==="placed"&&l.pairChances?{variants:l.rows.map(({id:m})=>m),chances:l.pairChances}:null}}function Gh(e,r){let i=e.map(Dse).map((o,a)=>({value:o,i:a})).sort((o,a)=>r==="more"?a.value.cmp(o.value):o.value.cmp(a.value)),t=new Array(e.length).fill(0);return i.forEach(({value:o,i:a},s)=>{let u=i[s-1];t[a]=u?.value.eq(o)?t[u.i]??s:s+1}),t}function Dse(e){if(!/^-?\d+(\.\d+)?$/.test(e))throw new z("ranking/not-a-number",`competitionPlaces: found "${e}", expected a decimal such as 820.3. Rank published values only.`);return new Ne(e)}var Tse={sumOfPlaces:0,weightedSumOfPlaces:3,meanStandardScore:3,pairwiseWins:1},UP=e=>e==="meanStandardScore"||e==="pairwiseWins"?"more":"less";function FP(e,r){let n=e[0]?.places.length??0;return{sumOfPlaces:jse,weightedSumOfPlaces:zse,meanStandardScore:Cse,pairwiseWins:qse}[r](e,n).map(t=>J(t,Tse[r]))}var jse=(e,r)=>Array.from({length:r},(n,i)=>String(e.reduce((t,{places:o})=>t+(o[i]??0),0))),zse=(e,r)=>Array.from({length:r},(n,i)=>e.reduce((t,{places:o,weight:a})=>t.plus(new Ne(a).times(o[i]??0)),new Ne(0)).toFixed());function Cse(e,r){let n=e.reduce((t,{weight:o})=>t.plus(o),new Ne(0)),i=e.map(({values:t,direction:o,weight:a})=>{let s=t.map(d=>new Ne(d)),u=s.reduce((d,f)=>d.plus(f),new Ne(0)).div(Math.max(1,r)),c=s.reduce((d,f)=>d.plus(f.minus(u).pow(2)),new Ne(0)).div(Math.max(1,r-1)),l=c.isZero()?new Ne(0):new Ne(a).div(c.sqrt()).times(o==="more"?1:-1);return s.map(d=>d.minus(u).times(l))});return Array.from({length:r},(t,o)=>i.reduce((a,s)=>a.plus(s[o]??0),new Ne(0)).div(n.isZero()?1:n).toFixed())}function qse(e,r){let n=(i,t)=>e.reduce((o,{places:a})=>o+Math.sign((a[t]??0)-(a[i]??0)),0);return Array.from({length:r},(i,t)=>{let o=0;for(let a=0;a<r;a++)a!==t&&(o+=(1+Math.sign(n(t,a)))/2);return String(o)})}function LP(e){let r=e.categories.map(({code:a})=>a),n=a=>r.filter(s=>(a.values[s]??null)===null),i=e.entries.filter(({exclusion:a})=>a===null),t=i.filter(a=>n(a).length===0),o=e.entries.filter(a=>a.exclusion?.effect==="shownUnplaced");return{categories:Object.fromEntries(e.categories.map(a=>[a.code,Rse(a,i,o)])),overall:ZP([...MP(e,t).map(a=>({...a,placeIfIncluded:null})),...o.filter(a=>n(a).length===0).flatMap(a=>{let s=MP(e,[...t,a]).find(({id:u})=>u===a.id);return s?[{...s,place:null,placeIfIncluded:s.place}]:[]})]),incomplete:i.filter(a=>n(a).length>0).map(a=>({id:a.id,missing:n(a)})),excluded:e.entries.filter(({exclusion:a})=>a!==null).map(({id:a})=>a)}}var Hh=(e,r)=>r.flatMap(({id:n,values:i})=>{let t=i[e]??null;return t===null?[]:[{id:n,value:t}]});function Jh({code:e,direction:r},n){let i=Hh(e,n),t=Gh(i.map(({value:o})=>o),r);return new Map(i.map(({id:o},a)=>[o,t[a]??0]))}function Rse(e,r,n){let i=Jh(e,r),t=Hh(e.code,r).map(({id:a,value:s})=>({id:a,value:s,place:i.get(a)??null,placeIfIncluded:null})),o=n.flatMap(a=>Hh(e.code,[a]).map(({id:s,value:u})=>({id:s,value:u,place:null,placeIfIncluded:Jh(e,[...r,a]).get(s)??null})));return ZP([...t,...o])}function MP(e,r){let n=e.countPlaces==="beforeExclusions"?e.entries:[...e.entries.filter(({exclusion:s})=>s===null),...r.filter(({exclusion:s})=>s!==null)],i=e.categories.map(s=>{let u=Jh(s,n);return{...s,places:r.map(({id:c})=>u.get(c)??0),values:r.map(({values:c})=>c[s.code]??"0")}}),t=FP(i,e.combine),o=Gh(t,UP(e.combine)),a=e.tieBreak==="none"?o:Use(o,i.map(s=>s.places));return r.map(({id:s},u)=>({id:s,score:t[u]??"0",place:a[u]??0,categoryPlaces:Object.fromEntries(i.map(c=>[c.code,c.places[u]??0]))}))}function Use(e,r){let n=Math.max(0,...r.flat()),i=e.map((o,a)=>Array.from({length:n},(s,u)=>r.filter(c=>c[a]===u+1).length)),t=(o,a)=>{let s=o.findIndex((u,c)=>u!==a[c]);return s!==-1&&(o[s]??0)>(a[s]??0)};return e.map((o,a)=>o+e.filter((s,u)=>s===o&&t(i[u]??[],i[a]??[])).length)}function ZP(e){let r=n=>n.place??n.placeIfIncluded??1/0;return e.sort((n,i)=>r(n)-r(i)||(n.id<i.id?-1:1))}var ge=(e,r,n="1",i="0")=>({dimension:e,factor:r,divisor:n,offset:i}),ht={N:ge("force","1"),kN:ge("force","1000"),lbf:ge("force","4.4482216152605"),kgf:ge("force","9.80665"),gf:ge("force","0.00980665"),ozf:ge("force","4.4482216152605","16"),mm:ge("length","0.001"),µm:ge("length","0.000001"),in:ge("length","0.0254"),m:ge("length","1"),yd:ge("length","0.9144"),g:ge("mass","0.001"),mg:ge("mass","0.000001"),gr:ge("mass","0.00006479891"),tex:ge("linearDensity","0.000001"),dtex:ge("linearDensity","0.0000001"),den:ge("linearDensity","0.000001","9"),MPa:ge("stress","1000000"),GPa:ge("stress","1000000000"),psi:ge("stress","4.4482216152605","0.00064516"),ksi:ge("stress","4448.2216152605","0.00064516"),"%":ge("ratio","0.01"),s:ge("time","1"),"°C":ge("temperature","1"),"°F":ge("temperature","5","9","-32")},VP={force:"N",length:"m",mass:"kg",linearDensity:"kg/m",stress:"Pa",ratio:"1",time:"s",temperature:"degC"};var Fse={μm:"µm","℃":"°C","℉":"°F"};function pl(e){let r=e.trim(),n=Fse[r]??r;if(Object.hasOwn(ht,n))return n;throw new z("units/unknown-symbol",`findUnit: found the unit "${r.slice(0,40)}", expected one of ${Object.keys(ht).join(", ")}. Write the unit as one of these.`)}var Mse=/^[+-]?\d+(\.\d+)?([eE][+-]?\d{1,2})?$/;function BP(e,r){let n=pl(r),i=e.trim();if(!Mse.test(i))throw new z("units/not-a-number",`parseQuantity: found "${i.slice(0,40)}", expected a number such as 20 or 19.85. Use a point and no thousands separator.`);let t=i.replace(/[eE].*$/,"").replace(/[^\d]/g,"").length;if(t>Fa)throw new z("units/too-many-digits",`parseQuantity: found ${t} digits, expected at most ${Fa}. Enter the digits that the instrument shows.`);let{dimension:o,factor:a,divisor:s,offset:u}=ht[n],c=new en(i).plus(u).times(a),l=s==="1"?c:c.div(s).toSignificantDigits(EA);return{text:i,unit:n,si:l.isZero()?"0":l.toString(),siUnit:VP[o],dimension:o}}function Kh(e){return vl(e,"diameterMm"),X(e.map(({wideMm:r,narrowMm:n})=>(r+n)/2))}function WP(e){return vl(e,"outOfRoundnessPercent"),X(e.map(({wideMm:r,narrowMm:n})=>100*(r-n)/((r+n)/2)))}function vl(e,r){e.forEach(({wideMm:n,narrowMm:i},t)=>{if(ve(n,`wideMm of station ${t+1}`,r),ve(i,`narrowMm of station ${t+1}`,r),n<i)throw new z("figures/wide-below-narrow",`${r}: station ${t+1} has a widest reading of ${n} mm below its narrowest of ${i} mm. Swap or repeat the readings.`)})}function GP(e){return ve(e,"diameterMm","circleAreaMm2"),Math.PI*e*e/4}function HP(e){return vl(e,"ellipseAreaMm2"),Math.PI/4*X(e.map(({wideMm:r,narrowMm:n})=>r*n))}function JP(e,r){return ve(e,"linearDensityTex","solidAreaMm2"),ve(r,"densityGPerCm3","solidAreaMm2"),e/(1e3*r)}var Ij=_t(vD(),1),kj=_t(Sj(),1);function Tl(e,r){return vt(e,"tCdf"),Xi(r,"tCdf"),r===1/0?gP(e):(0,Ij.default)(e,r)}function mr(e,r){return je(e,"tQuantile"),Xi(r,"tQuantile"),r===1/0?Va(e):(0,kj.default)(e,r)}function Be(e){ye(e,2,"standardDeviation");let r=X(e),n=e.map(o=>o-r),i=Ae(n),t=Ae(n.map(o=>o*o));return Math.sqrt(Math.max(0,t-i*i/e.length)/(e.length-1))}function A1(e,r){if(Pfe(e))return{mean:X(e),sd:Be(e),n:e.length};if(!(e.n>=2&&Number.isInteger(e.n)))throw new z("measurement/too-few-readings",`${r}: n is ${e.n}, expected a whole number of at least 2. Add readings.`);if(!Number.isFinite(e.mean)||!(e.sd>=0&&e.sd<1/0))throw new z("measurement/not-a-number",`${r}: mean ${e.mean}, sd ${e.sd}, expected finite numbers. Check the readings.`);return e}function Pfe(e){return Array.isArray(e)}function Oj(e,r,n,i){let[t,o]=[A1(e,"numerator"),A1(r,"denominator")],a=t.mean/o.mean;if(!Number.isFinite(a))throw new z("figures/zero-denominator",`ratioInputs: the mean of the denominator is ${o.mean}, expected a value that can be divided by. Leave the ratio out.`);let s=t.n+o.n-2,u=((t.n-1)*t.sd**2+(o.n-1)*o.sd**2)/s,c=(n==="pooled"?u:t.sd**2)/t.n,l=(n==="pooled"?u:o.sd**2)/o.n,d=(i??a)**2*l,m=n==="pooled"||c+d===0?s:(c+d)**2/(c**2/(t.n-1)+d**2/(o.n-1));return{a:t.mean,b:o.mean,varianceA:c,varianceB:l,ratio:a,degreesOfFreedom:m}}function Nj(e,r,n={}){let{a:i,b:t,varianceA:o,varianceB:a,degreesOfFreedom:s,ratio:u}=Oj(e,r,n.variance??"separate"),c=mr((1+(n.level??.95))/2,s),[l,d]=[c*c*o,c*c*a],f={ratio:u,degreesOfFreedom:s,g:d/(t*t)},m=t*t-d,v=l*m+d*i*i;if(m===0||v<0)return{...f,kind:"whole-line"};let h=Math.sqrt(v),y=[(i*t-h)/m,(i*t+h)/m],[b,_]=[Math.min(...y),Math.max(...y)];if(!Number.isFinite(b)||!Number.isFinite(_))throw new z("measurement/not-a-number","fiellerInterval: the squares of the readings leave the number range. Give the readings in a larger unit.");return m>0?{...f,kind:"bounded",low:b,high:_}:{...f,kind:"exclusive",upTo:b,from:_}}function xfe(e){return e.kind!=="bounded"?"not-bounded":e.high<1?"below":e.low>1?"above":"holds-100"}function Aj(e,r,n=.95){let i=Nj(e,r,{level:n});return e.forEach(t=>gt(t,"treatedN","retentionFigures")),r.forEach(t=>ve(t,"straightN","retentionFigures")),{retentionPercent:100*i.ratio,interval:i,againstWhole:xfe(i)}}function Pj(e,r){return ve(e,"massG","linearDensityTex"),ve(r,"lengthM","linearDensityTex"),1e3*e/r}function xj(e,r=.95){let n=Be(e)/Math.sqrt(e.length),i=mr((1+r)/2,e.length-1)*n,t=X(e);return{low:t-i,high:t+i,halfWidth:i}}function bt(e){ye(e,1,"median");let r=[...e].sort((t,o)=>t-o),n=r[Math.floor(r.length/2)],i=r[Math.floor((r.length-1)/2)];return i+(n-i)/2}function Ej(e){let r=X(e),n=e.length>1?Be(e):null,i=e.reduce((a,s)=>Math.min(a,s)),t=e.reduce((a,s)=>Math.max(a,s)),o=n!==null&&r>0?100*n/r:null;return{n:e.length,mean:r,sd:n,cvPercent:o,min:i,max:t,range:t-i,median:bt(e)}}function Dj(e,r,n="untreated"){return e.filter(i=>i.state==="valid"&&i.condition===n).flatMap(i=>i.readings.filter(t=>t.role===r).map(t=>Number(t.valueSi)))}function Tj(e,r,n){let i=Dj(e,"breakingForce"),t=Dj(e,"breakingForce","treated"),o=e.filter(({state:c})=>c==="valid"),a=o.map(Efe).filter(c=>c.length>0),s=ts(o.flatMap(Dfe)),u=e.filter(({reason:c})=>c==="brokeAtGrip").length;return{validSpecimens:o.length,invalidSpecimens:e.filter(({state:c})=>c==="invalid").length,gripBreakSharePercent:100*u/Math.max(1,e.length),breakingForceN:ts(i),treatedForceN:ts(t),retentionPercent:Tfe(t,i),diameterMm:ts(a.map(Kh)),outOfRoundnessPercent:ts(a.map(WP)),areaMm2:jfe(r,a.flat(),s?.mean??null,n),linearDensityTex:s}}function ts(e){if(e.length===0)return null;let{n:r,mean:n,sd:i,cvPercent:t,min:o,max:a,median:s}=Ej(e),u=r>1?xj(e):null;return{n:r,mean:n,sd:i,cvPercent:t,min:o,max:a,median:s,low95:u?.low??null,high95:u?.high??null}}function Efe({readings:e}){let r=t=>new Map(e.filter(o=>o.role===t).map(o=>[o.station,1e3*Number(o.valueSi)])),[n,i]=[r("wideDiameter"),r("narrowDiameter")];return[...n].flatMap(([t,o])=>{let a=i.get(t);return a===void 0?[]:[{wideMm:o,narrowMm:a}]})}function Dfe({readings:e}){let r=t=>e.find(o=>o.role===t)?.valueSi,[n,i]=[r("mass"),r("length")];return n===void 0||i===void 0?[]:[Pj(1e3*Number(n),Number(i))]}function Tfe(e,r){if(e.length<2||r.length<2)return null;let{retentionPercent:n,interval:i}=Aj(e,r),t=i.kind==="bounded";return{value:n,low95:t?100*i.low:null,high95:t?100*i.high:null}}function jfe(e,r,n,i){return e==="solid"?n===null?null:JP(n,i):e===null||r.length===0?null:e==="circle"?GP(Kh(r)):HP(r)}var uo=({specimens:e,areaFrom:r,densityGPerCm3:n})=>Tj(e,r,Number(n));function jj(e,r,n=.2,i=3){if(ye(e,1,"ewmaChart"),Dr(r.centre,"centre","ewmaChart"),ve(r.sigma,"sigma","ewmaChart"),!(n>0&&n<=1))throw new z("drift/bad-weight",`ewmaChart: lambda is ${n}, expected above 0 and at most 1. Common values are 0.2 and 0.3.`);let t=[r.centre];for(let s of e)t.push(n*s+(1-n)*t.at(-1));let o=i*r.sigma*Math.sqrt(n/(2-n)),a=t.findIndex(s=>Math.abs(s-r.centre)>o);return{ewma:t,low:r.centre-o,high:r.centre+o,firstSignal:a===-1?null:a-1}}var jl=2/Math.sqrt(Math.PI),zfe=1+3*Math.sqrt(2-4/Math.PI)/jl;function zl(e){return Dr(e,"sigma","movingRangeLimit"),zfe*jl*e}function zj(e){ye(e,2,"individualsChart");let r=X(e),n=X(e.slice(1).map((t,o)=>Math.abs(t-e[o]))),i=n/jl;return{centre:r,sigma:i,meanMovingRange:n,low:r-3*i,high:r+3*i,movingRangeHigh:zl(i)}}var Cfe=["oneBeyond3Sigma","twoOfThreeBeyond2Sigma","fourOfFiveBeyond1Sigma","eightOnOneSide"];function Cj(e,r,n=Cfe){let i=e.map(t=>(t-r.centre)/r.sigma);return n.filter(t=>qfe[t](i))}var qfe={oneBeyond3Sigma:e=>ns(e,1,1,3),twoOfThreeBeyond2Sigma:e=>ns(e,2,3,2),fourOfFiveBeyond1Sigma:e=>ns(e,4,5,1),eightOnOneSide:e=>ns(e,8,8,0),nineOnOneSide:e=>ns(e,9,9,0),sixTrending:e=>Rfe(e.slice(-6),6),fourteenAlternating:e=>Ufe(e.slice(-14))};function ns(e,r,n,i){let t=e.at(-1)??0,o=Math.sign(t);return t*o>i&&e.slice(-n).filter(a=>a*o>i).length>=r}function Rfe(e,r){let n=e.slice(1).map((i,t)=>Math.sign(i-e[t]));return n.length===r-1&&n[0]!==0&&n.every(i=>i===n[0])}function Ufe(e){let r=e.slice(1).map((n,i)=>Math.sign(n-e[i]));return r.length===13&&r[0]!==0&&r.every((n,i)=>i===0||n===-r[i-1])}var qj=10,Ffe=[qj,15,20];function Mfe(e){if(ye(e,0,"rigLimits"),e.length<qj)return null;let{centre:r,sigma:n}=zj(e);return n>0?{centre:r,sigma:n}:null}function Rj(e){ye(e,0,"judgePulls");let r=[],n=[];return e.map((i,t)=>{let o=Mfe(r.slice(0,Ffe.findLast(f=>f<=r.length)??0)),a=t===0?null:Math.abs(i-e[t-1]);if(!o)return r.push(i),{value:i,movingRange:a,limits:o,ewma:null,ewmaLimits:null,signals:[],state:"noEvidence"};n.push(i);let s=Cj(n,o),{ewma:u,low:c,high:l}=jj(n,o);s.length>0?n=[]:r.push(i);let d=s.length>0?"outOfControl":"inControl";return{value:i,movingRange:a,limits:o,ewma:u.at(-1),ewmaLimits:{low:c,high:l},signals:s,state:d}})}function Cl(e){return[...Map.groupBy(e,({instrument:n,method:i,controlLine:t})=>[n,i,t.code].join(`
`)).values()].flatMap(n=>{let[i]=n;if(!i)return[];let{instrument:t,method:o,controlLine:a}=i,s=n.filter(({strike:l})=>l===null),u=Rj(s.map(Uj)),c=n.map(l=>({pull:l,meanN:Uj(l),judged:u[s.indexOf(l)]??null}));return[{instrument:t,method:o,controlLine:a,pulls:c}]})}var Uj=({readings:e})=>X(e.map(({valueN:r})=>Number(r)));function Fj(e,r){if(e.length<2)throw new z("measurement/too-few-readings",`${r}: found ${e.length} means, expected at least 2. Use the one mean itself.`);e.forEach(({mean:n,standardUncertainty:i},t)=>{if(!Number.isFinite(n)||!Number.isFinite(i))throw new z("measurement/not-a-number",`${r}: mean ${t+1} is ${n} with standard uncertainty ${i}, expected finite numbers. Correct that submission.`);if(!(i>0))throw new z("consensus/no-uncertainty",`${r}: standard uncertainty ${t+1} is ${i}, expected above 0. Test more specimens.`)})}function ql(e,r){let n=e.map(({standardUncertainty:a})=>1/(a**2+r)),i=Ae(n),t=Ae(e.map((a,s)=>n[s]*a.mean))/i,o=Ae(e.map((a,s)=>n[s]*(a.mean-t)**2));return{mean:t,weights:n,totalWeight:i,spread:o}}var Lfe=.999,Zfe=.25;function Mj(e){let r=e.map(Vfe),n=r;for(;;){let i=Bfe(n);if(!i||r.length-n.length+1>Zfe*r.length)break;n=n.filter(t=>t!==i)}return{relativeVariance:Lj(n),degreesOfFreedom:n.reduce((i,{relative:t})=>i+t.length-1,0),leftOut:r.filter(i=>!n.includes(i)).map(({position:i})=>i)}}function Vfe(e,r){Fj(e,"pooledBetweenVariance");let{mean:n}=ql(e,0);if(!(n>0))throw new z("consensus/not-positive",`pooledBetweenVariance: a consensus is ${n}, expected above 0. Relative effects need quantities above 0.`);let i=e.map(({mean:u,standardUncertainty:c})=>({mean:u/n,standardUncertainty:c/n})),{weights:t,totalWeight:o,spread:a}=ql(i,0),s=Ae(t.map(u=>u*u));return{position:r,relative:i,excess:a-(e.length-1),scale:o-s/o}}function Lj(e){return e.length===0?0:Math.max(0,Ae(e.map(({excess:r})=>r))/Ae(e.map(({scale:r})=>r)))}function Bfe(e){if(e.length<2)return null;let r=e.map(i=>{let t=Lj(e.filter(o=>o!==i));return ql(i.relative,t).spread/Xt(Lfe,i.relative.length-1)}),n=Math.max(...r);return n>1?e[r.indexOf(n)]??null:null}function Vj(e,r){let n=e.filter(s=>s.method===r),i=[...Map.groupBy(n,({controlLine:s})=>s.code)].map(([s,u])=>({controlLine:s,rigs:u.flatMap(Wfe)})),[t]=i.toSorted((s,u)=>u.rigs.length-s.rigs.length||(Zj(s)<Zj(u)?1:-1));if(!t||t.rigs.length<2)return null;let{relativeVariance:o,degreesOfFreedom:a}=Mj([t.rigs]);return{relativeSd:Math.sqrt(o),degreesOfFreedom:a,controlLine:t.controlLine,rigs:t.rigs.map(({rig:s})=>s).sort(),pulls:t.rigs.reduce((s,{pulls:u})=>s+u,0)}}var Zj=({rigs:e})=>e.map(({lastDay:r})=>r).sort().at(-1)??"";function Wfe({instrument:e,pulls:r}){let n=r.filter(({judged:a})=>a!==null),i=n.at(-1);if(!i?.judged?.limits)return[];let t=n.filter(({judged:a})=>a?.state!=="outOfControl").map(({meanN:a})=>a),o=Be(t)/Math.sqrt(t.length);return[{rig:e,pulls:t.length,lastDay:i.pull.benchDay,mean:X(t),standardUncertainty:o}]}function Rl(e){if(e.length<2)throw new z("agreement/too-few-testers",`roundRobin: found ${e.length} testers, expected at least 2. Invite another tester.`);e.forEach((c,l)=>ye(c,2,`roundRobin, tester ${l+1}`));let r=e.map(c=>c.length),n=e.map(c=>X(c)),i=e.map(c=>Be(c)),t=X(e.flat()),o=Gfe(r,i),a=Hfe(r,n,t,o),s=Be(n),u=Math.sqrt(o);return{cellSizes:r,cellMeans:n,cellSds:i,mean:t,sdOfMeans:s,repeatabilitySd:u,betweenSd:Math.sqrt(a),reproducibilitySd:Math.sqrt(a+o),h:n.map(c=>s===0?null:(c-t)/s),k:i.map(c=>u===0?null:c/u)}}function Gfe(e,r){let n=e.reduce((i,t)=>i+t-1,0);return Ae(r.map((i,t)=>(e[t]-1)*i*i))/n}function Hfe(e,r,n,i){let t=e.length-1,o=e.reduce((u,c)=>u+c,0),a=Ae(r.map((u,c)=>e[c]*(u-n)**2))/t,s=(o-e.reduce((u,c)=>u+c*c,0)/o)/t;return Math.max(0,(a-i)/s)}function Bj(e,r){let n=e.filter(o=>o.method===r&&o.state==="closed").flatMap(({levels:o,cells:a})=>o.map(s=>a.filter(u=>u.level===s))).filter(o=>new Set(o.map(({instrument:a})=>a)).size===1).map(o=>{let{betweenSd:a,mean:s}=Rl(o.map(({readings:u})=>u.map(({valueN:c})=>Number(c))));return{relativeSd:a/s,degreesOfFreedom:o.length-1}}),i=n.reduce((o,a)=>o+a.degreesOfFreedom,0);if(i===0)return null;let t=n.reduce((o,a)=>o+a.degreesOfFreedom*a.relativeSd**2,0)/i;return{relativeSd:Math.sqrt(t),degreesOfFreedom:i}}var Jfe=6;function Ul({controlPulls:e=[],roundRobins:r=[],effects:n={}},i){let t=Cl(e),o=i.flatMap(({slug:a,series:s})=>{let[u,...c]=s.filter(({kind:m})=>m==="breakingForce");if(!u||c.length>0)return[];let l=be({quantity:"breakingForce",method:a,series:u.code,section:null}),d=Wj(Vj(t,a),"controlPulls"),f=Wj(Bj(r,a),"roundRobin");return d||f?[[l,{...d?{rig:d}:{},...f?{tester:f}:{},...n[l]}]]:[]});return{...n,...Object.fromEntries(o)}}var Wj=(e,r)=>e&&{relativeSd:e.relativeSd.toFixed(Jfe),degreesOfFreedom:e.degreesOfFreedom,source:r};function Gj(e,r){let n=r.length,i={variance:new Float64Array(n),fourth:new Float64Array(n),welch:new Float64Array(n)};for(let t of e.atoms)Kfe(e,t,r,i);return i.fourth.forEach((t,o)=>i.fourth[o]=Math.max(0,t-3*i.variance[o]**2)),i}function Kfe(e,r,n,{variance:i,fourth:t,welch:o}){let a=n.length,s=e.design.columns.length,u=r.count/e.atomCount,c=Qt(e,r),l=jh(e,r,n),d=Float64Array.from(n,w=>c.variance[w]/(1+e.means[w])**2),f=Float64Array.from(n,(w,O)=>d[O]**2/c.degreesOfFreedom[w]),m=Float64Array.from(n,w=>(r.means[w]-e.means[w])/(1+e.means[w])),[v,h]=[1-1/a,1/a],y=w=>w.reduce((O,k)=>O+k,0),[b,_,$]=[y(d),y(f),y(m)/a],N=new Float64Array(s);for(let w=0;w<a;w++)for(let O=0;O<s;O++)N[O]=N[O]+l[w*s+O]/a;for(let w=0;w<a;w++){let O=v**2*d[w]+h**2*(b-d[w]);for(let D=0;D<s;D++)O+=(l[w*s+D]-N[D])**2;let k=(m[w]-$)**2;i[w]=i[w]+u*(O+k),t[w]=t[w]+u*(3*O*O+6*O*k+k*k),o[w]=o[w]+u*(v**4*f[w]+h**4*(_-f[w]))}}function Hj(e,r){let n=al(e,r).map(({fit:t,power:o,positions:a})=>({power:o,...Gj(t,a)})),i=(t,o,a)=>n.reduce((s,u)=>s+u.power**o*u[t][a],0);return e.map((t,o)=>rn(i("variance",2,o),i("fourth",4,o),i("welch",4,o)))}function P1(e,r=1){let n=[r,...e.map(({evidence:a})=>a.value)].find(a=>!(a>0&&a<1/0));if(n!==void 0)throw new z("ranking/bad-evidence",`modelProduct: found ${n}, expected factors and constant above 0. Leave the entry out of the category.`);e.forEach(({power:a})=>Dr(a,"power","modelProduct"));let i=a=>e.reduce((s,{evidence:u,power:c})=>s*a(u)**c,r),t=[...new Set(e.flatMap(({evidence:a})=>Object.keys(a.without)))].sort(),o=({value:a,without:s},u)=>{let c=s[u];return c===void 0?a:c};return{value:i(({value:a})=>a),factors:e.flatMap(({evidence:a,power:s})=>a.factors.map(u=>({...u,power:s*u.power}))),without:Object.fromEntries(t.map(a=>[a,e.some(({evidence:s})=>o(s,a)===null)?null:i(s=>o(s,a))]))}}function Jj(e){let{variants:r}=e.design,n=r.map(()=>({repeatability:0,submission:0,rig:0,tester:0,certificate:0,spreads:0}));for(let i of e.atoms)Xfe(e,i,n);return r.map((i,t)=>{let{variance:o,fourth:a,welch:s}=il(e,[t]),{standardUncertainty:u,degreesOfFreedom:c}=rn(o[0],a[0],s[0]),l=e.values[t];return{variant:i,value:l,standardUncertainty:l*u,degreesOfFreedom:c,isApart:e.isApart[t]===1,parts:n[t]}})}function Xfe(e,r,n){let{starts:i,repeatability:t,columns:o,columnStarts:a,columnOf:s}=e.design,u=o.length,c=r.count/e.atomCount,l=Qt(e,r),d=new Float64Array(u);n.forEach((f,m)=>{let v=c/(1+e.means[m])**2;d.fill(0);let h=0;for(let y=i[m];y<i[m+1];y++){h+=r.level.shares[y]**2*t[y];for(let b=a[y];b<a[y+1];b++)d[s[b]]=d[s[b]]+r.level.shares[y]}f.repeatability+=v*h,f.submission+=v*(l.variance[m]-h),f.spreads+=v*(r.means[m]-e.means[m])**2;for(let y=0;y<u;y++){let b=0;for(let _=0;_<=y;_++)b+=r.factor[_*u+y]*d[_];for(let _=0;_<=y;_++)f[o[_].kind]+=v*b*r.factor[_*u+y]*d[_]}})}var Xj=e=>({value:e,standardUncertainty:null,degreesOfFreedom:0,budget:[],isApart:!1});function Qj(e,r){let{value:n,factors:i}=e,t=ol([e],r),o=i.flatMap(({series:c,variant:l,power:d})=>{let f=Qfe(r[c],l);return f?[{found:f,square:d**2}]:[]}),a=["repeatability","submission","rig","tester","certificate","spreads"],s=a.map(c=>o.reduce((l,{found:d,square:f})=>l+f*d.parts[c],0)),u=s.reduce((c,l)=>c+l,0);return{value:n,standardUncertainty:n*(t.standardUncertainty[0]??0),degreesOfFreedom:t.degreesOfFreedom[0]??0,budget:a.flatMap((c,l)=>u>0&&(s[l]??0)>0?[{component:c,sharePercent:100*(s[l]??0)/u}]:[]),isApart:o.some(({found:c})=>c.isApart)}}var Kj=new WeakMap;function Qfe(e,r){if(e?.kind!=="fitted")return;let n=Kj.get(e)??new Map(Jj(e).map(i=>[i.variant,i]));return Kj.set(e,n),n.get(r)}function Yj({value:e,standardUncertainty:r,degreesOfFreedom:n}){if(r===null)return null;let i=r*mr(.975,Math.min(1e6,Math.max(1,n)));return{low:e-i,high:e+i}}function ez(e){let{design:r,atoms:n,atomCount:i}=e,t=r.columns.length;return r.columns.map(({name:o,kind:a},s)=>{let u=n.reduce((d,{effects:f,count:m})=>d+m/i*f[s],0),[c,l]=[0,0];for(let{effects:d,factor:f,count:m}of n){let v=0;for(let y=s;y<t;y++)v+=f[s*t+y]**2;let h=(d[s]-u)**2;c+=m/i*(v+h),l+=m/i*(3*v*v+6*v*h+h*h)}return{name:o,kind:a,effect:u,...rn(c,Math.max(0,l-3*c**2),0)}})}function rz(e){let{atoms:r,atomCount:n}=e;return["rig","tester","submission"].map(i=>{let t=r.flatMap(({spreads:a,count:s})=>Array.from({length:s},()=>a[i])).sort((a,s)=>a-s),o=a=>t[Math.min(t.length-1,Math.floor(a*t.length))];return{cause:i,relativeSd:t.reduce((a,s)=>a+s,0)/n,low:o(.025),high:o(.975)}})}var nz=1e-10;function iz(e){let{submissions:r}=e;r.forEach(eme);let n=[...new Set(r.map(({variant:f})=>f))].sort(),i=new Map(n.map(f=>[f,[]]));for(let f of r)i.get(f.variant).push(f);let t=n.flatMap(f=>i.get(f)),o=Float64Array.from(n,f=>Yfe(i.get(f))),a=new Int32Array(n.length+1);n.forEach((f,m)=>a[m+1]=a[m]+i.get(f).length);let s=tz(t),u=new Map(s.map(({kind:f,name:m},v)=>[`${f}:${m}`,v])),c=t.map(f=>tz([f]).map(({kind:m,name:v})=>u.get(`${m}:${v}`))),l=new Int32Array(t.length+1);c.forEach((f,m)=>l[m+1]=l[m]+f.length);let d=n.flatMap((f,m)=>i.get(f).map(()=>o[m]));return{variants:n,centres:o,starts:a,y:Float64Array.from(t,({value:f},m)=>f/d[m]-1),repeatability:Float64Array.from(t,({relativeVariance:f})=>Math.max(nz,f)),degreesOfFreedom:Float64Array.from(t,({degreesOfFreedom:f})=>f),columns:s,columnStarts:l,columnOf:Int32Array.from(c.flat())}}function Yfe(e){let r=e.map(({relativeVariance:t})=>1/Math.max(nz,t)),n=r.reduce((t,o)=>t+o,0),i=e.reduce((t,{value:o},a)=>t+o*(r[a]/n),0);if(i>0)return i;throw new z("bench-model/not-positive",`designOf: the submissions of ${e[0].variant} have a mean of ${i}, expected above 0. Relative effects need quantities above 0.`)}function tz(e){let r=new Map,n=i=>{r.set(`${i.kind}:${i.name}`,i)};for(let{rig:i,tester:t,certificates:o}of e){i!==null&&n({name:i,kind:"rig",knownSd:0}),n({name:t,kind:"tester",knownSd:0});for(let{name:a,relativeStandardUncertainty:s}of o)n({name:a,kind:"certificate",knownSd:s})}return[...r].sort(([i],[t])=>i<t?-1:1).map(([,i])=>i)}function eme({variant:e,value:r,relativeVariance:n,degreesOfFreedom:i,certificates:t},o){if(!(Number.isFinite(r)&&n>=0&&n<1/0&&i>0&&t.every(s=>s.relativeStandardUncertainty>=0&&s.relativeStandardUncertainty<1/0)))throw new z("bench-model/bad-submission",`designOf: submission ${o+1} (${e}) is ${r} with relative variance ${n} of ${i} degrees of freedom, expected finite numbers, 0 or more, with degrees above 0, also in its certificates. Moderate the variances or leave it out.`)}var rme=4;function oz(e){let r=iz(e),n=r.y.length-r.variants.length;if(e.reproducibility===null&&e.told.length===0&&n<rme)return{kind:"values-only",reason:"nothing-known-of-effects",variants:r.variants,values:r.centres};let{isApart:i,spreads:t}=SA(r,e);return tme(r,t,i)}function tme(e,r,n){let i=new Map,t=[];for(let s=0;s<r.length;){let u=r[s],c=1;for(;r[s+c]===u;)c+=1;let l=i.get(u.submission)??Yi(e,u.submission,n);i.set(u.submission,l);let{effects:d,factor:f}=Yc(l,Qi(e,u),0);t.push({spreads:u,count:c,level:l,effects:d,factor:f,means:nme(e,l,d)}),s+=c}let o=new Float64Array(e.variants.length);for(let s of t)for(let u=0;u<o.length;u++)o[u]=o[u]+s.count/r.length*s.means[u];let a=o.map((s,u)=>e.centres[u]*(1+s));return{kind:"fitted",design:e,atoms:t,atomCount:r.length,values:a,means:o,isApart:n}}function nme(e,{means:r,shares:n},i){return r.map((t,o)=>{let a=t;for(let s=e.starts[o];s<e.starts[o+1];s++)for(let u=e.columnStarts[s];u<e.columnStarts[s+1];u++)a-=n[s]*i[e.columnOf[u]];return a})}function az(e,r){let n=e.variance+r.variance,i=e.variance**2/e.degreesOfFreedom+r.variance**2/r.degreesOfFreedom;return{variance:n,degreesOfFreedom:i===0?1/0:n**2/i}}var x1=({parts:e})=>e.length===2,ime=["breakingForce","diameter"];function sz(e,r,n={}){let i=Map.groupBy(ome(r),({submission:c})=>c.variant),t=[...i].filter(([,c])=>c.every(({relative:l})=>l)),o=t.flatMap(([c,l])=>l.flatMap(d=>ame(e,c,d))),a=o.length===0?null:oz({submissions:o,reproducibility:e.reproducibility,told:sme(n,x1(e))}),s=a?.kind==="fitted"?ez(a):[],u=new Set(t.map(([c])=>c));return{between:ume(a,o.length-t.length),fit:a,variants:new Map([...i].map(([c,l])=>[c,{points:l,evidence:a?.kind==="fitted"&&u.has(c)?cme(e,c,l,a,s):null}]))}}function ome([e,r]){return[...e?.means.values()??[]].flatMap(({submission:n,mean:i,relative:t})=>{if(r===void 0)return{submission:n,value:i,relative:t};let o=r.means.get(n.reference);if(!o)return[];let a=t&&o.relative&&az(o.relative,t);return{submission:n,value:100*o.mean/i,relative:a}})}function ame(e,r,{submission:n,value:i,relative:t}){let{rig:o,tester:a,calibration:s}=n,u=s!==null&&!x1(e)&&ime.includes(e.quantity);return t?[{variant:r,value:i,relativeVariance:t.variance,degreesOfFreedom:t.degreesOfFreedom,rig:x1(e)?null:o,tester:a,certificates:u?[{name:s.certificate,relativeStandardUncertainty:s.relative}]:[]}]:[]}var sme=({rig:e,tester:r},n)=>[...e&&!n?[{cause:"rig",relativeSd:Number(e.relativeSd),degreesOfFreedom:e.degreesOfFreedom}]:[],...r?[{cause:"tester",relativeSd:Number(r.relativeSd),degreesOfFreedom:r.degreesOfFreedom}]:[]];function ume(e,r){let n=e?.kind==="fitted"?rz(e).reduce((i,{relativeSd:t})=>i+t**2,0):0;return{relativePercent:100*Math.sqrt(n),degreesOfFreedom:r}}function cme({key:e},r,n,i,t){let o=[...new Set(n.flatMap(({submission:a})=>E1(a)))].sort();return{value:i.values[i.design.variants.indexOf(r)]??0,factors:[{series:e,variant:r,power:1}],without:Object.fromEntries(o.map(a=>[a,lme(n,a,t)]))}}var E1=({tester:e,rig:r})=>[`tester:${e}`,`rig:${r}`];function lme(e,r,n){let i=e.filter(({submission:u})=>!E1(u).includes(r)),t=u=>n.reduce((c,{kind:l,name:d,effect:f})=>E1(u).includes(`${l}:${d}`)?c+f:c,0),o=i.map(({relative:u})=>1/(u?.variance??1)),a=o.reduce((u,c)=>u+c,0),s=i.reduce((u,{submission:c,value:l},d)=>u+(o[d]??0)*l/(1+t(c)),0);return i.length===0?null:s/a}var uz=10;function Fl(e){if(D1(e,"digamma"),e<uz)return Fl(e+1)-1/e;let r=1/(e*e);return Math.log(e)-.5/e-r*(1/12-r*(1/120-r*(1/252-r*(1/240-r*(1/132-r*691/32760)))))}function co(e){if(D1(e,"trigamma"),e<uz)return co(e+1)+1/(e*e);let r=1/(e*e);return 1/e+r/2+r/e*(1/6-r*(1/30-r*(1/42-r*(1/30-r*(5/66-r*691/2730)))))}function cz(e){if(D1(e,"inverseTrigamma"),e>1e7)return 1/Math.sqrt(e);if(e<1e-6)return 1/e;let r=.5+1/e;for(let n=0;n<50;n++){let i=co(r),t=(co(r*1.0001)-co(r*.9999))/(2e-4*r),o=i*(1-i/e)/t;if(r+=o,Math.abs(o)<=1e-14*r)break}return r}function D1(e,r){if(!(e>0&&e<1/0))throw new z("distributions/out-of-domain",`${r}: the argument is ${e}, expected a finite number above 0. Check the step before this one.`)}var dme=3,fme=1e-5;function lz(e){e.forEach(vme);let r=e.filter(({degreesOfFreedom:i})=>i>0),n=r.length<dme?null:pme(r);return n?{priorVariance:n.variance,priorDegreesOfFreedom:n.degreesOfFreedom,moderated:e.map(i=>mme(i,n))}:{priorVariance:null,priorDegreesOfFreedom:0,moderated:e.map(i=>i.degreesOfFreedom>0?{...i}:null)}}function mme({variance:e,degreesOfFreedom:r},n){if(n.degreesOfFreedom===1/0)return{variance:n.variance,degreesOfFreedom:1/0};let i=n.degreesOfFreedom+r;return{variance:(n.degreesOfFreedom*n.variance+r*e)/i,degreesOfFreedom:i}}function pme(e){let r=bt(e.map(({variance:s})=>s)),n=fme*(r>0?r:Math.max(...e.map(({variance:s})=>s)));if(n===0)return{variance:0,degreesOfFreedom:1/0};let i=e.map(({degreesOfFreedom:s})=>s/2),t=e.map(({variance:s},u)=>Math.log(Math.max(s,n))-Fl(i[u])+Math.log(i[u])),o=Be(t)**2-X(i.map(co));if(o<=0)return{variance:Math.exp(X(t)),degreesOfFreedom:1/0};let a=cz(o);return{variance:Math.exp(X(t)+Fl(a)-Math.log(a)),degreesOfFreedom:2*a}}function vme({variance:e,degreesOfFreedom:r},n){if(!(e>=0&&e<1/0&&r>=0&&r<1/0))throw new z("consensus/bad-variance",`moderatedVariances: variance ${n+1} is ${e} with ${r} degrees of freedom, expected both finite and 0 or more. Correct that entry.`)}var gme={breakingForce:(e,r)=>r?e.treatedForceN:e.breakingForceN,diameterAlongStations:({diameterMm:e})=>e,linearDensity:({linearDensityTex:e})=>e},hme=["breakingForce","diameterAlongStations"];function T1({method:e,series:r,figure:n},i){return i.method!==e?null:n==="outOfRoundness"?i.figures.outOfRoundnessPercent:gme[r.kind](i.figures,tn(r))}function dz(e,r){let n=r.flatMap(s=>{let u=T1(e,s);return u&&u.mean>0?[{submission:s,spread:u}]:[]}),{priorVariance:i,moderated:t}=lz(n.map(({spread:{n:s,mean:u,sd:c}})=>({variance:c===null?0:(c/u)**2,degreesOfFreedom:s-1}))),o=e.figure==="mean"&&hme.includes(e.series.kind),a=n.map(({submission:s,spread:{n:u,mean:c,cvPercent:l}},d)=>{let f=o&&s.resolution!==null?s.resolution/c:0;return[s.reference,{submission:s,n:u,mean:c,ownCvPercent:l,relative:yme(t[d]??null,u,f)}]});return{typicalCvPercent:i===null?null:100*Math.sqrt(i),means:new Map(a)}}function yme(e,r,n){let i=Math.max(e?.variance??0,n**2/12)/r;return e&&i>0?{variance:i,degreesOfFreedom:e.degreesOfFreedom}:null}var bme="Above 100 %: reported as found; straight and treated pulls scatter.";function fz(e,r,n,i,t={}){let o=new Map(r.filter(({parts:c})=>c.length>0).map(c=>[c.key,_me(c,n,t)])),a=Object.fromEntries([...o].flatMap(([c,{measured:l}])=>l.fit?[[c,l.fit]]:[])),s=c=>{let l=d=>wme(o.get(d)?.measured,c);return new Map(r.flatMap(d=>{let f=Sme(d,l,i.get(c));return f?[[d.key,Ome(d,f,o.get(j1(d))?.series??[],a)]]:[]}))},u=new Map(e.map(c=>[c,s(c)]));return{quantities:r,results:u,besideTable:new Map(r.map(({key:c})=>[c,$me(c,u,a)])),fits:a,spreads:new Map([...o].map(([c,{series:l,measured:{between:d}}])=>[c,{typicalCvPercent:l.at(-1)?.typicalCvPercent??null,between:d}]))}}function $me(e,r,n){let i=[...r].flatMap(([o,a])=>{let s=a.get(e)?.evidence;return s?[{variant:o,evidence:s}]:[]}),t=Hj(i.map(({evidence:o})=>o),n);return new Map(i.flatMap(({variant:o},a)=>t[a]?[[o,t[a]]]:[]))}function _me(e,r,n){let i=e.parts.map(t=>dz(t,r));return{series:i,measured:sz(e,i,n[e.key])}}var j1=e=>e.parts.length>0?e.key:be(Ba(e));function wme(e,r){let n=e?.variants.get(r);return n?{value:n.evidence?.value??X(n.points.map(t=>t.value)),evidence:n.evidence,from:n.points.map(({submission:t})=>t)}:null}function Sme(e,r,n){if(e.quantity==="strengthHonesty")return kme(r(be(Ba(e))),n);let i=Wh(e);return i?Ime(r(be(Ba(e))),r(be(i))):r(e.key)}function Ime(e,r){let n=(r?.from??[]).flatMap(({figures:s})=>s.areaMm2??[]);if(!e||!r||n.length===0)return null;let i=X(n)/r.value**2,t=e.value/(i*r.value**2),o={from:e.from,also:r.from};if(!e.evidence||!r.evidence)return{value:t,evidence:null,...o};let a=[{evidence:e.evidence,power:1},{evidence:r.evidence,power:-2}];return{value:t,evidence:P1(a,1/i),...o}}function kme(e,r){if(!e||r===void 0)return null;let n=e.evidence&&P1([{evidence:e.evidence,power:1}],100/r);return{value:100*e.value/r,evidence:n,from:e.from}}function Ome(e,{value:r,evidence:n,from:i,also:t=[]},o,a){let s=n?Qj(n,a):Xj(r),u=o.map(c=>c.means);return{of:e,estimate:s,evidence:n,ownCvPercents:i.map(({reference:c})=>u.at(-1)?.get(c)?.ownCvPercent??null),specimens:i.reduce((c,{reference:l})=>c+u.reduce((d,f)=>d+(f.get(l)?.n??0),0),0),submissions:i.length,testers:new Set(i.map(({tester:c})=>c)).size,rigs:new Set(i.map(({rig:c})=>c)).size,note:e.quantity==="retention"&&r>100?bme:null,references:[...i,...t].map(({reference:c})=>c)}}var Nme=["loadFrame","forceGauge","opticalGauge","micrometer","balance"];function z1({instruments:e}){return(Nme.flatMap(n=>e.filter(i=>i.kind===n))[0]??e[0])?.code??"none"}function mz(e){let{edition:r,submissions:n,claims:i,instruments:t}=e,o=new Map(i.filter(({quantity:s})=>s==="breakingForce").map(({variant:s,valueSi:u})=>[s,Number(u)])),a=fz(r.entries.map(({variant:s})=>s),DP(r.scheme.rules.categories,r.methods),n.map(s=>Ame(s,t)),o,Ul(e,r.methods));return{...e,...a,standings:Eme(r,a.results)}}function Ame(e,r){let{reference:n,variant:i,method:t,tester:o}=e,a=z1(e),s=r.find(({code:u})=>u===a);return{reference:n,variant:i,method:t.slug,tester:o,rig:a,figures:uo(e),calibration:Pme(e,s),resolution:s?xme(s):null}}function Pme(e,r){let n=e.instruments.find(({code:s})=>s===r?.code)?.certificate,i=r?.calibrations.find(({certificate:s})=>s===n);if(!i)return null;let{certificate:t,expandedUncertaintyPercent:o,coverageFactor:a}=i;return{certificate:t,relative:Number(o)/Number(a)/100}}function xme({resolution:e}){let{si:r,siUnit:n}=BP(e.text,e.unit);return n==="N"?Number(r):n==="m"?1e3*Number(r):null}function Eme({scheme:e,entries:r},n){let{categories:i,combine:t,countPlaces:o,tieBreak:a}=e.rules,s=r.map(({variant:u,exclusion:c})=>({id:u,exclusion:c&&{effect:c.effect},values:Object.fromEntries(i.map(l=>{let d=n.get(u)?.get(be(l))?.estimate,f=d&&to(l,u,n).length===0;return[l.code,f?J(d.value,l.places):null]}))}));return LP({categories:i,combine:t,countPlaces:o,tieBreak:a,entries:s})}function pz(e){let r=mz(e.evidence);return{...e,computed:r,certainty:RP(r,Yr(st(Dme(e))))}}var Dme=({evidence:{edition:e,submissions:r}})=>({edition:e.slug,scheme:e.scheme.rules,submissions:r.map(({reference:n,specimens:i})=>({reference:n,specimens:i.map(({trace:t,...o})=>o)}))}),_e=({house:e,isDemo:r,revision:n,publishedAt:i,evidence:{edition:t}})=>({formatVersion:zt,house:e,isDemo:r,edition:{slug:t.slug,name:t.name,openedOn:t.opensOn,closedOn:t.closedOn??t.closesOn},revision:n,publishedAt:i});function Wn({variants:e},r){let n=e.find(i=>i.slug===r);if(!n)throw new Error(`A release names a variant that is not among its inputs: ${r}`);return n}function vz(e,r,n,i){return{..._e(e),inputs:e,outputs:{results:jme(r),edition:n,categories:i}}}var gz=({degreesOfFreedom:e})=>pa(Math.min(1e6,e)),Tme=e=>e?{standardUncertainty:pa(e.standardUncertainty),degreesOfFreedom:gz(e)}:null;function jme({computed:{edition:e,results:r,besideTable:n}}){return e.entries.flatMap(({variant:i})=>[...r.get(i)??[]].map(([t,{estimate:o}])=>({variant:i,quantity:t,value:pa(o.value),standardUncertainty:o.standardUncertainty===null?null:pa(o.standardUncertainty),degreesOfFreedom:o.standardUncertainty===null?null:gz(o),besideTable:Tme(n.get(t)?.get(i))})))}function yz(e){return{..._e(e),makers:hz(e.variants,({maker:r})=>r.slug).map(r=>({slug:r[0].maker.slug,name:r[0].maker.name,lines:hz(r,({line:n})=>n.slug).map(n=>{let{line:i,material:t,construction:o,carriers:a}=n[0];return{slug:i.slug,name:i.name,material:t,construction:o,carriers:a,variants:n}})})),methods:$z(e).map(([{slug:r,number:n}])=>({slug:r,number:n})),checks:[...e.checks]}}function bz(e){return $z(e).map(([r,n])=>{let{slug:i,name:t,number:o,effectiveFrom:a,effectiveUntil:s,wording:u,isComparableWithPrevious:c}=r;return{formatVersion:zt,slug:i,name:t,number:o,effectiveFrom:a,effectiveUntil:s,...u,series:n.map(l=>({...l})),parameters:zme(r),limits:Cme(r),checks:e.checks.map(({code:l})=>l),checkSettings:Object.entries(r.checks).map(([l,{severity:d=null,limits:f={}}])=>({check:l,severity:d,limits:Object.entries(f).map(([m,v])=>({name:m,value:v}))})),isComparableWithPrevious:c}})}var $z=({evidence:{edition:e},methods:r})=>e.methods.flatMap(({slug:n,number:i,series:t})=>r.filter(o=>o.slug===n&&o.number===i).map(o=>[o,t])),zme=({parameters:{areaFrom:e,settings:r}})=>[...e===null?[]:[{name:"Cross-section from",value:e,unit:""}],...r];function Cme({limits:e}){let r=({low:n,high:i})=>`${n} to ${i}`;return[{name:"Least number of valid specimens",value:String(e.minimumSpecimens),unit:""},{name:"Largest coefficient of variation",value:String(e.maximumCvPercent),unit:"%"},{name:"Largest share of breaks at the grip",value:String(e.gripBreakSharePercent),unit:"%"},...e.timeToBreakS?[{name:"Time to break",value:r(e.timeToBreakS),unit:"s"}]:[],{name:"Ambient temperature",value:r(e.ambientTemperatureC),unit:"°C"},{name:"Relative humidity",value:r(e.ambientHumidityPercent),unit:"%"}]}function hz(e,r){let n=new Map;for(let i of[...e].sort((t,o)=>t.slug<o.slug?-1:1)){let t=n.get(r(i));t?t.push(i):n.set(r(i),[i])}return[...n].sort(([i],[t])=>i<t?-1:1).map(([,i])=>i)}function Ml(e,r){let n=r.map(i=>new Map(i.map(({id:t,place:o})=>[t,o])));return new Map(e.map(({id:i,place:t})=>[i,{...qme(i,t,n),runAtTop:Rme(i,t,n)}]))}function qme(e,r,n){let i=n[0]?.get(e)??null;return i===null?{kind:n.some(t=>(t.get(e)??null)!==null)?"returned":"new",places:null}:r===null?{kind:"unchanged",places:null}:{kind:i===r?"unchanged":"moved",places:i-r}}function Rme(e,r,n){if(r!==1)return 0;let i=n.findIndex(t=>t.get(e)!==1);return 1+(i===-1?n.length:i)}var C1=e=>e==null?null:J(100*e,1),Ll=e=>({chanceOfFirstPercent:C1(e?.chanceOfFirst),chanceOfFirstFivePercent:C1(e?.chanceOfFirstFive),chanceAheadOfNextPercent:C1(e?.chanceAheadOfNext)});function Zl(e){return e.map((r,n)=>r!==null&&e.some((i,t)=>t!==n&&i===r))}function _z(e,r){let{edition:n}=e.evidence,{code:i,method:t}=r,o=n.methods.find(({slug:c})=>c===t)?.number??0,a=e.earlier[0]?.categories.find(c=>c.code===i);if(!a)return"first";if(a.quantity!==be(r))return"notComparable";if(a.methodVersion===o)return"same";let s=e.methods.filter(({slug:c,number:l})=>c===t&&l>a.methodVersion&&l<=o);return s.length>0&&s.every(c=>c.isComparableWithPrevious)?"changed":"notComparable"}function Vl(e,r){return r===null?{kind:"notComparable",places:null,runAtTop:0}:e??{kind:"new",places:null,runAtTop:0}}var wz=e=>J(100*e,1);function Sz({sensitivity:e}){if(!e)return null;let{leftOut:r,weights:n}=e;return{leftOut:r.map(Ume),weights:n&&{firstPlaces:n.firstPlaces.map(({id:i,share:t})=>({variant:i,percent:wz(t)})),smallestChange:n.smallestChange&&{variant:n.smallestChange.id,weightMovedPercent:wz(n.smallestChange.weightMoved)}}}}function Ume({kind:e,name:r,first:n,swappedPairs:i,swaps:t,dropped:o}){let[a,...s]=r.split(":");return{kind:e==="party"?a:e,name:e==="party"?s.join(":"):r,first:[...n],swappedPairs:i,swaps:t.map(([u,c])=>({ahead:u,behind:c})),dropped:[...o]}}function q1(e){let{edition:r,quantities:n}=e.computed;return r.scheme.rules.categories.map(i=>{let{code:t,name:o,unit:a,tradeUnit:s,direction:u,weight:c,method:l,series:d,section:f,conditions:m}=i;return{code:t,name:o,quantity:be(i),quantityName:n.find(({key:v})=>v===be(i))?.name??o,unit:a,tradeUnit:s,direction:u,weight:c,method:l,series:d,section:f,methodVersion:r.methods.find(({slug:v})=>v===l)?.number??0,conditions:m,comparability:_z(e,i)}})}function Iz(e,r){let{edition:n,submissions:i}=e.computed,{slug:t,name:o,words:a,number:s,rules:u}=n.scheme,c=i.flatMap(l=>l.specimens);return{..._e(e),previousEdition:n.previous,scheme:{slug:t,name:o,words:a,version:s,combine:u.combine,countPlaces:u.countPlaces,tieBreak:u.tieBreak,categories:q1(e)},counts:{entries:n.entries.length,submissions:i.length,specimens:c.length,testers:new Set(i.map(({tester:l})=>l)).size,rigs:new Set(i.flatMap(({instruments:l})=>l.filter(({kind:d})=>d==="loadFrame"||d==="forceGauge").map(({code:d})=>d))).size,setAside:c.filter(({state:l})=>l==="setAside").length},overall:Lme(e),incomplete:Fme(e),excluded:Vme(e),...n.amendments?{amendments:[...n.amendments]}:{},categoryTops:u.categories.map(({code:l})=>({category:l,variants:Mme(e,l)})),sensitivity:Sz(e.certainty),erratum:r}}function Fme(e){let{edition:r,standings:n,results:i}=e.computed;return n.incomplete.map(({id:t,missing:o})=>({variant:Wn(e,t),missing:[...o],needs:r.scheme.rules.categories.flatMap(a=>to(a,t,i).map(qP))}))}function Mme(e,r){let n=e.computed.standings.categories[r]??[],i=e.certainty.categories.get(r),t=({id:o,place:a})=>i?.size?i.get(o)?.group===1:a===1;return n.filter(t).map(({id:o})=>Wn(e,o))}function Lme(e){let{standings:r}=e.computed,n=Zme(e),i=Zl(r.overall.map(({place:t})=>t));return r.overall.map(({id:t,place:o,placeIfIncluded:a,score:s,categoryPlaces:u},c)=>{let l=Wn(e,t),d=e.certainty.overall.get(t);return{variant:l,place:o,placeIfIncluded:a,isTied:i[c]??!1,group:d?.group??null,placeInterval:d?{low:d.low,high:d.high}:null,couldBeFirst:d?.couldBeFirst??null,movement:Vl(n.get(l.slug),o),...Ll(d),score:s,categoryPlaces:{...u}}})}function Zme(e){let r=e.computed.standings.overall.map(({id:n,place:i})=>({id:n,place:i}));return Ml(r,e.earlier.map(({overall:n})=>n.map(({variant:i,place:t})=>({id:i,place:t}))))}function Vme(e){let{edition:r,standings:n}=e.computed;return r.entries.flatMap(({variant:i,exclusion:t})=>{if(!t)return[];let o=n.overall.find(({id:s})=>s===i),a=t.reasonCode;return[{variant:Wn(e,i),reasonCode:a,words:t.words,effect:t.effect,placeIfIncluded:o?.placeIfIncluded??null}]})}function kz(e,r){let{factor:n,divisor:i,offset:t}=ht[pl(r)],o=tl(e,"convert").times(i).div(n).minus(t).toSignificantDigits(Fa);return o.isZero()?"0":o.toString()}function R1(e,r,n){if(!Number.isInteger(n)||n<0)throw new z("units/bad-places",`roundInterval: found ${n} places, expected a whole number of 0 or more.`);if(r===null)return{value:Bl(e,n),low:null,high:null};let i=eo(r.high,"roundInterval").minus(eo(r.low,"roundInterval")).div(2),t=i.greaterThan(0)?Math.min(n,1-i.toSignificantDigits(2).e):n;return{value:Bl(e,t),low:Bl(r.low,t),high:Bl(r.high,t)}}function Bl(e,r){let n=eo(e,"roundToUncertainty").toNearest(en.pow(10,-r));return(n.isZero()?n.abs():n).toFixed(Math.max(0,r))}var lo={breakingForce:{unit:"N",places:1,tradeUnit:"lbf",tradePlaces:2},apparentStress:{unit:"MPa",places:1,tradeUnit:"psi",tradePlaces:0},diameter:{unit:"mm",places:3,tradeUnit:"in",tradePlaces:4},outOfRoundness:{unit:"%",places:1,tradeUnit:null,tradePlaces:null},linearDensity:{unit:"tex",places:2,tradeUnit:"den",tradePlaces:0},retention:{unit:"%",places:1,tradeUnit:null,tradePlaces:null},strengthHonesty:{unit:"%",places:1,tradeUnit:null,tradePlaces:null}};function Bme(e,r,n){let{factor:i,divisor:t}=ht[r];return Number(kz(new en(e).times(i).div(t).toString(),n))}var fo=(e,r)=>U1(e.of,e.estimate.value,Yj(e.estimate),e,r);function U1({key:e,name:r},n,i,{specimens:t,submissions:o,testers:a,rigs:s,note:u},{unit:c,places:l,tradeUnit:d,tradePlaces:f}){let m=R1(n,i,l),v=y=>Bme(y,c,d??c),h=i&&{low:v(i.low),high:v(i.high)};return{quantity:e,name:r,unit:c,...m,trade:d===null?null:{unit:d,...R1(v(n),h,f??l)},specimens:t,submissions:o,testers:a,rigs:s,note:u}}function Oz(e){e.forEach(o=>{if(vt(o,"falseDiscoveryAdjusted"),o<0||o>1)throw new z("distributions/out-of-domain",`falseDiscoveryAdjusted: found ${o}, expected 0 ≤ p ≤ 1. Give probabilities.`)});let r=e.length,n=e.map((o,a)=>a).sort((o,a)=>e[a]-e[o]),i=new Array(r),t=1;return n.forEach((o,a)=>{t=Math.min(t,r*e[o]/(r-a)),i[o]=t}),i}var Wme=.05,Gme=3;function Nz(e,r){let n=[...e].flatMap(([s,u])=>r.has(s)?[{id:s,mine:u,theirs:r.get(s)}]:[]);if(n.sort((s,u)=>s.id<u.id?-1:1),n.length===0)return[];let i=n.map(({mine:s,theirs:u})=>Math.log(s.value/u.value)),t=bt(i),o=n.map(({id:s,mine:u,theirs:c},l)=>{let d=[u,c].map(({standardUncertainty:$})=>$**2),f=d[0]+d[1],m=d[0]**2/u.degreesOfFreedom+d[1]**2/c.degreesOfFreedom,v=m===0?1/0:f**2/m,h=Math.sqrt(f),y=i[l]-t,_=n.length>=Gme&&h>0?2*Tl(-Math.abs(y)/h,v):1;return{id:s,relativeChange:Math.expm1(i[l]),beyondTable:Math.expm1(y),standardUncertainty:h,degreesOfFreedom:v,probability:_}}),a=Oz(o.map(({probability:s})=>s));return o.map(({probability:s,...u},c)=>({...u,adjustedProbability:a[c],isChange:a[c]<=Wme}))}function Az({earlier:e,computed:{results:r,besideTable:n}},i){let t=new Map([...n.get(i)??[]].flatMap(([a,s])=>{let u=r.get(a)?.get(i)?.estimate.value;return u===void 0?[]:[[a,{value:u,...s}]]})),o=new Map((e[0]?.results??[]).filter(a=>a.quantity===i).flatMap(a=>Hme(a)));return new Set(Nz(t,o).filter(({isChange:a})=>a).map(({id:a})=>a))}function Hme(e){let r=Number(e.value);if(e.besideTable){let{standardUncertainty:i,degreesOfFreedom:t}=e.besideTable;return[[e.variant,{value:r,standardUncertainty:Number(i),degreesOfFreedom:Number(t)}]]}if(e.standardUncertainty===null)return[];let n=Number(e.standardUncertainty)/r;return[[e.variant,{value:r,standardUncertainty:n,degreesOfFreedom:Number(e.degreesOfFreedom)}]]}var Pz=1e6;function xz(e,r=3,n=.8,i=.05){ve(e,"cvPercent","specimensToTell"),ve(r,"differencePercent","specimensToTell"),je(n,"specimensToTell"),je(i,"specimensToTell");let t=o=>{let a=o===1/0?1/0:2*o-2;return 2*((mr(1-i/2,a)+mr(n,a))*e/r)**2};for(let o=Math.max(2,Math.floor(t(1/0)));o<=Pz;o++)if(o>=t(o))return o;throw new z("uncertainty/too-many-specimens",`specimensToTell: more than ${Pz} specimens would be needed for CV ${e} % and ${r} %. Ask for a larger difference.`)}function Ez({computed:{quantities:e,spreads:r}},n){let i=e.find(s=>s.key===n),t=i&&r.get(j1(i));if(!t)throw new Error(`A category ranks what no pinned method yields: ${n}`);let{typicalCvPercent:o,between:a}=t;return{specimenPercent:o===null?null:J(o,1),betweenSubmissionsPercent:J(a.relativePercent,1),degreesOfFreedom:a.degreesOfFreedom,specimensToTell:o===null||o===0?null:xz(o)}}function Dz(e){return q1(e).map(r=>({..._e(e),category:r,spread:Ez(e,r.quantity),rows:Jme(e,r)}))}function Jme(e,r){let{standings:n,results:i,edition:t}=e.computed,o=t.scheme.rules.categories.find(({code:l})=>l===r.code),a=n.categories[r.code]??[],s=Zl(a.map(({place:l})=>l)),u=Kme(e,r,a),c=Az(e,r.quantity);return a.flatMap(({id:l,place:d,placeIfIncluded:f},m)=>{let v=i.get(l)?.get(r.quantity);if(!v||!o)return[];let h=Wn(e,l),y=e.certainty.categories.get(r.code)?.get(l);return[{variant:h,place:d,placeIfIncluded:f,isTied:s[m]??!1,group:y?.group??null,placeInterval:y?{low:y.low,high:y.high}:null,couldBeFirst:y?.couldBeFirst??null,movement:Vl(u(h.slug),d),...Ll(y),figure:fo(v,o),change:Xme(e,r,h.slug,v.estimate,c)}]})}function Kme(e,r,n){let i=n.map(({id:a,place:s})=>({id:a,place:s})),t=e.earlier.map(({categories:a})=>(a.find(({code:s})=>s===r.code)?.rows??[]).map(({variant:s,place:u})=>({id:s,place:u}))),o=Ml(i,t);return a=>{let s=o.get(a)??{kind:"new",places:null,runAtTop:0};return r.comparability==="notComparable"&&s.kind!=="new"?{...s,kind:"notComparable",places:null}:s}}function Xme(e,r,n,i,t){let o=e.earlier[0]?.results.find(({variant:s,quantity:u})=>s===n&&u===r.quantity);if(!o)return{kind:"first",percent:null};if(r.comparability==="notComparable")return{kind:"notComparable",percent:null};let a=J(100*(i.value-Number(o.value))/Number(o.value),1);return{kind:t.has(n)?"changed":"withinNoise",percent:a}}function Tz(e,r){if(gt(e,"measured","claimRatioPercent"),!(r>0&&r<1/0))throw new z("claims/zero-claim",`claimRatioPercent: the claim is ${r}, expected a finite number above 0. Leave the ratio out.`);return 100*e/r}function jz(e,r,n){ve(e,"claimed","claimLimits"),gt(r,"tolerancePercent","claimLimits");let i=e*r/100;return{...n!=="at-most"&&{low:e-i},...n!=="at-least"&&{high:e+i}}}function Qme(e,r,n,i=1/0){e0e(e,n),gt(r,"standardUncertainty","conformityProbability");let{low:t=-1/0,high:o=1/0}=n;if(r===0)return e>=t&&e<=o?1:0;let[a,s]=[(t-e)/r,(o-e)/r],u=c=>Tl(c,i);return a>0?u(-a)-u(-s):u(s)-u(a)}function zz(e,r,n,i,t=1/0){gt(r,"expandedUncertainty","decideClaim"),ve(n,"coverageFactor","decideClaim");let o=Qme(e,r/n,i,t);return{conformityProbability:o,verdict:Yme(o)}}function Yme(e){if(!(e>=0&&e<=1))throw new z("distributions/out-of-domain",`claimVerdict: p is ${e}, expected 0 ≤ p ≤ 1. Give a probability.`);return e>=.95?"meets":e>=.8?"probably meets":e<=.05?"falls short":e<=.2?"probably falls short":"cannot say"}function e0e(e,{low:r,high:n}){if(r===void 0&&n===void 0)throw new z("claims/no-limit","conformityProbability: found no limit, expected low, high or both. State what the claim bounds.");let i=[e,r,n].find(t=>t!==void 0&&!Number.isFinite(t));if(i!==void 0)throw new z("measurement/not-a-number",`conformityProbability: found ${i}, expected finite numbers. Leave out a limit that is not there.`);if(r!==void 0&&n!==void 0&&r>n)throw new z("claims/bad-limits",`conformityProbability: low is ${r} and high is ${n}, expected low ≤ high. Swap the limits.`)}var r0e={meets:"meets","probably meets":"probablyMeets","cannot say":"cannotSay","probably falls short":"probablyFallsShort","falls short":"fallsShort"},Cz={breakingForce:{factor:1,unit:"N",sense:"at-least"},diameter:{factor:1e3,unit:"mm",sense:"at-most"},linearDensity:{factor:1e6,unit:"tex",sense:"within"},peNumber:{factor:1,unit:"PE",sense:"within"}},t0e={"at-least":0,"at-most":0,within:5};function Wl(e,r){let n=e.computed.results.get(r);return e.evidence.claims.filter(i=>i.variant===r).map(({quantity:i,basis:t,printed:o,valueSi:a,seenOn:s,source:u})=>{let{factor:c,unit:l}=Cz[i],d=Number(a)*c,f=n?.get(ml(e.computed.quantities,i)?.key??"");return{quantity:i,basis:t,printed:o,value:J(d,4),unit:l,seenOn:s,source:u,measured:f?fo(f,lo[f.of.quantity]):null,ratioPercent:f?J(Tz(f.estimate.value,d),1):null,decision:f?n0e(f,d,i):null}})}function n0e({estimate:e},r,n){if(e.standardUncertainty===null)return null;let{sense:i}=Cz[n],t=jz(r,t0e[i],i);return r0e[zz(e.value,e.standardUncertainty,1,t,e.degreesOfFreedom).verdict]}var qz=e=>({..._e(e),items:e.variants.map(r=>({variant:r,claims:Wl(e,r.slug)})).filter(({claims:r})=>r.length>0)});function Rz(e){let{pairs:r}=e.certainty,n=r?.variants??[],i=n.length;return{..._e(e),variants:[...n],aheadPercent:n.map((t,o)=>n.map((a,s)=>Math.round(100*(r?.chances[o*i+s]??.5))))}}function Uz(e){if(e.length===0)throw new z("measurement/too-few-readings","pairedReproducibility: found no pair, expected at least 1. Test something again.");let r=e.map(([o,a])=>(ve(o,"first","pairedReproducibility"),ve(a,"again","pairedReproducibility"),Math.log(a/o)**2)),n=e.length,i=Math.sqrt(r.reduce((o,a)=>o+a,0)/(2*n)),t=o=>i*Math.sqrt(n/Xt(o,n));return{relativeSd:i,low95:t(.975),high95:t(.025),pairs:n}}function Mz(e){let{retests:r,submissions:n}=e.evidence,i=(r?.drawn??[]).map(({original:t,again:o})=>i0e(t,o,n));return{..._e(e),draw:r?{seed:r.seed,percent:r.percent,from:[...r.from],drawnOn:r.drawnOn}:null,pairs:i.map(({original:t,again:o,found:a})=>({original:t,again:o?.reference??null,variant:a?.submission.variant??null,method:a?.submission.method.slug??null,first:a?J(a.first.value,1):null,second:a?J(a.second.value,1):null,unit:a?.first.unit??null,differencePercent:a?J(100*(a.second.value/a.first.value-1),1):null})),reproducibility:[...Map.groupBy(i.flatMap(({found:t})=>t??[]),({submission:t})=>t.method.slug)].map(([t,o])=>{let{relativeSd:a,low95:s,high95:u,pairs:c}=Uz(o.map(({first:m,second:v})=>[m.value,v.value])),[l,d,f]=[a,s,u].map(m=>J(100*m,1));return{method:t,pairs:c,relativePercent:l,low:d,high:f}})}}function i0e(e,r,n){let i=n.find(({reference:a})=>a===e),[t,o]=[i&&Fz(i),r&&Fz(r)];return{original:e,again:r,found:i&&t&&o?{submission:i,first:t,second:o}:null}}function Fz(e){let{retentionPercent:r,breakingForceN:n}=uo(e);return r?{value:r.value,unit:"%"}:n?{value:n.mean,unit:"N"}:null}var Lz=3,$t=e=>e==null?null:J(e,Lz);function o0e({pull:e,meanN:r,judged:n}){let i=n?.limits;return{benchDay:e.benchDay,tester:e.tester,readings:e.readings.map(({text:t,unit:o,valueN:a})=>({text:t,unit:o,valueN:a})),meanN:J(r,Lz),movingRangeN:$t(n?.movingRange),centreN:$t(i?.centre),sigmaN:$t(i?.sigma),lowN:i?$t(i.centre-3*i.sigma):null,highN:i?$t(i.centre+3*i.sigma):null,ewmaN:$t(n?.ewma),...a0e(n),signals:[...n?.signals??[]],state:n?.state??null,ambient:e.ambient??null,note:e.note,strike:e.strike}}function a0e(e){let{limits:r,ewmaLimits:n,ewma:i,movingRange:t}=e??{};if(!r||!n)return{movingRangeHighN:null,ewmaLowN:null,ewmaHighN:null,warnings:[]};let o=zl(r.sigma),a=(t??0)>o,s=i!=null&&(i<n.low||i>n.high);return{movingRangeHighN:$t(o),ewmaLowN:$t(n.low),ewmaHighN:$t(n.high),warnings:[...a?["movingRange"]:[],...s?["movingAverage"]:[]]}}var Zz=({instrument:e,method:r,controlLine:n,pulls:i})=>({instrument:e,method:r,controlLine:n,points:i.map(o0e)});function Vz(e){let{instruments:r,submissions:n}=e.evidence,i=Cl(e.evidence.controlPulls??[]).map(Zz);return{..._e(e),testers:s0e(n),agreement:u0e(e),effects:c0e(e),instruments:r.map(({code:t,kind:o,name:a,capacity:s,resolution:u,calibrations:c})=>({code:t,kind:o,name:a,capacity:s,resolution:u,calibrations:c.map(l=>({...l})),submissions:n.filter(l=>l.instruments.some(d=>d.code===t)).length,charts:i.filter(({instrument:l})=>l===t)}))}}function s0e(e){return[...Map.groupBy(e,({tester:n})=>n)].map(([n,i])=>({name:n,submissions:i.length,specimens:i.reduce((t,{specimens:o})=>t+o.length,0),benchDays:new Set(i.map(({benchDay:t})=>t)).size})).sort((n,i)=>n.name<i.name?-1:1)}var u0e=({computed:{quantities:e,spreads:r}})=>[...r].filter(([,{between:n}])=>n.degreesOfFreedom>0).map(([n,{typicalCvPercent:i,between:t}])=>({quantity:n,name:Bz(e,n),specimenPercent:i===null?null:J(i,1),betweenSubmissionsPercent:J(t.relativePercent,1),degreesOfFreedom:t.degreesOfFreedom})),Bz=(e,r)=>e.find(n=>n.key===r)?.name??r,c0e=({evidence:e,computed:{quantities:r}})=>Object.entries(Ul(e,e.edition.methods)).flatMap(([n,i])=>["rig","tester"].flatMap(t=>{let o=i[t];if(!o)return[];let{relativeSd:a,degreesOfFreedom:s,source:u}=o;return[{quantity:n,name:Bz(r,n),cause:t,relativePercent:J(100*Number(a),2),degreesOfFreedom:s,source:u}]}));var l0e=1.483,d0e=1.134,Wz=1.5,f0e=1e3;function Gz(e){ye(e,2,"algorithmA");let r=bt(e),n=l0e*bt(e.map(t=>Math.abs(t-r))),i=[[r,n]];for(let t=0;t<f0e;t++){let[o,a]=[r-Wz*n,r+Wz*n],s=e.map(l=>Math.min(a,Math.max(o,l))),[u,c]=[r,n];if(r=X(s),n=d0e*Be(s),i.push([r,n]),Math.abs(r-u)<=1e-12*n&&Math.abs(n-c)<=1e-12*n)break}return{mean:r,sd:n,rounds:i}}var N0e=_t(tC(),1),lC=_t(cC(),1);function Gl(e,r,n){return je(e,"fQuantile"),Ua(r,"fQuantile"),Xi(n,"fQuantile"),n===1/0?Xt(e,r)/r:(0,lC.default)(e,r,n)}function Hl(e,r){je(r,"mandelHCritical"),Number.isInteger(e)&&e>=3||dC("mandelHCritical",e,3);let n=mr(1-r/2,e-2);return(e-1)*n/Math.sqrt(e*(n*n+e-2))}function Jl(e,r,n){if(je(n,"mandelKCritical"),Number.isInteger(e)&&e>=2||dC("mandelKCritical",e,2),!(r>=2))throw new z("measurement/too-few-readings",`mandelKCritical: found ${r} readings per tester, expected at least 2. Repeat the pulls.`);let i=Gl(1-n,r-1,(e-1)*(r-1));return Math.sqrt(e/(1+(e-1)/i))}function dC(e,r,n){throw new z("agreement/too-few-testers",`${e}: found ${r} testers, expected a whole number of at least ${n}. Invite another tester.`)}function fC(e,r,n){return Dr(e-r,"distance from the assigned value","zScore"),ve(n,"proficiencySd","zScore"),(e-r)/n}function A0e(e,r,n){if(je(n,"cochranCritical"),!(e>=2&&r>=2))throw new z("measurement/too-few-readings",`cochranCritical: found ${e} groups of ${r}, expected at least 2 groups of 2. Collect more readings.`);let i=e-1,t=Gl(1-n/e,r-1,i*(r-1));return 1/(1+i/t)}function mC(e,r,n=.05){ye(e,2,"cochranTest");let i=e.findIndex(s=>s<0);if(i>=0)throw new z("outliers/negative-deviation",`cochranTest: standard deviation ${i+1} is ${String(e[i])}, expected 0 or more. Give standard deviations, not differences.`);let t=A0e(e.length,r,n),o=e.reduce((s,u)=>Math.max(s,u));if(o===0)return{statistic:0,critical:t,suspectIndex:null,isOutlier:!1};let a=1/Ae(e.map(s=>(s/o)**2));return{statistic:a,critical:t,suspectIndex:e.indexOf(o),isOutlier:a>t}}var P0e=[2e-4,.009,.0349,.0708,.1101,.1492,.1864,.2213,.2537,.2836,.3112,.3367,.3603,.3822,.4025,.4214,.4391],x0e=[0,.0018,.0116,.0308,.0563,.0851,.115,.1448,.1738,.2016,.228,.253,.2767,.299,.32,.3398,.3585];function E0e(e,r){let n=(r===.05?P0e:x0e)[e-4];if(n===void 0)throw new z("outliers/no-critical-value",`doubleGrubbsCritical: n is ${e}, expected 4 to 20. Use the generalised ESD test.`);return n}function vC(e,r=.05){ye(e,4,"doubleGrubbsTest");let n=E0e(e.length,r),i=[...e].sort((c,l)=>c-l),t=pC(i),o=i[0]===i[i.length-1],a=c=>o?1:pC(c)/t,s=a(i.slice(2)),u=a(i.slice(0,-2));return{ratioWithoutTwoSmallest:s,ratioWithoutTwoLargest:u,critical:n,areTwoSmallestOutliers:s<n,areTwoLargestOutliers:u<n}}function pC(e){let r=X(e);return Ae(e.map(n=>(n-r)**2))}function D0e(e,r,n="both"){if(je(r,"grubbsCritical"),!(e>=3))throw new z("measurement/too-few-readings",`grubbsCritical: n is ${e}, expected at least 3. Test a larger set.`);let i=mr(r/((n==="both"?2:1)*e),e-2);return(e-1)/Math.sqrt(e)*Math.sqrt(i*i/(e-2+i*i))}function gC(e,r=.05,n="both"){ye(e,3,"grubbsTest");let i=D0e(e.length,r,n),{statistic:t,suspectIndex:o}=T0e(e,n);return{statistic:t,critical:i,suspectIndex:o,isOutlier:t>i}}function T0e(e,r){if(ye(e,2,"mostExtreme"),e.every(a=>a===e[0]))return{statistic:0,suspectIndex:null};let n=X(e),i=Be(e),t=a=>r==="high"?a-n:r==="low"?n-a:Math.abs(a-n),o=e.reduce((a,s,u)=>t(s)>t(e[a])?u:a,0);return{statistic:t(e[o])/i,suspectIndex:o}}function hC(e,r=.005){let n=e.cellMeans.length,i=j0e(e.cellSizes),t=(o,a)=>o.flatMap((s,u)=>s!==null&&Math.abs(s)>a?[u]:[]);return{farMeans:n<3?null:t(e.h,Hl(n,r)),wideSpreads:t(e.k,Jl(n,i,r)),cochran:mC(e.cellSds,i),grubbs:n<3?null:gC(e.cellMeans),doubleGrubbs:n<4||n>20?null:vC(e.cellMeans)}}function j0e(e){let r=n=>e.filter(i=>i===n).length;return e.reduce((n,i)=>r(i)>r(n)||r(i)===r(n)&&i<n?i:n)}var V1=.005,mo=e=>J(e,3),is=e=>J(e,2),$C=({slug:e,name:r,words:n,method:i,specimens:t,closedOn:o,testers:a,levels:s,cells:u})=>({slug:e,name:r,words:n,method:i,specimens:t,testers:a,closedOn:o,levels:s.map(c=>q0e(c,u.filter(l=>l.level===c).toSorted((l,d)=>l.tester-d.tester)))}),z0e={meanN:null,repeatabilitySdN:null,betweenSdN:null,reproducibilitySdN:null,hCritical:null,kCritical:null,cochran:null},C0e={meanN:null,sdN:null,h:null,k:null,z:null,isFar:!1,isWide:!1};function q0e(e,r){let n=r.map(({readings:c})=>c.map(({valueN:l})=>Number(l)));if(n.length<2)return{...z0e,level:e,cells:r.map(c=>({...C0e,...bC(c)}))};let i=Rl(n),{farMeans:t,wideSpreads:o,cochran:a}=hC(i,V1),s=Gz(i.cellMeans),u=c=>s.sd>0?is(fC(c,s.mean,s.sd)):null;return{level:e,meanN:mo(i.mean),repeatabilitySdN:mo(i.repeatabilitySd),betweenSdN:mo(i.betweenSd),reproducibilitySdN:mo(i.reproducibilitySd),hCritical:r.length<3?null:is(Hl(r.length,V1)),kCritical:is(Jl(r.length,i.cellSizes[0]??2,V1)),cochran:{statistic:is(a.statistic),isOutlier:a.isOutlier},cells:r.map((c,l)=>({...bC(c),meanN:mo(i.cellMeans[l]??0),sdN:mo(i.cellSds[l]??0),h:yC(i.h[l]),k:yC(i.k[l]),z:u(i.cellMeans[l]??0),isFar:t?.includes(l)??!1,isWide:o.includes(l)}))}}var yC=e=>e==null?null:is(e),bC=({tester:e,instrument:r,readings:n})=>({tester:e,instrument:r,readings:n.map(({text:i,unit:t,valueN:o})=>({text:i,unit:t,valueN:o}))});var _C=e=>({..._e(e),items:(e.evidence.roundRobins??[]).map($C)});var R0e=["place","score","value"],wC=(e,r)=>`${e}, ${r}, value`;function SC({edition:e,categories:r,claims:n=null}){let i=e.overall.flatMap(c=>U0e(c)),t=r.flatMap(({category:c,rows:l})=>l.flatMap(d=>F0e(c.code,d))),o=n?n.items.flatMap(M0e):[],a=e.overall.some(({group:c})=>c!==null),s=e.overall.filter(({place:c,group:l})=>a?l===1:c===1).map(({variant:c})=>c.slug),u=IP.filter(c=>c!=="claim"||n!==null);return{cells:Object.fromEntries([...i,...t,...o]),top:s,kinds:u}}function U0e(e){let{variant:r,place:n,placeIfIncluded:i,score:t,placeInterval:o}=e,a=s=>`overall, ${r.slug}, ${s}`;return[[a("place"),n===null?`(${i??"unplaced"})`:String(n)],[a("score"),t],[a("interval"),o?`${o.low} to ${o.high}`:Kl],...IC(a,e)]}function F0e(e,r){let{variant:n,place:i,figure:t}=r,o=v=>`${e}, ${n.slug}, ${v}`,{value:a,unit:s,low:u,high:c,specimens:l,submissions:d,testers:f,rigs:m}=t;return[[o("place"),String(i??"unplaced")],[o("value"),`${a} ${s}`],[o("interval"),u===null||c===null?Kl:`${u} to ${c} ${s}`],...IC(o,r),...Object.entries({specimens:l,submissions:d,testers:f,rigs:m}).map(([v,h])=>[o(v),String(h)])]}var Kl="not stated",IC=(e,{group:r,chanceOfFirstPercent:n,movement:i})=>[[e("group"),r===null?Kl:String(r)],[e("chance"),n===null?Kl:`${n} %`],[e("movement"),i.places===null?i.kind:`${i.kind} ${i.places}`]],M0e=({variant:e,claims:r})=>r.map(({quantity:n,printed:i,ratioPercent:t,decision:o})=>[`label, ${e.slug}, ${n}`,`${i.text} ${i.unit}, ${t===null?"not measured":`${t} %`}${o===null?"":`, ${o}`}`]);function kC(e,r){let n=new Set(e.kinds??R0e),i=[...new Set([...Object.keys(e.cells),...Object.keys(r.cells)])].filter(o=>n.has(Bh(o))&&e.cells[o]!==r.cells[o]).sort().map(o=>({where:o,before:e.cells[o]??null,after:r.cells[o]??null})),t=({where:o})=>cl.indexOf(ll(o));return e.kinds===void 0?i:i.toSorted((o,a)=>t(o)-t(a))}var L0e=1e3;function OC(e,{value:r,standardUncertainty:n,degreesOfFreedom:i,budget:t}){return n===null?[]:[{category:e,standardUncertaintyPercent:J(100*n/r,2),degreesOfFreedom:i>L0e?null:Math.floor(i),lines:t.toSorted((o,a)=>a.sharePercent-o.sharePercent).map(({component:o,sharePercent:a})=>({component:o,of:null,sharePercent:J(a,1)}))}]}var B1=({house:e,revision:r,evidence:{edition:n,withdrawn:i}})=>i.map(({reference:t,variant:o,method:a,tester:s,benchDay:u,withdrawnOn:c,reason:l})=>({reference:t,variant:o,method:a,tester:s,benchDay:u,withdrawnOn:c,reason:l,citation:`${e}: submission ${t}, withdrawn on ${c}. ${n.name}, edition ${n.slug}, revision ${r}.`})),NC=e=>({..._e(e),items:B1(e)});function AC(e,r){let{reference:n,revision:i,method:t,tester:o,reviewer:a,spool:s,benchDay:u,isBlind:c,specimens:l,findings:d}=e;return{reference:n,revision:i,method:t.slug,methodVersion:t.number,tester:o,reviewer:a,rig:z1(e),instruments:e.instruments.map(({code:f,certificate:m})=>({code:f,calibration:m})),spool:s,benchDay:u,isBlind:c,figures:V0e(e,r),findings:d.map(({code:f,message:m,resolution:v})=>({code:f,message:m,resolution:v})),specimens:l.map(({number:f,condition:m,state:v,reason:h,readings:y,trace:b})=>({number:f,condition:m,state:v,reason:h,readings:y.map(({role:_,station:$,enteredText:N,enteredUnit:w,valueSi:O,siUnit:k})=>({role:_,station:$,entered:{text:N,unit:w},value:O,unit:k})),...b?{trace:Z0e(b)}:{}}))}}var Z0e=({figures:e,points:r,...n})=>({...n,figures:{...e,slips:e.slips.map(i=>({...i}))},points:r.map(([i,t])=>[i,t])});function V0e(e,r){let n=uo(e),i={method:e.method.slug,figures:n},t=r.find(({slug:o})=>o===i.method);return(t?TP(t):[]).flatMap(o=>{let a=o.parts.map(l=>T1(l,i)),[s]=a,u=o.quantity==="retention"?n.retentionPercent:s&&{...s,value:s.mean},c=a.reduce((l,d)=>l+(d?.n??0),0);return u?[B0e(o,c,u)]:[]})}function B0e(e,r,{value:n,low95:i,high95:t}){return U1(e,n,i===null||t===null?null:{low:i,high:t},{specimens:r,submissions:1,testers:1,rigs:1,note:null},lo[e.quantity])}function PC(e,r,n,i){return e.variants.map(t=>W0e(e,t,r,n,i))}function W0e(e,r,n,i,t){let o=n.excluded.find(d=>d.variant.slug===r.slug),a=n.incomplete.find(d=>d.variant.slug===r.slug),s=n.overall.find(d=>d.variant.slug===r.slug),u=i.flatMap(({category:d,rows:f})=>f.filter(m=>m.variant.slug===r.slug).map(({variant:m,...v})=>({category:d,row:v}))),c=o?"excluded":a?"incomplete":"placed",l=[...e.computed.results.get(r.slug)??[]];return{..._e(e),variant:r,outcome:c,exclusion:o?H0e(o):null,missing:a?.missing??[],overall:s?J0e(s):null,categories:u,figures:l.map(([,d])=>fo(d,lo[d.of.quantity])),evidence:l.map(([d,{references:f}])=>({quantity:d,submissions:[...f].sort()})),claims:Wl(e,r.slug),submissions:e.evidence.submissions.filter(d=>d.variant===r.slug).map(d=>AC(d,e.evidence.edition.methods)),withdrawn:B1(e).filter(d=>d.variant===r.slug),spools:K0e(e,r.slug),budgets:G0e(e,r.slug),history:[...X0e(e,r.slug),Q0e(e,r.slug,t,{outcome:c,overallPlace:s?.place??null,rows:u})],siblings:e.variants.filter(({line:d,slug:f})=>d.slug===r.line.slug&&f!==r.slug)}}var G0e=({computed:e,evidence:r},n)=>r.edition.scheme.rules.categories.flatMap(i=>{let t=e.results.get(n)?.get(be(i));return t?OC(i.code,t.estimate):[]}),H0e=({variant:e,...r})=>r,J0e=({variant:e,...r})=>r;function K0e(e,r){let n=new Set(e.evidence.submissions.map(({spool:i})=>i));return e.spools.filter(({variant:i,code:t})=>i===r&&n.has(t)).map(({code:i,source:t,obtainedOn:o,place:a,lot:s,reidentifications:u})=>({code:i,source:t,obtainedOn:o,place:a,lot:s,reidentified:u.at(-1)?.reason??null}))}function X0e(e,r){return e.earlier.flatMap(({history:n})=>n.find(({variant:i})=>i===r)?.point??[]).reverse()}function Q0e(e,r,n,{outcome:i,overallPlace:t,rows:o}){return{edition:e.evidence.edition.slug,revision:e.revision,overallPlace:t,outcome:i,categories:o.map(({category:a,row:s})=>({code:a.code,place:s.place,value:s.figure.value,low:s.figure.low,high:s.figure.high,unit:s.figure.unit,trade:s.figure.trade,methodVersion:a.methodVersion,isBreak:a.comparability==="notComparable",isCorrected:n.has(wC(a.code,r))}))}}function EC({reasonCode:e,words:r,expects:n,before:i},t){let o=SC(t),a=kC(i,o),s=d=>a.filter(({where:f})=>f.endsWith(d)).length,u=i.top.join()===o.top.join()?"top group unchanged":"top group changed",c=(d,f,m=`${f}s`)=>`${d} ${d===1?f:m} changed`,l=["intervals","claims","evidence"].flatMap(d=>{let f=a.filter(({where:m})=>ll(m)===d).length;return f===0?[]:[c(f,xC[d].one,xC[d].several)]});return{reasonCode:e,words:r,expected:[...n],changes:a,consequences:[c(s(", value"),"value"),c(s(", place"),"place"),...l,u].join(", ")}}var xC={intervals:{one:"interval",several:"intervals"},claims:{one:"claim",several:"claims"},evidence:{one:"count of evidence",several:"counts of evidence"}};function DC(e){return[...e.earlier.map(n=>{let i=new Map(n.results.map(({variant:t,quantity:o,value:a})=>[`${t} ${o}`,Number(a)]));return{edition:n.edition,places:new Map([["overall",n.overall],...n.categories.map(({code:t,rows:o})=>[t,o])]),methodVersions:new Map(n.categories.map(({code:t,methodVersion:o})=>[t,o])),valueOf:(t,o)=>i.get(`${t} ${o}`)}}).reverse(),Y0e(e)]}function Y0e({computed:{edition:e,standings:r,results:n}}){let i=t=>t.map(({id:o,place:a})=>({variant:o,place:a}));return{edition:e.slug,places:new Map([["overall",i(r.overall)],...Object.entries(r.categories).map(([t,o])=>[t,i(o)])]),methodVersions:new Map(e.scheme.rules.categories.map(({code:t,method:o})=>[t,e.methods.find(({slug:a})=>a===o)?.number??0])),valueOf:(t,o)=>n.get(t)?.get(o)?.estimate.value}}var TC=(e,r)=>J(e,r);var W1=[0,50,100,200,400],epe=e=>W1.filter(r=>e>=r).at(-1)??0;function jC(e,r){let n=ml(e.computed.quantities,"breakingForce")?.key??"";return e.evidence.edition.scheme.rules.categories.flatMap(i=>{let t=rpe(e,i,r),o=t.flatMap(a=>tpe(a,i,n));return[...Map.groupBy(o,({from:a})=>a)].sort(([a],[s])=>a-s).map(([a,s])=>npe(i,a,s,t[0]?.edition??"",e.evidence.edition.slug))})}function rpe({methods:e},{code:r,method:n},i){let t=i.filter(({methodVersions:s})=>s.has(r)),o=(s,u)=>{let[c,l]=[u.methodVersions.get(r)??0,s.methodVersions.get(r)??0];return e.some(d=>d.slug===n&&d.number>c&&d.number<=l&&!d.isComparableWithPrevious)},a=t.findLastIndex((s,u)=>u>0&&o(s,t[u-1]??s));return t.slice(Math.max(0,a))}function tpe(e,r,n){let{code:i,places:t}=r;return(e.places.get(i)??[]).flatMap(({variant:o,place:a})=>{let[s,u]=[e.valueOf(o,be(r)),e.valueOf(o,n)];return a===null||s===void 0||u===void 0?[]:[{edition:e.edition,variant:o,from:epe(u),value:TC(s,t)}]})}function npe({code:e,unit:r,direction:n},i,t,o,a){let s=(f,m)=>n==="more"?Number(f)>Number(m):Number(f)<Number(m),u=t.reduce((f,m)=>s(m.value,f.value)?m:f),c=t.filter(({value:f})=>f===u.value),[l=u,...d]=c;return{category:e,strengthFromN:i,strengthBelowN:W1[W1.indexOf(i)+1]??null,value:l.value,unit:r,variant:l.variant,edition:l.edition,equalled:d.map(({variant:f,edition:m})=>({variant:f,edition:m})),isNew:l.edition===a,since:o}}function zC(e){return[...new Set(e.flatMap(({places:n})=>[...n.keys()]))].flatMap(n=>ipe(n,e).sort((i,t)=>t.editions.length-i.editions.length))}function ipe(e,r){let n=[],i=new Map;for(let{edition:t,places:o}of r){let a=(o.get(e)??[]).filter(({place:s})=>s===1).map(({variant:s})=>s);for(let[s,u]of i)a.includes(s)||n.push({table:e,variant:s,editions:u,isGoingOn:!1});i=new Map(a.map(s=>[s,[...i.get(s)??[],t]]))}return[...n,...[...i].map(([t,o])=>({table:e,variant:t,editions:o,isGoingOn:!0}))]}function CC(e){let r=DC(e);return{..._e(e),records:jC(e,r),runs:zC(r)}}var Je=(e,r)=>({path:e,mediaType:"application/json",content:st(r)});function qC({house:e,isDemo:r,revision:n,publishedAt:i,licence:t,softwareVersion:o,evidence:a}){let{slug:s,name:u}=a.edition,c=i.slice(0,10);return{path:"README.md",mediaType:"text/markdown; charset=utf-8",content:`# ${e}: ${u}, revision ${n}

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
`}}var ee=(e,r)=>({name:e,type:"string",description:r}),Re=(e,r)=>({name:e,type:"integer",description:r}),_r=(e,r)=>({name:e,type:"number",description:r}),Ue=e=>({...e,isOptional:!0});var cn=ee("variant","Variant, by its slug"),Gn={columns:["variant"],table:"variants",references:["variant"]},Xl=ee("submission","Reference of the submission"),G1={columns:["submission"],table:"submissions",references:["submission"]};var RC=e=>[ope(e),ape(e)],ope=e=>({name:"variants",title:"Variants of the edition",columns:[cn,ee("maker","Maker"),ee("line","Line"),ee("size","Size as on the label"),ee("colour","Colour as on the label"),ee("material","Material"),ee("construction","How the line is made"),Ue(Re("carriers","Ends braided")),Ue(_r("pe number","PE number on the label")),ee("outcome","Placed, incomplete or excluded in this edition")],primaryKey:["variant"],foreignKeys:[],rows:e.map(({variant:{slug:r,maker:n,line:i,size:t,colour:o,material:a,construction:s,carriers:u,peNumber:c},outcome:l})=>({variant:r,maker:n.name,line:i.name,size:t,colour:o,material:a,construction:s,carriers:u,"pe number":c,outcome:l}))}),ape=e=>({name:"claims",title:"What labels claim, beside what was measured",columns:[cn,ee("quantity","What is claimed"),ee("basis","What the label says that the number is: average, minimum, maximum, class, or not stated"),ee("printed","Number as printed"),ee("printed unit","Unit as printed"),_r("claimed","The claim in the unit of the column after it"),ee("unit","Unit of claimed and measured"),Ue(_r("measured","Measured value")),Ue({..._r("measured to claimed","Measured over claimed"),unit:"%"}),Ue(ee("decision","Decision after JCGM 106"))],primaryKey:["variant","quantity"],foreignKeys:[Gn],rows:e.flatMap(({variant:r,claims:n})=>n.map(({quantity:i,basis:t,printed:o,value:a,unit:s,measured:u,ratioPercent:c,decision:l})=>({variant:r.slug,quantity:i,basis:t,printed:o.text,"printed unit":o.unit,claimed:a,unit:s,measured:u?.value??null,"measured to claimed":c,decision:l})))});var spe=/\\(\\)?/g,upe=RegExp(`[^.[\\]]+|\\[(?:([^"'][^[]*)|(["'])((?:(?!\\2)[^\\\\]|\\\\.)*?)\\2)\\]|(?=(?:\\.|\\[\\])(?:\\.|\\[\\]|$))`,"g"),cpe=/\.|\[(?:[^[\]]*|(["'])(?:(?!\1)[^\\]|\\.)*?\1)\]/,lpe=/^\w*$/,dpe=function(e){return Object.prototype.toString.call(e)},UC=function(e){let r=typeof e;return r==="symbol"||r==="object"&&e&&dpe(e)==="[object Symbol]"},fpe=function(e,r){if(Array.isArray(e))return!1;let n=typeof e;return n==="number"||n==="symbol"||n==="boolean"||!e||UC(e)?!0:lpe.test(e)||!cpe.test(e)||r!=null&&e in Object(r)},mpe=function(e){let r=[];return e.charCodeAt(0)===46&&r.push(""),e.replace(upe,function(n,i,t,o){let a=n;t?a=o.replace(spe,"$1"):i&&(a=i.trim()),r.push(a)}),r},ppe=function(e,r){return Array.isArray(e)?e:fpe(e,r)?[e]:mpe(e)},vpe=function(e){if(typeof e=="string"||UC(e))return e;let r=`${e}`;return r=="0"&&1/e==-1/0?"-0":r},FC=function(e,r){r=ppe(r,e);let n=0,i=r.length;for(;e!=null&&n<i;)e=e[vpe(r[n++])];return n&&n===i?e:void 0};var MC=function(e){return typeof e=="object"&&e!==null&&!Array.isArray(e)};var Ql=function(e){if(e==null)return[void 0,void 0];if(typeof e!="object")return[Error('Invalid option "columns": expect an array or an object')];if(Array.isArray(e)){let r=[];for(let n of e)if(typeof n=="string")r.push({key:n,header:n});else if(typeof n=="object"&&n!==null&&!Array.isArray(n)){if(!n.key)return[Error('Invalid column definition: property "key" is required')];n.header===void 0&&(n.header=n.key),r.push(n)}else return[Error("Invalid column definition: expect a string or an object")];e=r}else{let r=[];for(let n in e)r.push({key:n,header:e[n]});e=r}return[void 0,e]};var Tr=class e extends Error{constructor(r,n,...i){Array.isArray(n)&&(n=n.join(" ")),super(n),Error.captureStackTrace!==void 0&&Error.captureStackTrace(this,e),this.code=r;for(let t of i)for(let o in t){let a=t[o];this[o]=Buffer.isBuffer(a)?a.toString():a==null?a:JSON.parse(JSON.stringify(a))}}};var LC=function(e){return e.replace(/([A-Z])/g,function(r,n){return"_"+n.toLowerCase()})};var Yl=function(e){let r={};for(let t in e)r[LC(t)]=e[t];if(r.bom===void 0||r.bom===null||r.bom===!1)r.bom=!1;else if(r.bom!==!0)return[new Tr("CSV_OPTION_BOOLEAN_INVALID_TYPE",["option `bom` is optional and must be a boolean value,",`got ${JSON.stringify(r.bom)}`])];if(r.delimiter===void 0||r.delimiter===null)r.delimiter=",";else if(Buffer.isBuffer(r.delimiter))r.delimiter=r.delimiter.toString();else if(typeof r.delimiter!="string")return[new Tr("CSV_OPTION_DELIMITER_INVALID_TYPE",["option `delimiter` must be a buffer or a string,",`got ${JSON.stringify(r.delimiter)}`])];if(r.quote===void 0||r.quote===null)r.quote='"';else if(r.quote===!0)r.quote='"';else if(r.quote===!1)r.quote="";else if(Buffer.isBuffer(r.quote))r.quote=r.quote.toString();else if(typeof r.quote!="string")return[new Tr("CSV_OPTION_QUOTE_INVALID_TYPE",["option `quote` must be a boolean, a buffer or a string,",`got ${JSON.stringify(r.quote)}`])];if((r.quoted===void 0||r.quoted===null)&&(r.quoted=!1),r.escape_formulas===void 0||r.escape_formulas===null)r.escape_formulas=!1;else if(typeof r.escape_formulas!="boolean")return[new Tr("CSV_OPTION_ESCAPE_FORMULAS_INVALID_TYPE",["option `escape_formulas` must be a boolean,",`got ${JSON.stringify(r.escape_formulas)}`])];if((r.quoted_empty===void 0||r.quoted_empty===null)&&(r.quoted_empty=void 0),r.quoted_match===void 0||r.quoted_match===null||r.quoted_match===!1?r.quoted_match=null:Array.isArray(r.quoted_match)||(r.quoted_match=[r.quoted_match]),r.quoted_match)for(let t of r.quoted_match){let o=typeof t=="string",a=t instanceof RegExp;if(!o&&!a)return[new Tr("CSV_OPTION_QUOTED_MATCH",["option `quoted_match` must be a string or a regex,",`got ${JSON.stringify(r.quoted_match)}`])]}if((r.quoted_string===void 0||r.quoted_string===null)&&(r.quoted_string=!1),(r.eof===void 0||r.eof===null)&&(r.eof=!0),r.escape===void 0||r.escape===null)r.escape='"';else if(Buffer.isBuffer(r.escape))r.escape=r.escape.toString();else if(typeof r.escape!="string")return[Error(`Invalid Option: escape must be a buffer or a string, got ${JSON.stringify(r.escape)}`)];if(r.escape.length>1)return[Error(`Invalid Option: escape must be one character, got ${r.escape.length} characters`)];if(r.header===void 0||r.header===null||r.header===!1)r.header=!1;else if(r.header!==!0)throw new Tr("CSV_INVALID_OPTION_HEADER",["option `header` is expected to be a boolean,",`got ${JSON.stringify(r.header)}`],r);if(r.header_as_comment===void 0||r.header_as_comment===null||r.header_as_comment===!1)r.header_as_comment=!1;else if(r.header_as_comment===!0)r.header_as_comment="#";else if(Buffer.isBuffer(r.header_as_comment))r.header_as_comment=r.header_as_comment.toString();else if(typeof r.header_as_comment!="string")throw new Tr("CSV_INVALID_OPTION_HEADER_AS_COMMENT",["option `header_as_comment` must be a boolean, a string or a buffer,",`got ${JSON.stringify(r.header_as_comment)}`],r);let[n,i]=Ql(r.columns);if(n!==void 0)return[n];if(r.columns=i,(r.quoted===void 0||r.quoted===null)&&(r.quoted=!1),(r.cast===void 0||r.cast===null)&&(r.cast={}),(r.cast.bigint===void 0||r.cast.bigint===null)&&(r.cast.bigint=t=>""+t),(r.cast.boolean===void 0||r.cast.boolean===null)&&(r.cast.boolean=t=>t?"1":""),(r.cast.date===void 0||r.cast.date===null)&&(r.cast.date=t=>""+t.getTime()),(r.cast.number===void 0||r.cast.number===null)&&(r.cast.number=t=>""+t),(r.cast.object===void 0||r.cast.object===null)&&(r.cast.object=t=>JSON.stringify(t)),(r.cast.string===void 0||r.cast.string===null)&&(r.cast.string=function(t){return t}),r.on_record!==void 0&&typeof r.on_record!="function")return[Error('Invalid Option: "on_record" must be a function.')];if(r.quote_record_delimiter===void 0||r.quote_record_delimiter===null)r.quote_record_delimiter=!r.record_delimiter;else if(typeof r.quote_record_delimiter!="boolean")return[new Tr("CSV_OPTION_QUOTE_RECORD_DELIMITER_INVALID_TYPE",["option `quote_record_delimiter` must be a boolean,",`got ${JSON.stringify(r.quote_record_delimiter)}`])];if(r.record_delimiter===void 0||r.record_delimiter===null)r.record_delimiter=`
`;else if(Buffer.isBuffer(r.record_delimiter))r.record_delimiter=r.record_delimiter.toString();else if(typeof r.record_delimiter!="string")return[Error(`Invalid Option: record_delimiter must be a buffer or a string, got ${JSON.stringify(r.record_delimiter)}`)];switch(r.record_delimiter){case"unix":r.record_delimiter=`
`;break;case"mac":r.record_delimiter="\r";break;case"windows":r.record_delimiter=`\r
`;break;case"ascii":r.record_delimiter="";break;case"unicode":r.record_delimiter="\u2028";break}return[void 0,r]};var gpe=Buffer.from([239,187,191]),ZC=function(e,r){return r.some(n=>n.length!==0&&(e.indexOf(n)!==-1||n.length>1&&(e+n).indexOf(n)<e.length))},VC=function(e,r){return r?r.some(n=>typeof n=="string"?e.indexOf(n)!==-1:e.search(n)!==-1):!1},BC=function(e,r,n){return{options:e,state:r,info:n,__transform:function(i,t){if(!Array.isArray(i)&&typeof i!="object")return Error(`Invalid Record: expect an array or an object, got ${JSON.stringify(i)}`);if(this.info.records===0){if(Array.isArray(i)){if(this.options.header===!0&&this.options.columns===void 0)return Error("Undiscoverable Columns: header option requires column option or object records")}else if(this.options.columns===void 0){let[s,u]=Ql(Object.keys(i));if(s)return;this.options.columns=u}}if(this.info.records===0){this.bom(t);let s=this.headers(t);if(s)return s}try{this.options.on_record&&this.options.on_record(i,this.info.records)}catch(s){return s}let o,a;if(this.options.eof){if([o,a]=this.stringify(i),o)return o;if(a===void 0)return;a=a+this.options.record_delimiter}else{if([o,a]=this.stringify(i),o)return o;if(a===void 0)return;(this.options.header||this.info.records)&&(a=this.options.record_delimiter+a)}this.info.records++,t(a)},stringify:function(i,t=!1){if(typeof i!="object")return[void 0,i];let{columns:o}=this.options,a=[];if(Array.isArray(i)){let u=o?Math.min(i.length,o.length):i.length;for(let c=0;c<u;c++){let l=i[c],[d,f]=this.__cast(l,{index:c,column:c,records:this.info.records,header:t});if(d)return[d];a[c]=[f,l]}}else for(let u=0;u<o.length;u++){let c=FC(i,o[u].key),[l,d]=this.__cast(c,{index:u,column:o[u].key,records:this.info.records,header:t});if(l)return[l];a[u]=[d,c]}let s="";for(let u=0;u<a.length;u++){let c,l,[d,f]=a[u];if(typeof d=="string")c=this.options;else if(MC(d)){if(c={...d},d=c.value,delete c.value,typeof d!="string"&&d!==void 0&&d!==null&&l)return[Error(`Invalid Casting Value: returned value must return a string, null or undefined, got ${JSON.stringify(d)}`)];if(c={...this.options,...c},[l,c]=Yl(c),l!==void 0)return[l]}else if(d==null)c=this.options;else return[Error(`Invalid Casting Value: returned value must return a string, an object, null or undefined, got ${JSON.stringify(d)}`)];let{delimiter:m,escape:v,quote:h,quoted:y,quoted_empty:b,quoted_string:_,quoted_match:$,record_delimiter:N,quote_record_delimiter:w,escape_formulas:O}=c;if(d===""&&f==="")(VC(d,$)||b===!0||_===!0&&b!==!1)===!0&&(d=h+d+h),s+=d;else if(d){if(typeof d!="string")return[Error(`Formatter must return a string, null or undefined, got ${JSON.stringify(d)}`)];let k=ZC(d,[m]),D=h!==""&&d.indexOf(h)>=0,F=d.indexOf(v)>=0&&v!==h,re=ZC(d,[N,...w===!1?[]:[`
`,"\r"]]),se=_&&typeof f=="string",me=VC(d,$);if(O)switch(d[0]){case"-":if(typeof f=="number"||typeof f=="bigint")break;d=`'${d}`;break;case"=":case"+":case"@":case"	":case"\r":case"＝":case"＋":case"－":case"＠":d=`'${d}`;break}let we=D===!0||k||re||y||se||me;we===!0&&F===!0&&(d=d.replaceAll(v,()=>v+v)),D===!0&&(d=d.replaceAll(h,()=>v+h)),we===!0&&(d=h+d+h),s+=d}else(b===!0||f===""&&_===!0&&b!==!1)&&(s+=h+h);u!==a.length-1&&(s+=m)}return[void 0,s]},bom:function(i){this.options.bom===!0&&i(gpe)},headers:function(i){if(this.options.header===!1||this.options.columns===void 0)return;let t,o=this.options.columns.map(a=>a.header);if(this.options.eof?([t,o]=this.stringify(o,!0),o+=this.options.record_delimiter):[t,o]=this.stringify(o,!0),t)return t;this.options.header_as_comment&&(o=this.options.header_as_comment+" "+o),i(o)},__cast:function(i,t){let o=typeof i;try{return o==="string"?[void 0,this.options.cast.string(i,t)]:o==="bigint"?[void 0,this.options.cast.bigint(i,t)]:o==="number"?[void 0,this.options.cast.number(i,t)]:o==="boolean"?[void 0,this.options.cast.boolean(i,t)]:i instanceof Date?[void 0,this.options.cast.date(i,t)]:o==="object"&&i!==null?[void 0,this.options.cast.object(i,t)]:i===null&&this.options.cast.null!==void 0?[void 0,this.options.cast.null(i,t)]:i===void 0&&this.options.cast.undefined!==void 0?[void 0,this.options.cast.undefined(i,t)]:[void 0,i]}catch(a){return[a]}}}};var WC=function(e,r={}){let n=[],[i,t]=Yl(r);if(i!==void 0)throw i;let s=BC(t,{stop:!1},{records:0});for(let u of e){let c=s.__transform(u,function(l){n.push(l)});if(c!==void 0)throw c}if(n.length===0){s.bom(c=>{n.push(c)});let u=s.headers(c=>{n.push(c)});if(u!==void 0)throw u}return n.join("")};var H1=({name:e})=>`csv/${e}.csv`,ed=e=>({path:H1(e),mediaType:"text/csv; charset=utf-8",content:WC([...e.rows],{header:!0,columns:e.columns.map(({name:r})=>r),escape_formulas:!0,record_delimiter:"windows"})});function GC({house:e,isDemo:r,revision:n,publishedAt:i,licence:t,evidence:o},a){let{slug:s,name:u}=o.edition;return Je("datapackage.json",{$schema:"https://datapackage.org/profiles/2.0/datapackage.json",name:`edition-${s}-revision-${n}`,title:`${e}: ${u}`,description:`Independent bench tests of fishing line, every reading and what follows from it.${r?" Invented for demonstration.":""}`,version:`${n}.0.0`,created:i,licenses:[t],contributors:[{title:e,roles:["author"]}],resources:a.map(hpe)})}function hpe(e){let{content:r}=ed(e);return{name:e.name,type:"table",title:e.title,path:H1(e),scheme:"file",format:"csv",mediatype:"text/csv",encoding:"utf-8",bytes:Buffer.byteLength(r),hash:`sha256:${Yr(r)}`,dialect:{delimiter:",",lineTerminator:`\r
`,quoteChar:'"',doubleQuote:!0,header:!0},schema:{fields:e.columns.map(ype),missingValues:[""],primaryKey:e.primaryKey,foreignKeys:e.foreignKeys.map(({columns:n,table:i,references:t})=>({fields:n,reference:{resource:i,fields:t}}))}}}var ype=({name:e,type:r,description:n,unit:i,isOptional:t})=>({name:e,type:r,description:n,...i===void 0?{}:{unit:i},...t?{}:{constraints:{required:!0}}});var HC=Re("specimen","Number of the specimen in its submission");function JC(e){let r=e.flatMap(({submissions:n})=>n);return[bpe(e),$pe(r),_pe(r)]}var bpe=e=>({name:"submissions",title:"Accepted submissions",columns:[Xl,cn,ee("method","Method"),Re("version","Version of the method"),ee("tester","Display name of the tester"),ee("reviewer","Display name of the second person"),ee("rig","Instrument that took the readings"),{name:"bench day",type:"date",description:"Local date at the bench"},ee("spool","Blind code of the spool"),ee("blind","yes; no where its tester had seen the label or read what tells of the spool")],primaryKey:["submission"],foreignKeys:[Gn],rows:e.flatMap(({variant:r,submissions:n})=>n.map(({reference:i,method:t,methodVersion:o,tester:a,reviewer:s,rig:u,benchDay:c,spool:l,isBlind:d})=>({submission:i,variant:r.slug,method:t,version:o,tester:a,reviewer:s,rig:u,"bench day":c,spool:l,blind:d===!1?"no":"yes"})))}),$pe=e=>({name:"specimens",title:"Specimens, counted or not",columns:[Xl,HC,ee("condition","Untreated, or treated: knotted or abraded"),ee("state","Valid, invalid or set aside; only valid ones count"),Ue(ee("reason","Why it does not count"))],primaryKey:["submission","specimen"],foreignKeys:[G1],rows:e.flatMap(({reference:r,specimens:n})=>n.map(({number:i,condition:t,state:o,reason:a})=>({submission:r,specimen:i,condition:t,state:o,reason:a})))}),_pe=e=>({name:"readings",title:"Every reading, as entered and in SI",columns:[Xl,HC,Re("reading","Running number of the reading in its specimen"),ee("role","What was read"),Ue(Re("station","Place along the specimen")),ee("entered","Number as entered"),ee("entered unit","Unit as entered"),_r("value","The same in SI"),ee("unit","SI unit")],primaryKey:["submission","specimen","reading"],foreignKeys:[G1,{columns:["submission","specimen"],table:"specimens",references:["submission","specimen"]}],rows:e.flatMap(({reference:r,specimens:n})=>n.flatMap(i=>i.readings.map(({role:t,station:o,entered:a,value:s,unit:u},c)=>({submission:r,specimen:i.number,reading:c+1,role:t,station:o,entered:a.text,"entered unit":a.unit,value:s,unit:u}))))});var KC=Ue(Re("place","Standard competition place; empty for a row that is not placed")),XC=Ue(Re("place if included","Place that an excluded row would have had")),QC=Ue(Re("group","Too-close-to-call group, 1 is the top group")),YC=Ue(Re("place low","Simultaneous 95 % place interval, best end")),eq=Ue(Re("place high","Simultaneous 95 % place interval, worst end")),rq=(e,r)=>[wpe(e),Ipe(r)],wpe=e=>{let r=e.scheme.categories.map(({code:n})=>n);return{name:"standings",title:"Overall standings",columns:[KC,XC,QC,YC,eq,cn,_r("score","Score under the scheme"),...r.map(n=>Ue(Re(`place in ${n}`,"Place counted in the score")))],primaryKey:["variant"],foreignKeys:[Gn],rows:e.overall.map(({place:n,placeIfIncluded:i,group:t,placeInterval:o,variant:a,score:s,categoryPlaces:u})=>({place:n,"place if included":i,group:t,"place low":o?.low??null,"place high":o?.high??null,variant:a.slug,score:s,...Object.fromEntries(r.map(c=>[`place in ${c}`,u[c]??null]))}))}},Spe=[ee("category","Category of the scheme"),cn,KC,XC,QC,YC,eq,_r("value","Measured value"),Ue(_r("low 95 %","Lower end of the 95 % interval")),Ue(_r("high 95 %","Upper end of the 95 % interval")),ee("unit","Unit of the value and its interval"),Re("specimens","Specimens that count"),Re("submissions","Submissions"),Re("testers","Testers"),Re("rigs","Rigs")],Ipe=e=>({name:"results",title:"Results and places by category",columns:Spe,primaryKey:["category","variant"],foreignKeys:[Gn],rows:e.flatMap(({category:r,rows:n})=>n.map(({variant:i,place:t,placeIfIncluded:o,group:a,placeInterval:s,figure:u})=>({category:r.code,variant:i.slug,place:t,"place if included":o,group:a,"place low":s?.low??null,"place high":s?.high??null,value:u.value,"low 95 %":u.low,"high 95 %":u.high,unit:u.unit,specimens:u.specimens,submissions:u.submissions,testers:u.testers,rigs:u.rigs})))});function tq(e){let r=pz(e),n=Dz(r),i=Iz(r,null),t=qz(r),o=e.correction&&EC(e.correction,{edition:i,categories:n,claims:t}),a={...i,erratum:o},s=new Set([...e.correction?.corrected??[],...(o?.changes??[]).map(({where:l})=>l)]),u=PC(r,a,n,s),c=[...RC(u),...rq(a,n),...JC(u)];return[qC(e),Je("bundle.json",vz(e,r,a,n)),Je("documents/edition.json",a),...n.map(l=>Je(`documents/standings/${l.category.code}.json`,l)),...u.map(l=>Je(`documents/variants/${l.variant.slug}.json`,l)),Je("documents/records.json",CC(r)),Je("documents/pairs.json",Rz(r)),Je("documents/claims.json",t),Je("documents/round-robins.json",_C(e)),Je("documents/retests.json",Mz(e)),Je("documents/withdrawn.json",NC(e)),Je("documents/rigs.json",Vz(r)),Je("documents/catalogue.json",yz(r)),...bz(r).map(l=>Je(`documents/methods/${l.slug}-${l.number}.json`,l)),...c.map(ed),...e.blindKey===null?[]:[{path:"blind-key.txt",mediaType:"text/plain; charset=utf-8",content:e.blindKey}],GC(e,c)]}var nq="verify.mjs",Npe=["manifest.json","signature.json"];async function iq(e,r){let n=await Ape(e,"manifest.json"),i=oq(e,"manifest.json",n),t=new Map,o=(await Promise.all(i.files.map(c=>xpe(e,c,t)))).flat(),a=await e.read("signature.json"),s=jpe(e,i,t),u=r===void 0||i.files.some(({path:c,sha256:l})=>c===nq&&l===r);return{name:e.name,edition:i.edition,revision:i.revision,digest:Yr(n),previousDigest:i.previousDigest,keyFingerprint:a&&Tpe(a),files:i.files.length,figures:s.figures,differences:[...Ppe("manifest.json",n),...o,...Dpe(a,n),...await Epe(e,i),...u?s.differences:[]],otherwise:u?[]:s.differences}}async function Ape(e,r){let n=await e.read(r);if(!n)throw new Error(`${e.name} has no ${r}; expected the folder or address of a release.`);return new TextDecoder().decode(n)}function oq(e,r,n){try{return JSON.parse(n)}catch{throw new Error(`${r} of ${e.name} is not JSON; it is damaged. Fetch the release again.`)}}var Ppe=(e,r)=>ld(e,r,st(JSON.parse(r)));async function xpe(e,r,n){let i=await e.read(r.path);if(!i)return[{file:r.path,where:"",found:"no such file",expected:"the file that the manifest lists"}];n.set(r.path,new TextDecoder().decode(i));let t=`${i.length} bytes, SHA-256 ${Yr(i)}`,o=`${r.sizeBytes} bytes, SHA-256 ${r.sha256}`;return t===o?[]:[{file:r.path,where:"",found:t,expected:o}]}async function Epe(e,{files:r}){let n=new Set([...r.map(({path:t})=>t),...Npe]);return(await e.list()??[]).filter(t=>!n.has(t)).map(t=>({file:t,where:"",found:"a file that the manifest does not list",expected:"no such file"}))}function Dpe(e,r){let n=i=>[{file:"signature.json",where:"",found:i,expected:"the publisher’s signature of manifest.json"}];if(!e)return n("no such file");try{let{publicKey:i,signature:t,...o}=JSON.parse(new TextDecoder().decode(e));if(st({publicKey:i,signature:t,...o})!==new TextDecoder().decode(e))return n("another form than the canonical one");if(st(o)!==st({formatVersion:1,algorithm:"Ed25519",signed:"manifest.json"}))return n("another kind of signature");let a=kpe({key:Buffer.from(i,"base64"),format:"der",type:"spki"});return[i,t].every(u=>Buffer.from(u,"base64").toString("base64")===u)&&Ope(null,Buffer.from(r),a,Buffer.from(t,"base64"))?[]:n("a signature that does not fit")}catch{return n("what is not a signature")}}function Tpe(e){try{return Yr(Buffer.from(JSON.parse(new TextDecoder().decode(e)).publicKey,"base64"))}catch{return null}}function jpe(e,r,n){let i=n.get("bundle.json");if(i===void 0)throw new Error(`${e.name} has no bundle.json; there is nothing to compute from.`);let{formatVersion:t,inputs:o}=oq(e,"bundle.json",i);if(t!==zt)return{figures:null,differences:[]};let a=tq(o),s=new Set(a.map(({path:m})=>m)),u=a.flatMap(({path:m,content:v})=>ld(m,n.get(m)??"",v)),c=r.files.filter(({path:m})=>!s.has(m)&&m!==nq).map(({path:m})=>({file:m,where:"",found:"a file that nothing computes",expected:"no such file"})),d=[["edition",r.edition,o.evidence.edition.slug],["revision",r.revision,o.revision],["publishedAt",r.publishedAt,o.publishedAt],["softwareVersion",r.softwareVersion,o.softwareVersion],["previousDigest",r.previousDigest,o.previousDigest]].filter(([,m,v])=>m!==v).map(([m,v,h])=>({file:"manifest.json",where:`/${m}`,found:String(v),expected:String(h)}));return{figures:a.filter(({path:m})=>m.startsWith("documents/")).reduce((m,{content:v})=>m+cd(JSON.parse(v)),0),differences:[...u,...c,...d]}}var qpe=zpe(Cpe(import.meta.url)),[Rpe=qpe]=process.argv.slice(2);process.exitCode=await ly(()=>uy(Rpe,e=>iq(e)));
